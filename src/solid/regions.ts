import { ClipType, FillRule, type Paths64, PathType } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import type { PaperPoint } from './drawn.js';
import { polygonArea } from './outline.js';

/** Loops on the paper that bound material: outer ones counter-clockwise, holes clockwise, none over another. */
export type Region = readonly (readonly PaperPoint[])[];

/** Booleans are worked in whole steps of this, so that they never fail, mm. */
const STEP = 1e-4;

/** What loops bound by the even-odd rule, whichever way they run. */
export function evenOdd(loops: Region): Region {
  if (loops.length === 1) return polygonArea(loops[0]!) < 0 ? [[...loops[0]!].reverse()] : loops;
  return loops.length === 0 ? [] : worked(ClipType.Union, FillRule.EvenOdd, loops, []);
}

/** All regions together. */
export function joinedRegions(regions: readonly Region[]): Region {
  const some = regions.filter((region) => region.length > 0);
  return some.length < 2 ? (some[0] ?? []) : worked(ClipType.Union, FillRule.NonZero, some.flat(), []);
}

/** A region less others. */
export function lessRegions(region: Region, others: readonly Region[]): Region {
  const cutters = others.flat();
  return region.length === 0 || cutters.length === 0
    ? region
    : worked(ClipType.Difference, FillRule.NonZero, region, cutters);
}

/** What two regions have in common. */
export function commonRegion(a: Region, b: Region): Region {
  return a.length === 0 || b.length === 0 ? [] : worked(ClipType.Intersection, FillRule.NonZero, a, b);
}

function worked(type: ClipType, rule: FillRule, subject: Region, clip: Region): Region {
  const clipper = new Clipper64();
  clipper.addPaths(toSteps(subject), PathType.Subject);
  if (clip.length > 0) clipper.addPaths(toSteps(clip), PathType.Clip);
  const found: Paths64 = [];
  clipper.execute(type, rule, found);
  return found.map((path) => path.map(({ x, y }): PaperPoint => [x * STEP, y * STEP]));
}

function toSteps(loops: Region): Paths64 {
  return loops.map((loop) => loop.map(([x, y]) => ({ x: Math.round(x / STEP), y: Math.round(y / STEP) })));
}
