import { torqueForPreload } from '../../mechanics/bolt/preload.js';
import type { Material } from '../../presets/material.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import type { HardwareRow } from '../part-kind.js';
import { crackCautions } from './cautions.js';
import type { Clamp } from './clamp.js';
import { clampPreload, type Grip } from './grip.js';
import { capScrews, WASHER } from './hardware-names.js';
import { nextSetScrewLength } from './screw-length.js';
import type { SetScrewPocket } from './set-screw-pocket.js';

/** A grip as it is bought and tightened. */
export interface HeldGrip {
  readonly grip: Grip;
  readonly outside: number;
  readonly clamp?: Clamp;
  /** whether the clamp has its twin across the axis */
  readonly halves?: boolean;
  readonly setScrew?: SetScrewPocket;
  /** of the bore, on the set screw's side */
  readonly far: number;
}

/** What to buy for a grip. */
export function gripHardware({ clamp, halves = false, setScrew, outside, far }: HeldGrip): HardwareRow[] {
  const rows: HardwareRow[] = [];
  if (clamp) {
    const count = (halves ? 2 : 1) * clamp.heights.length;
    rows.push(
      capScrews(clamp.screw, clamp.screwLength, count),
      { item: 'hexagon nut ISO 4032', size: clamp.screw, count },
      ...(clamp.washers ? [{ item: WASHER, size: clamp.screw, count: 2 * count }] : []),
    );
  }
  if (setScrew) {
    const length = nextSetScrewLength(outside / 2 - far);
    rows.push(
      { item: 'set screw ISO 4026', size: `${setScrew.screw}x${plain(length)}`, count: 1 },
      setScrew.joint === 'nut'
        ? { item: 'hexagon nut ISO 4032', size: setScrew.screw, count: 1 }
        : { item: 'heat-set insert', size: setScrew.screw, count: 1 },
    );
  }
  return rows;
}

/** Rows of one item and size counted together. */
export function counted(rows: readonly HardwareRow[]): HardwareRow[] {
  const kept: { item: string; size: string; count: number }[] = [];
  for (const row of rows) {
    const known = kept.find(({ item, size }) => item === row.item && size === row.size);
    if (known) known.count += row.count;
    else kept.push({ ...row });
  }
  return kept;
}

/** How hard to tighten, in words; nothing where there is no clamp. */
export function tighteningWords(grip: Grip, material: Material): string[] {
  if (!grip.clamp) return [];
  const { screw, washers } = grip.clamp;
  const { force, heldBy } = clampPreload(grip.clamp, material, grip.tightening);
  const torque = torqueForPreload({ preload: force, diameter: fastenerThread(screw).diameter });
  const seat = washers ? 'washers' : heldBy;
  const under = heldBy === 'tightening' ? 'the screw' : `${material.name} under the ${seat}`;
  const driver = washers ? ', and hold the nut with a nut driver' : '';
  return [
    `Tighten each ${screw} clamp screw to ${plain(torque / 1000, 2)} N·m and no more${driver}: ${under} bears ${plain(force, 0)} N.`,
  ];
}

/** The line that lets a second tightening count. */
export const TIGHTEN_AGAIN =
  'Tighten the clamp screws again once: cold, after the first hot day, to the same torque. The grip counts on it.';

/** What is done to shafts before they are clamped. */
export const WASH = 'Wash shaft and bore free of grease before they are clamped.';

/** How it is seen that a clamp screw works loose. */
export const PAINT =
  'Clamp screws work loose as the plastic gives: mark heads and hub with a line of paint, and look at it now and then.';

/** What locks clamp screws in place of a threadlocker. */
export const PREVAILING = 'Prevailing-torque nuts on the clamp screws hold them.';

const MARK_SET_SCREWS = 'Mark set screws with a line of paint, and look at it now and then.';

/** What clamped plastic asks for over its life; the line on retightening stands here only where it is counted on. */
export function clampCareWords(
  grips: readonly Grip[],
  { material, retighten }: { readonly material: Material; readonly retighten: boolean },
): string[] {
  if (!grips.some(({ clamp }) => clamp))
    return crackCautions(material, ...(grips.some(({ setScrew }) => setScrew) ? [MARK_SET_SCREWS] : []));
  return [...(retighten ? [TIGHTEN_AGAIN] : []), WASH, PAINT, ...crackCautions(material, PREVAILING)];
}
