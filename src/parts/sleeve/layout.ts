import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { type Bore, boreFor, boreReach, fitted, noteUntoldFlat, roomyBoreFor, type Shaft } from '../common/bore.js';
import { borePlay } from '../common/bore-play.js';
import { chooseClamp, clampWords, leastRadiusFor } from '../common/choose-clamp.js';
import { clampHeights, fitClamp, leastClampRadius, SLIT_WIDTH } from '../common/clamp.js';
import type { Grip, GripLife } from '../common/grip.js';
import { type GripDemand, gripLimits } from '../common/grip-demand.js';
import { holdFigures } from '../common/hold-figures.js';
import type { SleevePlan } from './plan.js';
import type { SleeveSheet } from './sheet.js';
import type { SleeveEnd } from './sleeve-end.js';

/** Figures that a sleeve starts from where its sheet does not say, mm. @source common-practice */
const D = {
  chamfer: 0.4,
  boreClearance: 0.1,
  /** a bush slides into its bore with this on the diameter, and closes on the shaft */
  bushClearance: 0.1,
  bushSlit: 1,
  engagement: 1.6,
  web: 1.2,
  step: 1,
};

/** A sleeve laid out at finished sizes. */
export interface Laid {
  readonly plan: SleevePlan;
  readonly ends: readonly SleeveEnd[];
}

/**
 * A slit bush between a shaft and a bore that is too large for it.
 * @throws InputError no wall is left
 */
export function layOutBush(sheet: SleeveSheet, shaft: Shaft, assumptions: Assumptions): Laid {
  const bore = boreFor(shaft, D.boreClearance);
  const outside = sheet.bore! - D.bushClearance;
  const reach = boreReach(bore).most;
  const wall = outside / 2 - reach;
  if (wall < 0.4)
    throw fault(
      'bore',
      `${plain(sheet.bore!)} mm`,
      `must be above ${plain(2 * (reach + 0.4) + D.bushClearance)} mm to leave a wall around the shaft`,
    );
  assumptions.note('fit', D.bushClearance, 'clearance of bush and shaft, and of bore and bush, on the diameter');
  const length = assumptions.or<number>(
    sheet.length,
    'length',
    Math.ceil(2 * shaft.diameter.likely),
    'two shaft diameters',
  );
  const chamfer = Math.min(D.chamfer, wall / 4, length / 4);
  const plan: SleevePlan = {
    outside,
    length,
    chamfer,
    slit: Math.min(D.bushSlit, 1.2 * reach),
    bores: [{ bore, depth: length }],
    step: 0,
    clamps: [],
  };
  return { plan, ends: [] };
}

interface ClampTask {
  readonly motor: Shaft;
  readonly screw: Shaft;
  readonly demand: GripDemand;
  readonly life: GripLife & { readonly material: Material };
  readonly printer: Printer;
}

/** An end before the outside is known. */
interface Wish {
  readonly name: SleeveEnd['name'];
  readonly field: 'motor_end' | 'screw_end';
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly bore: Bore;
  readonly grip: Grip & { readonly clamp: NonNullable<Grip['clamp']> };
  readonly length: number;
}

/**
 * A rigid clamp sleeve: the thinner shaft below, so that its stop prints without support, the thicker one above.
 * @throws InputError the outside or the length holds no clamp
 */
