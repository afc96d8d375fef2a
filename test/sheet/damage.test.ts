import fc from 'fast-check';
import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { checkSum } from '../../calculators/sheet/check-sum.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import {
  engineFragment,
  engineFromFragment,
  hasCheckSum,
  holdsEngine,
} from '../../calculators/sheet/link.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { anyEngine } from './engines.ts';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=';

describe('the check sum', () => {
  it('is CRC-32: 123456789 gives cbf43926, the check value published with its parameters', () => {
    // Recalled from memory: the check value by which tables of such sums name CRC-32 (ISO-HDLC).
    expect(checkSum('123456789')).toBe('cbf43926');
    expect(checkSum('')).toBe('00000000');
  });

  it('agrees with the zlib library for any text of plain letters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-ascii', maxLength: 300 }), (text) => {
        expect(Number.parseInt(checkSum(text), 16)).toBe(crc32(text));
      }),
    );
  });
});

/** Damage as it happens on the way: a letter changed, dropped, doubled, swapped with its neighbour, in the other case; or the end lost. */
const damages: readonly ((text: string, at: number, letter: string) => string)[] = [
  (text, at, letter) => text.slice(0, at) + letter + text.slice(at + 1),
  (text, at) => text.slice(0, at) + text.slice(at + 1),
  (text, at) => text.slice(0, at) + text[at]! + text.slice(at),
  (text, at) => text.slice(0, at) + (text[at + 1] ?? '') + text[at]! + text.slice(at + 2),
  (text, at) => {
    const letter = text[at]!;
    const other = letter === letter.toLowerCase() ? letter.toUpperCase() : letter.toLowerCase();
    return text.slice(0, at) + other + text.slice(at + 1);
  },
  (text, at) => text.slice(0, at),
];

describe('a damaged link', () => {
  it('is never taken with other content: 6,000 tries', { timeout: 120_000 }, async () => {
    const sent = { ...demoSheet(), unread: {} };
    const whole = await engineFragment(sent);
    let tried = 0;
    let same = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...damages),
        fc.nat(whole.length - 1),
        fc.constantFrom(...LETTERS),
        async (damage, at, letter) => {
          const link = damage(whole, at, letter);
          if (link === whole) {
            same += 1;
            return;
          }
          tried += 1;
          await expect(engineFromFragment(link), link).rejects.toThrow(SheetError);
        },
      ),
      { numRuns: 6000, seed: 20261126 },
    );
    expect(tried).toBeGreaterThan(5000);
    expect(tried + same).toBe(6000);
  });

  it('is never taken with other content, for any engine', { timeout: 60_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(
        anyEngine,
        fc.constantFrom(...damages),
        fc.nat(),
        fc.constantFrom(...LETTERS),
        async (engine, damage, place, letter) => {
          const whole = await engineFragment(engine);
          const link = damage(whole, place % whole.length, letter);
          if (link === whole) return;
          await expect(engineFromFragment(link)).rejects.toThrow(SheetError);
        },
      ),
      { numRuns: 300, seed: 20261126 },
    );
  });
});

/** What forums, mails and pages put into a link, at any place. */
const within = [
  ' ',
  '\n',
  '\r\n',
  '\t',
  '%0A',
  '%0D%0A',
  '%20',
  '%250A',
  '%25250A',
  '\u00AD',
  '\u200B',
  '\u200C',
  '\u2060',
  '\uFEFF',
  '%E2%80%8B',
  '%C2%AD',
  '\u00A0',
  '&shy;',
  '&nbsp;',
  '&#8203;',
  '&#x200B;',
  '=\n',
  '=\r\n',
  '%3D%0A',
  '\n> ',
  '\n>> ',
  '\u2028',
];
/** And what they leave after it. */
const behind = [
  '',
  '.',
  ',',
  ';',
  ':',
  '!',
  '?',
  ')',
  ').',
  ']',
  '>',
  '}',
  '"',
  '\u2019',
  '\u201D',
  '…',
  '*',
  '**',
  '_',
  '__',
  '/',
  ' ',
  '%20',
  '%29',
  '%22',
  '.%0A',
  '&amp;',
  '&amp;seen=1',
  '&seen=1',
  '%26seen%3D1',
  '?from=board',
  '&gt;',
  '\u3002',
  '|',
];

