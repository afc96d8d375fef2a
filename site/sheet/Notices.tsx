import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { cameWords } from '../../calculators/sheet/came.ts';
import type { KeptBoth } from '../../calculators/sheet/store.ts';
import { save } from '../browser/save.ts';
import type { Keeping } from './keeper.ts';

interface Props {
  readonly keeping: Keeping;
  readonly lengths: LengthDisplay;
  readonly dropAside: () => void;
  readonly seen: () => void;
}

function bothWords({ name, other, apart }: KeptBoth): string {
  const where = apart.length === 0 ? '' : `, and they differ: ${apart.join('; ')}`;
  return `“${name}” was changed here and in another tab at once${where}. Both are kept: the other tab’s is “${other}” in the list of engines.`;
}

/** Whatever stands in the way of keeping the sheet, and what was put aside. */
export function Notices({ keeping, lengths, dropAside, seen }: Props) {
  const { problem, aside, both = [], back = [], cleared, came } = keeping;
  const brought = came ? cameWords(came.before, came.after, lengths) : '';
  return (
    <>
      <div role="alert" class="problems">
        {problem === undefined && both.length + back.length === 0 && !cleared ? null : (
          <ul>
            {problem === undefined ? null : <li>{problem}</li>}
            {both.map((kept) => (
              <li key={kept.other}>{bothWords(kept)}</li>
            ))}
            {back.map((name) => (
              <li key={name}>
                “{name}” had been put aside and can be read again: it is back in the list of
                engines.
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
      <p role="status" class="from-elsewhere">
        {brought}
      </p>
      {both.length + back.length === 0 && brought === '' ? null : (
        <div class="bar-buttons">
          <button type="button" class="plain" onClick={seen}>
            I have seen this
          </button>
        </div>
      )}
      {aside === undefined ? null : (
        <section class="aside" aria-label="Put aside">
          <p>
            {aside.why ??
              'An earlier sheet that could not be read is still here, put aside untouched.'}
          </p>
          <p>
            Saved to a file, it can be opened with “Open a file” as far as it can be read, here or
            in a newer version.
          </p>
          <div class="bar-buttons">
            {aside.texts.map((text, i) => (
              <button
                key={i}
                type="button"
                onClick={() =>
                  save(
                    `engine-sheet-put-aside-${String(i + 1)}.json`,
                    new Blob([text], { type: 'application/json' }),
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
