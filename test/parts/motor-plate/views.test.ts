import { beforeAll, describe, expect, it } from 'vitest';
import { drawViews } from '../../../src/parts/draw-views.js';
import type { MotorPlateDesign } from '../../../src/parts/motor-plate/dimensions.js';
import { motorPlateViews } from '../../../src/parts/motor-plate/views.js';
import { design } from '../../../src/pipeline/design.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { ADAPTED, MOTOR_PLATES } from '../../support/motor-plate-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});
const made = (sheet: object) => design(sheet) as MotorPlateDesign;

describe.each(Object.keys(MOTOR_PLATES))('what is drawn of: %s', (name) => {
  const plate = made(MOTOR_PLATES[name]!);

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const views = motorPlateViews(plate, sizes);
    const stated = expectSoundDrawing(kernel, {
      part: 'motor-plate',
      sizes,
      views,
      dimensions: plate.dimensions[sizes],
    });
    expect(stated).toBeGreaterThan(5);
  });

  it('shows closed companions', () => {
    for (const { mesh } of motorPlateViews(plate, 'printed').companions) expect(measureMesh(mesh).openEdges).toBe(0);
  });
});

it('cuts pilot hole, pockets and inserts along the diagonal', () => {
  const { length, width, thickness } = made(ADAPTED).dimensions.finished as Record<string, number>;
  const views = drawViews(kernel, motorPlateViews(made(ADAPTED), 'finished'));
  const drawn = views.side.hatched.flat().reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  expect(length).toBe(width);
  // across the corners, rounded by 3 mm, less 22.3 of pilot, two holes of 3.4 with heads of 6.18 sunk 3 deep, two inserts of 5.6
  const across = Math.SQRT2 * (length! - 6) + 6;
  const openings = (22.3 + 2 * (3.4 + 5.6)) * thickness! + 2 * (6.18 - 3.4) * 3;
  expect(Math.abs(drawn - (across * thickness! - openings))).toBeLessThan(1);
});

it('states how its corners are rounded', () => {
  expect(motorPlateViews(made(ADAPTED), 'finished').notes).toContainEqual(
    expect.stringMatching(/^Corners R 3\.00 ±\d\.\d\d mm$/),
  );
});
