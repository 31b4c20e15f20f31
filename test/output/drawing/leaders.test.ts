import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { inLetters, PAPERS } from '../../../src/output/drawing/paper.js';
import { type LaidView, layOut } from '../../../src/output/drawing/sheet-layout.js';
import { roomForViews } from '../../../src/output/drawing/tables.js';
import { drawViews } from '../../../src/parts/draw-views.js';
import type { DrawnView, Point, SizeMark, Stroke } from '../../../src/parts/part-views.js';
import { type Design, design } from '../../../src/pipeline/design.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { START_KINDS } from '../../../src/sheet/start-kinds.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { InputError } from '../../../src/units/faults.js';
import { leaderFaults } from '../../support/leader-faults.js';
import * as sensible from '../../support/sensible-sheets/index.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const round = (center: Point, radius: number): Stroke => ({ kind: 'circle', line: 'outline', center, radius });
const leader = (name: string, from: Point, radius: number): SizeMark => ({
  name,
  value: 2 * radius,
  sign: '⌀',
  from,
  to: [from[0], from[1] + radius],
  side: 'leader',
});

/** A view with its leaders, alone on a sheet. */
function laid(strokes: readonly Stroke[], sizes: readonly SizeMark[]): LaidView {
  const end: DrawnView = { title: 'a', strokes, hatched: [], sizes, letters: [] };
  return layOut({ end }, 'first', PAPERS.a4).views[0]!;
}

describe('a leader', () => {
  it('touches its circle on the line to its middle', () => {
    const view = laid([round([0, 0], 20), round([6, 3], 2)], [leader('hole', [6, 3], 2)]);
    const [tip, shelf] = view.leaders[0]!.points as [Point, Point];
    const [x, y] = [6 * view.scale, -3 * view.scale];
    expect(Math.hypot(tip[0] - x, tip[1] - y)).toBeCloseTo(2 * view.scale, 9);
    expect((tip[0] - x) * (shelf[1] - y) - (tip[1] - y) * (shelf[0] - x)).toBeCloseTo(0, 9);
    expect(leaderFaults(view)).toEqual([]);
  });

  it('goes to the one of equal holes that it reaches most freely', () => {
    // behind a wall of larger holes on the right, the left one lies free
    const wall = [-16, -8, 0, 8, 16].map((y) => round([12, y], 3.9));
    const holes = [round([-14, 0], 1), round([4, 0], 1)];
    const view = laid([...wall, ...holes], [{ ...leader('hole', [4, 0], 1), alike: [[-14, 0]] }]);
    expect(view.leaders[0]!.circle!.center[0]).toBeCloseTo(-14 * view.scale, 9);
    expect(view.leaders[0]!.runs).toBe(-1);
    expect(leaderFaults(view)).toEqual([]);
  });

  it('takes a knee where no straight way is free', () => {
    // a ring of holes that is open upwards, where no shelf is in line with the hole inside it
    const ring = [0, 45, 135, 180, 225, 270, 315].map((degrees) => {
      const angle = (Math.PI * degrees) / 180;
      return round([9 * Math.cos(angle), 9 * Math.sin(angle)], 3.7);
    });
    const view = laid([round([0, 0], 60), ...ring, round([0, 0], 1)], [leader('hole', [0, 0], 1)]);
    expect(view.leaders[0]!.points).toHaveLength(3);
    expect(leaderFaults(view)).toEqual([]);
  });

  it('crosses no other, whichever way their circles lie', () => {
    const at = [
      [13, -2],
      [12, -9],
      [9, -4],
    ] as const;
    const holes = at.map((middle) => round(middle, 1));
    const view = laid(
      [round([0, 0], 20), ...holes],
      at.map((middle, i) => leader(`${i}`, middle, 1)),
    );
    expect(view.leaders).toHaveLength(3);
    expect(leaderFaults(view)).toEqual([]);
  });

  it('finds arcs between the usual directions, where no shelf is in line with them', () => {
    const arc = (from: number, to: number): Stroke => ({
      kind: 'arc',
      line: 'outline',
      center: [0, 0],
      radius: 8,
      from,
      to,
    });
    const view = laid([round([0, 0], 40), arc(62, 88), arc(92, 118)], [leader('seat', [0, 0], 8)]);
    const [x, y] = view.leaders[0]!.points[0]!;
    const turn = (Math.atan2(-y, x) * 180) / Math.PI;
    expect(Math.hypot(x, y)).toBeCloseTo(8 * view.scale, 9);
    expect(Math.abs(turn - 90)).toBeGreaterThan(1);
    expect(Math.abs(turn - 90)).toBeLessThan(29);
  });

  it('leads to its point where no circle is drawn', () => {
    const view = laid([round([0, 0], 20)], [{ ...leader('wide', [5, 5], 3), to: [5, 8] }]);
    expect(view.leaders[0]!.points[0]).toEqual([5 * view.scale, -8 * view.scale]);
  });
});

describe('the faults of leaders', () => {
  const view = laid([round([0, 0], 20), round([6, 3], 2)], [leader('hole', [6, 3], 2)]);
  const moved = (points: readonly Point[]): LaidView => ({
    ...view,
    leaders: view.leaders.map((one) => ({ ...one, points })),
  });

  it('are found: a line off the middle, and one through a circle', () => {
    const s = view.scale;
    expect(
      leaderFaults(
        moved([
          [6 * s, -5 * s],
          [25 * s, -9 * s],
        ]),
      ),
    ).toEqual(['hole does not aim at the middle']);
    const through = {
      ...moved([
        [4 * s, -3 * s],
        [-30 * s, -3 * s],
      ]),
      view: { ...view.view, strokes: [round([-2, 3], 2)] },
    };
    expect(leaderFaults(through)).toEqual(['hole crosses a circle']);
  });
});

/** Shipped sheets, those of `new`, and one of each kind by chance. */
function designs(): Design[] {
  const folder = join(import.meta.dirname, '../../../presets/sheets');
  const shipped = readdirSync(folder).filter((name) => name !== 'demo-axis.yaml');
  const starts = START_KINDS.slice(0, START_KINDS.indexOf('axis'));
  const { sensibleAxis: _, ...kinds } = sensible;
  return [
    ...shipped.map((name) => design(readFileSync(join(folder, name), 'utf8'))),
    ...starts.map((kind) => design(startSheet(kind))),
    ...Object.values(kinds).map((sheets) =>
      firstDesign(fc.sample(sheets as fc.Arbitrary<object>, { numRuns: 60, seed: 4 })),
    ),
  ];
}

function firstDesign(sheets: readonly object[]): Design {
  for (const sheet of sheets) {
    try {
      return design(sheet);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  throw new Error('no sheet can be designed');
}

describe('leaders of whole drawings', () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await sharedKernel;
  });

  it('cross no circle, no text and no other leader, and aim at the middles of their circles', () => {
    const faults: string[] = [];
    let leaders = 0;
    for (const made of designs()) {
      const views = drawViews(kernel, kindOfDesign(KINDS, made).views(made, 'finished'));
      for (const name of ['a4', 'a3'] as const) {
        const paper = inLetters(PAPERS[name]);
        for (const view of layOut(views, 'first', paper, roomForViews(views, paper, false)).views) {
          leaders += view.leaders.length;
          faults.push(...leaderFaults(view).map((fault) => `${made.name} ${name}: ${fault}`));
        }
      }
    }
    expect(leaders).toBeGreaterThan(100);
    expect(faults).toEqual([]);
  });
});
