import type { Clamp } from '../../common/clamp.js';

/** A clamp screw by its number, as drawing and hole table have it. */
interface ClampPlace {
  readonly label: string;
  readonly x: number;
  readonly height: number;
}

/** Clamp screws by their heights; halves have their twins on −X, which are counted on. */
export function clampPlaces({ offset, heights }: Clamp, halves: boolean): ClampPlace[] {
  return (halves ? [offset, -offset] : [offset]).flatMap((x, side) =>
    heights.map((height, i) => ({ label: `${side * heights.length + i + 1}`, x, height })),
  );
}
