import { fault } from '../../units/faults.js';

/** Boundary dimensions of a deep-groove ball bearing [mm]. */
export interface DeepGroove {
  /** d */
  readonly bore: number;
  /** D */
  readonly outside: number;
  /** B, open; undefined where a shielded one is wider, so that it must be measured */
  readonly width?: number;
  /** widths met, where open and shielded ones differ */
  readonly widths?: readonly [open: number, shielded: number];
  /** r, least chamfer */
  readonly chamfer: number;
}

type Row = readonly [bore: number, outside: number, width: number, chamfer: number, shielded?: number];

/** Rows by designation: bore, outside, width, least chamfer, and the width with shields where that is another. */
const ROWS: Readonly<Record<string, Row>> = {
  '684': [4, 9, 2.5, 0.1, 4],
  '694': [4, 11, 4, 0.15],
  '604': [4, 12, 4, 0.2],
  '624': [4, 13, 5, 0.2],
  '685': [5, 11, 3, 0.15, 5],
  '695': [5, 13, 4, 0.2],
  '605': [5, 14, 5, 0.2],
  '625': [5, 16, 5, 0.3],
  '686': [6, 13, 3.5, 0.15, 5],
  '696': [6, 15, 5, 0.2],
  '606': [6, 17, 6, 0.3],
  '626': [6, 19, 6, 0.3],
  '687': [7, 14, 3.5, 0.15, 5],
  '697': [7, 17, 5, 0.3],
  '607': [7, 19, 6, 0.3],
  '627': [7, 22, 7, 0.3],
  '688': [8, 16, 4, 0.2, 5],
  '698': [8, 19, 6, 0.3],
  '608': [8, 22, 7, 0.3],
  '628': [8, 24, 8, 0.3],
  '689': [9, 17, 4, 0.2, 5],
  '699': [9, 20, 6, 0.3],
  '609': [9, 24, 7, 0.3],
  '629': [9, 26, 8, 0.3],
  '6800': [10, 19, 5, 0.3],
  '6900': [10, 22, 6, 0.3],
  '6000': [10, 26, 8, 0.3],
  '6200': [10, 30, 9, 0.6],
  '6801': [12, 21, 5, 0.3],
  '6901': [12, 24, 6, 0.3],
  '6001': [12, 28, 8, 0.3],
  '6201': [12, 32, 10, 0.6],
  '6802': [15, 24, 5, 0.3],
  '6902': [15, 28, 7, 0.3],
  '6002': [15, 32, 9, 0.3],
  '6202': [15, 35, 11, 0.6],
  '6803': [17, 26, 5, 0.3],
  '6903': [17, 30, 7, 0.3],
  '6003': [17, 35, 10, 0.3],
  '6203': [17, 40, 12, 0.6],
  '6804': [20, 32, 7, 0.3],
  '6904': [20, 37, 9, 0.3],
  '6004': [20, 42, 12, 0.6],
  '6204': [20, 47, 14, 1],
};

/** Every designation that is listed. */
export const DEEP_GROOVE_DESIGNATIONS: readonly string[] = Object.keys(ROWS).sort();

/**
 * Boundary dimensions of a deep-groove ball bearing by its designation; long forms (618/8, 61900) name the same.
 *
 * @param designation such as 608, 625, 6900
 * @returns bore, outside, width, least chamfer [mm]; no width where shielded bearings of that name are wider
 * @throws InputError the designation is not listed
 * @source iso-15: bores 4 to 20 of the series 68, 69, 60 and 62
 * @source memory: rows and chamfers that were not confirmed; widths of shielded bearings of the series 68
 * @example deepGroove('608').outside // 22 mm
 */
export function deepGroove(designation: string): DeepGroove {
  const closed = SHIELDED.test(designation.trim());
  const short = shortForm(designation.trim().replace(SHIELDED, ''));
  const row = Object.hasOwn(ROWS, short) ? ROWS[short] : undefined;
  if (!row)
    throw fault(
      'designation',
      designation,
      `is not listed: give bore, outside and width, or one of ${DEEP_GROOVE_DESIGNATIONS.join(', ')}`,
    );
  const [bore, outside, width, chamfer, shielded] = row;
  if (shielded === undefined) return { bore, outside, width, chamfer };
  if (closed) return { bore, outside, width: shielded, chamfer };
  return { bore, outside, widths: [width, shielded], chamfer };
}

/** Shields or seals on both sides, or on one, as they are written behind a designation. */
const SHIELDED = /[- ]*(?:2?Z|ZZ|2?RS)$/i;

/** Flange of the outer ring: its outside, and how thick it is [mm]. */
export interface RingFlange {
  readonly outside: number;
  readonly thickness: number;
}

