import { SOLID_GROUP } from '../judge/accept.js';
import { type Finding, hard, valued } from '../judge/check.js';
import { finding } from '../judge/run-checks.js';
import { readStl } from '../output/read-stl.js';
import type { Expected } from '../parts/part-kind.js';
import { type MeshMeasures, measureMesh } from '../solid/measure.js';
import { LEAST_FACET } from '../solid/weld.js';
import { howMany, plain, rounded } from '../units/format.js';
import { exactly } from '../units/measured.js';

/** A file with what it must measure. */
export interface WrittenBody {
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly expected: Expected;
}

/** A file with what it measures. */
export interface MeasuredBody extends WrittenBody {
  readonly measures: MeshMeasures;
}

/** Lower facets than welding leaves, less what rounding takes off a height: some slicers drop or repair them  [mm]. */
const LEAST_HEIGHT = 0.99 * LEAST_FACET.height;
/** Decimals of a size; further ones are those of the files' short numbers. */
const SIZE_PLACES = 5;
const ABOUT = {
  group: SOLID_GROUP,
  question: 'prints',
  moves: 'nothing in the sheet: please report it',
  source: 'quality of a solid',
};

/** Reads a file back from the bytes that will be written. */
export function readBack(body: WrittenBody): MeasuredBody {
  return { ...body, measures: measureMesh(readStl(body.bytes)) };
}

/**
 * Judges files by their bytes: closed and in one piece, of the right volume, within the printed bounds.
 *
 * @param bodies files as they were read back, with what each must measure
 * @returns one finding a check, over the worst of the bodies
 */
export function verify(bodies: readonly MeasuredBody[]): Finding[] {
  return [closed(bodies), volume(bodies), bounds(bodies)];
}

/**
 * A slicer fills what is closed and in one piece.
 *
 *     n = open edges + facets with a repeated corner + 1 where a facet has no area or height + |shells − 1|
 */
function closed(bodies: readonly MeasuredBody[]): Finding {
  const { value, body } = worstOf(bodies, ({ measures }) => defects(measures));
  const { facets, openEdges, repeatedVertexFacets, shells } = body.measures;
  const counts = [
    howMany(openEdges, 'open edge'),
    `${howMany(repeatedVertexFacets, 'facet')} with a repeated corner`,
    `${hasSlivers(body.measures) ? 'facets without area' : 'no facet without area'}`,
    howMany(shells, 'shell'),
  ];
  const message =
    value === 0 ? `closed and in one piece: ${facets} facets in ${body.file}` : `${body.file}: ${counts.join(', ')}`;
  const about = { ...ABOUT, id: 'solid-closed', title: 'Solid closed', unit: '', limits: hard({ max: 0 }) };
  return finding(about, valued(exactly(value), message));
}

/** How many things are wrong with a surface; 0 for a closed solid in one piece. */
export function defects(measures: MeshMeasures): number {
  const { openEdges, repeatedVertexFacets, shells } = measures;
  return openEdges + repeatedVertexFacets + (hasSlivers(measures) ? 1 : 0) + Math.abs(shells - 1);
}

function hasSlivers({ leastFacetArea, leastFacetHeight }: MeshMeasures): boolean {
  return leastFacetArea < LEAST_FACET.area || leastFacetHeight < LEAST_HEIGHT;
}

/**
 * The solid against a volume that was worked out another way.
 *
 *     off = max(V worked out − V, V − V worked out − V of a raised mark, 0) / V worked out, of the worst body
 */
function volume(bodies: readonly MeasuredBody[]): Finding {
  const { value, body } = worstOf(bodies, volumeError);
  const wanted = body.expected.volume;
  const message = `${body.file} holds ${plain(body.measures.volume, 1)} mm³, ${plain(wanted, 1)} mm³ were worked out`;
  const about = { ...ABOUT, id: 'solid-volume', title: 'Volume of the solid', unit: '', limits: hard({ max: 0.001 }) };
  return finding(about, valued(exactly(value), message));
}

/** Relative distance from the worked-out volume, which a raised mark may exceed by its own. */
function volumeError({ measures, expected }: MeasuredBody): number {
  const over = measures.volume - expected.volume;
  return Math.max(-over, over - expected.mark, 0) / expected.volume;
}

/**
 * The solid against its outer sizes.
 *
 *     off = the largest |bound of the solid − bound worked out| along x, y and z, of the worst body
 */
function bounds(bodies: readonly MeasuredBody[]): Finding {
  const { value, body } = worstOf(bodies, boundsError);
  const message = `${body.file} keeps its printed outer sizes to ${plain(value, 4)} mm`;
  const about = {
    ...ABOUT,
    id: 'solid-bounds',
    title: 'Outer sizes of the solid',
    unit: 'mm',
    limits: hard({ max: 0.005 }),
  };
  return finding(about, valued(exactly(value), message));
}

function boundsError({ measures, expected }: MeasuredBody): number {
  const is = measures.bounds.flat();
  const wanted = expected.bounds.flat();
  return rounded(Math.max(...is.map((value, i) => Math.abs(value - wanted[i]!))), SIZE_PLACES);
}

function worstOf(bodies: readonly MeasuredBody[], measure: (body: MeasuredBody) => number) {
  const rows = bodies.map((body) => ({ body, value: measure(body) }));
  const [first, ...rest] = rows;
  if (!first) throw new TypeError('a part without bodies cannot be verified');
  return rest.reduce((worst, row) => (row.value > worst.value ? row : worst), first);
}