export function layOutClamp(sheet: SleeveSheet, task: ClampTask, assumptions: Assumptions): Laid {
  const wishes = [
    wishFor(sheet, 'motor_end', task.motor, task, assumptions),
    wishFor(sheet, 'screw_end', task.screw, task, assumptions),
  ];
  const [lower, upper] = wishes.sort((a, b) => boreReach(a.bore).most - boreReach(b.bore).most) as [Wish, Wish];
  const least = Math.max(
    ...wishes.map(({ bore, grip }) => leastClampRadius(boreReach(bore), grip.clamp.screw, grip.clamp.washers)),
  );
  const outside = assumptions.or<number>(
    sheet.outside_diameter,
    'outside_diameter',
    2 * least,
    'the least that holds both bores and clamps',
  );
  if (outside < 2 * least - 1e-9)
    throw fault(
      'outside_diameter',
      `${plain(outside)} mm`,
      `must be at least ${plain(2 * least)} mm for its clamp screws`,
    );
  const web = D.web + D.step;
  const depth = ({ shaft, length }: Wish) => Math.max(length, Math.ceil(2 * D.engagement * shaft.diameter.likely) / 2);
  const usual = Math.ceil(2 * (depth(lower) + depth(upper) + web)) / 2;
  const length = assumptions.or<number>(sheet.length, 'length', usual, 'both clamps, and 1.6 shaft diameters engaged');
  const shortest = lower.length + upper.length + web;
  if (length < shortest)
    throw fault('length', `${plain(length)} mm`, `must be at least ${plain(shortest)} mm for both clamps`);
  const spare = (length - web - depth(lower) - depth(upper)) / 2;
  const lowerDepth = Math.max(lower.length, depth(lower) + spare);
  const upperDepth = length - web - lowerDepth;
  if (upperDepth < upper.length)
    throw fault(
      'length',
      `${plain(length)} mm`,
      `must be at least ${plain(lowerDepth + upper.length + web)} mm for both clamps`,
    );
  const clampAt = ({ bore, grip: { clamp } }: Wish, place: (height: number) => number) => ({
    ...fitClamp({ radius: outside / 2, bore: boreReach(bore), slit: SLIT_WIDTH }, clamp.screw, clamp.washers)!,
    heights: clampHeights(clamp.screw, clamp.count, clamp.washers).heights.map(place),
  });
  const inEnd = ({ name, shaft, bore }: Wish, depth: number) => {
    const shaftField = name === 'motor end' ? 'motor.shaft' : sheet.shaft ? 'shaft' : 'turned_end';
    noteUntoldFlat(shaft, shaftField, depth, assumptions);
    const bored = Math.min(depth, shaft.length ?? Infinity);
    return fitted(shaft, bore, { depth: bored, bored });
  };
  const [low, high] = [inEnd(lower, lowerDepth), inEnd(upper, upperDepth)];
  const plan: SleevePlan = {
    outside,
    length,
    chamfer: D.chamfer,
    slit: SLIT_WIDTH,
    bores: [
      { bore: low.bore, depth: lowerDepth },
      { bore: high.bore, depth: upperDepth },
    ],
    step: Math.min(D.step, 0.25 * lower.bore.diameter),
    clamps: [clampAt(lower, (height) => height), clampAt(upper, (height) => length - height)],
  };
  const end = ({ name, clearance, grip }: Wish, shaft: Shaft, held: number): SleeveEnd => {
    const reach = shaft.length ?? Infinity;
    return { name, shaft, clearance, grip, engagement: Math.min(held, reach), reach };
  };
  return { plan, ends: [end(lower, low.shaft, lowerDepth), end(upper, high.shaft, upperDepth)] };
}

function wishFor(
  sheet: SleeveSheet,
  field: 'motor_end' | 'screw_end',
  shaft: Shaft,
  { demand, life, printer }: ClampTask,
  assumptions: Assumptions,
): Wish {
  const own = sheet[field] ?? {};
  const { material } = life;
  const { clearance, ...rubs } = holdFigures(own, { field, shaft, clamped: true, material }, assumptions);
  const bore = roomyBoreFor(shaft, clearance);
  const base: Grip = { ...rubs, ...(own.tightening === undefined ? {} : { tightening: own.tightening }) };
  const clamp = chooseClamp({
    shaft,
    bore,
    play: borePlay({ clearance, shaft, bore }, { material, printer }).most,
    torque: gripLimits(demand).pass.min!,
    life,
    web: false,
    grip: base,
    ...(sheet.outside_diameter === undefined ? {} : { radius: sheet.outside_diameter / 2 }),
    engagement: (screws) => Math.max(screws, D.engagement * shaft.diameter.likely),
    given: own.clamp ?? {},
  });
  if (!clamp)
    throw fault(
      'outside_diameter',
      `${plain(sheet.outside_diameter!)} mm`,
      `must be at least ${plain(2 * leastRadiusFor(bore, own.clamp?.screw, own.clamp?.washers === 'yes'))} mm for a clamp screw beside a bore of ${plain(bore.diameter)} mm`,
    );
  if (own.clamp?.screw === undefined)
    assumptions.note(
      `${field}.clamp`,
      clampWords(clamp),
      'the smallest that holds the torque, or the strongest of the usual ones',
    );
  const { length } = clampHeights(clamp.screw, clamp.count, clamp.washers);
  return {
    name: field === 'motor_end' ? 'motor end' : 'screw end',
    field,
    shaft,
    clearance,
    bore,
    grip: { ...base, clamp },
    length,
  };
}
