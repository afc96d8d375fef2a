import { stages } from '../../calculators/frame/stages.ts';
import { HowTo } from './HowTo.tsx';
import { order, steps } from '../../calculators/sheet/steps.ts';

/** The order of work before there is an engine, and on the page without JavaScript. */
export function Outline() {
  return (
    <>
      <p>
        <span class="not-yet">
          Start a new engine, look at the invented demo, or open a file you saved before. Everything
          stays in this browser; nothing is sent anywhere.
        </span>{' '}
        To fill it in by pen, print this page as it is.
      </p>
      <h2>Order of work</h2>
      <ol class="tasks">
        {order.map((id, i) => {
          const { stage, title, why, how, tool, caution } = steps[id];
          return (
            <li key={id}>
              {i === 0 || steps[order[i - 1]!].stage !== stage ? (
                <h3>{stages[stage].title}</h3>
              ) : null}
              <details class="task" id={`step-${id}`}>
                <summary>
                  <span class="task-number">{i + 1}</span>
                  <span class="task-title">{title}</span>
                </summary>
                <p>{why}</p>
                <HowTo how={how} lengths="mm" />
                <p>With: {tool}.</p>
                {caution === undefined ? null : <p class="caution">{caution}</p>}
              </details>
            </li>
          );
        })}
      </ol>
    </>
  );
}
