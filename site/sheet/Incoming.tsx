import { useEffect, useState } from 'preact/hooks';
import { isBegun } from '../../calculators/sheet/readings.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { engineFromFragment, hasCheckSum, holdsEngine } from '../../calculators/sheet/link.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { order } from '../../calculators/sheet/steps.ts';

interface Props {
  /** Takes the engine into the list; gives back what to say. */
  readonly take: (engine: Engine) => string;
}

interface Brought {
  readonly engine: Engine;
  /** Whether a letter changed on the way would have shown. */
  readonly checked: boolean;
}

/** A fragment longer than any place on this page is called was meant to be an engine. */
const LONGEST_PLACE = 40;

const clear = (): void => history.replaceState(null, '', location.pathname + location.search);

const counted = (count: number, thing: string): string =>
  `${String(count)} ${thing}${count === 1 ? '' : 's'}`;

/** The engine that a link brings: shown first, taken only when the reader says so. */
export function Incoming({ take }: Props) {
  const [brought, setBrought] = useState<Brought>();
  const [said, setSaid] = useState('');

  useEffect(() => {
    const look = (): void => {
      const fragment = location.hash.slice(1);
      setBrought(undefined);
      setSaid('');
      if (!holdsEngine(fragment) && fragment.length <= LONGEST_PLACE) return;
      engineFromFragment(fragment).then(
        (engine) => setBrought({ engine, checked: hasCheckSum(fragment) }),
        (error: unknown) => {
          if (error instanceof SheetError) {
            setSaid(error.message);
            return;
          }
          setSaid('The link could not be read, by a fault of this page. Nothing was changed.');
          throw error;
        },
      );
    };
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);

  if (!brought) return <p role="status">{said}</p>;
  const { engine, checked } = brought;
  const figures = Object.keys(engine.figures).length;
  const readings = order.filter((id) => isBegun(engine, id)).length;
  return (
    <section class="aside" aria-label="From the link">
      <p>
        This link brings an engine: <b>{engine.name}</b>, {counted(figures, 'figure')}, readings at{' '}
        {counted(readings, 'step')}
        {engine.invented ? ', invented' : ''}. It joins your list under a name of its own; nothing
        you have is changed.
      </p>
      {checked ? null : (
        <p>
          It is a link of the older kind, without a check sum: whether it came unchanged could not
          be checked. Compare its figures with those of whoever sent it.
        </p>
      )}
      <div class="bar-buttons">
        <button
          type="button"
          onClick={() => {
            setSaid(take(engine));
            setBrought(undefined);
            clear();
          }}
        >
          Keep it in this browser
        </button>
        <button
          type="button"
          onClick={() => {
            setBrought(undefined);
            clear();
          }}
        >
          Leave it
        </button>
      </div>
    </section>
  );
}
