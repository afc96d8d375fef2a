import type { PictureProps } from '../../frame/types.ts';
import { Circuit } from './Circuit.tsx';
import type { Inputs } from './compute.ts';
import type { results } from './results.ts';
import { SpeedPlot } from './SpeedPlot.tsx';

/** The whole circuit with its volts and amperes, and below it the current against the speed. */
export function Picture(props: PictureProps<Inputs, typeof results>) {
  return (
    <>
      <Circuit values={props.values} computed={props.results} lengths={props.lengths} />
      <SpeedPlot {...props} />
    </>
  );
}
