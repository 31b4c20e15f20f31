/** Fine pixels of a band of rows: colour and nearness, transparent where nothing was met. */
export interface PaintLayer {
  readonly width: number;
  /** the picture's rows from here are in the band */
  readonly top: number;
  /** up to and without this one */
  readonly bottom: number;
  readonly colour: Uint8Array;
  readonly depth: Float32Array;
  /** the same, but for cut faces, which lie in the section plane; without a section it is `depth` itself */
  readonly seen: Float32Array;
}

/** A layer of so many rows that can be used for one band after the other. */
export function newLayer(width: number, rows: number, isCut: boolean): PaintLayer {
  const depth = new Float32Array(width * rows);
  const seen = isCut ? new Float32Array(width * rows) : depth;
  return { width, top: 0, bottom: rows, colour: new Uint8Array(4 * width * rows), depth, seen };
}

/** The same memory for the band between two rows, with nothing met yet. */
export function cleared(layer: PaintLayer, top: number, bottom: number): PaintLayer {
  layer.colour.fill(0);
  layer.depth.fill(-Infinity);
  if (layer.seen !== layer.depth) layer.seen.fill(-Infinity);
  return { ...layer, top, bottom };
}

/** Keeps of each pixel what is seen nearest. */
export function layTogether(under: PaintLayer, over: PaintLayer): void {
  for (let at = 0; at < under.seen.length; at++) {
    if (over.seen[at]! <= under.seen[at]!) continue;
    under.seen[at] = over.seen[at]!;
    under.depth[at] = over.depth[at]!;
    for (let i = 4 * at; i < 4 * at + 4; i++) under.colour[i] = over.colour[i]!;
  }
}

/** Darkens pixels beside which the surface falls away, outermost rows and columns aside: outlines and steps become readable. */
export function ink({ width, top, bottom, colour, seen: depth }: PaintLayer, scale: number): void {
  const step = 10 / scale;
  for (let row = 1; row < bottom - top - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
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
  for (let at = 0; at < under.colour.length; at += 4) {
    if (over.colour[at + 3] === 0) continue;
    const below = (1 - opacity) * (under.colour[at + 3]! / 255);
    const alpha = opacity + below;
    for (let i = 0; i < 3; i++) {
      under.colour[at + i] = (opacity * over.colour[at + i]! + below * under.colour[at + i]!) / alpha;
    }
    under.colour[at + 3] = 255 * alpha;
  }
}
