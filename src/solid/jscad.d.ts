// The parts of @jscad/modeling in use, taken by file: the whole package costs 40 ms at the start, these 5 ms.

declare module '@jscad/modeling/src/operations/expansions/offsetFromPoints.js' {
  interface OffsetOptions {
    delta: number;
    corners: 'edge' | 'chamfer' | 'round';
    segments?: number;
    closed: boolean;
  }
  export default function offsetFromPoints(options: OffsetOptions, points: [number, number][]): [number, number][];
}

declare module '@jscad/modeling/src/text/vectorText.js' {
  /** strokes of a text, each a polyline; ASCII only */
  export default function vectorText(options: { height: number }, text: string): [number, number][][];
}
