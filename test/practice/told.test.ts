import { describe, expect, it } from 'vitest';
import { angleBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { setUp, type Bench, type Found, type Note } from '../../calculators/practice/bench.ts';
import { inventEngine, targetAngle, type Engine } from '../../calculators/practice/engine.ts';
import { inventFloat, levelOf, reckonFloat, setUpFloat } from '../../calculators/practice/float.ts';
import { reckon } from '../../calculators/practice/reckoning.ts';
import { inventSlides, reckonSlides, setUpSlides } from '../../calculators/practice/slides.ts';
import type { CrankTask } from '../../calculators/practice/tasks.ts';

/** An engine with enough play, lean and scatter that each costs what is told of. */
function loose(task: CrankTask): Engine {
  const engine = inventEngine(4711, task);
  const hidden = { ...engine.hidden, rodPlay: 0.2, lean: 12, stick: 0.1, eye: 0.3, odd: 1 };
  return { ...engine, hidden };
}

const told = (engine: Engine, more: Partial<Bench>, answer?: number): string => {
  const { costs, remarks } = reckon(engine, { ...setUp(engine), ...more }, answer);
  expect(costs.map(({ cost }) => cost)).toEqual(
    costs.map(({ cost }) => cost).sort((a, b) => b - a),
  );
  return [...costs.map(({ say }) => say), ...remarks].join('\n');
};
const note = (way: 1 | -1, more: Partial<Note> = {}): Note => ({
  ...{ cylinder: 0, dial: undefined, disc: 0, standing: 0, lamp: '', way, rising: true },
  ...more,
});
const found = (more: Partial<Found>): Found => ({
  ...{ way: 1, zeroError: 0, upright: true, times: 2 },
  ...more,
});

describe('what the reckoning tells of the top', () => {
  it('a height that was come to with the piston going down', () => {
    const down = 'with the piston going down';
    const at = (rising: boolean) => [note(1, { dial: 2 }), note(-1, { dial: 2, rising })];
    expect(told(loose('heights'), { notes: at(false) })).toContain(down);
    expect(told(loose('heights'), { notes: at(true) })).not.toContain(down);
  });

  it('a pair that was read once, and a piston that was kicked', () => {
    const pair = [note(1), note(-1)];
    const once = 'Each reading was taken once';
    expect(told(loose('stop'), { notes: pair })).toContain(once);
    expect(told(loose('stop'), { notes: [...pair, ...pair] })).not.toContain(once);
    const kicked = 'kicked onto the stop';
    expect(told(loose('stop'), { struck: 1 })).toContain(kicked);
    expect(told(loose('stop'), {})).not.toContain(kicked);
  });
});

describe('what it tells of the timing', () => {
  it('an indicator that leaned, an opening that was read once or never', () => {
    const by = (more: Partial<Found>) => told(loose('gap'), { found: [found(more)] });
    for (const [fault, words] of [
      [{ upright: false }, 'The indicator leaned'],
      [{ times: 1 }, 'opening was read once'],
    ] as const) {
      expect(by(fault)).toContain(words);
      expect(by({})).not.toContain(words);
    }
    const never = 'was never found with the indicator';
    expect(told(loose('gap'), { found: [undefined] })).toContain(never);
    expect(by({})).not.toContain(never);
  });

  it('which set was drilled wrong, and which reading is the bad one', () => {
    expect(told(loose('spacing'), {})).toContain('It is set 2 that was drilled 1° out');
    const engine = inventEngine(4711, 'reading');
    const { odd } = engine.hidden;
    expect(told(engine, {}, (odd + 1) % 3)).toContain(
      `The bad one is that of cylinder ${['1', '2', '3'][odd]!}.`,
    );
    expect(told(engine, {}, odd)).not.toContain('The bad one');
  });

  it('a worn heel that needed no more than its gap', () => {
    const none = 'Plate and set needed no move';
    expect(told(loose('heel'), { timedAtGap: [0.3] })).toContain(none);
    expect(told(loose('heel'), { timedAtGap: [undefined] })).not.toContain(none);
  });

  it('a travel of another engine that was taken over as it stands', () => {
    const engine = inventEngine(4711, 'figure');
    const as = 'was taken over as it stands';
    const before = angleBefore(engine.hidden.geometry, engine.card.given!.before);
    expect(told(engine, { crank: -before })).toContain(as);
    expect(told(engine, { crank: -targetAngle(engine) })).not.toContain(as);
  });

  it('a place that was taken from a disc which was never set to the top', () => {
    const engine = inventEngine(4711, 'figure');
    const unset = 'the disc was not set to the true top';
    const aim = targetAngle(engine);
    // The disc’s 0 stands where it was found: turned until it shows the aim, the crank is off by as much.
    const byDisc = { crank: engine.hidden.discZero - aim };
    expect(Math.abs(engine.hidden.discZero)).toBeGreaterThan(0.5);
    expect(told(engine, byDisc)).toContain(unset);
    expect(told(engine, { crank: -aim })).not.toContain(unset);
    // Shifted back to the true top it counts from there.
    const set = { discShift: engine.hidden.discZero };
    expect(told(engine, { ...set, crank: -aim - 2 })).not.toContain(unset);
  });

  it('a crank that was left far off, with an indicator that showed it and with none', () => {
    const engine = inventEngine(4711, 'figure');
    const [aim, far] = [-targetAngle(engine), -targetAngle(engine) - 52];
    const fitted = { inHole: 'indicator', zero: engine.hidden.rodPlay / 2 } as const;
    const [none, another] = ['No indicator stood in the plug hole', 'stands at another travel'];
    expect(told(engine, { crank: far })).toContain(none);
    // Nothing leans that is not fitted.
    expect(told(loose('figure'), { crank: far, upright: false })).not.toContain('leaned');
    expect(told(engine, { ...fitted, crank: far })).toContain(another);
    expect(told(engine, { ...fitted, crank: aim })).not.toContain(another);
    expect(told(engine, { crank: aim })).not.toContain(none);
  });
});

it('a zero of the indicator that is off is reproached where it told, and not where it was counted from', () => {
  const engine = inventEngine(4711, 'figure');
  const off = { inHole: 'indicator', zero: 0.5 } as const;
  const aim = targetAngle(engine);
  expect(told(engine, { ...off, crank: -aim })).not.toContain('was not at 0');
  // Half a millimetre is worth some two degrees there.
  expect(told(engine, { ...off, crank: -aim - 3 })).toContain('was not at 0');
});

describe('what it tells of carburettors', () => {
  it('a float that was not looked at, or has fuel in it', () => {
    const whole = inventFloat(4711);
    const { lever } = whole.card;
    const soaked = {
      ...whole,
      hidden: { ...whole.hidden, lever: { ...lever, floatMass: lever.floatMass + 1 } },
    };
    const level = levelOf(soaked, setUpFloat());
    const float = { ...soaked, card: { ...soaked.card, level: level + 3 } };
    const say = (seen: boolean): string =>
      reckonFloat(float, { ...setUpFloat(), seen })
        .costs.map((cost) => cost.say)
        .join('\n');
    expect(say(false)).toContain('It was not filled and looked at');
    expect(say(true)).not.toContain('It was not filled');
    // What is heavier has to lie deeper before it shuts the valve.
    expect(say(true)).toContain('It swims deeper, so that the height by gauge alone leaves');
    expect(say(true)).toContain('the fuel too high.');
    const set = { ...soaked, card: { ...soaked.card, level } };
    expect(reckonFloat(set, { ...setUpFloat(), seen: true }).remarks.join()).toContain(
      'The float weighs 1.0 g more than the card says: there is fuel in it. Mend or change it.',
    );
  });

  it('which way a slide that is out wants to go, once it hangs in nothing', () => {
    const slides = inventSlides(4711);
    const bench = setUpSlides(slides);
    const { lines, costs } = reckonSlides(slides, { ...bench, unsure: [false, false, false] });
    const out = lines.filter(({ right }) => !right);
    expect(out.length).toBeGreaterThan(0);
    for (const { label, error } of out) {
      const words = costs.map(({ say }) => say).find((say) => say.startsWith(label))!;
      expect(words).toContain(error < 0 ? 'turns more open' : 'turns more shut');
    }
    const hanging = reckonSlides(slides, { ...bench, unsure: [true, true, true] });
    for (const { say } of hanging.costs) expect(say).toContain('was not measured after its last');
  });
});