/** Flanges by the designation behind the F; of the series 68 those of shielded bearings, which differ from open ones. */
const FLANGES: Readonly<Record<string, RingFlange>> = {
  '684': { outside: 10.3, thickness: 1 },
  '624': { outside: 15, thickness: 1 },
  '685': { outside: 12.5, thickness: 1 },
  '625': { outside: 18, thickness: 1 },
  '686': { outside: 15, thickness: 1.1 },
  '626': { outside: 22, thickness: 1.5 },
  '688': { outside: 18, thickness: 1.1 },
  '698': { outside: 22, thickness: 1.5 },
  '608': { outside: 25, thickness: 1.5 },
  '6800': { outside: 21, thickness: 1 },
  '6900': { outside: 25, thickness: 1.5 },
};

/**
 * Flange on the outer ring of a bearing whose designation begins with F.
 *
 * @param designation without its F, such as 608
 * @returns outside and thickness [mm]; undefined where it is not listed, so that it must be measured
 * @source memory: ISO 8443, not seen; flanges of the series 68 are those of shielded bearings
 * @example ringFlange('608').outside // 25 mm
 */
export function ringFlange(designation: string): RingFlange | undefined {
  const short = shortForm(designation.trim().replace(SHIELDED, ''));
  return Object.hasOwn(FLANGES, short) ? FLANGES[short] : undefined;
}

/** 618/8 is 688, 619/8 is 698, 61800 is 6800, 61900 is 6900. */
function shortForm(text: string): string {
  const small = /^61([89])\/(\d)$/.exec(text);
  if (small) return `6${small[1]}${small[2]}`;
  const large = /^61([89])(\d\d)$/.exec(text);
  return large ? `6${large[1]}${large[2]}` : text;
}

/** Shoulder height by the least chamfer of the bearing. @source memory: two pairs of a bearing list agree */
const SHOULDERS: readonly (readonly [chamfer: number, height: number])[] = [
  [0.1, 0.4],
  [0.15, 0.6],
  [0.2, 0.8],
  [0.3, 1.2],
  [0.6, 2.1],
  [1, 2.8],
];

/**
 * The widest opening whose shoulder still backs the outer ring.
 *
 *     Da = D − 2·h      h by the least chamfer r: 0.4 at 0.1, 0.6 at 0.15, 0.8 at 0.2, 1.2 at 0.3, 2.1 at 0.6, 2.8 at 1.0
 *
 * @param p.outside  D  outside of the bearing   [mm]  > 0
 * @param p.chamfer  r  its least chamfer        [mm]  > 0; between rows the next higher one, above the last that one
 * @returns Da [mm]
 * @source memory: shoulder heights of deep-groove ball bearings
 * @example widestShoulder({ outside: 35, chamfer: 0.6 }) // 30.8 mm
 */
export function widestShoulder({ outside, chamfer }: { readonly outside: number; readonly chamfer: number }): number {
  const [, height] = SHOULDERS.find(([r]) => r >= chamfer) ?? SHOULDERS.at(-1)!;
  return outside - 2 * height;
}

/** So much a printed opening may come out wider, mm. @source common-practice */
const SPREAD = 0.2;

/**
 * Opening that clears the inner ring and backs the outer one: a quarter of the section in from the outside, and clear of
 * the widest shoulder by what a print may miss.
 *
 *     Ds = min(D − 0.25·(D − d), Da − 0.2)
 *
 * @param p.bore     d  [mm]
 * @param p.outside  D  [mm]
 * @param p.chamfer  r  least chamfer [mm]
 * @returns Ds [mm]
 * @source common-practice
 * @example usualShoulder({ bore: 8, outside: 22, chamfer: 0.3 }) // 18.5 mm
 */
export function usualShoulder(bearing: {
  readonly bore: number;
  readonly outside: number;
  readonly chamfer: number;
}): number {
  const { bore, outside } = bearing;
  return Math.min(outside - 0.25 * (outside - bore), widestShoulder(bearing) - SPREAD);
}

/**
 * What turns with the inner ring reaches out to here at most: a seat that keeps wider clears it.
 *
 *     Di = d + 0.3·(D − d)
 *
 * @param p.bore     d  [mm]
 * @param p.outside  D  [mm]
 * @returns Di [mm]
 * @source common-practice
 * @example innerReach({ bore: 8, outside: 22 }) // 12.2 mm
 */
export function innerReach({ bore, outside }: { readonly bore: number; readonly outside: number }): number {
  return bore + 0.3 * (outside - bore);
}

/** By outside up to which it holds [mm]. */
const SHORT: readonly (readonly [outside: number, by: number])[] = [
  [18, 0.008],
  [30, 0.009],
  [50, 0.011],
  [80, 0.013],
];

/**
 * By how much the mean outside of a bearing of the normal class may be below its nominal size; it is never above.
 *
 * @param outside  D  nominal  [mm]  > 0; above the last row that one
 * @returns how much it may be short [mm]
 * @source memory: ISO 492, normal class, outer rings; a public introduction confirms the direction
 * @example outsideShort(22) // 0.009 mm
 */
export function outsideShort(outside: number): number {
  const [, by] = SHORT.find(([most]) => outside <= most) ?? SHORT.at(-1)!;
  return by;
}
