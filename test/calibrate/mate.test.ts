import { beforeAll, describe, expect, it } from 'vitest';
import { asPrintedThread } from '../../src/mechanics/thread/as-printed-thread.js';
import { axialPlay } from '../../src/mechanics/thread/nut-thread.js';
import { nutCutter, screwBody } from '../../src/parts/common/thread-shape.js';
import { designNut, type NutDesign } from '../../src/parts/nut/dimensions.js';
import { nutKind } from '../../src/parts/nut/index.js';
import { calibrateRuns, writeProfile } from '../../src/pipeline/calibrate.js';
import { resolveProfile } from '../../src/presets/profile.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { materialSection } from '../../src/sheet/sections/material.js';
import { printerSection } from '../../src/sheet/sections/printer.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { mateThreads, NO_COMMON_VOLUME } from '../../src/solid/mate.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { type Nature, randomNature, readCoupon } from '../support/simulated-printer.js';
import { usualCoupon } from './recovery.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const SHEET = {
  part: 'nut',
  name: 'n',
  screw: 'Tr8x2',
  body: { diameter: 16, length: 15 },
  fit: 'close',
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
};

/** Volume that a nut has in common with its screw when that printer prints its file: of the solids themselves. */
function commonVolume(design: NutDesign, nature: Nature): number {
  const { printed, finished, screw } = design;
  const plane = (nature.shrinkX + nature.shrinkY) / 2;
  const [atZero, perMm] = nature.hole;
  const nut = asPrintedThread(printed.thread, {
    plane,
    axial: nature.shrinkZ,
    offset: atZero + perMm * finished.thread.pitchDiameter,
    leadSlope: finished.lead / (Math.PI * finished.thread.pitchDiameter),
  });
  const pitch = screw.pitch.likely;
  const bar = {
    ...finished.thread,
    minor: screw.minor.likely,
    pitchDiameter: screw.pitchDiameter.likely,
    major: screw.major.likely,
    pitch,
    grooveWidth: pitch / 2,
  };
  const length = 3 * pitch;
  const drift = Math.abs(nut.pitch / pitch - 1) * length;
  const play = axialPlay({
    diametralClearance: nut.pitchDiameter - bar.pitchDiameter,
    axialClearance: nut.grooveWidth - pitch / 2,
    flankAngle: screw.flankAngle,
  });
  const run = { starts: screw.starts, hand: screw.hand, columns: 96, from: 0, to: 1 };
  const mate = { nut: nutCutter(nut, run), screw: screwBody(bar, run), play: Math.max(0, play - 2 * drift), length };
  return mateThreads(kernel, mate);
}

describe('nuts of a printer that was calibrated', () => {
  const { head, features } = usualCoupon();

  it.each([31, 32, 33])('go on their screw where they did not before (printer %d)', (seed) => {
    // holes half a millimetre small and more shrink than any preset: nobody's nut fits from such a printer
    const nature: Nature = { ...randomNature(seed), hole: [0.5, -0.004], shrinkX: 0.019, shrinkY: 0.0185 };
    const before = designNut(nutKind.schema.parse(SHEET), SHIPPED);
    expect(commonVolume(before, nature)).toBeGreaterThan(100 * NO_COMMON_VOLUME);

    const calibrated = calibrateRuns([readCoupon(head, features, nature, { seed: seed + 100 })]);
    const presets = { ...SHIPPED, 'profiles/mine.yaml': writeProfile('mine', 1, calibrated) };
    const { typed } = resolveProfile({ name: 'mine' }, presets);
    const sheet = nutKind.schema.parse({ ...SHEET, ...typed });
    expect(materialSection.safeParse(typed.material).success).toBe(true);
    expect(printerSection.safeParse(typed.printer).success).toBe(true);
    expect(commonVolume(designNut(sheet, presets), nature)).toBeLessThanOrEqual(NO_COMMON_VOLUME);
  });
});
