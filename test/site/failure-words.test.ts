import { afterEach, describe, expect, it, vi } from 'vitest';
import { MathsError } from '../../calculators/maths/numeric/errors.ts';
import { didNotCome, failureWords } from '../../site/opening/load-failure.ts';

/** As browsers were seen to say it (Chromium, Firefox, WebKit), and the bundler of a style sheet. */
const GONE = [
  'Failed to fetch dynamically imported module: https://example.org/a.js',
  'error loading dynamically imported module: https://example.org/a.js',
  'Importing a module script failed.',
  'Unable to preload CSS for /_astro/a.css',
];

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a part of the site that did not come', () => {
  it.each(GONE)('is laid to the connection: %s', (message) => {
    const reported = vi.fn();
    vi.stubGlobal('reportError', reported);
    expect(didNotCome(new TypeError(message))).toBe(true);
    expect(failureWords(new TypeError(message))).toMatch(/did not come\. Check the connection/);
    expect(reported).not.toHaveBeenCalled();
  });
});

it('a figure that allows no file is told in the sentence of the maths, and is no fault of the site', () => {
  const reported = vi.fn();
  vi.stubGlobal('reportError', reported);
  const sentence = 'A disc needs a hole smaller than itself.';
  expect(failureWords(new MathsError('no-disc', ['inside'], sentence))).toBe(sentence);
  expect(reported).not.toHaveBeenCalled();
});

it('what else goes wrong is the site’s fault, and is reported', () => {
  const reported = vi.fn();
  vi.stubGlobal('reportError', reported);
  const fault = new TypeError('x is not a function');
  expect(didNotCome(fault)).toBe(false);
  expect(failureWords(fault)).toMatch(/^The fault is the site’s, not yours/);
  expect(reported).toHaveBeenCalledExactlyOnceWith(fault);
});
