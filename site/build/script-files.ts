import type { Rolldown } from 'vite';

/** What decides whether anything more is to be fetched. */
const start = /preload-helper|offline\/kept-work|typed-before|site\/waiting/;
/** Shared by the calculators' page and the engine sheet. */
const base =
  /node_modules\/preact\/|calculators\/(?:frame\/|engine-inputs|attempt|picture\/ste(?:ps|ady))|site\/calculator\/(?!mount|wake|typed-before|Live|More|Share|Send|Downloads|picture-file)|maths\/(?:errors|rounding|units|standard|uncertainty|find-root|slider-crank|rim-arc|within)/;
/** Shared by the calculators' pictures. */
const marks = /calculators\/picture\/|node_modules\/(?:d3-|internmap)/;
/** Shared by the calculators that know the barrel. */
const barrel =
  /maths\/(?:port-|cylinder-volume|compression|integrate)|calculators\/(?:barrel-inputs|disc-inputs|other-cylinders|remembered)/;
/** Shared by the calculators that know the cam. */
const cam = /maths\/breaker-cam|calculators\/cam-inputs/;

/**
 * Which script goes into which file. A file costs a request and half a kilobyte of headers on a
 * phone, and compresses worse alone, so what most pages need travels together.
 */
export const scriptFiles: Rolldown.RolldownOptions = {
  output: {
    // Every file names those it fetches: two letters less of each, and still one chance in 10¹⁰ of a clash.
    chunkFileNames: '_astro/[name].[hash:6].js',
    codeSplitting: {
      groups: [
        { name: 'start', test: start, priority: 4 },
        { name: 'base', test: base, minShareCount: 2, priority: 3 },
        { name: 'marks', test: marks, minShareCount: 4, priority: 2 },
        { name: 'barrel', test: barrel, minShareCount: 2, priority: 1 },
        { name: 'cam', test: cam, minShareCount: 2 },
      ],
    },
  },
};
