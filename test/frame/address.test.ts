import { describe, expect, it } from 'vitest';
import {
  addressText,
  fromQuery,
  originsIn,
  ownIn,
  toQuery,
  withOwn,
} from '../../calculators/frame/address.ts';
import { parse } from '../../calculators/frame/field/parse.ts';
import type { Origin } from '../../calculators/frame/types.ts';
import { fieldNamed, run } from './sample.ts';

const partly = (...given: string[]): Record<string, Origin> =>
  Object.fromEntries(
    ['shape', 'width', 'depth', 'count', 'gap-1', 'gap-2', 'hole-2', 'sizes'].map((key) => [
      key,
      given.includes(key) ? 'yours' : 'example',
    ]),
  );
const whole = {
  shape: 'round',
  width: '50',
  depth: '30',
  count: '2',
  'gap-1': '0.4',
  'gap-2': '0.5',
  'hole-2': '9',
  sizes: '1 2.5',
};

describe('what an address holds', () => {
  it('is, untouched, every default with its unit, and that nobody gave them', () => {
    expect(toQuery(run())).toBe(
      'example=all&shape=round&width=50mm&count=2&gap-1=0.4mm&gap-2=0.5mm&hole-2=9mm&sizes=1%202.5' +
        '&width-error=0.1mm&gap-error=0.02mm',
    );
  });

  it('keeps what was typed, and an empty field that was emptied', () => {
    expect(toQuery(run({ width: ' 2 in ', depth: '' }))).toMatch(
      /&shape=round&width=2%20in&depth=&/,
    );
    expect(toQuery(run({ width: ' 60 ', depth: ' 7mm ' }))).toMatch(/&width=60mm&depth=7mm&/);
  });

  it('keeps a list as it was typed', () => {
    expect(toQuery(run({ sizes: '1;2 in' }))).toContain('&sizes=1%3B2%20in&');
  });

  it('cut short at any letter, never calls the sender’s what nobody gave', () => {
    const given = ['width', 'gap-1', 'sizes'];
    const query = toQuery(run(whole, { origins: partly(...given) }));
    for (let end = 0; end < query.length; end += 1) {
      const origins = originsIn(query.slice(0, end));
      const sent = Object.keys(whole).filter((key) => origins[key] === 'link');
      expect(sent.filter((key) => ![...given, 'count'].includes(key))).toEqual([]);
    }
  });

  it('names those figures that nobody gave the shorter way', () => {
    const query = (...given: string[]) => toQuery(run(whole, { origins: partly(...given) }));
    expect(query('width')).toMatch(/^example=all,-width,-count&/);
    expect(query('depth', 'gap-1', 'sizes')).toMatch(/^example=shape,width,gap-2,hole&/);
    expect(query('depth', 'gap-1', 'gap-2', 'hole-2')).toMatch(/^example=shape,width,sizes&/);
    expect(query('gap-1', 'shape')).toMatch(/^example=all,-shape,-count,-gap-1&/);
    expect(query(...Object.keys(whole))).toMatch(/&gap-error=0\.02mm$/);
    expect(query()).toMatch(/^example=all&/);
    // A neutral setting is nobody's to give: it is no example's either.
    expect(query(...Object.keys(whole).filter((key) => key !== 'count'))).not.toContain('example');
  });

  it('leaves commas, slashes and colons to be read, and the rest to the standard', () => {
    const query = toQuery(run({ width: '3/4 a:b,c&d=é' }));
    expect(query).toContain('&width=3/4%20a:b,c%26d%3D%C3%A9&');
    expect(toQuery(run({ width: 'a\uD800b' }))).toContain('&width=a%EF%BF%BDb&');
  });

  it('has the value that still stands where a text cannot be read', () => {
    const held = {
      width: { value: 60, origin: 'yours' },
      depth: { value: undefined, origin: 'yours' },
      sizes: { value: [3, 4.5], origin: 'yours' },
      shape: { value: 'square', origin: 'yours' },
    } as const;
    const state = run({ width: 'x', depth: 'x', sizes: 'x', shape: 'x' }, { held });
    const text = (key: string) => addressText(fieldNamed(state, key)!);
    expect(['width', 'depth', 'sizes', 'shape'].map(text)).toEqual(['60mm', '', '3 4.5', 'square']);
  });
});

describe('what is read of an address', () => {
  it('is each text by its key, the last one where there are two', () => {
    expect(fromQuery('?width=2%20in&depth=&width=3+in&example=all')).toEqual({
      width: '3 in',
      depth: '',
    });
  });

  it('is cut where it is too long for a figure, a little beyond the longest that is read', () => {
    const texts = fromQuery(`width=${'1'.repeat(2000)}&${'k'.repeat(2000)}=1`);
    expect(texts['width']).toHaveLength(1002);
    expect(Object.keys(texts)[1]).toHaveLength(1000);
    const names = Array.from({ length: 400 }, (_, i) => `gap-${String(i)}`).join();
    const long = originsIn(`gap-399=1&width=1&example=${names}`);
    expect(long).toEqual({ 'gap-399': 'example', width: 'link' });
  });

  it('is the link’s, but for what it calls the example’s', () => {
    const query = 'width=1&gap-1=2&gap-2=3&gap-10=4';
    const of = (example: string) => Object.values(originsIn(`${query}${example}`));
    const [link, example] = ['link', 'example'];
    expect(of('')).toEqual([link, link, link, link]);
    expect(of('&example=width')).toEqual([example, link, link, link]);
    expect(of('&example=gap')).toEqual([link, example, example, example]);
    expect(of('&example=gap-2')).toEqual([link, link, example, link]);
    expect(of('&example=all')).toEqual([example, example, example, example]);
    expect(of('&example=all,-width')).toEqual([link, example, example, example]);
    expect(of('&example=all,-gap')).toEqual([example, link, link, link]);
    expect(of('&example=all,-gap-10')).toEqual([example, example, example, link]);
    expect(of('&example=-width')).toEqual([link, link, link, link]);
    // As a phone or a mail may have altered it.
    for (const altered of [
      '&Example=all,-width',
      '&example=all; -width',
      '&EXAMPLE=All,%20-Width',
    ]) {
      expect(of(altered), altered).toEqual([link, example, example, example]);
    }
  });
});

