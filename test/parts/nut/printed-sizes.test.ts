import { beforeAll, describe, expect, it } from 'vitest';
import { type Kernel, makePart } from '../../../src/index.js';
import { axialCut, facetsOf, readThread } from '../../support/axial-cut.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

/** Shrink and offset of the sound nut's sheet. */
const [S, T, H] = [0.01, 0.006, 0.15];
const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

async function made(changes: Record<string, unknown>) {
  const { report, files } = await makePart(nutSheet({ duty: undefined, mounting: undefined, ...changes }), { kernel });
  const stl = files.find(({ name }) => name.endsWith('.stl'));
  if (!stl)
    throw new Error(
      report.checks
        .filter(({ verdict }) => verdict === 'fail')
        .map(({ message }) => message)
        .join('\n'),
    );
  return { report, facets: facetsOf(stl.bytes) };
}

/**
 * Expected sizes by the conventions: basic sizes of the standard, opened by the clearance, then divided by what is left
 * after shrink. [screw, major d, pitch P, pitch diameter d2, starts, flank angle, room over the crests].
 */
const SCREWS = [
  // ISO 2904, Tr 10 x 2: d2 9, D4 10.5
  ['Tr10x2', 10, 2, 9, 1, 15, 0.5],
  // Tr 8 x 8 (P2), four starts, by the formulas of ISO 2904: d2 7, D4 8.5
  ['Tr8x8(P2)', 8, 2, 7, 4, 15, 0.5],
  // ISO 2904, Tr 12 x 3 left-hand: d2 10.5, D4 12.5
  ['Tr12x3-LH', 12, 3, 10.5, 1, 15, 0.5],
  // ASME B1.5, 3/8-12: D 9.525, p 2.11667, E = D − p/2, clearance 0.010 in on the diameter
  ['Acme 3/8-12', 9.525, 25.4 / 12, 9.525 - 25.4 / 24, 1, 14.5, 0.254],
  // ISO 724, M12: d2 10.863
  ['M12', 12, 1.75, 10.863, 1, 30, 0.2],
] as const;

describe.each(SCREWS)('a nut for %s, read off its file', (screw, d, P, d2, starts, flank, room) => {
  const [c, a] = [0.3, 0.1];
  const depth = flank === 30 ? 1.0825 : 1;
  const lead = P * starts;
  const leadSlope = lead / (Math.PI * (d2 + c));
  const widening = H * (Math.hypot(tan(flank), leadSlope) - tan(flank));
  const expected = {
    minor: (d - depth * P + c + H) / (1 - S),
    pitchDiameter: (d2 + c + H) / (1 - S),
    major: (d + room + c + H) / (1 - S),
    pitch: P / (1 - T),
    groove: (P / 2 + a + widening) / (1 - T),
    flank: (Math.atan((tan(flank) * (1 - S)) / (1 - T)) * 180) / Math.PI,
  };
  const sheet = {
    screw,
    body: { diameter: d + 6, length: 6 * P + 6 },
    flange: { diameter: d + 24 },
    holes: { circle: d + 15 },
  };
  const between = { within: expected.major / 2 + 0.5, from: 4, to: 6 * P + 2, pitchDiameter: expected.pitchDiameter };

  let nut: Awaited<ReturnType<typeof made>>;
  beforeAll(async () => {
    nut = await made(sheet);
  });

  it('has the printed diameters, pitch, flank and groove of the conventions', () => {
    const { report, facets } = nut;
    // halfway between two of 96 columns the facets lie on the true radius
    const thread = readThread(axialCut(facets, 360 / 192), between);
    expect(thread.minor).toBeCloseTo(expected.minor, 2);
    expect(thread.major).toBeCloseTo(expected.major, 2);
    // along a column the flank is straight; between columns the diagonals of the facets show
    const column = readThread(axialCut(facets, 1e-4), between);
    expect(column.flankAngle).toBeCloseTo(expected.flank, 1);
    expect(column.grooveWidth).toBeCloseTo(expected.groove, 2);
    const steps = thread.crossings.slice(1).map((z, i) => z - thread.crossings[i]!);
    for (const step of steps) expect(step).toBeCloseTo(expected.pitch, 3);
    expect(report.dimensions.printed).toMatchObject({
      thread_minor: expect.closeTo(expected.minor, 3),
      thread_pitch_diameter: expect.closeTo(expected.pitchDiameter, 3),
      thread_major: expect.closeTo(expected.major, 3),
      pitch: expect.closeTo(expected.pitch, 5),
      lead: expect.closeTo(lead / (1 - T), 5),
      body_diameter: expect.closeTo((d + 6) / (1 - S), 5),
      flange_diameter: expect.closeTo((d + 24) / (1 - S), 5),
      hole_circle: expect.closeTo((d + 15) / (1 - S), 5),
      // ISO 273 coarse for M3: 3.6
      hole_diameter: expect.closeTo((3.6 + H) / (1 - S), 5),
      length: expect.closeTo((6 * P + 6) / (1 - T), 5),
    });
  });

  it('climbs by its lead in one turn, to its hand, with a groove of start 1 on +X at z = 0', () => {
    const { facets } = nut;
    const hand = screw.endsWith('LH') ? -1 : 1;
    const grooveTop = (angle: number) => readThread(axialCut(facets, angle), between).crossings[0]!;
    const [from, quarter] = [grooveTop(1e-4), grooveTop(90 + 1e-4)];
    // rise of a quarter turn, less the whole pitches by which another crossing may come first
    const rise = (hand * lead) / (4 * (1 - T));
    const turns = (quarter - from - rise) / expected.pitch;
    expect(turns).toBeCloseTo(Math.round(turns), 2);
    const centre = from - expected.groove / 2;
    expect(centre / expected.pitch).toBeCloseTo(Math.round(centre / expected.pitch), 2);
  });
});
