import { tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { siteAddress } from '../browser/site-address.ts';
import { nearEnough, Rows, type Row } from './Asked.tsx';
import { useLengths } from './lengths.ts';
import type { Places } from './places.ts';

interface Props {
  readonly task: TaskName;
  readonly number: number;
  readonly places: Places;
  /** Addresses of the calculators with this engine's figures in them. */
  readonly queries: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
}

/** What is known of the engine, what counts as right, and what to read and reckon with beside it. */
export function Card({ task, number, places, queries, rows }: Props) {
  const lengths = useLengths();
  const { unit, within, read, calculators } = tasks[task];
  return (
    <section class="task-card">
      <h3>Card of engine {number}</h3>
      <dl class="engine-card" aria-label={`Card of engine ${number}`}>
        <Rows rows={rows} />
      </dl>
      {unit !== 'none' && (
        <p>
          <b>Right is</b> {within} to {nearEnough(task, lengths)}.
        </p>
      )}
      <p class="no-print">
        <b>Read first:</b>{' '}
        {read.map(({ article, heading }, i) => (
          <>
            {i > 0 && ', '}
            <a
              key={article}
              href={siteAddress(
                `articles/${article}/${heading === undefined ? '' : `#${heading}`}`,
              )}
              target="_blank"
            >
              {places.articles[article]}
            </a>
          </>
        ))}
        . <b>At hand, with these figures:</b>{' '}
        {calculators.map((slug, i) => (
          <>
            {i > 0 && ', '}
            <a
              key={slug}
              href={siteAddress(`calculators/${slug}/${queries[slug] ?? ''}`)}
              target="_blank"
            >
              {places.calculators[slug]}
            </a>
          </>
        ))}
        . They open beside the bench.
      </p>
    </section>
  );
}
