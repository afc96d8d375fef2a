import { describe, expect, it } from 'vitest';
import { alongside, outside, overlaps, pierced, strikes } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';

const sheet = (inner: string) =>
  sheetsOf(`<svg class="plot" viewBox="0 0 100 100">${inner}</svg>`)[0]!;

describe('what stands outside the frame is seen', () => {
  it.each([
    '<path class="grid" d="M10 50V-206"/>',
    '<path class="curve" d="M10 10h30l70 5"/>',
    '<g transform="translate(90 0)"><circle r="5" cx="8" cy="50"/></g>',
    '<g transform="translate(50 50) scale(2)"><rect x="10" y="0" width="20" height="2"/></g>',
    '<path class="turning" d="M90 20A30 30 0 0 1 90 80"/>',
    '<text x="80" y="50">clearance</text>',
    '<text x="20" y="50" text-anchor="end">clearance</text>',
    '<text x="50" y="5">clearance</text>',
    '<g clip-path="url(#f)"><clipPath id="f"><rect x="5" y="5" width="120" height="20"/></clipPath><path d="M10 10h3"/></g>',
  ])('%s', (inner) => {
    expect(outside(sheet(inner))).toHaveLength(1);
  });

  it('and what is cut off at a field, or is there for the finger alone, is not', () => {
    const inner =
      '<g clip-path="url(#f)"><clipPath id="f"><rect x="5" y="5" width="50" height="20"/></clipPath><path d="M10 10h300"/></g><circle class="handle-hit" cx="95" cy="95" r="28"/>';
    expect(outside(sheet(inner))).toEqual([]);
  });
});

describe('a word on another is seen', () => {
  it.each([
    ['<text x="10" y="50">deck</text><text x="30" y="54">crown</text>', 1],
    ['<text x="10" y="50">deck</text><text x="60" y="50">crown</text>', 0],
    ['<text x="10" y="50">deck</text><text x="10" y="64">crown</text>', 0],
  ])('%s', (inner, count) => {
    expect(overlaps(sheet(inner))).toHaveLength(count);
  });
});

describe('a line through a word is seen', () => {
  const word = '<text x="40" y="50">G</text>';
  it.each([
    [`<path class="dimension" d="M0 46H90"/>${word}`, 1],
    [`${word}<path class="curve" d="M30 30L60 60"/>`, 1],
    [`${word}<circle class="found-mark" cx="44" cy="46" r="4"/>`, 1],
    [`${word}<circle class="handle-dot" cx="44" cy="40" r="7"/>`, 1],
    [`<path class="dimension" d="M0 56H90"/>${word}`, 0],
    [
      `<path class="dimension" d="M0 46H90"/><rect class="part" x="30" y="30" width="30" height="30"/>${word}`,
      0,
    ],
    [
      `<path class="dimension" d="M0 46H90"/><rect class="part" x="44" y="30" width="30" height="30"/>${word}`,
      2,
    ],
    [`<path class="grid" d="M0 46H90"/>${word}`, 0],
    [
      `<g clip-path="url(#f)"><clipPath id="f"><rect x="0" y="0" width="30" height="90"/></clipPath><path class="curve" d="M0 46H90"/></g>${word}`,
      0,
    ],
  ])('%s', (inner, count) => {
    expect(strikes(sheet(inner))).toHaveLength(count);
  });
});

describe('a handle on a word is seen', () => {
  it.each([
    ['<text x="40" y="50">inlet</text><path class="handle-arrows" d="M50 40l-4 5h8z"/>', 1],
    [
      '<text class="tick-text" x="40" y="50">0</text><circle class="handle-dot" cx="44" cy="46" r="7"/>',
      1,
    ],
    ['<text x="40" y="50">inlet</text><path class="handle-arrows" d="M50 60l-4 5h8z"/>', 0],
  ])('%s', (inner, count) => {
    expect(pierced(sheet(inner))).toHaveLength(count);
  });
});

describe('a leader beside a line is seen', () => {
  const wire = '<path class="edge edge-thin" d="M50 10V90"/>';
  it.each([
    ['M52 80V40', 1],
    ['M54 80L52 40', 1],
    ['M60 80V40', 0],
    ['M90 80L52 40', 0],
    ['M52 80V70', 0],
  ])('%s', (path, count) => {
    expect(alongside(sheet(`${wire}<path class="leader" d="${path}"/>`))).toHaveLength(count);
  });
});
