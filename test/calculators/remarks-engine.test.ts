import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { said, verdicts } from './said.ts';
import { reading, whole } from './states.ts';

describe('compression', () => {
  // A crown 0.4 mm below the deck under a gasket of 1 mm stands 1.4 mm clear.
  const head = {
    deck: '0.4',
    gasket: '1',
    skim: '0',
    'skim-face': 'barrel',
    'wanted-ratio': '7.5',
  };
  const of = (texts: Record<string, string>) => said('compression', { ...head, ...texts });

  it('crown and head that meet, now or by a change that is asked about', () => {
    const now = /the crown meets the head before the top/;
    const after = /After the change asked about, crown and head would meet/;
    expect(of({})).not.toMatch(/meets?\b/);
    expect(of({ deck: '-1' })).toMatch(now);
    expect(of({ deck: '-0.9' })).not.toMatch(now);
    expect(of({ skim: '1.5' })).toMatch(after);
    expect(of({ skim: '1.3' })).not.toMatch(after);
    // What meets already is not said to meet after a change.
    expect(of({ deck: '-2', skim: '0.2' })).not.toMatch(after);
    const wanted = /Skimming for the ratio wanted would let crown and head meet/;
    expect(of({ 'wanted-ratio': '15' })).toMatch(wanted);
    expect(of({ skim: '1.5' })).not.toMatch(wanted);
  });

  it('what the solder says beside the heights, and what a base gasket moves', () => {
    expect(of({ 'squish-from': 'solder', solder: '0.9' })).toContain(
      'Deck and gasket add up to 1.40 mm; the solder says 0.90 mm.',
    );
    expect(of({ 'base-gasket-change': '0.2' })).toMatch(/A base gasket moves the whole barrel/);
    expect(of({})).not.toMatch(/solder says|base gasket/);
  });
});

describe('piston clearance', () => {
  const cold = {
    ...{ bore: '50', piston: '49.94', 'measured-at': '20', least: '1', most: '1.5' },
    ...{ 'bore-expansion': '11.4', 'bore-temperature': '110', 'piston-expansion': '20' },
    ...{ 'piston-temperature': '120', 'ring-expansion': '11.4', 'ring-temperature': '150' },
    ...{ 'bore-error': '0.005', 'piston-error': '0.005', 'ring-gap': '0.2', 'wear-limit': '0.05' },
    ...{ standard: '50', 'oversize-step': '0.25', 'clean-up': '0.05', levels: '3' },
    ...{ 'along-1': '50', 'along-2': '50', 'along-3': '50' },
    ...{ 'across-1': '50', 'across-2': '50', 'across-3': '50' },
  };
  const of = (texts: Record<string, string>) => said('piston-clearance', { ...cold, ...texts });
  const UNSURE = 'The readings are no surer than that';

  // 0.06 mm of 50 are 1.2 thousandths, 0.04 mm 0.8, 0.1 mm 2; two readings ± 0.005 mm, 0.14 thousandths.
  it('the fit, on either side, and what the readings cannot tell', () => {
    expect(of({})).toMatch(/^Pass: within 1\.0 to 1\.5‰\. If you must err, err to the wide side/m);
    expect(of({ piston: '49.96' })).toMatch(
      /^Fail: tight against 1\.0 to 1\.5‰\. Hone the bore 0\.010 mm larger/m,
    );
    expect(of({ piston: '49.9' })).toMatch(/^Fail: wide against 1\.0 to 1\.5‰/m);
    expect(of({ piston: '50.02' })).toMatch(/^The piston is larger than the bore/m);
    const fit = (piston: string): string => of({ piston }).split('\n')[0]!;
    expect(fit('49.9375')).not.toContain(UNSURE);
    expect(fit('49.945')).toContain(UNSURE);
    expect(fit('49.9275')).toContain(UNSURE);
  });

  // The bore grows to 50.0513 mm and the piston to 49.9399 mm; at 250 °C to 50.1697 mm.
  it('what is left hot', () => {
    expect(of({})).toMatch(/^0\.011 mm is left hot\./m);
    expect(of({ 'piston-temperature': '250' })).toMatch(
      /^Fail: nothing is left hot; they would jam by 0\.118 mm\./m,
    );
  });

  it('which temperature nobody gave', () => {
    const without = (...keys: string[]): string => {
      const calculator = calculatorBySlug('piston-clearance');
      const all = whole(evaluate(calculator, cold, reading));
      const texts = Object.fromEntries(Object.entries(all).filter(([key]) => !keys.includes(key)));
      return remarksOf(calculator, evaluate(calculator, texts, reading)).join('\n');
    };
    expect(without()).not.toMatch(/assumed here/);
    expect(without('bore-temperature')).toContain('The temperature of the bore is assumed here.');
    expect(without('piston-temperature')).toContain(
      'The temperature of the piston is assumed here.',
    );
    expect(without('bore-temperature', 'piston-temperature')).toContain(
      'The temperatures of bore and piston are assumed here.',
    );
  });

  // 0.3 to 0.5 per cent of 50 mm are 0.15 to 0.25 mm. 140° above the bore a ring grows round by 0.25 mm.
  it('the ring, narrow, wide, and meeting hot', () => {
    expect(of({})).toMatch(/The ring gap is usual/);
    expect(of({ 'ring-gap': '0.14' })).toMatch(/The ring gap is narrow/);
    expect(of({ 'ring-gap': '0.26' })).toMatch(/The ring gap is wide/);
    expect(of({ 'ring-temperature': '250' })).toMatch(/^Fail: the ring’s ends would meet hot/m);
  });

  const worn = (along: string, across: string, more: Record<string, string> = {}) =>
    of({ 'along-1': along, 'across-1': across, 'across-2': across, 'across-3': across, ...more });

  it('the wear, by what is the larger, and the oversize that takes it away', () => {
    expect(of({})).toMatch(/^Pass: taper and ovality are within 0\.05 mm/m);
    // Alike at all heights: no taper, and 0.06 mm from one way to the other.
    const oval = { 'along-2': '50', 'along-3': '50' };
    expect(worn('50', '50.06', oval)).toMatch(
      /^Fail: the ovality is over 0\.05 mm; no ring seals in it for long\.[^]*^The next oversize that takes taper and ovality away is 0\.25 mm over\.$/m,
    );
    expect(of({ 'along-1': '50.06', 'across-1': '50.06' })).toMatch(/^Fail: the taper is over/m);
    // A bore that is round and straight wants no oversize.
    expect(of({})).not.toMatch(/oversize that takes|Honing within/);
    expect(worn('50', '50.06', { ...oval, standard: '49' })).toMatch(
      /is 1\.25 mm over\. That is much: ask the maker/,
    );
    expect(worn('50', '50.06', { ...oval, standard: '50.25' })).toMatch(
      /Honing within the standard size takes taper and ovality away/,
    );
  });

  it('a reading smaller than the bore is told', () => {
    expect(of({ bore: '50.02' })).toMatch(/^One reading is 0\.020 mm smaller than the bore above/m);
    expect(of({})).not.toMatch(/smaller than the bore/);
  });
});

