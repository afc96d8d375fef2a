import { dropKept } from '../../calculators/sheet/kept-results.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { siteAddress } from '../browser/site-address.ts';
import { NotesBox } from './NotesBox.tsx';

interface Props {
  readonly engine: Engine;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

/** Results that were sent from calculators, and the builder's own notes. */
export function Kept({ engine, edit }: Props) {
  return (
    <section class="kept" aria-labelledby="kept-results">
      <h2 id="kept-results">Results and notes</h2>
      {engine.kept.length === 0 ? (
        <p>
          Any result can be sent here from its calculator; it then stands in this list with a link
          to the whole calculation.
        </p>
      ) : (
        <ul class="links">
          {engine.kept.map(({ label, text, calculator, query }, i) => (
            <li key={`${label} ${text} ${String(i)}`}>
              <a href={siteAddress(`calculators/${calculator}/?${query}`)}>
                {label}: {text}
              </a>
              <button
                type="button"
                class="plain"
                aria-label={`Remove ${label}: ${text}`}
                onClick={() => edit((now) => dropKept(now, i))}
              >
                Remove
              </button>
            </li>
          ))}
        </ul>
      )}
      <NotesBox key={engine.id} engine={engine} edit={edit} />
    </section>
  );
}
