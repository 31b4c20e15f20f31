import { type Check, hard, notJudged, soft, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { DRY_PRINT_WORDS } from '../../../mechanics/friction.js';
import { ROOM } from '../../../mechanics/strength/plastic.js';
import { warmShare } from '../../../mechanics/thread/friction-heat.js';
import { bearablePv, GREASE } from '../../../mechanics/thread/wear.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, scaled } from '../../../units/measured.js';
import { slidingLimits } from '../../common/sliding-limits.js';
import type { NutDesign } from '../dimensions.js';
import { longer } from '../engagement.js';
import { frictionWarmth, rubbingOf, speedOf, timesOf, warmthOf } from '../warmth.js';

type NutCheck = Check<NutDesign>;
const rubbing = { group: 'wear', question: 'holds', source: 'common practice' } as const;

/** Figures from here on are those of POM and PA, which have been published; lower ones are cautious guesses. */
const PUBLISHED_PV = 0.1;

/** PV in motion may be so much above what is borne on average, whatever the rests. @source derived */
const PEAK = 3;

/** Field without which rubbing cannot be judged. */
function missingOf({ duty }: NutDesign): string | undefined {
  return (['load', 'feed'] as const).find((field) => duty[field] === undefined);
}

/** What the material bears, greased as told, in the air as told. */
function bearable({ duty, material }: NutDesign): number {
  return bearablePv({
    dry: material.pvLimit,
    grease: GREASE[greaseOf(duty)],
    temperature: duty.temperature ?? ROOM,
    standingLimit: material.standingLimit,
  });
}

function greaseOf({ grease, regrease }: NutDesign['duty']): keyof typeof GREASE {
  if (grease !== 'greased') return 'dry';
  return regrease === 'yes' ? 'kept' : 'once';
}

function bearsWords(design: NutDesign, most: number): string {
  const greased = { dry: 'dry', once: 'greased once', kept: 'kept greased' }[greaseOf(design.duty)];
  const temperature = design.duty.temperature ?? ROOM;
  return `${design.material.name} bears ${worked(most, 'MPa')} MPa·m/s ${greased} in air of ${plain(temperature, 0)} °C`;
}

/** A nut that rubs too hard and too fast melts. */
export const wearPv: NutCheck = {
  ...rubbing,
  id: 'wear-pv',
  title: 'Pressure times sliding speed',
  unit: 'MPa·m/s',
  moves: 'duty.load, duty.feed, duty.on_time, duty.cycle, duty.grease, duty.regrease, body.length, material',
  run: (design, limits) => {
    const missing = missingOf(design);
    if (missing !== undefined) return notJudged(`duty.${missing}`);
    const { duty, material } = design;
    const { pv, words } = rubbingOf(design, duty.load!, duty.feed!);
    const { time } = warmthOf(design);
    const times = timesOf(duty);
    const share = times ? warmShare({ ...times, time }) : 1;
    const lasting = scaled(pv, share);
    const most = bearable(design);
    const isPublished = material.pvLimit >= PUBLISHED_PV;
    const own = times ? soft({ max: most }, { max: isPublished ? most : PEAK * most }) : soft({ max: most });
    const inForce = limits.of(own);
    const fails = !keeps(lasting.likely, inForce.fail ?? {});
    if (duty.temperature === undefined && !fails) return notJudged('duty.temperature');
    const rests = times
      ? `, running ${plain(times.onTime, 0)} s of every ${plain(times.cycle, 0)} s: ${plain(100 * share, 0)} % of that by the nut’s own time of ${plain(time, 0)} s`
      : ', as if it ran all the time';
    const cure = keeps(lasting.likely, inForce.pass)
      ? ''
      : times
        ? `; ${longer(design)}, less load or feed, longer rests`
        : `; tell duty.on_time and duty.cycle to have its rests counted, its own time is ${plain(time, 0)} s`;
    return valued(lasting, `${words}${rests}; ${bearsWords(design, inForce.pass.max!)}${cure}`, own);
  },
};

/** What no rest excuses: the flanks melt while they run. */
export const wearPeak: NutCheck = {
  ...rubbing,
  id: 'wear-peak',
  title: 'Pressure × speed, running',
  unit: 'MPa·m/s',
  moves: 'duty.load, duty.feed, duty.grease, body.length, material',
  run: (design, limits) => {
    const missing = missingOf(design);
    if (missing !== undefined) return notJudged(`duty.${missing}`);
    const { duty } = design;
    const { pv, words } = rubbingOf(design, duty.load!, duty.feed!);
    const own = hard({ max: PEAK * bearable(design) });
    const { pass } = limits.of(own);
    const holds = keeps(pv.likely, pass);
    if (duty.temperature === undefined && holds) return notJudged('duty.temperature');
    const cure = holds ? '' : `; ${longer(design)}, less load, a slower feed or a coarser lead`;
    return valued(
      pv,
      `${words}; at most ${worked(pass.max!, 'MPa')} MPa·m/s while it runs, however long it rests${cure}`,
      own,
    );
  },
};

/** Flanks that slide too fast heat in a moment, however light the load. */
export const wearSpeed: NutCheck = {
  ...rubbing,
  id: 'wear-speed',
  title: 'Sliding speed of the flanks',
  unit: 'mm/s',
  moves: 'duty.feed, screw.lead, material',
  run: (design, limits) => {
    const { duty, material } = design;
    if (duty.feed === undefined) return notJudged('duty.feed');
    const speed = speedOf(design, duty.feed);
    const { usual, most } = slidingLimits(material);
    const own = soft({ max: usual }, { max: most });
    const { pass, fail } = limits.of(own);
    const cure = keeps(speed, pass) ? '' : '; a slower feed or a coarser lead';
    return valued(
      exactly(speed),
      `${plain(speed, 0)} mm/s at ${plain(duty.feed)} mm/s of feed; ${material.name} slides up to ${plain(pass.max!, 0)} mm/s, and never above ${plain(fail!.max!, 0)}${cure}`,
      own,
    );
  },
};

/** The skin of the flanks is hotter than the nut, and the nut hotter than the air. */
export const wearHeat: NutCheck = {
  ...rubbing,
  id: 'wear-heat',
  title: 'Temperature of the flanks',
  unit: '°C',
  moves: 'duty.temperature, duty.load, duty.feed, duty.grease, duty.on_time, duty.cycle, body.length, material',
  run: (design, limits) => {
    const missing = missingOf(design);
    if (missing !== undefined) return notJudged(`duty.${missing}`);
    const { duty, material } = design;
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    const rubs = rubbingOf(design, duty.load!, duty.feed!);
    const { friction, skin, mean, reached } = frictionWarmth(design, rubs);
    const times = timesOf(duty);
    const own = hard({ max: material.standingLimit });
    const { pass } = limits.of(own);
    const flanks = duty.temperature + skin;
    const tell = times ? '' : ', and tell duty.on_time and duty.cycle';
    const hottest = duty.temperature + reached * (skin + mean);
    const cure = keeps(hottest, pass)
      ? ''
      : `; a slower feed, less load, grease, or a plastic that bears more heat${tell}`;
    const rests = times ? 'with the rests told' : 'without a rest';
    return valued(
      { least: flanks, likely: flanks, most: hottest },
      `air of ${plain(duty.temperature, 0)} °C and ${plain(skin, 1)} K on the skin at friction ${friction}${reached > 1 ? ` (${DRY_PRINT_WORDS})` : ''}, ${rubs.words}; the nut itself warms by up to ${plain(mean, 0)} K ${rests}, if screw and carriage take no heat from it; ${material.name} bears ${plain(pass.max!, 0)} °C${cure}`,
      own,
    );
  },
};
