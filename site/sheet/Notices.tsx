import { save } from '../calculator/save.ts';
import type { Keeping } from './keeper.ts';

interface Props {
  readonly keeping: Keeping;
  readonly dropAside: () => void;
}

/** Whatever stands in the way of keeping the sheet, and what was put aside. */
export function Notices({ keeping, dropAside }: Props) {
  const { problem, aside, both = [], cleared } = keeping;
  return (
    <>
      <div role="alert" class="problems">
        {problem === undefined && both.length === 0 && !cleared ? null : (
          <ul>
            {problem === undefined ? null : <li>{problem}</li>}
            {both.map((name) => (
              <li key={name}>
                “{name}” was changed here and in another tab at once. Both are kept: the other one
                stands under a name of its own in the list of engines.
              </li>
            ))}
            {cleared ? (
              <li>
                What was kept was removed in another tab or by the browser. The sheet shown here is
                whole; it is kept again with your next change.
              </li>
            ) : null}
          </ul>
        )}
      </div>
      {aside === undefined ? null : (
        <section class="aside" aria-label="Put aside">
          <p>
            {aside.why ??
              'An earlier sheet that could not be read is still here, put aside untouched.'}
          </p>
          <div class="bar-buttons">
            {aside.texts.map((text, i) => (
              <button
                key={i}
                type="button"
                onClick={() =>
                  save(
                    `engine-sheet-put-aside-${String(i + 1)}.txt`,
                    new Blob([text], { type: 'text/plain' }),
                  )
                }
              >
                Download what was put aside{aside.texts.length > 1 ? ` (${String(i + 1)})` : ''}
              </button>
            ))}
            <button type="button" onClick={dropAside}>
              Remove it
            </button>
          </div>
        </section>
      )}
    </>
  );
}
