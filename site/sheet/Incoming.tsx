import { useEffect, useState } from 'preact/hooks';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { engineFromFragment, holdsEngine } from '../../calculators/sheet/link.ts';
import type { Engine } from '../../calculators/sheet/model.ts';

interface Props {
  /** Takes the engine into the list; gives back what to say. */
  readonly take: (engine: Engine) => string;
}

const clear = (): void => history.replaceState(null, '', location.pathname + location.search);

/** The engine that a link brings: shown first, taken only when the reader says so. */
export function Incoming({ take }: Props) {
  const [engine, setEngine] = useState<Engine>();
  const [said, setSaid] = useState('');

  useEffect(() => {
    const look = (): void => {
      const fragment = location.hash.slice(1);
      if (!holdsEngine(fragment)) return;
      engineFromFragment(fragment).then(
        (found) => {
          setEngine(found);
          setSaid('');
        },
        (error: unknown) => {
          if (!(error instanceof SheetError)) throw error;
          setSaid(error.message);
        },
      );
    };
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);

  if (!engine) return <p role="status">{said}</p>;
  const figures = Object.keys(engine.figures).length;
  const readings = Object.keys(engine.readings).length;
  return (
    <section class="aside" aria-label="From the link">
      <p>
        This link brings an engine: <b>{engine.name}</b>, {figures} figures, readings at {readings}{' '}
        steps{engine.invented ? ', invented' : ''}. It joins your list under a name of its own;
        nothing you have is changed.
      </p>
      <div class="bar-buttons">
        <button
          type="button"
          onClick={() => {
            setSaid(take(engine));
            setEngine(undefined);
            clear();
          }}
        >
          Keep it in this browser
        </button>
        <button
          type="button"
          onClick={() => {
            setEngine(undefined);
            clear();
          }}
        >
          Leave it
        </button>
      </div>
    </section>
  );
}