describe('a link that a page has handled', () => {
  it('is read all the same: 3,000 manglings', { timeout: 120_000 }, async () => {
    const sent = { ...demoSheet(), unread: {} };
    const links = [await engineFragment(sent), await engineFragment(sent, 'last')];
    const read = await Promise.all(links.map((link) => engineFromFragment(link)));
    const key = 'engine='.length;
    await fc.assert(
      fc.asyncProperty(
        fc.nat(1),
        fc.array(fc.tuple(fc.constantFrom(...within), fc.nat()), { maxLength: 12 }),
        fc.constantFrom(...behind),
        fc.constantFrom('engine=', 'engine%3D', ' engine=', 'engine=3D', '%0Aengine='),
        async (which, breaks, end, start) => {
          let link = links[which]!.slice(key);
          for (const [mark, place] of breaks) {
            // Never between the letters of a mark put in before it.
            const at = place % 2 === 0 ? link.length : 0;
            const room = /^[\w.-]*/.exec(link)![0].length;
            const spot = at === 0 ? place % (room + 1) : at;
            link = link.slice(0, spot) + mark + link.slice(spot);
          }
          expect(await engineFromFragment(start + link + end), start + link + end).toEqual(
            read[which],
          );
          expect(holdsEngine(start + link + end)).toBe(true);
          expect(hasCheckSum(start + link + end)).toBe(true);
        },
      ),
      { numRuns: 3000, seed: 20261127 },
    );
  });

  it(
    'is refused where a letter of it was changed as well: 1,000 tries',
    { timeout: 60_000 },
    async () => {
      const link = await engineFragment({ ...demoSheet(), unread: {} });
      await fc.assert(
        fc.asyncProperty(
          fc.constantFrom(...damages),
          fc.nat(link.length - 1),
          fc.constantFrom(...LETTERS),
          fc.constantFrom(...within),
          fc.constantFrom(...behind),
          async (damage, at, letter, mark, end) => {
            const changed = damage(link, at, letter);
            if (changed === link) return;
            const handled = `${changed.slice(0, 40)}${mark}${changed.slice(40)}${end}`;
            await expect(engineFromFragment(handled), handled).rejects.toThrow(SheetError);
          },
        ),
        { numRuns: 1000, seed: 20261127 },
      );
    },
  );

  it('of the older kind is read too', async () => {
    const plain = Buffer.from(writeDocument([demoSheet()])).toString('base64url');
    for (const mark of within) {
      for (const end of behind.filter((one) => !one.includes('_'))) {
        const link = `engine=0.${plain.slice(0, 80)}${mark}${plain.slice(80)}${end}`;
        expect(await engineFromFragment(link), link).toEqual(demoSheet());
      }
    }
  });
});

describe('a link of the older kind, without a check sum', () => {
  const plain = Buffer.from(writeDocument([demoSheet()])).toString('base64url');

  it('is still opened, and is known to be unchecked', async () => {
    const link = `engine=0.${plain}`;
    expect(await engineFromFragment(link)).toEqual(demoSheet());
    expect(hasCheckSum(link)).toBe(false);
    const stream = new Blob([writeDocument([demoSheet()])])
      .stream()
      .pipeThrough(new CompressionStream('deflate-raw'));
    const packed = Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url');
    expect(await engineFromFragment(`engine=1.${packed}`)).toEqual(demoSheet());
    expect(hasCheckSum(`engine=1.${packed}`)).toBe(false);
    expect(hasCheckSum(await engineFragment(demoSheet()))).toBe(true);
  });

  it('nested past any depth is refused in words', async () => {
    const deep = `${'['.repeat(10_000)}${']'.repeat(10_000)}`;
    const documents = [
      deep,
      `{"format":"engine-sheet","version":2,"engines":${deep}}`,
      `{"format":"engine-sheet","version":2,"engines":[{"id":${deep}}]}`,
      writeDocument([demoSheet()]).replace('"invented": true', `"invented": ${deep}`),
    ];
    for (const text of documents) {
      const link = `engine=0.${Buffer.from(text).toString('base64url')}`;
      await expect(engineFromFragment(link)).rejects.toThrow(SheetError);
    }
  });
});

it('an engine that holds more than a link can carry is refused in words', async () => {
  const engine = {
    ...demoSheet(),
    kept: Array.from({ length: 60 }, (_, i) => ({
      label: 'a',
      text: 'b',
      calculator: 'c',
      query: Array.from({ length: 2000 }, (_unused, j) =>
        LETTERS.charAt((i * 7919 + j * j * 31 + ((i * j) % 61) * 17) % 62),
      ).join(''),
    })),
  };
  const made = await engineFragment(engine).catch((error: unknown) => error);
  if (typeof made === 'string') expect(await engineFromFragment(made)).toEqual(engine);
  else expect(made).toBeInstanceOf(SheetError);
});
