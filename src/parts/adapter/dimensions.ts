import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import type { CarriedDuty, Pull } from '../../sheet/sections/duty.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { CATCH_GAP } from '../common/bought-nut.js';
import { type Float, floatOf } from '../common/float.js';
import { noteLift } from '../common/lifted.js';
import { pullsOf } from '../common/load-cases.js';
import { type PrintSizes, printSizes, TRUE_SIZES } from '../common/print-sizes.js';
import type { Roof } from '../common/roof.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { withJoints } from './choose-joints.js';
import { leavesWhole } from './cutouts.js';
import { inputOf } from './input.js';
import { type Layout, type LayoutInput, layout } from './layout.js';
import { named } from './names.js';
import { insideEdge, plateOutline } from './plan.js';
import { requireSense } from './require-sense.js';
import { insideFlangeOf } from './seated-nut.js';
import type { AdapterSheet } from './sheet.js';
import { type CarriageSide, carriageSide, type NutSide, nutSide, type Registers, registersOf } from './sides.js';

/** A metal nut that takes over if the working one fails. */
export interface CatchNut {
  readonly acrossFlats: number;
  readonly height: number;
  readonly gap: number;
}

/** An adapter, worked out. */
export interface AdapterDesign extends DesignBase {
  readonly part: 'adapter';
  readonly kind: 'joined' | 'floating' | 'blank';
  readonly input: LayoutInput;
  readonly layout: Layout;
  readonly nut?: NutSide;
  readonly carriage: CarriageSide;
  readonly registers: Registers;
  /** how a floating nut floats: sideways each way, and on what */
  readonly float?: number;
  readonly spacers?: Float;
  readonly hold?: 'screws' | 'keys';
  readonly screw?: Screw;
  readonly catchNut?: CatchNut;
  /** from the carriage's face to the face that the flange lies on */
  readonly seatHeight: number;
  readonly material: Material;
  readonly printer: Printer;
  readonly duty: CarriedDuty;
  /** ways in which the standing load must be borne */
  readonly pulls: readonly Pull[];
  readonly calipers: number;
}

/**
 * What stands in the holes of a floating nut; undefined where no listed screw passes them.
 * @throws InputError its holes are tapped, or break out of its flange and would not stop it
 */
function spacersOf(sheet: AdapterSheet, nut: NutSide, notes: Assumptions): Float | undefined {
  if (nut.tapped)
    throw fault('nut.thread', 'tapped', 'must be clear: a floating nut slides on what stands in its holes');
  const { screw, diameter, centres } = nut.pattern;
  const rim = Math.min(...centres.map(insideFlangeOf(nut.flange))) - diameter.likely / 2;
  if (rim <= 0)
    throw fault(
      'nut.holes',
      `${plain(-rim)} mm out of the flange`,
      'must lie inside it: they are what stops a floating nut',
    );
  if (!screw) return undefined;
  const about = { field: 'float', screw, thickness: nut.flangeThickness, hole: diameter.likely };
  return floatOf(sheet.float ?? {}, about, notes);
}

/**
 * Works an adapter out from its sheet: outline, bore, registers, joints, and the turn between the two patterns.
 * @throws InputError values that contradict each other or cannot be a plate
 */
export function designAdapter(sheet: AdapterSheet, presets: PresetTexts): AdapterDesign {
  const notes = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, notes);
  const kind = notes.or<AdapterDesign['kind']>(sheet.kind, 'kind', 'joined', 'a plate that joins nut and carriage');
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, notes);
  const nut = nutSide(sheet, calipers, notes);
  const carriage = carriageSide(sheet, calipers, notes);
  const registers = registersOf(sheet, nut, notes);
  const hold = kind === 'floating' ? notes.or(sheet.hold, 'hold', 'screws', 'through the holes of the nut') : undefined;
  const spacers = hold === 'screws' ? spacersOf(sheet, nut!, notes) : undefined;
  const float =
    kind === 'floating'
      ? (spacers?.sideways ?? notes.or<number>(sheet.float?.sideways, 'float.sideways', 0.3, 'enough for a bent screw'))
      : undefined;
  const sizes = printSizes(material, printer);
  const roof = roofIn(printer, sizes);
  const known = withJoints(sheet, { nut, carriage, registers, float, hold, screw, ...(roof ? { roof } : {}) }, notes);
  const input = inputOf(sheet, known, notes);
  requireSense(sheet, input);
  const laid = layout(input);
  if (!leavesWhole(laid.plate))
    throw fault('plate.cutouts', '', 'must leave the plate in one piece: each may cross its edge once');
  const seatHeight = seatOf(input);
  const duty = sheet.duty ?? {};
  const pulls = pullsOf(duty, undefined, notes);
  noteLift(duty, notes);
  return {
    part: 'adapter',
    name: sheet.name,
    kind,
    input,
    layout: laid,
    ...(known.nut ? { nut: known.nut } : {}),
    carriage: known.carriage,
    registers,
    ...(float === undefined ? {} : { float }),
    ...(hold === undefined ? {} : { hold }),
    ...(spacers ? { spacers } : {}),
    ...(screw ? { screw } : {}),
    ...(sheet.catch_nut
      ? {
          catchNut: {
            acrossFlats: sheet.catch_nut.across_flats.value,
            height: sheet.catch_nut.height.value,
            gap: sheet.catch_nut.gap ?? CATCH_GAP.usual,
          },
        }
      : {}),
    seatHeight,
    material,
    printer,
    duty,
    pulls,
    calipers,
    dimensions: { finished: named(laid, seatHeight, TRUE_SIZES), printed: named(laid, seatHeight, sizes) },
    assumptions: notes.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

/** How pockets on the bed are roofed; the layer as the finished height that prints as one. */
function roofIn({ bridging, layer }: Printer, { along }: PrintSizes): Roof | undefined {
  return bridging === 'none' ? undefined : { kind: bridging, layer: layer / along(1) };
}

function seatOf({ nut, thickness, outerStep, innerStep }: LayoutInput): number {
  if (nut?.seat === 'carriage') return innerStep?.depth ?? 0;
  return thickness - (nut ? (outerStep?.depth ?? 0) : 0);
}

/** Least distance of the plate's corners to the edge of the room it may take; negative outside, unlimited where none is stated. */
export function roomLeft({ carriage, layout: { plate } }: Pick<AdapterDesign, 'carriage' | 'layout'>): number {
  if (!carriage.room) return Infinity;
  const inside = insideEdge({ outline: { shape: 'polygon', corners: carriage.room }, flats: [] });
  const corners = plateOutline(plate, undefined, 0.02).map(inside);
  const edge = insideEdge(plate);
  return Math.min(...corners, ...carriage.room.map((corner) => -edge(corner)));
}
