import type { TargetedKeyboardEvent, TargetedMouseEvent } from 'preact';

/** A hole in the picture, in user units. */
export interface HoleSpot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Such as "2-1". */
  readonly name: string;
  /** Where no hole is made: its place is drawn with the line of an adjacent part (ISO 128-2). */
  readonly unmade?: boolean;
  /** Its name, place and drill, in words. */
  readonly words: string;
}

interface Label {
  readonly x: number;
  readonly y: number;
  /** What stands there in place of the name. */
  readonly words?: string;
}

interface Props {
  readonly spots: readonly HoleSpot[];
  readonly picked: number;
  /** Where the names stand for which there is room, by name. */
  readonly labels: ReadonlyMap<string, Label>;
  readonly width: number;
  readonly height: number;
  readonly idPrefix: string;
  readonly onPick: (index: number) => void;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

interface NameProps {
  readonly spot: HoleSpot;
  readonly at: Label | undefined;
}

const Name = ({ spot, at }: NameProps) =>
  at ? (
    <text class="on-screen" x={at.x} y={at.y}>
      {at.words ?? spot.name}
    </text>
  ) : null;

/** All holes as one list to pick from: by tap, the nearest; by keyboard, one after the other. */
export function HolePicker(props: Props) {
  const { spots, picked, labels, width, height, idPrefix, onPick } = props;
  const id = (index: number): string => `${idPrefix}spot-${spots[index]!.name}`;

  const tap = (event: TargetedMouseEvent<SVGGElement>): void => {
    const matrix = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (!matrix) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const distances = spots.map((spot) => Math.hypot(spot.x - x, spot.y - y));
    onPick(distances.indexOf(Math.min(...distances)));
  };
  const key = (event: TargetedKeyboardEvent<SVGGElement>): void => {
    const step = STEPS[event.key];
    const next =
      event.key === 'Home'
        ? 0
        : event.key === 'End'
          ? spots.length - 1
          : step === undefined
            ? undefined
            : (picked + step + spots.length) % spots.length;
    if (next === undefined) return;
    event.preventDefault();
    onPick(next);
  };

  return (
    <g
      class="holes"
      role="listbox"
      tabIndex={0}
      aria-label="Holes"
      aria-activedescendant={id(picked)}
      onClick={tap}
      onKeyDown={key}
    >
      <rect class="picker" width={width} height={height} />
      {spots.map((spot, i) => (
        <g
          key={spot.name}
          id={id(i)}
          role="option"
          aria-label={spot.words}
          aria-selected={i === picked ? 'true' : 'false'}
        >
          <circle
            class={i === picked ? 'picked' : spot.unmade ? 'drawn drawn-scrap' : 'drawn'}
            cx={spot.x}
            cy={spot.y}
            r={spot.radius}
          />
        </g>
      ))}
      <g aria-hidden="true">
        {spots.map((spot) => (
          <Name key={spot.name} spot={spot} at={labels.get(spot.name)} />
        ))}
      </g>
    </g>
  );
}