describe('port timing', () => {
  const wall = {
    ...{ stroke: '51', deck: '0.4', skirt: '58', ports: '2', 'port-1': '32.5', 'height-1': '18' },
    ...{ 'port-2': '41', 'height-2': '10', by: '0', offset: '0' },
  };
  const of = (texts: Record<string, string>) => said('port-timing', { ...wall, ...texts });

  it('ports that never open fully, or open where they must not', () => {
    expect(of({})).not.toMatch(/covered|opens into|before the exhaust|offset/);
    // At the bottom the crown stands 51.4 mm down, at the top the skirt 40.4 mm.
    expect(of({ 'height-2': '11' })).toContain('the crown leaves 0.6 mm of the port covered');
    expect(of({ skirt: '40' })).toContain(
      'At the top the skirt ends 10.1 mm above the exhaust’s bottom edge',
    );
    expect(of({ 'port-1': '41', 'height-1': '10' })).toMatch(
      /The transfer opens before the exhaust, or with it/,
    );
    expect(of({ offset: '1' })).toMatch(/not timed symmetrically about bottom dead centre/);
  });

  it('a change says what it does to the rest', () => {
    expect(of({})).not.toMatch(/“After the change”/);
    expect(of({ change: 'barrel', by: '0.5' })).toMatch(
      /barrel raised by 0\.50 mm\. The squish clearance grows by just as much: prove it again/,
    );
    expect(of({ change: 'barrel', by: '-0.5' })).toMatch(
      /The squish clearance shrinks by just as much, and the piston may strike the head: prove/,
    );
    expect(of({ change: 'exhaust', by: '0.5' })).toMatch(/A higher exhaust traps less/);
    expect(of({ change: 'transfers', by: '0.5' })).toMatch(/transfers cut higher by 0\.50 mm\.$/m);
  });
});

describe('degree disc', () => {
  const of = (texts: Record<string, string>) =>
    said('degree-disc', {
      outside: '180',
      paper: 'a4',
      'bar-across': '100',
      'bar-up': '50',
      ...texts,
    });

  // A sheet of A4 is 210 mm wide; a degree at the edge of 50 mm is π × 50 / 360 = 0.436 mm.
  it('goes on its paper, and can be read', () => {
    expect(of({})).not.toMatch(/is larger than|run together|[Pp]rint(?:er)? (?:is|stretched)/);
    expect(of({ outside: '250' })).toMatch(/^The disc is larger than A4: .*several sheets/m);
    expect(of({ outside: '50' })).toMatch(/a degree is only 0\.44 mm: its lines may run together/);
  });

  // One per cent of a round is 3.6°. Stretched by two one way, a mark at 45° is 0.57° out.
  it('was printed true, or not', () => {
    expect(of({ 'bar-across': '101', 'bar-up': '50.5' })).toContain(
      'The print is too large: the tape would be 3.6° out by the end of the round.',
    );
    expect(of({ 'bar-across': '99', 'bar-up': '49.5' })).toContain(
      'The print is too small: the tape would be 3.6° out by the end of the round.',
    );
    expect(of({ 'bar-up': '51' })).toMatch(/stretched the sheet.*up to 0\.57° out/);
    // A disc is read to a quarter of a degree: a thousandth of a round is more, and half of it less.
    expect(of({ 'bar-across': '100.1', 'bar-up': '50.05' })).toMatch(/tape would be 0\.4° out/);
    expect(of({ 'bar-across': '100.05', 'bar-up': '50.025' })).not.toMatch(/tape would be/);
  });
});

