import { beforeAll, describe, expect, it } from 'vitest';
import {
  lowerJaws,
  misplaced,
  pared,
  placedInsert,
  playAngle,
  squeezedVolume,
  upperJaws,
} from '../../../src/parts/coupling/assembly.js';
import { designCoupling } from '../../../src/parts/coupling/dimensions.js';
import { jawWidth } from '../../../src/parts/coupling/jaws.js';
import { assemblyOf, mateCoupling } from '../../../src/parts/coupling/mate.js';
import { squeezeAt } from '../../../src/parts/coupling/misalignment.js';
import { couplingSchema } from '../../../src/parts/coupling/sheet.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { validate } from '../../../src/sheet/validate.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const designed = (changes: Parameters<typeof couplingSheet>[0] = {}) =>
  designCoupling(
    validate(couplingSchema, couplingSheet(changes), () => undefined),
    SHIPPED,
  );

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe('hubs and insert', () => {
  it('mate in place, misaligned, pulled apart and turned', () => {
    const findings = mateCoupling(designed(), kernel);
    expect(findings.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['solid-mate', 'pass'],
      ['solid-squeeze', 'pass'],
      ['solid-play', 'pass'],
    ]);
  });

  it.each([0, 0.01, 0.02, 0.05, 0.08])(
    'mate with %d mm at each flank, though an edge is pushed down on a fillet',
    (gap) => {
      const findings = mateCoupling(designed({ insert: { flank_clearance: gap } }), kernel);
      expect(findings.filter(({ verdict }) => verdict !== 'pass')).toEqual([]);
    },
  );

  it('count what a fillet takes of an edge that is pushed down on it', () => {
    const squeeze = (axial: number) =>
      squeezeAt(
        designed({ insert: { flank_clearance: 0 }, jaws: { fillet: 0.5 }, misalignment: { angular: 0, axial } }),
      );
    // by hand: the insert lies 0.55 mm over the floor and comes down by half of 0.5 mm, to 0.3 mm; there the fillet of
    // 0.5 mm stands out by 0.5 − √(0.5² − 0.2²) = 0.0417 mm, its chords by up to 0.01 mm more
    expect(squeeze(0.5) - squeeze(0)).toBeGreaterThan(0.0417);
    expect(squeeze(0.5) - squeeze(0)).toBeLessThan(0.0517);
  });

  it('collide when they should: jaws on jaws, squeezed lobes, too much misalignment', () => {
    const assembly = assemblyOf(designed());
    const lower = lowerJaws(assembly);
    const upper = upperJaws(lower, assembly);
    const common = (a: typeof lower, b: typeof lower, turn = 0) => kernel.commonVolumes(a, b, [{ turn }])[0]!;
    expect(common(lower, upper)).toBe(0);
    expect(common(lower, upper, 60)).toBeGreaterThan(100);
    expect(common(lower, placedInsert(assembly))).toBeGreaterThan(1);
    expect(common(lower, placedInsert({ ...assembly, insert: pared(assembly.insert, assembly, 0.002) }))).toBe(0);
    // tips 1 mm deep in the other hub's floor
    const axial = assembly.gap - assembly.jaws.height + 1;
    const far = misplaced(upper, assembly.gap, { angular: 0, parallel: 0, axial, towards: 0 });
    expect(common(lower, far)).toBeGreaterThan(10);
  });

  it('share the volume of their squeeze: both flanks of each jaw over the height in contact', () => {
    const assembly = assemblyOf(designed({ insert: { flank_clearance: -0.05 }, jaws: { bevel: 0, fillet: 0 } }));
    const { jaws, insert, gap } = assembly;
    // by hand: 2·3 flanks, 0.05 mm deep, from the room in the jaws to the reach of the lobes, over the common height
    const length = insert.reach - Math.sqrt(jaws.inner ** 2 - jaws.halfSlot ** 2);
    const height = jaws.height - (gap - insert.height) / 2;
    expect(squeezedVolume(assembly)).toBeCloseTo(6 * 0.05 * length * height, 0);
  });

  it('play as the corner of a straight lobe does', () => {
    const assembly = assemblyOf(designed({ insert: { flank_clearance: 0.1 } }));
    const { insert } = assembly;
    // R² = ρ² + (w/2)²: θ = asin((w/2 + c)/R) − asin(w/(2·R))
    const corner = Math.hypot(insert.reach, insert.halfWidth);
    const turn = Math.asin((insert.halfWidth + 0.1) / corner) - Math.asin(insert.halfWidth / corner);
    expect(playAngle(assembly)).toBeCloseTo((turn * 180) / Math.PI, 3);
  });

  it('keep the width of jaw that was asked for', () => {
    const { jaws } = assemblyOf(
      designed({ jaws: { count: 3, width: 6.5, inner: 14 }, hubs: { outside_diameter: 30 } }),
    );
    expect(jawWidth(jaws, (jaws.inner + jaws.outer) / 2)).toBeCloseTo(6.5, 9);
  });
});
