import type { FieldSpec } from '../frame/field/fields.ts';
import type { UnitName } from '../frame/text/units.ts';
import { boxAt, momentWords, type Moment, type NumberBox } from './box-places.ts';
import { figureSpec, isFigureKey, type FigureKey } from './figures.ts';
import { boxTitle } from './firing-order.ts';
import { strokeOf } from './geometry.ts';
import type { Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';
import { widest } from './widest.ts';

/** The box of a reading as a field: it may be left empty. */
export function readingSpec(
  engine: Engine,
  step: StepId,
  index: number,
  moment: Moment,
): FieldSpec {
  const reading = steps[step].reading!;
  const { unit, min, max, why, step: size, whole, stamped } = reading;
  return {
    label: `${boxTitle(reading, index, engine)}, ${reading.label.toLowerCase()} ${momentWords[moment]}`,
    help: '',
    unit,
    min,
    max,
    why,
    step: size,
    optional: true,
    ...(whole === undefined ? {} : { whole }),
    ...(stamped === undefined ? {} : { stamped }),
  };
}

/** Whether a place holds a place of the piston, which its stroke bounds. */
export const isTravel = (
  box: { kind: 'figure'; key: FigureKey } | { kind: 'reading'; step: StepId },
): boolean =>
  box.kind === 'figure' ? box.key === 'target' : steps[box.step].reading?.judging === 'timing';

/** The unit of what is typed into a field of the sheet, by the field's name; none where it takes words. */
export function unitTypedAt(name: string): UnitName | undefined {
  if (isFigureKey(name)) return figureSpec(name).unit;
  if (name === 'log:hours') return 'h';
  const box = boxAt(name);
  return box?.kind === 'reading' ? steps[box.step].reading!.unit : undefined;
}

/** The box as a field of this engine: the piston goes no further than the sheet's stroke. */
export function specOf(engine: Engine, box: NumberBox): FieldSpec {
  const spec =
    box.kind === 'figure'
      ? figureSpec(box.key)
      : readingSpec(engine, box.step, box.index, box.moment);
  const { cylinders } = engine.figures;
  const isOfCylinders = box.kind === 'figure' && (box.key === 'sets' || box.key === 'carburettors');
  if (isOfCylinders && cylinders !== undefined) {
    return {
      ...spec,
      max: cylinders,
      why: `by the sheet it has ${cylinders === 1 ? 'one cylinder' : `${String(cylinders)} cylinders`}`,
    };
  }
  const [limit, why] = (box.kind === 'figure' ? widest[box.key] : undefined) ?? [];
  if (limit !== undefined && why !== undefined) return { ...spec, max: limit, why };
  const most = isTravel(box) ? strokeOf(engine) : undefined;
  if (most === undefined || most >= spec.max) return spec;
  return {
    ...spec,
    min: Math.max(spec.min, -most),
    max: most,
    why: 'by the stroke in the sheet the piston goes no further',
  };
}
