import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { Absent } from '../../calculators/frame/types.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { said, verdicts } from './said.ts';
import { reading } from './states.ts';

describe('air and jet', () => {
  const same = { temperature: '15', humidity: '50', altitude: '100', jet: '1.1' };
  const then = { 'right-temperature': '15', 'right-humidity': '50', 'right-altitude': '100' };
  const of = (texts: Record<string, string>) => said('air-and-jet', { ...same, ...then, ...texts });

  it('leaves the jet alone in the same air, and names the one at hand', () => {
    const words = of({ sizes: '1.05 1.1 1.15' });
    expect(words).toMatch(/The air is nearly the same.*leave the jet alone/);
    expect(words).toContain('Of the jets at hand 1.10 mm is the one.');
    expect(
      verdicts('air-and-jet', 'sizes', 3, { ...same, ...then, sizes: '1.05 1.1 1.15' }),
    ).toEqual(['', 'Next up, the safe side. The jet that was right.', '']);
  });

  // As warm 500 m higher up, it is as thin as the standard pressure there: 94.3 of 100.1 kPa, with
  // 0.85 kPa of vapour that weighs 0.62 of air: 0.9418 of it, whose root is 0.9705.
  it('thinner air is richer, denser air weaker, from a jet size on', () => {
    expect(of({ altitude: '600' })).toMatch(/The air is thinner: .* runs 3\.0 per cent richer/);
    expect(of({ 'right-altitude': '600' })).toMatch(
      /The air is denser: .* runs 3\.0 per cent weaker, which is the dangerous side/,
    );
  });

  it('of the jets at hand the larger comes first', () => {
    expect(of({ sizes: '1.05 1.15' })).toContain(
      'Of the jets at hand 1.15 mm is next up, a little rich, and 1.05 mm next down, a little weak. Begin with the larger.',
    );
    expect(verdicts('air-and-jet', 'sizes', 2, { ...same, ...then, sizes: '1.15 1.05' })).toEqual([
      'Next down.',
      'Next up, the safe side.',
    ]);
    expect(of({ sizes: '0.9 1' })).toMatch(/None of the jets at hand is large enough/);
    expect(of({ sizes: '1.2 1.3' })).toContain(
      'All the jets at hand are larger than wanted; the finest, 1.20 mm, is on the rich side.',
    );
  });

  // The area goes with the root of the density: 60 of 101 kPa is 0.77 of it, 70 is 0.83.
  it.each([
    ['60', '101', true],
    ['70', '101', false],
    ['101', '60', true],
    ['101', '70', false],
  ])('a large step is cautioned: %s kPa after %s', (pressure, before, large) => {
    expect(/That is a large step/.test(of({ pressure, 'right-pressure': before }))).toBe(large);
  });

  it('says what stands for a pressure that nobody read', () => {
    const standard = /Where no pressure is given the standard one/;
    expect(of({ pressure: '100' })).toMatch(standard);
    expect(of({ 'right-pressure': '100' })).toMatch(standard);
    expect(of({ pressure: '100', 'right-pressure': '100' })).not.toMatch(standard);
  });
});

