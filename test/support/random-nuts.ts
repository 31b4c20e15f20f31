import fc from 'fast-check';

/** [designation, major, pitch, layer that prints it]: screws of every form, 1 to 4 starts, both hands. */
const SCREWS = [
  ['Tr8x2', 8, 2, 0.1],
  ['Tr8x4(P2)', 8, 2, 0.1],
  ['Tr8x8(P2)-LH', 8, 2, 0.12],
  ['Tr12x3-LH', 12, 3, 0.12],
  ['Tr16x8(P4)', 16, 4, 0.2],
  ['Acme 3/8-12', 9.525, 2.117, 0.1],
  ['Acme 1/2-10-2start', 12.7, 2.54, 0.12],
  ['M12', 12, 1.75, 0.1],
  ['M16-LH', 16, 2, 0.1],
] as const;

const between = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((hundredths) => hundredths / 100);

/** Nut sheets that hold together by the way they are drawn up; whether they pass the checks is another question. */
export const randomNut = fc
  .record({
    screw: fc.constantFrom(...SCREWS),
    body: fc.constantFrom('round', 'square', 'hexagon'),
    flange: fc.constantFrom('none', 'round', 'square', 'rectangular', 'two-ear'),
    wall: between(2, 6),
    rim: between(9, 14),
    pitches: fc.integer({ min: 5, max: 8 }),
    thickness: between(3, 8),
    offset: fc.constantFrom(0, 0, 1.5),
    count: fc.integer({ min: 2, max: 6 }),
    start: between(0, 90),
    size: fc.constantFrom('M2.5', 'M3'),
    joint: fc.constantFrom('through', 'through', 'counterbore', 'hexagon', 'insert'),
    head: fc.constantFrom('body', 'flange', 'none'),
    diametral: between(0.25, 0.5),
    axial: between(0.1, 0.3),
    plane: between(0, 2),
    axialShrink: between(0, 1),
    holeOffset: between(0, 0.3),
    mounting: fc.constantFrom('flange-up', 'flange-down', undefined),
    mark: fc.constantFrom(undefined, undefined, 'A1', 'Tr8x2'),
  })
  .map((r) => {
    const [screw, major, pitch, layer] = r.screw;
    const across = Math.round((major + 1.2 + 2 * r.wall) * 100) / 100;
    const reach = (r.body === 'round' ? across : across * Math.SQRT2) + 2 * r.rim;
    const flange = {
      none: undefined,
      round: { shape: 'round', diameter: reach },
      square: { shape: 'square', width: reach },
      rectangular: { shape: 'rectangular', size: [reach, reach + 4], corner: 2 },
      'two-ear': { shape: 'two-ear', size: [reach + 8, reach], ear: reach / 2 },
    }[r.flange];
    const holes = {
      count: r.count,
      circle: reach - r.rim,
      start: r.start,
      screw: r.size,
      joint: r.joint,
      head: r.head,
    };
    return {
      part: 'nut',
      name: 'random',
      screw,
      body: {
        shape: r.body,
        [r.body === 'round' ? 'diameter' : 'across_flats']: across,
        length: Math.round(r.pitches * pitch + r.thickness),
      },
      ...(flange ? { flange: { ...flange, thickness: r.thickness, offset: r.offset }, holes } : {}),
      ...(r.mounting && flange ? { mounting: r.mounting } : {}),
      ...(r.mark && flange ? { mark: r.mark } : {}),
      fit: { diametral: r.diametral, axial: r.axial },
      material: { preset: 'petg', shrink: { plane: `${r.plane} %`, axial: `${r.axialShrink} %` } },
      printer: { nozzle: 0.4, layer, hole_offset: r.holeOffset, compensation: 'file' },
      duty: { axis: 'vertical' },
    };
  });
