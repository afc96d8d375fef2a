import { stages, type Stage } from '../../calculators/frame/stages.ts';

interface Placed {
  readonly data: { readonly stage: Stage; readonly order: number };
}

const places = Object.keys(stages);

/** The order of the job: by stage, then by place within it. */
export const inOrder = (a: Placed, b: Placed): number =>
  places.indexOf(a.data.stage) - places.indexOf(b.data.stage) || a.data.order - b.data.order;