describe('float level', () => {
  // Arms of 8 and 32 mm: the tang moves a quarter of what the float does. Turned upside down, a float
  // that reads too far from the face shuts too low: its tang goes away from the needle.
  const set = { height: '24', tolerance: '0.3', 'pivot-to-needle': '8', 'pivot-to-float': '32' };

  it('bends each tang its way, and leaves what is near enough', () => {
    const found = { ...set, 'found-1': '25', 'found-2': '23', 'found-3': '24.3' };
    expect(verdicts('float-level', 'side', 3, found)).toEqual([
      'Bend it 0.25 mm away from the needle.',
      'Bend it 0.25 mm towards the needle.',
      'Leave it.',
    ]);
    expect(verdicts('float-level', 'side', 1, { ...set, 'found-1': '24.5' })).toEqual([
      'Bend it 0.13 mm away from the needle.',
    ]);
  });

  it('the table is pointed to where any differs from the setting', () => {
    const table = /The table says how far each would be bent/;
    const level = { ...set, carburettors: '2', 'found-1': '24' };
    expect(said('float-level', { ...level, 'found-2': '24.2' })).toMatch(table);
    expect(said('float-level', { ...level, 'found-2': '24' })).not.toMatch(table);
  });

  // Under fuel of 0.75 g/cm³ a float of 1000 mm² × 20 mm and 10 g lifts 5 g more, at the needle four times as
  // much: 20 g bear 1358 mm of fuel on a seat of 5 mm.
  it('a head that is near to the most that the float bears is told of', () => {
    const bears = {
      ...{ 'float-area': '1000', 'float-depth': '20', 'float-mass': '10', seat: '5', tilt: '0' },
      ...{ 'density-from': 'typed', density: '750', 'spring-drop': '0' },
    };
    const of = (head: string) => said('float-level', { ...set, ...bears, head });
    expect(of('970')).toContain('There is little in hand: at a head of 1358 mm the float would');
    expect(of('900')).not.toMatch(/little in hand/);
    const results = (more: Record<string, string>) =>
      evaluate(calculatorBySlug('float-level'), { ...set, ...bears, ...more }, reading).results;
    // A seat of 5.5 mm has 1.21 of the area: it bears 1122 mm.
    expect((results({ head: '1300' })['level-per-seat'] as Absent).why).toMatch(
      /^With a seat 0\.5 mm larger this float could no longer shut the valve\./,
    );
    // How the float was gauged decides nothing of that: it waits for no figure of the gauge.
    const floating = { ...bears, 'pivot-to-needle': '8', 'pivot-to-float': '32', head: '1300' };
    const ungauged = evaluate(calculatorBySlug('float-level'), floating, reading).results;
    expect((ungauged['level-per-seat'] as Absent).why).toMatch(/no longer shut the valve\.$/);
    expect((results({ head: '300', seat: '0' }).reserve as Absent).why).toMatch(
      /^A seat of no size lets no head push/,
    );
    const { word } = calculatorBySlug('float-level').results.level!;
    expect([word!(-1, {}), word!(1, {})]).toEqual(['(above it)', '']);
  });

  it('a lower level is shut lower down, by a tang bent towards the needle', () => {
    expect(said('float-level', { ...set, wanted: '20' })).toMatch(
      /must shut the valve lower down: bend the tang .* towards the needle and look for \d\d\.\d mm/,
    );
    expect(said('float-level', { ...set, wanted: '5' })).toMatch(
      /must shut the valve higher up: bend the tang .* away from the needle/,
    );
  });
});

describe('needle, jet and clip', () => {
  const needle = {
    ...{ 'jet-bore': '2.6', 'needle-diameter': '2.5', taper: '2', straight: '4', clip: '3' },
    ...{ clips: '5', 'clip-pitch': '1', 'slide-travel': '24', 'main-jet': '1.1', throttle: '50' },
  };
  const of = (texts: Record<string, string>) => said('needle-and-clip', { ...needle, ...texts });

  it('each throttle has its circuit, from its border on', () => {
    const circuits = verdicts('needle-and-clip', 'throttles', 9, needle);
    expect(circuits).toEqual([
      'pilot jet and air screw',
      ...Array<string>(1).fill('cutaway of the slide'),
      ...Array<string>(4).fill('needle and needle jet'),
      ...Array<string>(3).fill('main jet'),
    ]);
    expect(of({ throttle: '20' })).toContain('set by the cutaway of the slide (common practice)');
    expect(of({ throttle: '80' })).toContain('set by the main jet (common practice)');
  });

  it('a groove lower is richer, but for the lowest one and the parallel part', () => {
    expect(of({})).toMatch(/^One groove lower makes it \d\.\d per cent richer here\.$/m);
    expect(of({ clip: '5' })).toContain(
      'The clip is in the lowest groove: it makes nothing richer any more. A thinner needle does.',
    );
    // At rest the needle stands 2 mm up, and its taper begins at 4.
    expect(of({ throttle: '0' })).toMatch(/^Here the parallel part is in the mouth/m);
    expect(of({})).not.toMatch(/parallel part|lowest groove/);
  });

  it('a ring that is the larger throughout, a second needle that is too thick, the groove in use', () => {
    const calculator = calculatorBySlug('needle-and-clip');
    const { results, values } = evaluate(
      calculator,
      { ...needle, 'main-jet': '0.4', 'second-diameter': '2.7' },
      reading,
    );
    expect(results['equal-at']).toBe(0);
    for (const name of ['second-annulus', 'second-percent']) {
      expect((results[name] as Absent).why).toMatch(/^The second needle does not fit this jet/);
    }
    const { row } = calculator.tables!.clips!;
    expect([3, 4].map((index) => row(values, index, undefined, { lengths: 'mm' }))).toEqual([
      '3 (now)',
      '4',
    ]);
  });
});

