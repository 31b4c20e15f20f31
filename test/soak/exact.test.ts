import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Sizes } from '../../src/parts/part-kind.js';
import type { HoleRow } from '../../src/parts/part-views.js';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { exactRequest } from '../../src/pipeline/exact-request.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { exactPart } from '../../src/solid/exact/exact-part.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import type { Shape } from '../../src/solid/recipe.js';
import { threadCore } from '../../src/solid/surfaces.js';
import { InputError } from '../../src/units/faults.js';
import { chordBounds, drawnMeasures } from '../support/chord-bounds.js';
import { exactKernel, HAS_EXACT, NEEDS_EXACT } from '../support/exact-kernel.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupling,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
  sensibleSleeve,
} from '../support/sensible-sheets/index.js';
import { diametersOf, holesMissing, withoutCylinder } from '../support/step-sizes.js';

// Two kernels build the same recipes: the exact body and the mesh agree within what the chords of the mesh explain. The
// exact body is held against its own gate besides, before and after it is written, and its file against the report.

let mesh: Kernel;
beforeAll(async () => {
  mesh = await createKernel();
});

type Sheet = Record<string, unknown>;
type Threads = 'exact' | 'plain';

/** The first designs of a kind that pass their checks. */
function passed(sheets: fc.Arbitrary<Sheet>, count: number, seed: number): Design[] {
  const found: Design[] = [];
  for (const given of fc.sample(sheets, { numRuns: 30 * count, seed })) {
    try {
      const made = design({ ...given, printer: { ...(given.printer as object), chord_error: 0.01 } });
      if (check(made).verdict !== 'fail') found.push(made);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
    if (found.length === count) break;
  }
  return found;
}

/** 200 sheets of all kinds and members of families; threads as helicoids take seconds each, so a share has them. */
const SHEETS: readonly [words: string, sheets: unknown, threads: Threads, count: number][] = [
  ['nuts', sensibleNut, 'plain', 42],
  ['nuts', sensibleNut, 'exact', 12],
  ['adapters', sensibleAdapter, 'plain', 42],
  ['couplings', sensibleCoupling, 'plain', 6],
  ['sleeves', sensibleSleeve, 'plain', 26],
  ['collars', sensibleCollar, 'plain', 18],
  ['collars', sensibleCollar, 'exact', 4],
  ['end holders', sensibleEndHolder, 'plain', 24],
  ['motor plates', sensibleMotorPlate, 'plain', 22],
  ['gauges', sensibleGauge, 'plain', 2],
  ['gauges', sensibleGauge, 'exact', 1],
  ['coupons', sensibleCoupon, 'plain', 1],
];

describe(`the exact body and the mesh${NEEDS_EXACT}`, () => {
  it('are tried on two hundred sheets', () => {
    expect(SHEETS.reduce((sum, [, , , count]) => sum + count, 0)).toBe(200);
  });

  it.skipIf(!HAS_EXACT).each(SHEETS)('of random %s (%#)', async (_, sheets, threads, count) => {
    const designs = passed(sheets as fc.Arbitrary<Sheet>, count, threads === 'exact' ? 23 : 22);
    expect(designs).toHaveLength(count);
    const wrong: string[] = [];
    for (const made of designs) wrong.push(...(await faultsOf(made, threads)));
    expect(wrong).toEqual([]);
  });
});

/** What is wrong with the exact bodies of a design at its finished sizes, and with its file. */
async function faultsOf(made: Design, threads: Threads): Promise<string[]> {
  const kind = kindOfDesign(KINDS, made);
  const request = exactRequest(made, { kind, kernel: mesh }, { sizes: 'finished', threads });
  const words = JSON.stringify(made.dimensions.finished);
  try {
    const { step, measures } = exactPart(await exactKernel(), request);
    const bodies = kind.bodies(made, 'finished').flatMap(({ recipe: { name, shape } }, i) => {
      const drawn = threads === 'plain' ? withoutThreads(shape) : shape;
      const found = drawnMeasures(mesh.fuse(drawn));
      return apart(measures[i]!, found, chordBounds(drawn, found)).map((fault) => `${name}: ${fault}`);
    });
    const { holes = [] } = kind.views(made, 'finished');
    const turned = diametersOf(made.dimensions.finished).filter(([name]) => !isDrawnFlat(name, made));
    const round = holes.filter((hole) => isRoundHole(hole, made, threads));
    return [...bodies, ...withoutCylinder(step, turned), ...holesMissing(step, round)].map(
      (fault) => `${made.part} ${fault}; ${words}`,
    );
  } catch (error) {
    return [`${made.part} ${String(error)}; ${words}`];
  }
}

/** Sizes across flats or over ears, lobes' tips and the ring they may cover, and screws whose hole is an insert's or a thread's. */
function isDrawnFlat(name: string, made: Design): boolean {
  const { finished, holes } = made as Design & {
    finished?: { body?: { shape: string }; flange?: { shape: string } };
    holes?: { joint?: string };
  };
  if (name === 'insert.outside_diameter' || name === 'insert.ring_diameter') return true;
  if (name === 'body_diameter') return finished?.body !== undefined && finished.body.shape !== 'round';
  if (name === 'flange_diameter') return finished?.flange !== undefined && finished.flange.shape !== 'round';
  return name === 'hole_diameter' && ['insert', 'tapped'].includes(holes?.joint ?? '');
}

/** Rows of pockets, hexagons and threads are no cylinders, and a cut-out may lie past the outline. */
function isRoundHole({ label, diameter }: HoleRow, made: Design, threads: Threads): boolean {
  const sizes = made.dimensions.finished;
  const is = (name: string) => sizes[name] === diameter;
  if (label.startsWith('X') || is('pocket_across_flats') || is('catch_pocket_across_flats')) return false;
  if (is('thread_minor') && threads === 'exact') return false;
  const isBore = (name: string) => name.endsWith('bore_diameter');
  const hexagons = sizesNamed(sizes, 'bore_diameter').filter(
    (one) => !diametersOf(sizes).some(([name, value]) => isBore(name) && value === one),
  );
  return !hexagons.includes(diameter);
}

/** Every size of a name, in whatever group it stands. */
function sizesNamed(sizes: Sizes, name: string): number[] {
  return Object.entries(sizes).flatMap(([key, value]) =>
    typeof value === 'object' ? sizesNamed(value, name) : key.endsWith(name) ? [value] : [],
  );
}

/** Where the exact body and the drawn one differ by more than chords explain. */
function apart(
  exact: Omit<ReturnType<typeof drawnMeasures>, 'turning'>,
  drawn: ReturnType<typeof drawnMeasures>,
  most: ReturnType<typeof chordBounds>,
): string[] {
  const all = [
    ['volume', exact.volume, drawn.volume, most.volume],
    ['area', exact.area, drawn.area, most.area],
    ...[0, 1, 2].map((i) => [`centre ${i}`, exact.center[i]!, drawn.center[i]!, most.center] as const),
    ...[0, 1].flatMap((end) =>
      [0, 1, 2].map((i) => [`bound ${end} ${i}`, exact.bounds[end]![i]!, drawn.bounds[end]![i]!, most.bounds] as const),
    ),
  ] as const;
  return all
    .filter(([, one, other, limit]) => !(Math.abs(one - other) <= limit))
    .map(([what, one, other, limit]) => `${what} ${one} for ${other}, within ${limit}`);
}

/** A recipe whose threads are left as the bore. */
function withoutThreads(shape: Shape): Shape {
  if (shape.kind === 'thread') return threadCore(shape.thread);
  if (shape.kind === 'moved' || shape.kind === 'feature') return { ...shape, shape: withoutThreads(shape.shape) };
  return 'of' in shape ? { ...shape, of: shape.of.map(withoutThreads) } : shape;
}
