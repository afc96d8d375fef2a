import fc from 'fast-check';
import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { checkSum } from '../../calculators/sheet/check-sum.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { engineFragment, engineFromFragment, hasCheckSum } from '../../calculators/sheet/link.ts';
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