describe('a link that a forum has handled', () => {
  const whole = { stroke: '51mm', rod: '104mm' };

  it.each([
    ['as a page writes it', 'stroke=51mm&amp;rod=104mm'],
    ['as a page of old writes it', 'stroke=51mm&AMP;rod=104mm'],
    ['as a page writes what it copied from another', 'stroke=51mm&amp;amp;rod=104mm'],
    ['at the end of a sentence', 'stroke=51mm&rod=104mm.'],
    ['within brackets', 'stroke=51mm&rod=104mm)'],
    ['within brackets at the end of a question', 'stroke=51mm&rod=104mm)?'],
    ['within quotation marks', 'stroke=51mm&rod=104mm%E2%80%9D'],
    ['within quotation marks at the end of a sentence', 'stroke=51mm&rod=104mm.%22'],
    ['with a comma behind it', 'stroke=51mm&rod=104mm,'],
    ['broken over two lines', 'stroke=51mm&%0D%0Arod=104mm'],
    ['broken by a mark that is not seen', 'stroke=51%E2%80%8Bmm&r%C2%ADod=104mm'],
    ['with a blank at the break', 'stroke=51mm&%20rod=104mm'],
  ])('%s', (_, query) => {
    expect(fromQuery(query)).toEqual(whole);
  });

  it('keeps the mark of inches and of minutes', () => {
    expect(fromQuery('rod=4.25%22')).toEqual({ rod: '4.25"' });
    expect(fromQuery('angle=24%C2%B030%E2%80%99')).toEqual({ angle: '24°30’' });
  });

  it('keeps the brackets of a sum, and tells whose the figures are', () => {
    expect(fromQuery('rod=104mm&stroke=(50%2B52)/2)')).toEqual({
      rod: '104mm',
      stroke: '(50+52)/2',
    });
    expect(fromQuery('rod=104mm&stroke=2*(50-24.5)')).toMatchObject({ stroke: '2*(50-24.5)' });
    expect(originsIn('stroke=51mm&amp;rod=104mm&amp;example=rod.')).toEqual({
      stroke: 'link',
      rod: 'example',
    });
  });
});

describe('a link that was written for an address more than once', () => {
  it.each([
    ['its figures', 'travel=.125%2520in&marks=2,%25205,%25208&example=all%252C-travel'],
    [
      'its figures, twice more',
      'travel=.125%252520in&marks=2,%2525205,%2525208&example=all%25252C-travel',
    ],
    [
      'the whole of it',
      'travel%253D.125%252520in%2526marks%253D2%252C%2525205%252C%2525208%2526example%253Dall%25252C-travel',
    ],
  ])('is read: %s', (_, query) => {
    expect(fromQuery(query)).toEqual({ travel: '.125 in', marks: '2, 5, 8' });
    expect(originsIn(query)).toEqual({ travel: 'link', marks: 'example' });
  });

  it.each(['5%', '5 %', '50% 20%', '±5%', '10%,20%', '5%-10%', '5%z0', '%E0%A4%A', '100%'])(
    'is not seen in %s',
    (text) => {
      expect(fromQuery(`a=${encodeURIComponent(text)}&b=1`)).toEqual({ a: text, b: '1' });
    },
  );
});

describe('what an entry of the history remembers', () => {
  it('gives the reader’s own and the sheet’s figures back, which an address calls a link’s', () => {
    const texts = { width: '50', depth: '30', 'gap-1': '0.4' };
    const origins = { width: 'yours', depth: 'sheet', 'gap-1': 'link' } as const;
    const state = run(texts, { origins });
    const query = toQuery(state);
    expect(originsIn(query)).toMatchObject({ width: 'link', depth: 'link' });
    expect(withOwn(originsIn(query), ownIn(state))).toMatchObject(origins);
  });

  it('makes nothing of what it does not know, and no figure of the example the reader’s', () => {
    const origins = { width: 'link', depth: 'example' } as const;
    for (const odd of [null, undefined, 'yours', 5, [], { width: 'mine' }, { other: 'yours' }]) {
      expect(withOwn(origins, odd)).toEqual(origins);
    }
    expect(withOwn(origins, { depth: 'yours' })).toEqual(origins);
  });
});

describe('an address copied from where it was shown short', () => {
  it.each(['…', '...'])('with %s behind a figure gives that figure to nobody', (end) => {
    expect(fromQuery(`?width=60mm&depth=2.5${end}`)).toEqual({ width: '60mm', depth: '2.5…' });
    const { depth } = fromQuery(`?depth=2.5${end}`);
    const read = parse(depth!, 'mm');
    expect(read.kind === 'bad' && read.sentence).toMatch(
      /^“2\.5…” is cut off, as a long link is where it is shown short: open the link itself\./,
    );
  });

  it('behind a unit the marks are of the sentence', () => {
    expect(fromQuery('?width=60mm...')).toEqual({ width: '60mm' });
    expect(fromQuery('?width=60.')).toEqual({ width: '60' });
  });
});
