import { describe, expect, it } from 'vitest';
import { said, verdicts } from './said.ts';

describe('several cylinders from one plate', () => {
  // Errors of 4, 1 and 0; after the plate is turned to their middle 2, −1 and −2.
  const degrees = {
    ...{ as: 'angle', cylinders: '3', 'target-angle': '22', 'fired-angle-1': '26' },
    ...{ 'fired-angle-2': '23', 'fired-angle-3': '22', 'fired-angle-error': '0.5' },
  };
  const of = (texts: Record<string, string>) => said('plate-setting', { ...degrees, ...texts });

  it('the table moves the sets that are out, and doubts what lies within its ±', () => {
    // Half of the first less the third is ± 0.35°, the second less half of both ± 0.61°.
    expect(verdicts('plate-setting', 'cylinders', 3, { ...degrees, tolerance: '1.5' })).toEqual([
      'fail, move this set',
      'pass (too near to the limit to be sure: measure again)',
      'fail, move this set',
    ]);
    expect(of({ tolerance: '1.5' })).toContain(
      'cylinders 1 and 3 would still be outside ± 1.50°. Move those sets in the slot after the plate is set, by the table: + is against the way the cam turns, which is earlier. The readings of cylinder 2 are no surer than that',
    );
    expect(of({ tolerance: '1.5', 'fired-angle-2': '22', 'fired-angle-1': '25.2' })).not.toMatch(
      /Move that set/,
    );
  });

  it('one that passes as found is doubted by what was found', () => {
    expect(of({ tolerance: '4.3' })).toMatch(
      /^Pass as found: .* The readings of cylinder 1 are no surer than that/,
    );
    expect(of({ tolerance: '5' })).toMatch(
      /^Pass as found: [^.]*\.\d\d°\. Leave plate and sets alone\.$/m,
    );
  });

  it('more than 20° between cylinders is a mistake in measuring', () => {
    expect(of({ 'fired-angle-1': '43' })).toMatch(/21° between cylinders is more than slots allow/);
    expect(of({ 'fired-angle-1': '41' })).not.toMatch(/than slots allow/);
  });
});

describe('points gap', () => {
  it('when to look again, in what the wear is counted by, to two digits', () => {
    // 5° in 200 hours (by hand, test/calculators/points.test.ts): 4.6° in 184.
    const worn = {
      ...{ lift: '0.8', rise: '40', top: '20', profile: 'uniform', lobes: '2', gap: '0.3' },
      ...{ lever: '1.25', 'wear-rate': '0.04', 'retard-limit': '4.6' },
    };
    expect(said('breaker-cam', { ...worn, 'wear-per': 'hours', running: '200' })).toMatch(
      /falls 4\.6° late after about 180 hours: look/,
    );
    expect(said('breaker-cam', { ...worn, 'wear-per': 'km', running: '2000' })).toMatch(
      /\d+ km: look/,
    );
  });

  it('trials say nothing of a gap below them, no more than of one above', () => {
    expect(said('breaker-cam', { gap: '0.2' })).toContain(
      'Your trials cover gaps from 0.25 mm to 0.40 mm.',
    );
    expect(said('breaker-cam', { gap: '0.3' })).not.toMatch(/Your trials cover/);
  });
});

describe('coil current', () => {
  // 12 V on 2 Ω settle at 6 A with 5 ms; three quarters are there after ln 4 = 1.386 of them, 6.93 ms. A
  // quarter turn takes that at 15 000 ÷ 6.93 = 2164 rpm.
  const coil = {
    ...{ volts: '12', resistance: '2', ballast: '0', inductance: '10', share: '75' },
    ...{ 'dwell-angle': '90', 'speed-ratio': '1', lobes: '1', 'current-limit': '4' },
  };

  it('up to what speed it holds, and what holds it where it stands still', () => {
    const words = said('coil-charge', coil);
    expect(words).toContain(
      'Up to about 2200 rpm the current still reaches 75 per cent of the 6.0 A it would settle at; above that it falls short.',
    );
    // 12 V ÷ 4 A are 3 Ω.
    expect(words).toContain(
      'it would draw 6.0 A, more than the 4.0 A you allow. A resistor of 1.0 Ω in series would hold it to that.',
    );
    expect(said('coil-charge', { ...coil, ballast: '1' })).not.toMatch(/A resistor of/);
  });
});

