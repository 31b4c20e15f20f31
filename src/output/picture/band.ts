/** Fine pixels of a band of rows: colour and nearness, transparent where nothing was met. */
export interface PaintLayer {
  readonly width: number;
  /** the picture's rows from here are in the band */
  readonly top: number;
  /** up to and without this one */
  readonly bottom: number;
  /** columns that something may be met in; all others stay as they are */
  readonly columns: Columns;
  readonly colour: Uint8Array;
  readonly depth: Float32Array;
  /** the same, but for cut faces, which lie in the section plane; without a section it is `depth` itself */
  readonly seen: Float32Array;
}

/** From a column up to and without another. */
export interface Columns {
  readonly from: number;
  readonly to: number;
}

/** A layer of so many rows that can be used for one band after the other. */
export function newLayer(width: number, rows: number, columns: Columns, isCut: boolean): PaintLayer {
  const depth = new Float32Array(width * rows).fill(-Infinity);
  const seen = isCut ? depth.slice() : depth;
  return { width, top: 0, bottom: rows, columns, colour: new Uint8Array(4 * width * rows), depth, seen };
}

/** The same memory for the band between two rows, with nothing met yet. */
export function cleared(layer: PaintLayer, top: number, bottom: number): PaintLayer {
  const { width, columns, colour, depth, seen } = layer;
  for (let row = 0; row < bottom - top; row++) {
    const from = row * width + columns.from;
    const to = row * width + columns.to;
    colour.fill(0, 4 * from, 4 * to);
    depth.fill(-Infinity, from, to);
    if (seen !== depth) seen.fill(-Infinity, from, to);
  }
  return { ...layer, top, bottom };
}

/** Keeps of each pixel what is seen nearest. */
export function layTogether(under: PaintLayer, over: PaintLayer): void {
  const { width, columns } = over;
  for (let row = 0; row < under.bottom - under.top; row++) {
    for (let at = row * width + columns.from; at < row * width + columns.to; at++) {
      if (over.seen[at]! <= under.seen[at]!) continue;
      under.seen[at] = over.seen[at]!;
      under.depth[at] = over.depth[at]!;
      for (let i = 4 * at; i < 4 * at + 4; i++) under.colour[i] = over.colour[i]!;
    }
  }
}

/** Darkens pixels beside which the surface falls away, outermost rows and columns aside: outlines and steps become readable. */
export function ink({ width, top, bottom, columns, colour, seen: depth }: PaintLayer, scale: number): void {
  const step = 10 / scale;
  const first = Math.max(1, columns.from);
  const last = Math.min(width - 2, columns.to - 1);
  for (let row = 1; row < bottom - top - 1; row++) {
    for (let column = first; column <= last; column++) {
      const at = row * width + column;
      const here = depth[at]!;
      if (here === -Infinity) continue;
      const across = Math.min(depth[at - 1]!, depth[at + 1]!);
      const down = Math.min(depth[at - width]!, depth[at + width]!);
      const beyond = here - Math.min(across, down);
      if (beyond < step) continue;
      // a steep flank falls evenly on both sides and is no edge
      const rise = Math.max(depth[at - 1]!, depth[at + 1]!, depth[at - width]!, depth[at + width]!) - here;
      if (rise > 0.6 * beyond) continue;
      for (let i = 0; i < 3; i++) colour[4 * at + i] = 0.45 * colour[4 * at + i]!;
    }
  }
}

/** Lays a layer that lets the one below shine through over it. */
export function blend(under: PaintLayer, over: PaintLayer, opacity: number): void {
  const { width, columns, colour } = over;
  const ground = under.colour;
  for (let row = 0; row < over.bottom - over.top; row++) {
    const end = 4 * (row * width + columns.to);
    for (let at = 4 * (row * width + columns.from); at < end; at += 4) {
      if (colour[at + 3] === 0) continue;
      const below = (1 - opacity) * (ground[at + 3]! / 255);
      const alpha = opacity + below;
      for (let i = 0; i < 3; i++) ground[at + i] = (opacity * colour[at + i]! + below * ground[at + i]!) / alpha;
      ground[at + 3] = 255 * alpha;
    }
  }
}
