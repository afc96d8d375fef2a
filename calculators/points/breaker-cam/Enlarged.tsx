import { hundredth } from '../../maths/numeric/steps.ts';

interface Props {
  /** Contacts apart, heel clear of the cam, and how far the heel stands above where it rests, mm. */
  readonly apart: number;
  readonly clear: number;
  readonly heelRise: number;
  /** Where the heel rests while the points are shut, mm above the low part of the cam. */
  readonly shutHeel: number;
  /** The most that anything here moves, mm. */
  readonly most: number;
  /** User units to the mm in the drawing below. */
  readonly scale: number;
  /** Middle of the sheet across. */
  readonly middle: number;
  readonly heelSaid: string;
  readonly contactsSaid: string;
}

const RADIUS = 44;
const UP = 50;
const OUT = 85;
/** Where the fixed contact and the low part of the cam stand, below the middle of their glass. */
const LOW = 31;
const TIMES = [32, 16, 8, 4, 2, 1] as const;

/** Heel against cam, and contact against contact, each in a glass that stands still. */
export function Enlarged(props: Props) {
  const { apart, clear, heelRise, shutHeel, most, scale, middle, heelSaid, contactsSaid } = props;
  const times = TIMES.find((each) => most * scale * each <= 2 * LOW) ?? 0.5;
  const enlarged = (mm: number): number => mm * scale * times;
  const heel = { x: middle - OUT, y: hundredth(UP + LOW - enlarged(shutHeel + heelRise)) };
  const cam = hundredth(UP + LOW - enlarged(shutHeel + heelRise - clear));
  const contacts = {
    x: middle + OUT,
    fixed: UP + LOW,
    face: hundredth(UP + LOW - enlarged(apart)),
  };
  return (
    <>
      <circle class="glass" cx={heel.x} cy={UP} r={RADIUS} />
      <path
        class="part part-moving heel-enlarged"
        d={`M${heel.x - 10} ${UP - 38}L${heel.x} ${heel.y}L${heel.x + 10} ${UP - 38}Z`}
      />
      <path class="bowl-wall cam-enlarged" d={`M${heel.x - 26} ${cam}h52`} />
      <circle class="glass" cx={contacts.x} cy={UP} r={RADIUS} />
      <path class="contact" d={`M${contacts.x} ${UP - 41}V${contacts.face}`} />
      <path class="contact contact-fixed" d={`M${contacts.x} ${UP + 41}V${contacts.fixed}`} />
      {(
        [
          [heel.x, 'heel and cam', heelSaid],
          [contacts.x, 'contacts', contactsSaid],
        ] as const
      ).map(([x, name, said]) => (
        <g key={name}>
          <text x={x} y={UP + RADIUS + 16} text-anchor="middle">
            {`${name} × ${String(times)}`}
          </text>
          <text class="dimension-text" x={x} y={UP + RADIUS + 32} text-anchor="middle">
            {said}
          </text>
        </g>
      ))}
    </>
  );
}
