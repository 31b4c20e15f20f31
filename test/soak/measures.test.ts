import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import type { GaugePlan } from '../../src/parts/gauge/dimensions.js';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { fuseBody } from '../../src/pipeline/fuse-body.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { LONGEST_BRIDGE, measureBody } from '../../src/pipeline/measure-solid.js';
import { facetGraph } from '../../src/solid/facet-graph.js';
import { facetRoles } from '../../src/solid/facet-roles.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { ceilingsOf, LEAST_CEILING, LEDGE } from '../../src/solid/overhang.js';
import { InputError } from '../../src/units/faults.js';
import { casterOf, ceilingsFrom, facetsOf, type Place, thinnestFrom } from '../support/independent-caster.js';
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

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

type Sheet = Readonly<Record<string, unknown>> & { readonly printer: Readonly<Record<string, unknown>> };

/** Sheets that pass their checks, drawn finely and without letters, with the designs made of them. */
function passed(sheets: fc.Arbitrary<object>, numRuns: number): { sheet: Sheet; made: Design }[] {
  return fc.sample(sheets as fc.Arbitrary<Sheet>, { numRuns, seed: 7 }).flatMap(({ mark: _, ...given }) => {
    const sheet = { ...given, printer: { ...given.printer, chord_error: 0.02 } } as Sheet;
    try {
      const made = design(sheet);
      return check(made).verdict === 'fail' ? [] : [{ sheet, made }];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
}

type Surface = { readonly [where in 'inThread' | 'isLetter' | 'bounds']: (place: Place) => boolean };

/** What a place of the surface belongs to, by the sizes of the design alone. */
function surfaceOf(made: Design, body: string): Surface {
  const sizes = made as {
    printed?: Partial<GaugePlan> & { thread?: { major: number; tooth?: { major: number } } };
    family?: { kind: string };
  };
  if (made.part === 'gauge') return ringSurface(sizes.printed as GaugePlan, body);
  const thread = sizes.family?.kind === 'holder' ? undefined : sizes.printed?.thread;
  // a collar keeps its tooth beside the lead
  const major = ['nut', 'twin-nut', 'collar'].includes(made.part)
    ? (thread?.tooth?.major ?? thread?.major ?? 0) / 2
    : 0;
  const plate = made.part === 'coupon' ? (body === 'scale' ? 1.2 : 0.8) : undefined;
  const inThread = ({ at: [x, y], normal: [, , nz] }: Place) =>
    plate === undefined
      ? Math.hypot(x, y) < 1.01 * major + 0.05 && Math.abs(nz) < 0.9999
      : Math.abs(nz) > 0.02 && Math.abs(nz) < 0.9999;
  const isLetter = ({ at: [, , z], normal: [, , nz] }: Place) =>
    plate !== undefined && z > plate + (Math.abs(nz) > 0.5 ? 1e-3 : -1e-3) && z < plate + 0.61;
  const bounds = (place: Place) => {
    const slope = Math.abs(place.normal[2]);
    return !isLetter(place) && !(inThread(place) && slope > 0.05) && Math.abs(slope - Math.SQRT1_2) > 0.02;
  };
  return { inThread, isLetter, bounds };
}

/** The same of a gauge ring: its thread, and figures engraved from its top between the thread's mouth and the edge. */
function ringSurface({ rings, outside, depth, chamfer }: GaugePlan, name: string): Surface {
  const ring = rings.find((one) => one.name === name)!;
  const inThread = ({ at: [x, y], normal: [, , nz] }: Place) =>
    Math.hypot(x, y) < (1.01 * ring.thread.major) / 2 + 0.05 && Math.abs(nz) < 0.9999;
  const isLetter = ({ at: [x, y, z], normal: [, , nz] }: Place) => {
    const top = nz > 0.5 ? ring.length - 1e-3 : ring.length + 1e-3;
    const within = Math.hypot(x, y) < outside / 2 - chamfer / 2;
    return within && z > ring.length - depth - 1e-3 && z < top && (nz > 0.5 || Math.abs(nz) < 1e-3);
  };
  const bounds = (place: Place) => {
    const slope = Math.abs(place.normal[2]);
    return !isLetter(place) && !(inThread(place) && slope > 0.05) && Math.abs(slope - Math.SQRT1_2) > 0.02;
  };
  return { inThread, isLetter, bounds };
}

/** Inserts for two bought hubs, drawn one in six among couplings. */
const insertAlone = sensibleCoupling.filter(
  ({ screw, shaft, motor }) =>
    screw === undefined && shaft === undefined && !('shaft' in (motor as Readonly<Record<string, unknown>>)),
);
/** Bearings whose lead-in comes near the sides of their plate. */
const narrowPress = fc
  .record({ sheet: sensibleEndHolder, width: fc.integer({ min: 22, max: 36 }) })
  .filter(({ sheet }) => sheet.held_by === 'press')
  .map(({ sheet, width }) => ({
    ...sheet,
    body: { width, length: 90, thickness: 14 },
    holes: {
      at: [
        [30, 0],
        [-30, 0],
      ],
      screw: 'M3',
    },
  }));
const nutsOf = (kind: string) =>
  sensibleNut.filter(({ family }) => (family as { kind: string } | undefined)?.kind === kind);

it.each([
  ['nuts', sensibleNut, 100],
  ['adapters', sensibleAdapter, 60],
  ['couplings', sensibleCoupling, 40],
  ['sleeves', sensibleSleeve, 60],
  ['collars', sensibleCollar, 20],
  ['motor plates', sensibleMotorPlate, 20],
  ['coupons', sensibleCoupon, 6],
  ['gauge rings', sensibleGauge, 8],
  ['end holders', sensibleEndHolder, 60],
  ['bearings pressed into narrow plates', narrowPress, 160],
  ['inserts for two bought hubs', insertAlone, 24],
  ['split nuts', nutsOf('split'), 40],
  ['clamped nuts', nutsOf('clamped'), 16],
  ['twin nuts', nutsOf('twin'), 16],
  ['holders', nutsOf('holder'), 16],
  ['anti-backlash nuts', nutsOf('anti-backlash'), 16],
] as const)(
  'measures walls of %s within 0.05 mm and ceilings within a twentieth as an independent caster does',
  (_, sheets, numRuns) => {
    let bodies = 0;
    for (const { sheet, made } of passed(sheets, numRuns)) {
      for (const plan of kindOfDesign(KINDS, made).bodies(made)) {
        const told = `${plan.recipe.name} of ${JSON.stringify(sheet)}`;
        const from = { ...plan, body: fuseBody(kernel, plan.recipe), file: plan.recipe.name };
        const caster = casterOf(from.body);
        const facets = facetsOf(caster);
        const { inThread, isLetter, bounds } = surfaceOf(made, plan.recipe.name);
        const { layer } = plan.printer;
        const { wall, ceilings } = measureBody(from);
        const cast = thinnestFrom(caster, facets, {
          rays: 4000,
          seed: 3,
          isWall: (one, other) => {
            const upright = Math.abs(one.normal[2]) > 0.5;
            if (!bounds(one) || !bounds(other) || (inThread(one) && inThread(other))) return false;
            if (upright && (inThread(one) || inThread(other))) return false;
            // a membrane is drilled through
            return sheet.printer.bridging !== 'membrane' || !upright || Math.abs(one.at[2] - other.at[2]) > 1.5 * layer;
          },
        })!;
        // nothing thinner is there, and what was found is there
        expect(cast.thickness, told).toBeGreaterThan(wall!.thickness - 0.05);
        expect(thicknessAt(caster, facets, wall!.at, wall!.thickness), told).toBeLessThan(0.05);
        const up = plan.turnOver ? -1 : 1;
        const isCeiling = (place: Place) => !inThread(place) && !isLetter(place);
        const hung = ceilingsFrom(caster, facets, { up, layer, isCeiling });
        const graph = facetGraph(from.body);
        const all = ceilingsOf(graph, facetRoles(graph, plan.recipe.shape), {
          turnOver: plan.turnOver ?? false,
          layer,
        });
        expect(Math.abs(areaOf(hung) - areaOf(all)), told).toBeLessThan(0.05 * areaOf(all) + 0.5);
        const open = hung.filter(
          ({ area, bridge, ledge }) =>
            area >= LEAST_CEILING && bridge > LONGEST_BRIDGE && (bridge < Infinity || ledge > LEDGE),
        );
        expect(Math.abs(areaOf(open) - areaOf(ceilings)), told).toBeLessThan(0.05 * areaOf(ceilings) + 1);
        bodies++;
      }
    }
    expect(bodies).toBeGreaterThan(numRuns / 12);
  },
);

const areaOf = (ceilings: readonly { readonly area: number }[]) => ceilings.reduce((sum, { area }) => sum + area, 0);

/** How far the independent caster is off a thickness at the place where it was found, along the best of the normals there, or straight to what lies beyond, or by any way that ends square. */
function thicknessAt(
  caster: ReturnType<typeof casterOf>,
  facets: ReturnType<typeof facetsOf>,
  at: readonly [number, number, number],
  thickness: number,
): number {
  const here = facets.filter(({ corners: [a], normal }) => {
    const off = normal.reduce((sum, n, axis) => sum + n * (at[axis]! - a[axis]!), 0);
    return Math.abs(off) < 1e-3;
  });
  const ways = here.map(({ normal }) => normal);
  const between = ways.flatMap((one, i) =>
    ways.slice(i + 1, i + 40).map((other) => {
      const sum = one.map((n, axis) => n + other[axis]!) as [number, number, number];
      const length = Math.hypot(...sum);
      return length < 1e-6 ? one : (sum.map((n) => n / length) as [number, number, number]);
    }),
  );
  const offs = [...ways, ...between].flatMap(([x, y, z]) => {
    const hit = caster.first(at, [-x, -y, -z]);
    const straight = hit && caster.first(at, facets[hit.facet]!.normal);
    return [hit, straight].map((one) => (one ? Math.abs(one.distance - thickness) : Infinity));
  });
  const off = offs.reduce((least, one) => Math.min(least, one), Infinity);
  return off < 0.05 ? off : Math.min(off, offOverWays(caster, facets, at, thickness));
}

/** The same over directions spread evenly, of those that leave the solid nearly square to its surface. */
function offOverWays(
  caster: ReturnType<typeof casterOf>,
  facets: ReturnType<typeof facetsOf>,
  at: readonly [number, number, number],
  thickness: number,
): number {
  const count = 20_000;
  let least = Infinity;
  for (let i = 0; i < count; i++) {
    const z = 1 - (2 * i + 1) / count;
    const across = Math.sqrt(1 - z * z);
    const way = [across * Math.cos(2.4 * i), across * Math.sin(2.4 * i), z] as const;
    const hit = caster.first(at.map((from, axis) => from + 1e-4 * way[axis]!) as [number, number, number], [...way]);
    const square = hit && facets[hit.facet]!.normal.reduce((sum, n, axis) => sum + n * way[axis]!, 0);
    if (hit && square! > 0.96) least = Math.min(least, Math.abs(hit.distance - thickness));
  }
  return least;
}
