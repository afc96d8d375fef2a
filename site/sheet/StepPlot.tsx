import { max, min } from 'd3-array';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { inputDigits } from '../../calculators/frame/text/format.ts';
import { toShown, units, type LengthDisplay } from '../../calculators/frame/text/units.ts';
import { Chart } from '../../calculators/picture/chart/chart.tsx';
import { Line, type Point } from '../../calculators/picture/chart/curve.tsx';
import { dayWords, type Round } from '../../calculators/sheet/log.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import { boxName, perOf, type Engine } from '../../calculators/sheet/model.ts';

interface Props {
  readonly id: StepId;
  readonly engine: Engine;
  readonly rounds: readonly Round[];
  readonly lengths: LengthDisplay;
}

const HEIGHT = 260;

/** What a step read at each cylinder, round after round in the order of the engine's clock. */
export function StepPlot({ id, engine, rounds, lengths }: Props) {
  const reading = steps[id].reading!;
  const unit = fieldUnit(reading, lengths);
  const last = rounds.at(-1)!.after;
  const lines = last.map((_, i) =>
    rounds.flatMap(({ entries, after }, round) =>
      entries.some(({ cylinder }) => cylinder === i + 1)
        ? [{ round: round + 1, value: toShown(after[i]!, unit) }]
        : [],
    ),
  );
  const values = lines.flat().map(({ value }) => value);
  const [low, high] = [min(values)!, max(values)!];
  const least = toShown(reading.step, unit);
  const room = Math.max((high - low) * 0.15, least);
  const show = (value: number): string => inputDigits(value, unit, reading.step);
  const days = rounds.map(({ entries }) => dayWords(entries.at(-1)!.on));
  const { label } = units[unit];
  return (
    <Chart
      id={`log-${id}`}
      height={HEIGHT}
      label={`${reading.label} by ${perOf(reading, engine).toLowerCase()}, in the order in which it was read. ${lines
        .map(
          (line, i) =>
            `${boxName(reading, i, engine)}: ${line.map(({ value }) => show(value)).join(', ')}`,
        )
        .join('. ')}.`}
      x={{
        domain: [0.8, rounds.length + 0.2],
        label: 'in the order in which it was read',
        ticks: Math.min(rounds.length, 6),
        format: (round) => (Number.isInteger(round) ? days[round - 1]! || `${String(round)}.` : ''),
      }}
      y={{
        domain: [low - room, high + room],
        label: label === '' ? reading.label : `${reading.label}, ${label}`,
      }}
      ends={lines.flatMap((line, i) =>
        line.length === 0 ? [] : [{ at: line.at(-1)!.value, words: boxName(reading, i, engine) }],
      )}
      marks={({ x, y }) =>
        lines.map((line, i) => {
          const points = line.map(({ round, value }): Point => [x(round), y(value)]);
          return (
            <g key={i}>
              <Line points={points} look="curve-thin" />
              {points.map(([across, down]) => (
                <circle key={across} class="found-mark" cx={across} cy={down} r={4} />
              ))}
            </g>
          );
        })
      }
    />
  );
}
