import { DRY_PRINT_MOST, FRICTION } from '../../mechanics/friction.js';
import { slidingSpeed } from '../../mechanics/sliding.js';
import { ROOM } from '../../mechanics/strength/plastic.js';
import { threadPressure } from '../../mechanics/thread/bearing-pressure.js';
import { type NutWarmth, nutWarmth, SKIN_TIME, skinWarmth, warmShare } from '../../mechanics/thread/friction-heat.js';
import { pressureVelocity } from '../../mechanics/thread/wear.js';
import { plain, worked } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { onceFor } from '../../units/once.js';
import type { Untold } from '../common/untold.js';
import type { NutDesign } from './dimensions.js';
import { rubbedHardest, worstTeeth } from './engagement.js';
import { sideOf } from './variants/twin-side.js';

/** Pressure and speed of the flanks while the axis runs, half the turns carrying. */
export interface Rubbing {
  readonly pressure: Measured;
  /** mm/s */
  readonly speed: number;
  /** MPa·m/s */
  readonly pv: Measured;
  /** N, all that rubs, of two threads that may carry alone on one */
  readonly force: number;
  readonly words: string;
}

export function speedOf({ screw, finished }: NutDesign, feed: number): number {
  return slidingSpeed({ feed, lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
}

export function rubbingOf(design: NutDesign, load: number, feed: number): Rubbing {
  const { name, value: pressure } = rubbedHardest(design, load);
  // what a lever presses sideways rubs on both threads, beside the load on one
  const force = worstTeeth(design, load, threadPressure).force + 2 * (sideOf(design, load)?.force ?? 0);
  const speed = speedOf(design, feed);
  const at = (value: number) => pressureVelocity({ pressure: value, slidingSpeed: speed });
  const pv = { least: at(pressure.least), likely: at(pressure.likely), most: at(pressure.most) };
  const words = `${worked(pressure.likely, 'MPa')} MPa${name} at ${plain(speed, 0)} mm/s`;
  return { pressure, speed, pv, force, words };
}

/** How the barrel around the thread warms. */
export function warmthOf({ finished: { body, thread, length }, material }: NutDesign): NutWarmth {
  return nutWarmth({
    outside: Math.min(body.across, body.flats ?? Infinity),
    bore: thread.pitchDiameter,
    length,
    density: material.density,
    heatCapacity: material.heatCapacity,
  });
}

/** An axis that is always in motion, as long as any, s. */
const NEVER_RESTS = { onTime: 3600, cycle: 3600 };

/** How long the axis runs in one go and from start to start, where that is told. */
export function timesOf({ moving, on_time: onTime, cycle }: NutDesign['duty']) {
  if (cycle === undefined) return moving === 1 ? NEVER_RESTS : undefined;
  const on = onTime ?? (moving === undefined ? undefined : moving * cycle);
  return on === undefined ? undefined : { onTime: on, cycle };
}

/** What friction warms, over the air [K]. */
export interface FrictionWarmth {
  readonly friction: number;
  /** the skin of the flanks over the nut, at the end of a run */
  readonly skin: number;
  /** the nut itself, at most: screw and carriage take no heat from it */
  readonly mean: number;
  /** how many times that, where friction is the highest that a dry print may reach */
  readonly reached: number;
}

/** What friction warms under a load and a feed; without times told as if it ran all the time. */
export function frictionWarmth(design: NutDesign, { pv, force, speed }: Rubbing): FrictionWarmth {
  const { duty } = design;
  const dry = duty.grease !== 'greased';
  const friction = dry ? FRICTION.high : FRICTION.nominal;
  const times = timesOf(duty);
  const { time, perWatt } = warmthOf(design);
  const share = times ? warmShare({ ...times, time }) : 1;
  const onTime = Math.min(SKIN_TIME, times?.onTime ?? SKIN_TIME);
  return {
    friction,
    skin: skinWarmth({ friction, pressureVelocity: pv.likely, onTime }),
    mean: (share * perWatt * friction * force * speed) / 1000,
    reached: dry ? DRY_PRINT_MOST / FRICTION.high : 1,
  };
}

/** The law of strength ends here, where every plastic is soft, °C. */
const HOTTEST = 250;

/** How warm the teeth are by which their strength is judged, °C. */
export interface TeethHeat {
  readonly at: number;
  readonly words: string;
  /** what else than the air warms them, as a further part of a sentence; empty where nothing does */
  readonly warmed: string;
}

/**
 * How warm the teeth of a nut get in work.
 *
 *     T = T_air + ΔT_nut + ΔT_skin
 *
 * Teeth are thin: by its diffusivity, 0.15 mm²/s, heat goes through a millimetre of plastic in two seconds (t = x²/(4·a)), so after a run
 * they are as warm to their roots as the skin of their flanks, and no core stays cool. Plastic that carries for years creeps while it is
 * warm, and what a jam finds has just run: so all of their strength is judged at the end of a run, at the friction that is likely. A dry print
 * may rub harder yet; what it melts by is judged where the flanks are. Without a feed, or without a load, nothing is known of friction, and
 * the air counts; room where it is not told.
 */
export const teethHeat = onceFor((design: NutDesign): TeethHeat => {
  const { load, feed, temperature } = design.duty;
  const air = temperature ?? ROOM;
  if (load === undefined || feed === undefined) return { at: air, words: `at ${plain(air, 0)} °C`, warmed: '' };
  const { skin, mean } = frictionWarmth(design, rubbingOf(design, load, feed));
  const at = Math.min(HOTTEST, air + mean + skin);
  const warm = `at ${plain(at, 0)} °C`;
  if (at - air < 0.5) return { at, words: warm, warmed: '' };
  const by = `friction warms its teeth in air of ${plain(air, 0)} °C`;
  return { at, words: `${warm}, to which ${by}`, warmed: `, and ${by}` };
});

/** How much friction warms the barrel of a nut over the air [K]. */
export interface BodyHeat {
  /** where screw and carriage take their share of the heat */
  readonly likely: number;
  /** where they take none: the teeth are judged by it, and all that bears beside them */
  readonly whole: number;
  /** the same where friction is the highest that a dry print may reach */
  readonly most: number;
}

/** What is left of the warmth of a nut whose screw and carriage take heat from it: somewhere between none and all. @source derived */
const SHARED_HEAT = 0.5;

/**
 * How much friction warms the barrel of a nut, whose lumped heat is the same from thread to outside: see `nutWarmth`.
 *
 *     ΔT = f·F·v·s/(h·A)     ΔT/2 likely     ΔT·f_most/f at most
 *
 * f friction that is likely, f_most that of a dry print at worst, F force that rubs [N], v sliding speed [m/s], s share by the rests told,
 * h·A loss to free air [W/K]. None is counted of a bought nut, which rubs on metal, nor where load or feed is not told.
 */
export const bodyHeat = onceFor((design: NutDesign): BodyHeat => {
  const { load, feed } = design.duty;
  if (load === undefined || feed === undefined || design.family?.kind === 'holder')
    return { likely: 0, whole: 0, most: 0 };
  const { mean, reached } = frictionWarmth(design, rubbingOf(design, load, feed));
  return { likely: SHARED_HEAT * mean, whole: mean, most: reached * mean };
});

/** Less is not told of, K. */
const NOTICED = 0.5;

/** The same nut where it is warmer by so much, in the room where nobody tells the air. */
export function warmer(design: NutDesign, by: number): NutDesign {
  if (by < NOTICED) return design;
  const { temperature = ROOM } = design.duty;
  return { ...design, duty: { ...design.duty, temperature: Math.min(HOTTEST, temperature + by) } };
}

/** The rests of the axis, which cool its nut: as much as can be where nobody tells how long it runs. */
export const UNTOLD_RESTS: readonly Untold<NutDesign>[] = [
  { field: 'duty.on_time', milder: (design) => (isTold(design, 'on_time', 'moving') ? undefined : restedLong(design)) },
  { field: 'duty.cycle', milder: (design) => (isTold(design, 'cycle') ? undefined : restedLong(design)) },
];

function isTold({ duty }: NutDesign, ...fields: readonly ('on_time' | 'moving' | 'cycle')[]): boolean {
  // what never rests has no cycle
  return duty.feed === undefined || duty.moving === 1 || fields.some((field) => duty[field] !== undefined);
}

/** The same nut where friction has all the time to cool. */
const restedLong = onceFor((design: NutDesign): NutDesign => {
  const { feed: _, ...duty } = design.duty;
  return { ...design, duty };
});