describe('wiring', () => {
  // 3.2 m of 1 mm² at 30 °C are 0.057 Ω, and 0.03 Ω of contacts with it 0.087 Ω.
  const loop = {
    ...{ volts: '12', length: '3.2', area: '1', temperature: '30', contacts: '30', coils: '3' },
    ...{ resistance: '4', ballast: '0', loss: '5', 'fuse-load': '70', current: '6', others: '0' },
    ...{ 'current-limit': '4' },
  };
  const of = (texts: Record<string, string>) => said('wiring', { ...loop, ...texts });

  it('warns of a lead left off where a coil fires two plugs', () => {
    expect(of({ leads: 'two' })).toContain('With one lead off, neither plug fires');
    expect(of({ leads: 'one' })).not.toContain('neither plug fires');
  });

  it('the loss against what is allowed', () => {
    // 6 A × 0.0873 Ω are 0.524 V; 1 less the square of 0.9563 is 0.085.
    expect(of({})).toContain(
      'Wire and contacts take 4.4 per cent of the volts and 9 per cent of the spark’s energy, within the 5.0 per cent of volts you allow.',
    );
    // 1 mm² at most 20 Ω/km by its standard: 0.0665 + 0.03 Ω lose 4.8 per cent.
    expect(of({ loss: '4.5' })).toContain(
      'A wire sold as 1 mm² may have less copper, or poorer, and lose 4.8 per cent by its standard: only one size more is sure.',
    );
    expect(of({})).not.toMatch(/sold as/);
    // A ± of 0.1 m, of 15 mΩ and 0.1 A is more than the 0.03 per cent that it lies within 4.4.
    expect(of({ loss: '4.4' })).toMatch(/within the 4\.40 per cent .*no surer than that/);
    expect(of({ loss: '9' })).not.toMatch(/no surer/);
    // 0.5239 of 12 V are 4.366 per cent: neither is written as the other.
    expect(of({ loss: '4.36' })).toMatch(/take 4\.37 per cent .*, more than the 4\.36 per cent/);
    expect(of({ current: '8' })).toMatch(/take 5\.8 per cent .*, more than the 5\.0 per cent/);
  });

  it('a wire sold as less than was typed is held against the size that it is sold as', () => {
    // 1.4 mm² lose 3.2 ÷ 58 ÷ 1.4 × 1.039 + 0.03 Ω = 0.071 Ω, 3.6 per cent; no size of 1.4 is sold.
    expect(of({ area: '1.4', loss: '3.6' })).not.toMatch(/sold as/);
    expect(of({ area: '1.5', loss: '3.5' })).toMatch(/sold as 1\.5 mm² .* lose 3\.8 per cent/);
  });

  it('the contacts, where they are at fault', () => {
    expect(of({ contacts: '100', current: '8' })).toMatch(
      /^Switch, fuse and joints alone lose more/m,
    );
    // 0.06 Ω of 0.117 Ω.
    expect(of({ contacts: '60' })).toContain(
      'Over the loss, and 0.36 V of the 0.70 V are lost in switch, fuse and joints',
    );
    expect(of({ contacts: '60', current: '4' })).not.toMatch(/[Ss]witch, fuse and joints/);
    // 0.025 Ω of 0.082 Ω: over the loss with 8 A, and by the wire more than by the contacts.
    expect(of({ contacts: '25', current: '8' })).toMatch(/more than the 5\.0 per cent/);
    expect(of({ contacts: '25', current: '8' })).not.toMatch(/[Ss]witch, fuse and joints/);
  });

  it('the fuse guards a wire that bears it: 6 A of 70 per cent ask for 10 A', () => {
    expect(of({})).toContain('The fuse of 10 A guards a wire of 1 mm², which bears 10 A.');
    expect(of({ area: '0.75' })).toMatch(
      /A wire of 0\.75 mm² bears 6 A\. The fuse of 10 A does not guard it/,
    );
    expect(of({ area: '0.3' })).toMatch(/The wire of 0\.3 mm² is thinner than any that is made/);
  });

  it('what is left on, with the others; and the ballast that a coil wants', () => {
    // Three coils of 4 Ω on 12 V, and 2 A beside them.
    expect(of({ others: '2' })).toMatch(/draws up to 11\.0 A/);
    expect(of({ 'current-limit': '2' })).toMatch(/A ballast of 2\.0 Ω before each/);
    expect(of({ 'current-limit': '2', ballast: '1.5' })).toMatch(/A ballast of 2\.0 Ω before each/);
    expect(of({ 'current-limit': '2', ballast: '2' })).not.toMatch(/A ballast of/);
    expect(of({})).not.toMatch(/ballast/);
  });

  it('each standard size, and either voltage', () => {
    // 1 mm² at most 20 Ω/km, 0.0665 Ω here: 4.8 per cent with the contacts; 1.5 mm² 3.8 per cent.
    expect(verdicts('wiring', 'sizes', 4, loop)).toEqual([
      'fuse too large',
      'fuse too large',
      'the smallest that will do',
      'will do',
    ]);
    expect(verdicts('wiring', 'sizes', 4, { ...loop, loss: '4.5' }).slice(2)).toEqual([
      'loses too much',
      'the smallest that will do',
    ]);
    // At 6 V twice the current: 12 A ask for 20 A, and 0.03 Ω alone take 6 per cent.
    expect(verdicts('wiring', 'sides', 2, loop)).toEqual([
      'fuse of 20 A; no wire loses so little, the contacts alone take more',
      'fuse of 10 A, wire of 1 mm²',
    ]);
    expect(verdicts('wiring', 'sides', 1, { ...loop, contacts: '5' })).toEqual([
      'fuse of 20 A, wire of 4 mm²',
    ]);
    expect(verdicts('wiring', 'sides', 1, { ...loop, contacts: '5', length: '30' })).toEqual([
      'fuse of 20 A; no wire loses so little',
    ]);
  });
});

