import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import {
  alertText,
  expectResult,
  field,
  result,
  openCalculator as open,
  query,
} from './support/calculator.ts';
import { phone } from './support/page.ts';

const words = (page: Page): Promise<string> => page.locator('.calc').innerText();

/** A linked float: 15 g over 10 cm² of a fuel of 0.75 g/cm³ swims 20 mm deep. */
const draught =
  'pivot-to-needle=10mm&pivot-to-float=40mm&float-mass=15g&float-area=1000mm2&float-depth=30mm&seat=2mm&density=750kg/m3';

describe('float level, from a link', () => {
  it('is Archimedes’ draught without a head', async () => {
    await open(`float-level/?height=32mm&head=0mm&${draught}`, async (page) => {
      await expectResult(page, 'level', 12, 9);
      await expectResult(page, 'tang', 0.25, 12);
      await expectResult(page, 'needle-push', 0, 12);
    });
  });

  it('rises by head · seat · lever / float', async () => {
    await open(`float-level/?height=32mm&head=400mm&${draught}`, async (page) => {
      const per100 = (100 * Math.PI * 0.25) / 1000;
      await expectResult(page, 'level-per-head', per100, 9);
      await expectResult(page, 'level', 12 - 4 * per100, 9);
    });
  });

  it('names the carburettors to bend, which way and how far', async () => {
    const found = 'carburettors=3&found-1=25mm&found-2=24.1mm&found-3=23mm&tolerance=0.3mm';
    await open(
      `float-level/?height=24mm&pivot-to-needle=8mm&pivot-to-float=32mm&${found}`,
      async (page) => {
        await expectResult(page, 'bend-1', -0.25, 9);
        await expectResult(page, 'bend-3', 0.25, 9);
        await expectResult(page, 'spread', 2, 9);
        const said = await page.locator('table').first().innerText();
        expect(said).toMatch(/Bend it 0\.25 mm away from the needle/);
        expect(said).toMatch(/Leave it/);
        expect(said).toMatch(/Bend it 0\.25 mm towards the needle/);
      },
      { viewport: phone },
    );
  });

  it('says that a float too heavy cannot shut the valve, beside its fields', async () => {
    await open('float-level/', async (page) => {
      await field(page, 'float-mass').fill('20');
      await expect.poll(() => alertText(page)).toMatch(/cannot shut the valve/);
      expect(await result(page, 'level')).toBeUndefined();
      await expect
        .poll(() => page.locator('#float-mass-problem').textContent())
        .toMatch(/no more than 14\.9 g/);
      await expect.poll(() => field(page, 'float-mass').inputValue()).toBe('20');
      await field(page, 'float-mass').fill('9');
      await expect.poll(() => alertText(page)).toBe('');
    });
  });

  it('works the density out from what is in the fuel', async () => {
    const mix =
      'density-from=mixed&petrol=745&ethanol=0&oil=yes&oil-ratio=25&oil-density=870&warmth=15';
    await open(`float-level/?${mix}`, async (page) => {
      await expectResult(page, 'fuel-density', (25 * 745 + 870) / 26, 9);
      expect(await field(page, 'density').count()).toBe(0);
    });
  });
});

describe('air and jet, from a link', () => {
  it('takes feet, inches of mercury and degrees Fahrenheit', async () => {
    const now = 'temperature=59degF&humidity=0%25&altitude=0ft&pressure=29.92126inHg';
    await open(`air-and-jet/?${now}`, async (page) => {
      await expectResult(page, 'pressure-here', 101.325, 4);
      await expectResult(page, 'density', 1.2255, 4);
    });
  });

  it('keeps the jet in the same air, and takes the square root in thinner air', async () => {
    const same =
      'humidity=0%25&right-humidity=0%25&temperature=15&right-temperature=15&altitude=0&right-altitude=0&jet=1mm';
    await open(`air-and-jet/?${same}`, async (page) => {
      await expectResult(page, 'relative-density', 1, 12);
      await expectResult(page, 'jet', 1, 12);
      await field(page, 'pressure').fill('82.07325');
      await expect.poll(() => result(page, 'relative-density')).toBeCloseTo(0.81, 3);
      const relative = (await result(page, 'relative-density'))!;
      await expectResult(page, 'jet-area-ratio', Math.sqrt(relative), 12);
      await expectResult(page, 'jet', relative ** 0.25, 12);
    });
  });

  it('asks what a typed pressure is, and refuses one read at sea level up a pass', async () => {
    await open('air-and-jet/?altitude=1500m&pressure=101.325kPa&pressure-is=sea', async (page) => {
      await expectResult(page, 'pressure-here', 84.556, 2);
      await field(page, 'pressure').fill('70');
      await expect.poll(() => alertText(page)).toMatch(/No weather on earth has less/);
    });
  });

  it('names the jets to either side and leaves the last word to the plug', async () => {
    const summer = 'temperature=28&humidity=60%25&altitude=900m';
    const before = 'right-temperature=12&right-humidity=70%25&right-altitude=100m';
    await open(`air-and-jet/?${summer}&${before}&jet=1mm&sizes=0.9 0.95 1.0`, async (page) => {
      // The page stands back until its address is read.
      await expect.poll(() => words(page)).toMatch(/0\.95 mm next down/);
      const said = await words(page);
      expect(said).toMatch(/1\.00 mm is next up/);
      expect(said).toMatch(/Plug reading after a hard run, and the maker’s limits, decide/);
    });
  });
});

