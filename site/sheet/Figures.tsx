import { useEffect } from 'preact/hooks';
import { placeOf } from '../../calculators/sheet/box-places.ts';
import { appliesTo, figureGroups, type FigureKey } from '../../calculators/sheet/figures.ts';
import { setsOf } from '../../calculators/sheet/model.ts';
import { useUnfolded } from '../fields/use-unfolded.ts';
import { FigureBox, type BoxProps } from './FigureBox.tsx';
import { FiringOrder } from './FiringOrder.tsx';
import { drawAll, useTurn } from './in-turn.ts';
import { useFragment } from './use-fragment.ts';

interface GroupProps extends BoxProps {
  readonly heading: string;
  readonly keys: readonly FigureKey[];
  /** The firing order stands among the first, and counts as one of them. */
  readonly isFirst: boolean;
}

function Group({ heading, keys, isFirst, ...props }: GroupProps) {
  const { engine } = props;
  const [open, setOpen] = useUnfolded(
    keys.some((key) => engine.unread[placeOf({ kind: 'figure', key })] !== undefined),
    isFirst,
  );
  const [isDrawn, draw] = useTurn(open);
  const entered = keys.filter((key) => engine.figures[key] !== undefined).length;
  const orderEntered = isFirst && engine.firingOrder.length > 0 ? 1 : 0;
  return (
    <details
      class="sheet-group"
      open={open}
      onToggle={({ currentTarget }) => {
        setOpen(currentTarget.open);
        if (currentTarget.open) draw();
      }}
    >
      <summary onClick={draw}>
        <span class="sheet-group-name">{heading}</span>
        <span class="sheet-count">
          {entered + orderEntered} of {keys.length + (isFirst ? 1 : 0)}
        </span>
      </summary>
      {isDrawn ? (
        <div class="sheet-fields">
          {keys.map((key) => (
            <FigureBox key={`${engine.id} ${key}`} figure={key} {...props} />
          ))}
          {isFirst ? <FiringOrder key={engine.id} {...props} /> : null}
        </div>
      ) : null}
    </details>
  );
}

/** The engine's figures under their headings; each heading says how many are entered. */
export function Figures(props: BoxProps) {
  const fragment = useFragment();
  useEffect(() => {
    // Also to one that waits to be drawn.
    if (fragment.startsWith('figure-') && !goTo(fragment))
      void drawAll().then(() => goTo(fragment));
  }, [fragment]);
  return (
    <div class="sheet-figures">
      {figureGroups.map(({ heading, keys }, i) => (
        <Group
          key={heading}
          heading={heading}
          keys={keys.filter((key) => appliesTo(key, setsOf(props.engine)))}
          isFirst={i === 0}
          {...props}
        />
      ))}
    </div>
  );
}

/** Opens the group a figure stands in and goes to its field; says whether it is there. */
function goTo(place: string): boolean {
  const field = document.getElementById(place);
  if (!field) return false;
  const group = field.closest('details');
  if (group) group.open = true;
  // Of a choice the first of its answers.
  (field.querySelector('input') ?? field).focus();
  field.scrollIntoView({ block: 'center' });
  return true;
}
