/** Crest tolerances and deviation of one pitch [µm], grade 6. */
export interface MetricPitchRow {
  /** es of position e, below 0; the standard gives none for the finest pitches */
  readonly e: number | undefined;
  readonly f: number;
  readonly g: number;
  /** Td */
  readonly screwMajor: number;
  /** TD1 */
  readonly nutMinor: number;
}

/**
 * By pitch [mm]: es of e, f and g, Td, TD1. g and Td of 0.5 to 1 confirmed, the rest from memory, in step with the
 * formulas of the standard but for e and f of some pitches, which the table rounds its own way.
 */
export const METRIC_PITCH_ROWS: ReadonlyMap<number, MetricPitchRow> = new Map(
  (
    [
      [0.35, undefined, -34, -19, 85, 100],
      [0.4, undefined, -34, -19, 95, 112],
      [0.45, undefined, -35, -20, 100, 125],
      [0.5, -50, -36, -20, 106, 140],
      [0.6, -53, -36, -21, 125, 160],
      [0.7, -56, -38, -22, 140, 180],
      [0.75, -56, -38, -22, 140, 190],
      [0.8, -60, -38, -24, 150, 200],
      [1, -60, -40, -26, 180, 236],
      [1.25, -63, -42, -28, 212, 265],
      [1.5, -67, -45, -32, 236, 300],
      [1.75, -71, -48, -34, 265, 335],
      [2, -71, -52, -38, 280, 375],
      [2.5, -80, -58, -42, 335, 450],
      [3, -85, -63, -48, 375, 500],
      [3.5, -90, -70, -53, 425, 560],
      [4, -95, -75, -60, 475, 600],
      [4.5, -100, -80, -63, 500, 670],
      [5, -106, -85, -71, 530, 710],
      [5.5, -112, -90, -75, 560, 750],
      [6, -118, -95, -80, 600, 800],
    ] as const
  ).map(([pitch, e, f, g, screwMajor, nutMinor]) => [pitch, { e, f, g, screwMajor, nutMinor }]),
);

/** Diameter ranges [mm], over and up to. */
export const METRIC_RANGES: readonly (readonly [over: number, to: number])[] = [
  [1.4, 2.8],
  [2.8, 5.6],
  [5.6, 11.2],
  [11.2, 22.4],
  [22.4, 45],
  [45, 90],
];

/**
 * [over, pitch, Td2, TD2] of grade 6 [mm, mm, µm, µm]. Td2 and TD2 of M3, M4, M5 confirmed, the rest from memory.
 */
export const METRIC_PAIR_ROWS: readonly (readonly [number, number, number, number])[] = [
  [2.8, 0.35, 67, 90],
  [2.8, 0.5, 75, 100],
  [2.8, 0.6, 85, 112],
  [2.8, 0.7, 90, 118],
  [2.8, 0.75, 90, 118],
  [2.8, 0.8, 95, 125],
  [5.6, 0.75, 100, 132],
  [5.6, 1, 112, 150],
  [5.6, 1.25, 118, 160],
  [5.6, 1.5, 132, 180],
  [11.2, 1, 118, 160],
  [11.2, 1.25, 132, 180],
  [11.2, 1.5, 140, 190],
  [11.2, 1.75, 150, 200],
  [11.2, 2, 160, 212],
  [11.2, 2.5, 170, 224],
  [22.4, 1, 125, 170],
  [22.4, 1.5, 150, 200],
  [22.4, 2, 170, 224],
  [22.4, 3, 200, 265],
  [22.4, 3.5, 212, 280],
  [22.4, 4, 224, 300],
  [22.4, 4.5, 236, 315],
  [45, 1.5, 160, 212],
  [45, 2, 180, 236],
  [45, 3, 212, 280],
  [45, 4, 236, 315],
  [45, 5, 250, 335],
  [45, 5.5, 265, 355],
  [45, 6, 280, 375],
];
