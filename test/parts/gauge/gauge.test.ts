import { beforeAll, describe, expect, it } from 'vitest';
import { axialPlay } from '../../../src/mechanics/thread/nut-thread.js';
import { pitchError } from '../../../src/mechanics/thread/pitch-error.js';
import { fitOfPlay, type GaugeDesign } from '../../../src/parts/gauge/dimensions.js';
import { drillShanks } from '../../../src/parts/gauge/drill-shanks.js';
import { gaugeParticulars } from '../../../src/parts/gauge/particulars.js';
import { gaugeViews } from '../../../src/parts/gauge/views.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { InputError } from '../../../src/units/faults.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

const RINGS = { part: 'gauge', name: 'rings', screw: 'Tr8x2', material: 'pa12', printer: { compensation: 'file' } };
const gauge = (more: object = {}) => design({ ...RINGS, ...more }) as GaugeDesign;

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe('gauge rings, worked by hand', () => {
  // common practice of the bench: P 2, play 0.10, jams after 10 turns: 0.5 %; play 0.08 after 6 turns: × 1.00667
  it.each([
    [0.1, 10, 0.005],
    [0.08, 6, 0.00667],
  ])('tell a play of %d that jams after %d turns as %d of the pitch', (play, turns, error) => {
    expect(pitchError({ play, turns, pitch: 2 })).toBeCloseTo(error, 5);
  });

  // a clearance on the diameter of 0.30 is 0.0804 along the axis at 15°, 0.1732 at 30°
  it('take the play from the diameter as far as is usual, the rest from the groove', () => {
    expect(fitOfPlay(0.1, 15).diametral).toBe(0.3);
    expect(fitOfPlay(0.1, 15).axial).toBeCloseTo(0.1 - 0.0804, 4);
    expect(fitOfPlay(0.1732, 30).diametral).toBeCloseTo(0.3, 3);
    expect(fitOfPlay(0.1, 30).axial).toBeCloseTo(0, 9);
    for (const flankAngle of [0, 14.5, 15, 30])
      for (const play of [0.1, 0.25, 0.4]) {
        const { diametral, axial } = fitOfPlay(play, flankAngle);
        expect(axialPlay({ diametralClearance: diametral, axialClearance: axial, flankAngle })).toBeCloseTo(play, 9);
      }
  });

  it('are a ladder from 0.10 to 0.40 by 0.05, and rings of two and ten turns', () => {
    const { rings } = gauge().finished;
    expect(rings.map(({ figure }) => figure)).toEqual(['10', '15', '20', '25', '30', '35', '40', '2T', '10T']);
    const [two, ten] = rings.slice(-2);
    // eight pitches of 2 mm between them
    expect(ten!.length - two!.length).toBeCloseTo(16, 6);
    expect(two!.thread).toEqual(ten!.thread);
  });

  // Tr8×2: D1 = d − P = 6.0; tolerance 0.236: 6.0 goes, 6.3 must not
  it('name the drill shanks of the bore', () => {
    expect(drillShanks({ designation: 'Tr8x2' })).toEqual({ goes: 6, mustNot: 6.3 });
    expect(drillShanks({})).toBeUndefined();
    expect(gaugeParticulars(gauge()).cautions.join(' ')).toMatch(/6 mm goes in and 6\.3 mm must not/);
  });

  it('tell of the chaser by its screw and plastic', () => {
    const words = (more: object) => gaugeParticulars(gauge(more)).cautions.join(' ');
    expect(words({})).toMatch(/: 3 slots.*a drop of oil/);
    expect(words({ screw: 'Tr16x4', material: 'pc' })).toMatch(/: 4 slots.*no oil on pc/);
  });
});

it.each([
  ['start sheet', startSheet('gauge')],
  ['of a fast left-handed screw', { ...RINGS, screw: 'Tr8x8(P2)-LH', plays: { from: 0.2, to: 0.3, step: 0.1 } }],
  ['of a metric screw', { ...RINGS, screw: 'M8', plays: { from: 0.1, to: 0.2, step: 0.1 } }],
] as const)('rings come out closed, sized right and mating: %s', async (_, sheet) => {
  const { report } = await makePart(sheet, { kernel });
  expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
  expect(report.bodies.length).toBeGreaterThanOrEqual(4);
  expect(report.bodies.every(({ closed }) => closed)).toBe(true);
});

it.each(['finished', 'printed'] as const)('draw their sizes between their lines, %s sizes', (sizes) => {
  const made = gauge();
  const views = gaugeViews(made, sizes);
  expect(
    expectSoundDrawing(kernel, { part: 'gauge', sizes, views, dimensions: made.dimensions[sizes] }),
  ).toBeGreaterThanOrEqual(9);
});

it.each([
  [{ plays: { from: 0.3, to: 0.2 } }, 'plays.to'],
  [{ plays: { from: 0.1, to: 0.9, step: 0.02 } }, 'plays.step'],
  [{ outside_diameter: 12 }, 'outside_diameter'],
  [{ turns_play: 0.01 }, 'turns_play'],
])('rings refuse %j at its field', (more, path) => {
  try {
    gauge(more);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).faults.map((fault) => fault.path)).toContain(path);
    return;
  }
  throw new Error('no fault was found');
});
