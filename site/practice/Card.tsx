import type { ComponentChildren } from 'preact';
import { fixed } from '../../calculators/frame/format.ts';
import { tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { siteAddress } from '../browser/site-address.ts';
import type { Places } from './places.ts';

interface Props {
  readonly task: TaskName;
  readonly number: number;
  readonly places: Places;
  /** Addresses of the calculators with this engine's figures in them. */
  readonly queries: Readonly<Record<string, string>>;
  readonly rows: readonly (readonly [name: string, value: string])[];
  readonly children?: ComponentChildren;
}

/** The aim, what is near enough, and what is known of the engine. */
export function Card({ task, number, places, queries, rows, children }: Props) {
  const { aim, tolerance, unit, within, read, calculators } = tasks[task];
  return (
    <section class="task-card">
      <p>{aim}</p>
      {unit !== 'none' && (
        <p>
          <b>Near enough:</b> {within} to ±{fixed(tolerance, 1)}
          {unit === 'deg' ? '°' : ' mm'}.
        </p>
      )}
      <dl class="engine-card" aria-label={`Card of engine ${number}`}>
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {children}
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
