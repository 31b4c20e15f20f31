import type { Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { clipped } from '../../solid/convex.js';
import { circleOutline, hexagonOutline, type Outline, rectangleOutline, sidesFor } from '../../solid/outline.js';
import { parallelKey } from '../../standards/shafts/parallel-key.js';
import { fault } from '../../units/faults.js';
import { plain, rounded } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import type { PrintSizes } from './print-sizes.js';
import { formOf, type SHAFT_FORMS, type ShaftSheet } from './shaft-section.js';

/** Form of a shaft's section, and of the bore for it. */
export type ShaftForm = (typeof SHAFT_FORMS)[number];

/** A shaft as it was measured. */
export interface Shaft {
  readonly form: ShaftForm;
  /** over the round; of a hexagon across its corners */
  readonly diameter: Measured;
  /** D: from the flat to the far side; two flats and hexagon: across flats */
  readonly across?: Measured;
  /** keyway in the hub */
  readonly key?: { readonly width: number; readonly depth: number };
  readonly flatLength?: number;
  /** free length that can enter the hub */
  readonly length?: number;
  /** the field that would tell it, where nobody does: enough is counted */
  readonly lengthField?: string;
  /** a screw that is held over its crests */
  readonly crests?: true;
  /** of a screw whose crests nobody measured: as thin as its class allows, or thinner still */
  readonly thinnest?: number;
}

/** A bore for a shaft, its flat or keyway on −X. Sizes of one kind: finished or printed. */
export interface Bore {
  readonly form: ShaftForm;
  readonly diameter: number;
  readonly across?: number;
  readonly key?: { readonly width: number; readonly depth: number };
  /** from the mouth inwards, where its flats begin: up to there it is round; of a D and of two flats */
  readonly flatFrom?: number;
}

/** Play that a flat has more than the round, so that the round still centres the shaft, mm. @source common-practice */
const FLAT_PLAY = 0.075;

/** Left round behind a flat, where its cutter ran out, mm. @source common-practice */
const RUN_OUT = 0.5;

/** Flats of which less lies in the bore are left out of it, in diameters: they would be crushed. @source common-practice */
const LEAST_FLAT = 1;

/** Reads a shaft from its sheet; a keyway follows the diameter where it is not given. */
export function resolveShaft(sheet: ShaftSheet, field: string, calipers: number, assumptions: Assumptions): Shaft {
  const form = formOf(sheet);
  const across = sheet.flat ?? sheet.flats ?? sheet.across_flats;
  const more = {
    ...(across ? { across: measured(across, calipers) } : {}),
    ...(sheet.flat_length === undefined ? {} : { flatLength: sheet.flat_length }),
    ...(sheet.length === undefined ? { lengthField: `${field}.length` } : { length: sheet.length }),
  };
  if (form === 'hexagon') return { form, diameter: cornersOf(measured(across!, calipers)), ...more };
  const diameter = measured(sheet.diameter!, calipers);
  if (form !== 'keyed') return { form, diameter, ...more };
  const key = sheet.key ? { width: sheet.key.width, depth: sheet.key.hub_depth } : keyFor(diameter.likely, field);
  if (!sheet.key) assumptions.note(`${field}.key.width`, key.width, 'parallel key of DIN 6885 by the diameter');
  return { form, diameter, key, ...more };
}

function cornersOf({ least, likely, most }: Measured): Measured {
  const corner = 2 / Math.sqrt(3);
  return { least: least * corner, likely: likely * corner, most: most * corner };
}

function keyFor(diameter: number, field: string): { width: number; depth: number } {
  if (!(diameter > 6)) throw fault(`${field}.diameter`, `${diameter} mm`, 'must be above 6 mm for a parallel key');
  const { width, hubDepth } = parallelKey(diameter);
  return { width, depth: hubDepth };
}

/** A round shaft of a diameter, such as a screw over its crests. */
export function roundShaft(diameter: Measured, length?: number): Shaft {
  return { form: 'round', diameter, ...(length === undefined ? {} : { length }) };
}

/** The finished bore for a shaft with a diametral clearance. */
export function boreFor(shaft: Shaft, diametralClearance: number): Bore {
  const { form, across, key } = shaft;
  const flatPlay = form === 'hexagon' ? diametralClearance : Math.max(diametralClearance, FLAT_PLAY);
  return {
    form,
    diameter: rounded(shaft.diameter.likely + diametralClearance),
    ...(across
      ? { across: rounded(across.likely + (form === 'd' ? (diametralClearance + flatPlay) / 2 : flatPlay)) }
      : {}),
    ...(key ? { key } : {}),
  };
}

/** The bore for a shaft of which nobody knows yet how far it goes in: it may have to be round at its mouth. */
export function roomyBoreFor(shaft: Shaft, diametralClearance: number): Bore {
  const isFlat = shaft.form === 'd' || shaft.form === 'double-d';
  const bore = boreFor(shaft, diametralClearance);
  return isFlat && shaft.flatLength !== undefined ? { ...bore, flatFrom: 0 } : bore;
}

/** A shaft in its bore: how far it goes in from the mouth, and how long the bore is. */
interface Inserted {
  readonly depth: number;
  readonly bored: number;
}

/**
 * A shaft, and the bore for it, that goes in further than its flats are long: there the bore is round, or all along where too little of
 * them lies in it. Of a flat or key, what lies in the bore counts: it is told from the end of the shaft, which may stand out of the bore.
 */
export function fitted(shaft: Shaft, roomy: Bore, { depth, bored }: Inserted): { shaft: Shaft; bore: Bore } {
  const { form, flatLength } = shaft;
  const { flatFrom: _from, ...bore } = roomy;
  if (flatLength === undefined) return { shaft, bore };
  const from = Math.max(0, depth - flatLength);
  if (form !== 'd' && form !== 'double-d') return { shaft: { ...shaft, flatLength: Math.max(0, bored - from) }, bore };
  const flatFrom = from > 0 ? rounded(from + RUN_OUT) : 0;
  if (bored - flatFrom < LEAST_FLAT * shaft.diameter.likely) return withoutFlats(shaft, bore);
  return {
    shaft: { ...shaft, flatLength: bored - flatFrom },
    bore: { ...bore, ...(flatFrom > 0 ? { flatFrom } : {}) },
  };
}

/** A round shaft, and the bore for it, in place of one whose flats are not to be used. */
function withoutFlats(shaft: Shaft, bore: Bore): { shaft: Shaft; bore: Bore } {
  const { across: _, flatLength: _none, ...plain } = shaft;
  return { shaft: { ...plain, form: 'round' }, bore: { form: 'round', diameter: bore.diameter } };
}

/**
 * The same where flats are told that do not reach all through a bore, which may stand anywhere on its shaft: that is round all along.
 */
export function fittedThrough(shaft: Shaft, roomy: Bore, length: number): { shaft: Shaft; bore: Bore } {
  const { flatFrom: _from, ...bore } = roomy;
  const isFlat = shaft.form === 'd' || shaft.form === 'double-d';
  return isFlat && (shaft.flatLength ?? length) < length - 1e-9 ? withoutFlats(shaft, bore) : { shaft, bore };
}

/** A flat of which nobody tells how long it is reaches as far as its shaft goes in: that is listed. */
export function noteUntoldFlat(
  { form, flatLength }: Shaft,
  field: string,
  depth: number,
  assumptions: Assumptions,
): void {
  if (flatLength !== undefined || (form !== 'd' && form !== 'double-d')) return;
  assumptions.note(
    `${field}.flat_length`,
    plain(depth, 1),
    'mm, as far as the shaft goes in: behind a shorter one, which is to be told, the bore is round',
  );
}

/** The bore as it must stand in the file. */
export function printedBore(bore: Bore, sizes: PrintSizes): Bore {
  const { form, across, key, flatFrom } = bore;
  return {
    form,
    diameter: sizes.inside(bore.diameter),
    ...(across === undefined ? {} : { across: sizes.inside(across) }),
    ...(flatFrom === undefined ? {} : { flatFrom: sizes.along(flatFrom) }),
    ...(key === undefined
      ? {}
      : {
          key: {
            width: sizes.inside(key.width),
            depth: (sizes.inside(bore.diameter + 2 * key.depth) - sizes.inside(bore.diameter)) / 2,
          },
        }),
  };
}

/** Outlines whose union is the bore: one convex outline, and the keyway where there is one. */
export function boreOutlines(bore: Bore, chordError: number): readonly [Outline, ...Outline[]] {
  const { form, diameter, across, key } = bore;
  const radius = diameter / 2;
  if (form === 'hexagon') return [hexagonOutline({ acrossFlats: across!, turn: 30 })];
  const round = circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true });
  if (form === 'd') return [clipped(round, [-1, 0, across! - radius])];
  if (form === 'double-d') return [clipped(clipped(round, [-1, 0, across! / 2]), [1, 0, across! / 2])];
  if (!key) return [round];
  const reach = radius + key.depth;
  return [round, rectangleOutline({ size: [reach, key.width], center: [-reach / 2, 0] })];
}

