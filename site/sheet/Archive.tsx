import { archive, type Store } from '../../calculators/sheet/store.ts';

interface Props {
  readonly store: Store;
  readonly change: (edit: (store: Store) => Store) => void;
  readonly say: (text: string) => void;
}

/** The engines that were laid aside, each with the way back. */
export function Archive({ store, change, say }: Props) {
  const laidAside = store.engines.filter(({ archived }) => archived);
  if (laidAside.length === 0) return null;
  return (
    <details class="act">
      <summary>Archive ({laidAside.length})</summary>
      <ul class="log-entries">
        {laidAside.map((old) => (
          <li key={old.id}>
            <b>{old.name}</b>
            <button
              type="button"
              class="plain"
              aria-label={`Take ${old.name} out of the archive`}
              onClick={() => {
                change((before) => archive(before, old.id, false));
                say(`${old.name} is open again.`);
              }}
            >
              Take out of the archive
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
