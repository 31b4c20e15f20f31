import { MaxRectsPacker, type Packed } from 'maxrects-packer/dist/maxrects-packer.mjs';
import { fault } from '../units/faults.js';

/** A bed to be filled  [mm]. */
export interface Bed {
  readonly width: number;
  readonly depth: number;
}

/** A body to be placed, as often as it is wanted. */
export interface PlateItem {
  /** key of the body, the same for equal ones */
  readonly body: string;
  /** what the piece is called on the plate */
  readonly label: string;
  readonly material: string;
  /** true where it is printed the other way up than it lies in its file */
  readonly turnOver: boolean;
  /** the way up that it is printed [mm] */
  readonly bounds: readonly [readonly number[], readonly number[]];
  readonly count: number;
}

/** A piece on a plate: the body turned over or not, turned by 0 or 90 degrees about its axis, then moved. */
export interface PlacedPiece {
  readonly body: string;
  readonly label: string;
  readonly turnOver: boolean;
  readonly turned: boolean;
  readonly move: readonly [number, number, number];
}

export interface Plate {
  readonly material: string;
  readonly pieces: readonly PlacedPiece[];
}

/** A plate as the manifest lists it. */
export interface PlateRow {
  readonly file: string;
  readonly material: string;
  readonly pieces: readonly { readonly label: string; readonly count: number }[];
}

/** Room between pieces and around them, for brims and for the nozzle  [mm]. */
export const PLATE_GAP = 5;
const MOST_PIECES = 20_000;

/**
 * Reads `220x180`, a bed in mm.
 * @throws InputError not of that form, or no bed
 * @example parseBed('220x180') // { width: 220, depth: 180 }
 */
export function parseBed(text: string): Bed {
  const [, width, depth] = (/^\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*$/i.exec(text) ?? []).map(Number);
  const isBed =
    width !== undefined && depth !== undefined && Math.min(width, depth) >= 30 && Math.max(width, depth) <= 5000;
  if (!isBed) throw fault('--plates', text, 'must be a bed of 30 to 5000 mm such as 220x220');
  return { width, depth };
}

/**
 * Lays pieces out on as few beds as the packing finds, each of one material, 5 mm apart and off the edges.
 *
 * @param items bodies with how many of each
 * @param bed the bed
 * @returns the plates, and what is larger than the bed
 * @throws InputError more than 20,000 pieces
 */
export function layOut(items: readonly PlateItem[], bed: Bed): { plates: Plate[]; tooLarge: PlateItem[] } {
  const pieces = items.reduce((sum, { count }) => sum + count, 0);
  if (pieces > MOST_PIECES) throw fault('--plates', pieces, `at most ${MOST_PIECES} pieces can be laid out in one run`);
  const fits = (item: PlateItem) => {
    const [w, d] = sizeOf(item).map((side) => side + 2 * PLATE_GAP);
    return (w! <= bed.width && d! <= bed.depth) || (d! <= bed.width && w! <= bed.depth);
  };
  const materials = [...new Set(items.map(({ material }) => material))].sort();
  const plates = materials.flatMap((material) =>
    packed(
      items.filter((item) => item.material === material && fits(item)),
      bed,
    ).map((placed) => ({ material, pieces: placed })),
  );
  return { plates, tooLarge: items.filter((item) => !fits(item)) };
}

function sizeOf({ bounds: [low, high] }: PlateItem): readonly [number, number] {
  return [high[0]! - low[0]!, high[1]! - low[1]!];
}

function packed(items: readonly PlateItem[], bed: Bed): PlacedPiece[][] {
  const packer = new MaxRectsPacker<Laid>(bed.width - PLATE_GAP, bed.depth - PLATE_GAP, 0, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: true,
  });
  const rectangles = items.flatMap((item) => {
    const [width, depth] = sizeOf(item);
    return Array.from({ length: item.count }, () => ({
      width: width + PLATE_GAP,
      height: depth + PLATE_GAP,
      x: 0,
      y: 0,
      rot: false,
      item,
    }));
  });
  packer.addArray(rectangles);
  return packer.bins.map((bin) => bin.rects.map((rect) => placed(rect)));
}

interface Laid extends Packed {
  readonly item: PlateItem;
}

function placed({ x, y, rot = false, item }: Laid): PlacedPiece {
  const [low, high] = item.bounds;
  // a quarter turn takes (x, y) to (−y, x)
  const left = rot ? -high[1]! : low[0]!;
  const front = rot ? low[0]! : low[1]!;
  return {
    body: item.body,
    label: item.label,
    turnOver: item.turnOver,
    turned: rot,
    move: [x + PLATE_GAP - left, y + PLATE_GAP - front, -low[2]!],
  };
}