/** How far a bore reaches from the axis on the side of a slit: along it, and over the corners beside it. */
export interface ReachBesideSlit {
  readonly slit: number;
  readonly corner: number;
}

/** How far the bore reaches from the axis: towards +X, where the slit is, and towards −X, where flat and keyway are. */
export function boreReach(bore: Bore): ReachBesideSlit & { readonly far: number; readonly most: number } {
  const radius = bore.diameter / 2;
  if (bore.form === 'hexagon') {
    const corner = bore.across! / Math.sqrt(3);
    return { slit: bore.across! / 2, corner, far: bore.across! / 2, most: corner };
  }
  const flat = bore.flatFrom === undefined ? bore.form : 'round';
  if (flat === 'double-d') return { slit: bore.across! / 2, corner: radius, far: bore.across! / 2, most: radius };
  if (flat === 'd') return { slit: radius, corner: radius, far: bore.across! - radius, most: radius };
  const far = radius + (bore.key?.depth ?? 0);
  return { slit: radius, corner: radius, far, most: bore.key ? Math.hypot(far, bore.key.width / 2) : radius };
}

/** The same of a round bore. */
export function roundReach(radius: number): ReachBesideSlit {
  return { slit: radius, corner: radius };
}

/** Flats that carry torque by themselves: their count, and how deep each is cut into the round. */
export function flatsOf({ form, diameter, across }: Shaft): { readonly count: number; readonly depth: number } {
  if (!across) return { count: 0, depth: 0 };
  const cut = diameter.likely - across.likely;
  if (form === 'd') return { count: 1, depth: cut };
  return { count: form === 'hexagon' ? 6 : 2, depth: cut / 2 };
}
