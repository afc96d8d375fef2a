import { appliesTo, figureGroups } from '../../calculators/sheet/figures.ts';
import { setsOf } from '../../calculators/sheet/model.ts';
import { FigureBox, type BoxProps } from './FigureBox.tsx';
import { FiringOrder } from './FiringOrder.tsx';

/** The engine's figures under their headings; each heading says how many are entered. */
export function Figures(props: BoxProps) {
  return (
    <div class="sheet-figures">
      {figureGroups.map(({ heading, keys: all }, i) => {
        const keys = all.filter((key) => appliesTo(key, setsOf(props.engine)));
        const entered = keys.filter((key) => props.engine.figures[key] !== undefined).length;
        // The firing order stands among the first, and counts as one of them.
        const withOrder = i === 0 ? 1 : 0;
        const orderEntered = i === 0 && props.engine.firingOrder.length > 0 ? 1 : 0;
        return (
          <details class="sheet-group" key={heading} open={i === 0}>
            <summary>
              <span class="sheet-group-name">{heading}</span>
              <span class="sheet-count">
                {entered + orderEntered} of {keys.length + withOrder}
              </span>
            </summary>
            <div class="sheet-fields">
              {keys.map((key) => (
                <FigureBox key={`${props.engine.id} ${key}`} figure={key} {...props} />
              ))}
              {i === 0 ? <FiringOrder key={props.engine.id} {...props} /> : null}
            </div>
          </details>
        );
      })}
    </div>
  );
}

/** Opens the group a figure stands in and goes to its field. */
export function goToFigure(key: string): void {
  const field = document.getElementById(`figure-${key}`);
  const group = field?.closest('details');
  if (group) group.open = true;
  // Of a choice the first of its answers.
  (field?.querySelector('input') ?? field)?.focus();
  field?.scrollIntoView({ block: 'center' });
}
