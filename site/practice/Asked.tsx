import { fixed } from '../../calculators/frame/text/format.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { useLengths } from './lengths.ts';
import { length } from './words.ts';

export type Row = readonly [name: string, value: string];

/** How near is near enough, as it is written. */
export function nearEnough(task: TaskName, lengths: LengthDisplay): string {
  const { tolerance, unit } = tasks[task];
  return `±${unit === 'deg' ? `${fixed(tolerance, 1)}°` : length(tolerance, lengths, 1)}`;
}

export function Rows({ rows }: { readonly rows: readonly Row[] }) {
  return (
    <>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </>
  );
}

interface Props {
  readonly task: TaskName;
  /** The figures that the task asks for. */
  readonly wanted: readonly Row[];
}

/** What is asked for, short enough to stand on one screen with what it is done on. */
export function Asked({ task, wanted }: Props) {
  const lengths = useLengths();
  const { aim, unit } = tasks[task];
  const rows =
    unit === 'none' ? wanted : [...wanted, ['Near enough', nearEnough(task, lengths)] as const];
  return (
    <section class="asked" aria-label="What is asked for">
      <p>{aim}</p>
      {rows.length > 0 && (
        <dl>
          <Rows rows={rows} />
        </dl>
      )}
    </section>
  );
}
