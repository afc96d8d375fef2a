import { memo } from '../../calculators/picture/redraw/memo.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';

interface Props {
  readonly radius: number;
}

const spoke = (angle: number, from: number, to: number): string => {
  const turn = (angle * Math.PI) / 180;
  const at = (r: number): string =>
    `${hundredth(r * Math.sin(turn))} ${hundredth(-r * Math.cos(turn))}`;
  return `M${at(from)}L${at(to)}`;
};

/**
 * The face of a disc that counts both ways. It turns clockwise, so that figures after its zero run
 * round it against the turning.
 */
function Face({ radius }: Props) {
  const marks = Array.from({ length: 180 }, (_, i) => i * 2);
  const long = (mark: number): number => (mark % 30 === 0 ? 11 : mark % 10 === 0 ? 8 : 4);
  return (
    <>
      <path
        class="tick"
        d={marks.map((mark) => spoke(-mark, radius - long(mark), radius)).join('')}
      />
      {Array.from({ length: 12 }, (_, i) => i * 30).map((mark) => {
        const turn = (-mark * Math.PI) / 180;
        return (
          <text
            key={mark}
            text-anchor="middle"
            dy="0.32em"
            transform={`translate(${hundredth((radius - 20) * Math.sin(turn))} ${hundredth(-(radius - 20) * Math.cos(turn))}) rotate(${-mark})`}
          >
            {mark > 180 ? 360 - mark : mark}
          </text>
        );
      })}
    </>
  );
}

export const DiscFace = memo(Face);