describe('needle and clip, from a link', () => {
  const ring =
    'jet-bore=2.6mm&needle-diameter=2.5mm&taper=0deg&clips=5&clip=3&clip-pitch=0.9mm&slide-travel=26mm&straight=10mm';

  it('is the ring between two circles with a parallel needle, whatever the clip', async () => {
    await open(`needle-and-clip/?${ring}&throttle=50%25`, async (page) => {
      await expectResult(page, 'annulus', (Math.PI / 4) * (2.6 ** 2 - 2.5 ** 2), 9);
      await expectResult(page, 'annulus-per-clip', 0, 12);
      expect(await words(page)).toMatch(/the clip changes nothing/);
    });
  });

  it('refuses a groove that is not there and a needle that does not go in', async () => {
    await open('needle-and-clip/', async (page) => {
      await field(page, 'clips').fill('5');
      await field(page, 'clip').fill('6');
      await expect.poll(() => alertText(page)).toMatch(/cannot sit in groove 6 of a needle with 5/);
      await field(page, 'clip').fill('3');
      await field(page, 'jet-bore').fill('2.6');
      await field(page, 'needle-diameter').fill('2.7');
      await expect.poll(() => alertText(page)).toMatch(/does not go into a jet of 2\.6 mm/);
      expect(await result(page, 'annulus')).toBeUndefined();
    });
  });
});

describe('slide balance, from a link', () => {
  it('leaves the middle slide alone and turns the others by the pitch', async () => {
    const found = 'slides=3&opening-1=2.0mm&opening-2=3.0mm&opening-3=2.5mm&thread=0.5mm';
    await open(`slide-balance/?${found}`, async (page) => {
      await expectResult(page, 'turn-1', 1, 9);
      await expectResult(page, 'turn-2', -1, 9);
      await expectResult(page, 'turn-3', 0, 9);
      await expectResult(page, 'work', 2, 9);
      expect(await words(page)).toMatch(/slide 3 has already: leave that one alone/);
    });
  });

  it('warns when a cable would hold its slide open', async () => {
    const tight =
      'slides=2&opening-1=1mm&opening-2=3mm&thread=1mm&to=wanted&wanted=3mm&free-play-1=1mm&free-play-2=1.2mm';
    await open(`slide-balance/?${tight}`, async (page) => {
      await expectResult(page, 'free-after-1', -1, 9);
      expect(await words(page)).toMatch(/would race at idle/);
      await expectResult(page, 'give-back', 2, 9);
    });
  });

  it('turns less vacuum into more opening', async () => {
    const gauges =
      'method=vacuum&slides=3&vacuum-1=30kPa&vacuum-2=32kPa&vacuum-3=28kPa&per-turn=8kPa';
    await open(`slide-balance/?${gauges}`, async (page) => {
      await expectResult(page, 'turn-1', 0, 9);
      await expectResult(page, 'turn-2', 0.25, 9);
      await expectResult(page, 'turn-3', -0.25, 9);
    });
  });
});

describe('fuel and oil, from a link', () => {
  it('tops up another ratio by exact parts', async () => {
    await open('fuel-and-oil/?fuel=5l&ratio=25&already=5.1l&already-ratio=50', async (page) => {
      await expectResult(page, 'oil', 200, 9);
      await expectResult(page, 'mixed-ratio', 10 / 0.3, 9);
      await expectResult(page, 'oil-whole', 300, 9);
    });
  });

  it('takes gallons of either kind', async () => {
    await open('fuel-and-oil/?ratio=50', async (page) => {
      await field(page, 'fuel').fill('1 us gal');
      await expectResult(page, 'oil', 3785.411784 / 50, 6);
      await field(page, 'fuel').fill('1 imp gal');
      await expectResult(page, 'oil', 4546.09 / 50, 6);
      await field(page, 'fuel').press('Enter');
      await expect.poll(() => query(page).get('fuel')).toMatch(/imp/);
    });
  });

  it('says how much petrol would bring too oily a tank right', async () => {
    await open('fuel-and-oil/?fuel=1l&ratio=50&already=5.2l&already-ratio=25', async (page) => {
      await expectResult(page, 'oil', 20, 9);
      expect(await result(page, 'oil-whole')).toBeUndefined();
      expect(await alertText(page)).toMatch(/at least 5 litres of petrol/);
    });
  });
});
