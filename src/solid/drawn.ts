/** A point on the paper, x to the right and y upwards, mm of the part. */
export type PaperPoint = readonly [number, number];

/** A line of a drawing. Angles in degrees, counter-clockwise from the right. */
export type Drawn =
  | { readonly kind: 'path'; readonly points: readonly PaperPoint[]; readonly closed?: boolean }
  | { readonly kind: 'circle'; readonly center: PaperPoint; readonly radius: number }
  | {
      readonly kind: 'arc';
      readonly center: PaperPoint;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    };
