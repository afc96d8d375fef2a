import type { Rolldown } from 'vite';

/** A file of script, and the folders and files of the project whose code travels in it. */
interface ScriptFile {
  readonly name: string;
  readonly from: readonly string[];
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
    from: [
      'site/layouts/Page',
      'preload-helper',
      'site/offline/kept-work',
      'site/browser/typed-before',
      'site/browser/answering',
      'site/browser/load-failure',
      'site/browser/preferences',
      'site/browser/keeps-sheet',
      'site/figures/wanted',
      'site/waking/signs',
    ],
    sharedBy: 1,
  },
  {
    // Shared by the calculators' pages, the engine sheet and the practice bench.
    name: 'base',
    from: [
      'node_modules/preact/',
      'calculators/frame/fields',
      'calculators/frame/format',
      'calculators/frame/prose',
      'calculators/frame/sentence',
      'calculators/picture/memo',
      'calculators/position/engine-inputs',
      'calculators/maths/numeric/find-root',
      'calculators/maths/numeric/steps',
      'calculators/maths/numeric/within',
      'calculators/maths/units/',
      'calculators/maths/crank/slider-crank',
      'calculators/maths/crank/rim-arc',
      'site/fields/FigureInput',
      'site/fields/LengthsChoice',
      'site/fields/ListInput',
      'site/browser/CopyState',
      'site/browser/Spoken',
      'site/browser/hydrate',
      'site/browser/measures',
      'site/browser/one-line',
      'site/browser/save',
      'site/browser/site-address',
    ],
    sharedBy: 2,
  },
  {
    // Shared by a calculator's page and a figure of an article, and needed by no other page.
    name: 'live',
    from: [
      'calculators/frame/',
      'calculators/maths/numeric/uncertainty',
      'calculators/picture/axis',
      'calculators/picture/chart',
      'calculators/picture/curve',
      'calculators/picture/field',
      'calculators/picture/handle',
      'calculators/picture/key',
      'site/calculator/',
      'site/fields/',
      'site/waking/until-touched',
      'site/waking/when-touched',
    ],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that know the barrel.
    name: 'barrel',
    from: [
      'calculators/maths/cylinder/',
      'calculators/maths/numeric/integrate',
      'calculators/picture/ports',
      'calculators/geometry/',
    ],
    sharedBy: 2,
  },
  {
    // Shared by the calculators that know the cam.
    name: 'cam',
    from: [
      'calculators/maths/ignition/breaker-cam',
      'calculators/points/cam-inputs',
      'calculators/points/coil-inputs',
    ],
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