describe('a set of jets', () => {
  // Areas against one of 1.1 mm: 1.09 1.8 per cent less, 1.12 3.7 more, 1.2 19 more, 1 17.4 less.
  const bag = {
    ...{ jets: '4', wanted: '1', by: 'pin', size: '1.1', tolerance: '4', 'bore-error': '0.005' },
    ...{ 'bore-1': '1.09', 'bore-2': '1.12', 'bore-3': '1.2', 'bore-4': '1' },
  };

  it('tells each what becomes of it, and where the readings cannot tell', () => {
    // 0.005 mm are 0.9 per cent of area.
    expect(verdicts('jet-set', 'jets', 4, bag)).toEqual([
      'in the set',
      'spare (too near to the limit to be sure)',
      'reject: too large',
      'reject: too small',
    ]);
    expect(said('jet-set', bag)).toContain(
      'Put jets 3 and 4 aside, marked: more than 4.0 per cent of area from the size wanted.',
    );
    expect(said('jet-set', { ...bag, size: '', wanted: '2' })).toMatch(/ of area from the set\./);
  });

  it('says that the next set is as good only where the readings cannot tell them apart', () => {
    const three = {
      jets: '3',
      wanted: '2',
      size: '',
      by: 'pin',
      'bore-1': '1.1',
      'bore-2': '1.11',
    };
    const next = /The next best set differs by .* Either will do/;
    expect(said('jet-set', { ...three, 'bore-3': '1.121', 'bore-error': '0.01' })).toMatch(next);
    expect(said('jet-set', { ...three, 'bore-3': '1.3', 'bore-error': '0.001' })).not.toMatch(next);
  });
});

describe('jets at the limit of what is allowed', () => {
  // The square of 0.9 is 0.81.
  const bag = {
    jets: '2',
    by: 'pin',
    size: '1',
    tolerance: '19',
    'bore-1': '0.9',
    'bore-2': '1.2',
  };

  it('still fit', () => {
    const [near, far] = verdicts('jet-set', 'jets', 2, { ...bag, wanted: '1' });
    expect(near).toMatch(/^in the set/);
    expect(far).toBe('reject: too large');
  });

  it.each([
    ['1', '2', 'Only 1 of the jets is near enough to the size wanted, and 2 are needed.'],
    ['2', '1', 'None of the jets is near enough to the size wanted, and 1 is needed.'],
  ])('of size %s are too few for %s', (size, wanted, words) => {
    const texts = { ...bag, size, wanted };
    const { results } = evaluate(calculatorBySlug('jet-set'), texts, reading);
    expect((results.spread as Absent).why).toContain(words);
  });
});

describe('slides that are to open together', () => {
  const drill = {
    ...{ method: 'drill', slides: '3', to: 'least', adjuster: 'cable', thread: '0.75' },
    ...{ 'opening-1': '3', 'opening-2': '3.6', 'opening-3': '3.4', 'least-play': '1' },
  };
  const of = (texts: Record<string, string>) => said('slide-balance', { ...drill, ...texts });

  it('are brought to one that stays', () => {
    expect(of({})).toContain(
      'Bring the others to 3.40 mm, which slide 3 has already: leave that one alone.',
    );
    expect(of({ 'opening-2': '3', 'opening-3': '3.5' })).toContain(
      'which slides 1 and 2 have already: leave those alone.',
    );
    expect(of({ to: 'wanted', wanted: '3.2' })).toContain('Bring all to 3.20 mm.');
    expect(of({ method: 'vacuum', slides: '2', 'vacuum-1': '30', 'vacuum-2': '32' })).toContain(
      'Bring the others to 32.0 kPa, which slide 2 has already',
    );
    expect(of({ slides: '1' })).toMatch(/One slide has no other to agree with/);
    expect(of({ 'opening-2': '3', 'opening-3': '3' })).toContain(
      'All slides agree. Leave the adjusters alone.',
    );
  });

  // Slide 1 goes up by 0.4 mm, which its cable takes up: 0.8 mm of 1.2 is left, where 1 is wanted.
  it('get back the play that the cables have given', () => {
    const play = { 'free-play-1': '1.2', 'free-play-2': '1.2', 'free-play-3': '1.2' };
    expect(of(play)).toContain(
      'Turn all cable adjusters in by 0.27 turns (0.20 mm) alike, or give the same at a common adjuster. That keeps 1.0 mm of play.',
    );
    expect(of(play)).not.toMatch(/race at idle/);
    expect(of({ ...play, 'free-play-1': '0.2' })).toMatch(
      /hold its slide 0\.20 mm off its stop, and the engine would race at idle/,
    );
    expect(of({ ...play, 'free-play-1': '1.4' })).not.toMatch(
      /Turn all cable adjusters|Give .* back/,
    );
  });

  // By stop screws slide 2 goes down 0.2 mm, and its cable has 1 mm left of 1.2.
  it('get it back at the cables where stop screws were turned', () => {
    const play = { 'free-play-1': '1.2', 'free-play-2': '1.2', 'free-play-3': '1.2' };
    expect(of({ ...play, adjuster: 'stop', 'least-play': '1.1' })).toContain(
      'Give 0.10 mm back at all cables alike. That keeps 1.1 mm of play.',
    );
  });

  it('say the order of work for cables and for stop screws', () => {
    expect(of({})).toMatch(/Set idle at the stop screws first/);
    expect(of({ adjuster: 'stop' })).toMatch(/After the stop screws, see that the cables lift/);
  });
});
