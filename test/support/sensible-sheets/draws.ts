import fc from 'fast-check';

/** A number between two others, in hundredths. */
export const within = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((hundredths) => hundredths / 100);

/** One of several values, or nothing in half of the cases. */
export const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq: 2 });

/** A number to two places. */
export const tidy = (value: number): number => Math.round(value * 100) / 100;

/** A sheet's map without the fields that were not drawn. */
export const given = (fields: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

/** Nominal diameter of a fastener. */
export const nominal = (screw: string): number => Number(screw.slice(1));

/** How a part is printed; arcs are drawn coarsely most of the time, so that solids are quick to build. */
export const printing = fc.record({
  nozzle: fc.constantFrom(0.25, 0.4, 0.4, 0.6),
  chord_error: fc.constantFrom(0.1, 0.1, 0.1, 0.05, 0.05, 0.02),
  hole_offset: within(0, 0.25),
  compensation: fc.constantFrom('file', 'file', 'slicer', 'none'),
  bridging: fc.constantFrom('none', 'none', 'membrane', 'steps'),
});

/** What a part is printed from. */
export const material = fc.constantFrom('pla', 'petg', 'abs', 'asa', 'pa12', 'pc');
