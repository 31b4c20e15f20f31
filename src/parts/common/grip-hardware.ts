import { torqueForPreload } from '../../mechanics/bolt/preload.js';
import type { Material } from '../../presets/material.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import type { HardwareRow } from '../part-kind.js';
import type { Clamp } from './clamp.js';
import { clampPreload, type Grip } from './grip.js';
import { nextSetScrewLength } from './screw-length.js';
import type { SetScrewPocket } from './set-screw-pocket.js';

/** A grip as it is bought and tightened. */
export interface HeldGrip {
  readonly grip: Grip;
  readonly outside: number;
  readonly clamp?: Clamp;
  readonly setScrew?: SetScrewPocket;
  /** of the bore, on the set screw's side */
  readonly far: number;
}

/** What to buy for a grip. */
export function gripHardware({ clamp, setScrew, outside, far }: HeldGrip): HardwareRow[] {
  const rows: HardwareRow[] = [];
  if (clamp) {
    const count = clamp.heights.length;
    rows.push(
      { item: 'socket cap screw ISO 4762', size: `${clamp.screw}x${plain(clamp.screwLength)}`, count },
      { item: 'hexagon nut ISO 4032', size: clamp.screw, count },
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

/** How hard to tighten, in words; undefined where the sheet says it, or there is no clamp. */
export function tighteningWords(grip: Grip, material: Material): string | undefined {
  if (!grip.clamp || grip.tightening !== undefined) return undefined;
  const { force, heldBy } = clampPreload(grip.clamp.screw, material);
  const torque = torqueForPreload({ preload: force, diameter: fastenerThread(grip.clamp.screw).diameter });
  const under = heldBy === 'tightening' ? 'the screw' : `${material.name} under the ${heldBy}`;
  return `Tighten each ${grip.clamp.screw} clamp screw to ${plain(torque / 1000, 2)} N·m and no more: ${under} bears ${plain(force, 0)} N. Tighten again after a day, when the plastic has crept.`;
}
