/** Deviations and crest tolerances of one pitch [µm]. */
export interface PitchRow {
  /** fundamental deviation of the screw, position e */
  readonly e: number;
  /** fundamental deviation of the screw, position c */
  readonly c: number;
  /** Td, tolerance of the screw major, grade 4 */
  readonly screwMajor: number;
  /** TD1, tolerance of the nut minor, grade 4 */
  readonly nutMinor: number;
}

/**
 * By pitch [mm]. Td and position c confirmed to 12 mm; position e confirmed for 1.5, 2, 3, 4, from memory above;
 * TD1 from memory; the row 14 wholly from memory.
 */
export const PITCH_ROWS: ReadonlyMap<number, PitchRow> = new Map(
  (
    [
      [1.5, -67, -140, 150, 190],
      [2, -71, -150, 180, 236],
      [3, -85, -170, 236, 315],
      [4, -95, -190, 300, 375],
      [5, -106, -212, 335, 450],
      [6, -118, -236, 375, 500],
      [7, -125, -250, 425, 560],
      [8, -132, -265, 450, 630],
      [9, -140, -280, 500, 670],
      [10, -150, -300, 530, 710],
      [12, -170, -335, 600, 800],
      [14, -180, -355, 670, 900],
    ] as const
  ).map(([pitch, e, c, screwMajor, nutMinor]) => [pitch, { e, c, screwMajor, nutMinor }]),
);

/** Pitch diameter tolerances of a diameter range and pitch [µm], grades 7, 8, 9. */
export interface PairRow {
  readonly over: number;
  readonly to: number;
  readonly pitch: number;
  /** Td2 */
  readonly screw: readonly [number, number, number];
  /** TD2 */
  readonly nut: readonly [number, number, number];
}

function pair(
  ...[over, to, pitch, s7, s8, s9, n7, n8, n9]: [number, number, number, number, number, number, number, number, number]
): PairRow {
  return { over, to, pitch, screw: [s7, s8, s9], nut: [n7, n8, n9] };
}

/**
 * Td2 of grade 7 confirmed for pitch 1.5, 2, 3 (5.6 to 11.2) and 2, 3, 4 (11.2 to 22.4); all other figures from memory,
 * agreeing with the steps of the standard. Pitch 14 from memory.
 */
export const PAIR_ROWS: readonly PairRow[] = [
  pair(5.6, 11.2, 1.5, 170, 212, 265, 224, 280, 355),
  pair(5.6, 11.2, 2, 190, 236, 300, 250, 315, 400),
  pair(5.6, 11.2, 3, 212, 265, 335, 280, 355, 450),
  pair(11.2, 22.4, 2, 200, 250, 315, 265, 335, 425),
  pair(11.2, 22.4, 3, 224, 280, 355, 300, 375, 475),
  pair(11.2, 22.4, 4, 265, 335, 425, 355, 450, 560),
  pair(11.2, 22.4, 5, 280, 355, 450, 375, 475, 600),
  pair(11.2, 22.4, 8, 355, 450, 560, 475, 600, 750),
  pair(22.4, 45, 3, 250, 315, 400, 335, 425, 530),
  pair(22.4, 45, 5, 300, 375, 475, 400, 500, 630),
  pair(22.4, 45, 6, 335, 425, 530, 450, 560, 710),
  pair(22.4, 45, 7, 355, 450, 560, 475, 600, 750),
  pair(22.4, 45, 8, 375, 475, 600, 500, 630, 800),
  pair(22.4, 45, 10, 400, 500, 630, 530, 670, 850),
  pair(22.4, 45, 12, 425, 530, 670, 560, 710, 900),
  pair(45, 90, 3, 265, 335, 425, 355, 450, 560),
  pair(45, 90, 8, 400, 500, 630, 530, 670, 850),
  pair(45, 90, 9, 425, 530, 670, 560, 710, 900),
  pair(45, 90, 12, 475, 600, 750, 630, 800, 1000),
  pair(45, 90, 14, 500, 630, 800, 670, 850, 1060),
];

/** Diameter ranges of the standard [mm], over and up to. */
export const RANGES: readonly (readonly [over: number, to: number])[] = [
  [5.6, 11.2],
  [11.2, 22.4],
  [22.4, 45],
  [45, 90],
];
