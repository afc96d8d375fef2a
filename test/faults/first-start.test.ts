import { expect, it } from 'vitest';
import { checklist } from '../../content/first-start/checklist.ts';
import { runaway } from '../../content/first-start/runaway.ts';
import { signGroups } from '../../content/first-start/signs.ts';

/** What each sign means and what comes first, by hand, as words of the sign, its meaning and its act. */
const told: readonly (readonly [sign: RegExp, means: RegExp, first: RegExp])[] = [
  [/four-stroking/, /^Rich/, /^Nothing, unless/],
  [/^Revs rise by themselves/, /run away/, /^Stop it at once/],
  [
    /^Sharp rattle under load/,
    /^Knocking: .*Fired too early, weak/,
    /^Shut off at once\. Then timing/,
  ],
  [/^Hard metallic knock/, /touches or has play/, /^Stop it at once and do not start it again/],
  [/^Spitting back/, /^Weak \(lean\), late or far too early/, /^Fuel reaching it/],
  [/^Bangs in the exhaust/, /did not fire/, /^Spark of each cylinder/],
  [/^At the plug: short, fat/, /^Good/, /^Nothing/],
  [/^At the plug: thin/, /^Too little voltage/, /condenser/],
  [/^At the contacts: a small, dull/, /^As it should be/, /^Nothing/],
  [/^At the contacts: bright/, /^A bad condenser/, /^Another condenser/],
  [/^Blue-white at first/, /^Oil left/, /^Nothing/],
  [/^Blue-white that goes on/, /gearbox-side .* seal/, /^Leak test/],
  [/^Black, with a smell of petrol/, /^Rich/, /^Float height/],
  [/^No smoke at all/, /no oil in the fuel/, /^Stop it at once/],
  [/^All alike, tan to grey/, /^As it should be/, /^Nothing/],
  [/^Black and wet, one plug/, /did not fire, or floods/, /^Its spark/],
  [/^Black and wet, all of them/, /^Oil left .* too cold/, /^Clear the crankcase/],
  [/^Black and dry, sooty/, /^Rich, or a plug too cold/, /^Choke/],
  [/^White or blistered/, /^Weak \(lean\), too early or too hot/, /^Do not run it again/],
  [/^One unlike the others/, /^That cylinder differs/, /^Its timing/],
  [/^One cylinder cold/, /does not fire/, /^Spark, then fuel/],
  [/^One cylinder clearly hotter/, /^Weak \(lean\), early or late/, /^Slides together/],
  [/^All too hot/, /^Late timing burns in the pipe; or weak/, /^Timing, then jets/],
];

it('each sign of the first start means what an engine does, and a dangerous one stops it', () => {
  const signs = signGroups.flatMap((group) => group.signs);
  expect(signs).toHaveLength(told.length);
  for (const { sign, means, first } of signs) {
    const found = told.filter(([words]) => words.test(sign));
    expect(found, sign).toHaveLength(1);
    expect(means, sign).toMatch(found[0]![1]);
    expect(first, sign).toMatch(found[0]![2]);
  }
});

it('an engine that runs away is stopped by switch, air and load, and the tap comes last of all', () => {
  const ways = [
    /^Switch off/,
    /board over every inlet/,
    /stall it/,
    /^Fuel tap shut/,
    /^Stand clear/,
  ];
  expect(runaway).toHaveLength(ways.length);
  ways.forEach((way, i) => expect(runaway[i]).toMatch(way));
  expect(runaway[3]).toMatch(/comes too late: .* leaner and faster as they empty/);
});

it('the list asks for every way to stop to be proved, and for nothing that an inlet can draw in', () => {
  const { items } = checklist.find(({ title }) => title.startsWith('Ways to stop'))!;
  const ways = [
    /^The switch: .*spark stops/,
    /^The air: .*falls shut/,
    /^The load: /,
    /^The fuel tap .*last way only/,
  ];
  expect(items).toHaveLength(ways.length);
  ways.forEach((way, i) => expect(items[i]).toMatch(way));
  expect(checklist.flatMap((part) => part.items).join(' ')).toMatch(
    /flat rigid board for each inlet.* No glove and no rag/,
  );
});