describe('fuel and oil', () => {
  const tank = (ratio: string) =>
    said('fuel-and-oil', {
      fuel: '5',
      by: 'ratio',
      ratio: '25',
      already: '2',
      'already-ratio': ratio,
    });

  it('a dry tank is told how to mix, one with petrol in it where', () => {
    const dry = said('fuel-and-oil', { fuel: '5', by: 'ratio', ratio: '25', already: '0' });
    expect(dry).toMatch(/Half of the petrol into a clean can.* 40 ml goes to every litre\./);
    expect(dry).not.toMatch(/Mix in a can|With oil for the new petrol/);
    expect(tank('25')).toMatch(/Mix in a can, not in the tank/);
    expect(tank('25')).not.toMatch(/Half of the petrol/);
  });

  it('a digit too many is cautioned, in what is mixed and in what is there', () => {
    const rich = { fuel: '5', by: 'ratio', already: '2' };
    const of = (ratio: string, there: string) =>
      said('fuel-and-oil', { ...rich, ratio, 'already-ratio': there });
    const mixed = /^101 to 1 is less oil than engines are run on/m;
    const there = /^The mix in the tank, 250 to 1, has less oil/m;
    expect(of('101', '50')).toMatch(mixed);
    expect(of('50', '250')).toMatch(there);
    expect(of('50', '250')).not.toMatch(/is less oil/);
    expect(of('100', '100')).not.toMatch(/less oil than engines/);
    expect(said('fuel-and-oil', { ...rich, ratio: '50', already: '0' })).not.toMatch(
      /less oil than engines/,
    );
    const share = (percent: string) =>
      said('fuel-and-oil', { fuel: '5', by: 'percent', percent, already: '0' });
    expect(share('0.5')).toMatch(/^200 to 1 is less oil/m);
    // 100/16 is 6.25: a ratio that was typed as per cent.
    expect(share('16')).toMatch(/^16\.0 per cent is 6\.3 to 1: more oil than engines are run on/m);
    expect(share('6')).not.toMatch(/more oil than engines/);
    expect(of('6', '50')).toMatch(/^6\.0 to 1 is more oil than engines are run on/m);
  });

  it('a tank that had less oil ends with less, one that had more with more', () => {
    expect(tank('50')).toMatch(/comes to \d\d\.\d to 1: less oil than wanted/);
    expect(tank('16')).toMatch(/comes to \d\d\.\d to 1: a little more oil than wanted/);
    expect(tank('25')).toContain('What was there and what is put in agree, near enough.');
  });
});