describe('firing order', () => {
  const crank = (...pins: number[]): Record<string, string> => ({
    cylinders: String(pins.length),
    'firing-order': '',
    tolerance: '1',
    ...Object.fromEntries(
      pins.flatMap((pin, i) => [
        [`pin-${i + 1}`, String(pin)],
        [`lean-${i + 1}`, '0'],
        [`place-${i + 1}`, String(88 * i)],
      ]),
    ),
  });
  const of = (...pins: number[]) => said('firing-order', crank(...pins));
  const coils = (...pins: number[]) =>
    verdicts('firing-order', 'cylinders', pins.length, crank(...pins));

  it('which cylinders may share a coil', () => {
    expect(coils(0, 0)[0]).toBe('may share with 2, which fires at the same time');
    expect(coils(0, 180)[0]).toBe('with 2, half a turn away, only as a wasted spark (told above)');
    expect(coils(0, 240, 120)[0]).toMatch(/^needs a coil of its own/);
    // 15° from the other's bottom a spare spark is still lost, and 20° from it it is not.
    expect(coils(0, 195)[0]).toMatch(/^with 2, half a turn away, only as a wasted spark/);
    expect(coils(0, 200)[0]).toMatch(/^needs a coil of its own/);
    const wasted = /A coil shared by cylinders half a turn apart/;
    const plugs = /Of the two plugs of a coil with two leads/;
    expect(of(0, 180)).toMatch(wasted);
    expect(of(0, 180)).toMatch(plugs);
    expect(of(0, 0)).not.toMatch(wasted);
    expect(of(0, 0)).toMatch(plugs);
    expect(of(0, 240, 120)).not.toMatch(plugs);
  });

  it('how evenly it fires', () => {
    expect(of(0)).toMatch(/^One cylinder fires once a turn\.$/m);
    expect(of(0, 0)).toMatch(/^All cylinders fire together, once a turn\./m);
    expect(of(0, 180)).toMatch(/^It fires evenly, every 180°, in the order 1-2\.$/m);
    expect(of(0, 90)).toMatch(/^It fires unevenly in the order .*Space the sets by these, never/m);
    // A pin at 178° comes to its top 182° after the first.
    expect(of(0, 178)).toMatch(/^It fires unevenly in the order 1-2: 182°, 178°\./m);
    // Pins and leans to half a degree each: a top to 1°, and what two intervals differ by to 2°.
    expect(of(0, 179)).toMatch(
      /^By these readings it fires unevenly in the order 1-2: 181°, 179°\. That is within their ±/m,
    );
    expect(of(0, 179)).not.toMatch(/never evenly/);
  });

  // By the sums of unit arrows: at 180° the first order cancels and its couple does not, the second
  // order adds up; three at 120° leave couples alone.
  it('what is left to shake', () => {
    expect(of(0, 180)).toMatch(
      /^What is left to shake the engine: secondary forces, primary couple(?:, secondary couple)?\.$/m,
    );
    expect(of(0, 240, 120)).toMatch(
      /^What is left to shake the engine: primary couple, secondary couple\.$/m,
    );
    expect(said('firing-order', { ...crank(0, 180), rpm: '0' })).toMatch(
      /^At rest nothing shakes\.$/m,
    );
  });
});

describe('plate layout', () => {
  const of = (texts: Record<string, string>) =>
    said('plate-layout', { sets: '3', teeth: '60', circles: '15 18 21', worm: '40', ...texts });

  it('the metal that is left', () => {
    expect(of({ 'least-wall': '1' })).toMatch(
      /^Pass: the thinnest metal is .* and 1\.0 mm was wanted/m,
    );
    expect(of({ 'least-wall': '20' })).toMatch(/^Fail: there is only .* and 20\.0 mm was wanted/m);
  });

  // A third of 50 teeth is 16⅔: a third of 7.2° is 2.4°. Of 400 teeth it is 0.3°.
  it('a gear whose teeth do not divide by the sets', () => {
    expect(of({})).not.toMatch(/On a gear/);
    expect(of({ teeth: '50' })).toContain(
      'On a gear of 50 teeth a set is up to 2.40° out: choose one whose teeth divide by the sets',
    );
    expect(of({ teeth: '400' })).toContain('a set is up to 0.30° out, which its slot takes up.');
  });

  // A third of 40 turns is 13⅓: no circle of 16 or 20 holes divides by 3.
  it('hole circles that do not', () => {
    expect(of({})).not.toMatch(/With these hole circles/);
    expect(of({ circles: '16 20' })).toMatch(
      /With these hole circles a set is up to 0\.\d{3}° out/,
    );
  });
});
