import type { Rolldown } from 'vite';

/** A file of script, and the folders of the project, or packages, whose code travels in it. */
interface ScriptFile {
  readonly name: string;
  /** Each ends with a slash, so that a module is placed by the folder it lies in. */
  readonly from: readonly (`${string}/` | `${string}.ts`)[];
  /** How many of the pages' starting points must use a module before it goes there. */
  readonly sharedBy: number;
}

/**
 * Which script goes into which file, the first that fits. A file costs a request and half a kilobyte
 * of headers on a phone, and compresses worse alone, so what most pages need travels together. A
 * module brings what it imports along, unless an earlier file has it.
 */
export const plan: readonly ScriptFile[] = [
  {
    // What every page has, and what decides whether anything more is to be fetched.
    name: 'start',
    from: ['site/layouts/', 'site/opening/'],
    sharedBy: 1,
  },
  {
    // Shared by the calculators' pages, the engine sheet and the practice bench.
    name: 'base',
    from: [
      'node_modules/preact/',
      'calculators/demo/',
      'calculators/frame/field/',
      'calculators/frame/text/',
      'calculators/maths/limits/',
      'calculators/maths/numeric/',
      'calculators/maths/units/',
      'calculators/picture/redraw/',
      'site/browser/',
    ],
    sharedBy: 2,
  },
  {
    // Shared by a calculator's page and a figure of an article, and needed by few other pages.
    name: 'live',
    from: [
      'calculators/frame/',
      'calculators/picture/chart/',
      'calculators/picture/common/',
      'site/calculator/',
      'site/fields/',
      'site/waking/',
    ],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that know where the piston is, and fire there.
    name: 'crank',
    from: [
      'calculators/maths/crank/',
      'calculators/maths/plate/plate-setting.ts',
      'calculators/position/',
    ],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that draw what is made at true scale.
    name: 'drawing',
    from: ['calculators/drawing/'],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that know the barrel.
    name: 'barrel',
    from: ['calculators/maths/cylinder/', 'calculators/geometry/'],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that know the cam.
    name: 'cam',
    from: ['calculators/maths/ignition/', 'calculators/points/'],
    sharedBy: 2,
  },
];

/** Whether a module of the bundle is among those that a place names. */
export const liesIn = (module: string, place: string): boolean => module.includes(`/${place}`);

export const scriptFiles: Rolldown.RolldownOptions = {
  output: {
    // Every file names those it fetches: a letter less of each, and still one chance in 10¹² of a clash.
    chunkFileNames: '_astro/[name].[hash:7].js',
    codeSplitting: {
      groups: plan.map(({ name, from, sharedBy }, index) => ({
        name,
        test: (id: string) => from.some((place) => liesIn(id, place)),
        minShareCount: sharedBy,
        priority: plan.length - index,
      })),
    },
  },
};
