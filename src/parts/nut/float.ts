import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { type Measured, sum } from '../../units/measured.js';
import { type Float, type FloatStop, floatBacklash, floatIn, floatOf, NONE } from '../common/float.js';
import { holeResidual } from '../common/residual.js';
import type { Holes, NutDesign } from './nut-design.js';
import type { NutSheet } from './sheet.js';

/**
 * How a nut floats, where its sheet says so.
 * @throws InputError it has no screws to float on
 */
export function nutFloat({ float, holes, flange, body }: NutSheet, notes: Assumptions): Float | undefined {
  if (!float) return undefined;
  if (!holes?.screw) throw fault('holes.screw', '', 'is missing; a floating nut slides on its screws');
  const thickness = flange?.thickness ?? body.length;
  const hole = holes.diameter?.value;
  return floatOf(
    float,
    { field: 'float', screw: holes.screw, thickness, ...(hole === undefined ? {} : { hole }) },
    notes,
  );
}

/** The sheet with holes that leave its sleeves their float, where it does not state their size. */
export function withFloatHoles(sheet: NutSheet, { pin, sideways }: Float, notes: Assumptions): NutSheet {
  if (!sheet.holes || sheet.holes.diameter) return sheet;
  const value = pin + 2 * sideways;
  notes.note('holes.diameter', value, `${plain(pin)} mm that stand in it, and the float to either side`);
  return { ...sheet, holes: { ...sheet.holes, diameter: { value } } };
}

/** @throws InputError its holes are no clearance holes, or a single one lets it turn */
export function requireFloatHoles({ joint, centres }: Holes): void {
  if (joint !== 'through') throw fault('holes.joint', joint, 'must be through: a floating nut slides on its sleeves');
  if (centres.length < 2)
    throw fault(
      'holes.count',
      centres.length,
      'must be 2 or more, so that its screws keep a floating nut from turning',
    );
}

interface Floating {
  readonly float: Float;
  readonly holes: Holes;
  readonly material: Material;
  readonly printer: Printer;
}

/** How far it may go until its screws stop it, as its holes come out. */
export function stopOf({ float, holes, material, printer }: Floating): FloatStop {
  const hole = sum(holes.diameter, holeResidual({ material, printer }, holes.diameter.likely));
  return {
    sideways: floatIn(hole, float.pin),
    radius: Math.max(...holes.centres.map((centre) => Math.hypot(...centre))),
  };
}

/** Travel that its float costs when the load reverses; none where it does not float. */
export function lostByFloat({ float, holes, screw, material, printer }: NutDesign): Measured {
  return float && holes ? floatBacklash(float.along, stopOf({ float, holes, material, printer }), screw.lead) : NONE;
}
