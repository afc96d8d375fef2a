import { demoJets } from '../../demo/jets.ts';
import { defineCalculator } from '../../frame/define.ts';
import { fixed } from '../../frame/text/format.ts';
import { circuitAt } from './circuits.ts';
import { compute, throttles } from './compute.ts';
import { groups, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'needle-and-clip',
  title: 'Needle, jet and clip by area',
  purpose:
    'The ring between needle and jet at each throttle and clip, what one groove changes, and two needles compared.',
  inHand: ['throttle', 'clip'],
  alsoCalled: ['jet needle', 'needle jet', 'clip position', 'annulus', 'needle taper', 'mid-range'],
  inputs,
  folded: [groups.second],
  results,
  restsOn,
  tables: {
    clips: {
      caption: 'The clip in each groove, throttle as given',
      rowHeading: 'Groove from the top',
      row: (v, index) => (index === v.clip ? `${String(index)} (now)` : String(index)),
    },
    throttles: {
      caption: 'Each eighth of throttle, clip as given',
      rowHeading: 'Throttle',
      row: (_, index) => `${String(throttles[index - 1]!)}%`,
      verdict: {
        heading: 'In charge',
        say: (_, __, index) => circuitAt(throttles[index - 1]!).name,
      },
    },
  },
  fieldOf: {
    jetBore: 'jet-bore',
    needleDiameter: 'needle-diameter',
    taper: 'taper',
    straight: 'straight',
    throttle: 'throttle',
    clip: 'clip',
    clips: 'clips',
  },
  compute,
  remarks: (v, computed) => [
    {
      about: 'which circuit is in charge',
      say: () => {
        const share = computed['needle-share'] as number;
        const { name } = circuitAt(v.throttle);
        return `At ${fixed(v.throttle, 0)} per cent of throttle the mixture is set by the ${name} (common practice); by area the ring counts for ${fixed(share, 0)} per cent and the main jet for the rest.`;
      },
    },
    {
      about: 'what one groove does',
      say: () =>
        (computed['annulus-per-clip'] as number) < 1e-9
          ? 'Here the parallel part is in the mouth, so that the clip changes nothing. Only a thicker or thinner needle, or another jet, does.'
          : v.clip >= v.clips
            ? 'The clip is in the lowest groove: it makes nothing richer any more. A thinner needle does.'
            : `One groove lower makes it ${fixed(computed['clip-percent'] as number, 1)} per cent richer here.`,
    },
  ],
  picture: Picture,
  ready: {
    caption: `Ring area of an invented carburettor: jet ${demoJets.needleJet} mm, needle ${demoJets.needle} mm tapering by ${demoJets.taper}° from a rise of ${demoJets.straight} mm, clip in groove ${demoJets.clip} of ${demoJets.clips}, slide travel ${demoJets.slideTravel} mm, main jet ${demoJets.main} mm`,
    vary: 'throttle',
    over: [...throttles],
    show: ['annulus', 'annulus-per-clip', 'clip-percent', 'needle-share'],
  },
  care: 'Petrol runs out: tap shut, no flame or spark.',
  cautions: [
    'Petrol runs out when a slide or needle jet comes out. Engine off and cool, tap shut, no flame or spark, a tin below.',
    'The slide comes off its cable to move a clip, and goes back a little different: bring all slides together after it.',
    'See that the slide goes down freely and by itself before the engine is started again: one that sticks open runs the engine away.',
  ],
  limits: [
    'The ring is taken round and the needle in its middle. A needle that leans on the jet passes a little more for the same area, and a worn, oval jet has more area than its bore says.',
    'Areas are compared, not flows. Ring and hole are taken to pass fuel alike for their area; air bled in below the needle and the shroud round the jet change all throttles together.',
    'Throttle is lift of the slide, not turn of the grip, and not the load on the engine.',
    'Which circuit is in charge where is common practice, and fades over from one to the next.',
  ],
  articles: ['needles-and-jets-by-area', 'which-circuit-at-which-throttle'],
});
