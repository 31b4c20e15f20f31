import { type Check, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { slidingPerTravel } from '../../../mechanics/sliding.js';
import { threadPressure } from '../../../mechanics/thread/bearing-pressure.js';
import { wearDepth } from '../../../mechanics/thread/wear.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, type Measured, scaled, shifted, smallest } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';
import { longer, worstTeeth } from '../engagement.js';
import { fitFigures } from '../fit-figures.js';
import { boreGrowth, isHeld } from '../stack.js';

type NutCheck = Check<NutDesign>;
const wear = { group: 'wear', question: 'holds', source: 'common practice' } as const;

const TRAVEL = 100_000;
/** Wear that a user notices as play: half the backlash that is usual on a light axis. */
const NOTICED = 0.05;

/** Grit counts tenfold: rates in print differ by so much, and it puts them at the top. @source derived */
const GRIT = 10;

/** A nut is worn out when so much of its tooth is gone. @source common-practice */
const WORN_SHARE = 0.25;

/** Wear adds to the backlash. */
export const wearDepthCheck: NutCheck = {
  ...wear,
  id: 'wear-depth',
  title: 'Flank wear in 100 m',
  unit: 'mm',
  moves: 'duty.load, duty.dust, body.length, material',
  run: (design, limits) => {
    const { duty, material } = design;
    if (material.wear === undefined) return undefined;
    if (duty.load === undefined) return notJudged('duty.load');
    const depth = scaled(wornAway(design, material.wear, duty.load), duty.dust === 'yes' ? GRIT : 1);
    const until =
      depth.likely > 0
        ? `; ${plain((0.1 * TRAVEL) / (1000 * depth.likely), 0)} m until the play has grown by 0.1 mm`
        : '';
    const own = soft({ max: NOTICED }, { max: 3 * NOTICED });
    const cure = allKeep(depth, limits.of(own).pass)
      ? ''
      : `; ${longer(design)}, a plastic that wears less, or less load`;
    return valued(
      depth,
      `${plain(depth.likely, 4)} mm off the flanks, measured dry, ${dustWords(duty)}${until}${cure}`,
      own,
    );
  },
};

/** Depth that 100 m of travel take off the flanks, half the turns carrying. */
function wornAway(design: NutDesign, wearRate: number, load: number): Measured {
  const { finished, screw } = design;
  const perTravel = slidingPerTravel({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
  const { value } = worstTeeth(design, load, threadPressure);
  const at = (pressure: number) => wearDepth({ wearRate, pressure, slidingDistance: TRAVEL * perTravel });
  return { least: at(value.least), likely: at(value.likely), most: at(value.most) };
}

function dustWords({ dust }: NutDesign['duty']): string {
  if (dust === 'yes') return `grit counted ${GRIT} times`;
  return dust === 'no' ? 'no grit about' : 'clean; grit would multiply it (duty.dust)';
}

/**
 * A worn tooth lets go all at once.
 *
 *     growth = 0.25 · (pitch − width of the nut's groove)
 */
export const wearLimit: NutCheck = {
  ...wear,
  id: 'wear-limit',
  title: 'Growth of play when worn out',
  unit: 'mm',
  limits: soft({ min: 0.1 }),
  moves: 'screw.pitch, fit.axial, catch_nut',
  run: (design, { pass }) => {
    const { duty, finished, catchPocket, material } = design;
    const { pitch, grooveWidth } = finished.thread;
    const quarter = WORN_SHARE * (pitch - grooveWidth);
    const drops =
      duty.axis === 'horizontal'
        ? ''
        : catchPocket
          ? '; the catch nut takes over when it fails'
          : '; worn through it drops the axis, and no catch nut stands by (catch_nut)';
    const rate = material.wear === undefined ? `; nobody has measured how fast ${material.name} wears here` : '';
    const fine = keeps(quarter, pass) ? '' : '; that is too little for calipers: use a dial';
    return valued(
      exactly(quarter),
      `replace it when its play has grown by ${plain(quarter, 2)} mm; look every month, ${dustWords(duty)}${rate}${drops}${fine}`,
    );
  },
};

/** Grit beds in plastic and laps the steel. */
export const wearDust: NutCheck = {
  ...wear,
  id: 'wear-dust',
  title: 'Grit around the screw',
  unit: '',
  moves: 'duty.dust',
  run: ({ duty }) =>
    duty.dust === 'yes'
      ? told(
          'caution',
          'grit beds in the plastic and laps the screw: cover the screw, wipe it before greasing, and look at the play every week',
        )
      : undefined,
};

/** Some plastics crack under stress in oil. */
export const greaseCheck: NutCheck = {
  ...wear,
  id: 'grease',
  title: 'Grease on this plastic',
  unit: '',
  moves: 'duty.grease, material',
  run: ({ duty, material }) => {
    if (!material.stressCracks) return undefined;
    if (duty.grease === 'greased')
      return told(
        'caution',
        `${material.name} cracks under stress in oil: grease of silicone or PFPE alone, tried on a test piece; no spray, no solvent`,
      );
    return told('pass', `${material.name} runs dry; keep oil, solvent and threadlocker off it`);
  },
};

/** A nut that fits dry may bind when it has taken up moisture. */
export const moistureCheck: NutCheck = {
  ...wear,
  id: 'moisture',
  question: 'turns',
  title: 'Clearance left in moist air',
  unit: 'mm',
  limits: soft({ min: 0.05 }),
  moves: 'fit.diametral, fit.axial, carriage.bore, body.diameter, body.length, material',
  run: (design, { pass }) => {
    const { material, finished } = design;
    if (material.moistureGrowth === 0) return undefined;
    const { diametral, play } = fitFigures({ ...design, effects: { ...design.effects, moisture: false } });
    const bore = boreGrowth(design);
    const growth = material.moistureGrowth * finished.length;
    const held = isHeld(design);
    const how = held
      ? `closes by ${worked(-bore, 'mm')} mm if its body is held all around`
      : `opens by ${worked(bore, 'mm')} mm as nothing holds the body`;
    const left = smallest(shifted(diametral, bore), shifted(play, -growth));
    const cure = allKeep(left, pass)
      ? ''
      : '; a shorter nut, a larger fit.axial and fit.diametral, or a plastic that takes up less water';
    return valued(
      left,
      `the bore ${how}, the pitch drifts by ${worked(growth, 'mm')} mm over the nut; ${worked(left.likely, 'mm')} mm are left, measured two days after printing${cure}`,
    );
  },
};
