import { clampAxesAcross } from '../../common/drawn/clamp-axes.js';
import { beyond, line } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, Letter, Point, SizeMark } from '../../part-views.js';
import { BEFORE, type SleeveInSight } from './in-sight.js';

/** The section through flat and slit, +Z to the left, the slit on top: its wall is looked at, not cut. */
export function sideView(sleeve: SleeveInSight): AskedView {
  const { plan, radius } = sleeve;
  const { length, clamps } = plan;
  return {
    title: 'Section A–A',
    solid: {
      bodies: sleeve.shapes,
      sight: { kind: 'section', planes: [0, 180] },
      hidden: ['clamp'],
    },
    strokes: [
      ...clamps.flatMap((clamp) => clampAxesAcross(clamp, onPaper)),
      line('centre', [beyond(radius), 0], [-length - beyond(radius), 0]),
    ],
    sizes: sideSizes(sleeve),
    letters: numbers(sleeve),
  };
}

function onPaper([x, z]: Point): Point {
  return [-z, x];
}

function sideSizes(sleeve: SleeveInSight): SizeMark[] {
  const { plan, radius, spread } = sleeve;
  const { length, bores } = plan;
  return [
    {
      name: 'length',
      value: length,
      ...spread(length, 'along'),
      from: [0, -radius],
      to: [-length, -radius],
      side: 'below',
    },
    ...endSizes(sleeve, 0),
    ...(bores[1] ? endSizes(sleeve, 1) : []),
    ...holeSizes(sleeve),
  ];
}

/** What is measured from one end, its bore where it is round. */
function endSizes({ plan, spread }: SleeveInSight, which: 0 | 1): SizeMark[] {
  const { length, bores, clamps } = plan;
  const { bore, depth } = bores[which]!;
  const [before, radius] = [BEFORE[which], bore.diameter / 2];
  const [start, way] = which === 0 ? [0, 1] : [length, -1];
  const along = (name: string, value: number, x: number): SizeMark => ({
    name: `${before}${name}`,
    value,
    ...spread(value, 'along'),
    from: [-start, x],
    to: [-(start + way * value), x],
    side: 'above',
  });
  const across: SizeMark = {
    name: `${before}bore_diameter`,
    value: bore.diameter,
    sign: '⌀',
    ...spread(bore.diameter, 'inside'),
    from: [-start, -radius],
    to: [-start, radius],
    side: which === 0 ? 'right' : 'left',
  };
  const clamp = clamps[which];
  return [
    ...(bore.form === 'round' ? [across] : []),
    ...(bores[1] ? [along('bore_depth', depth, radius)] : []),
    ...(clamp ? [along('clamp_height', way * (clamp.heights[0]! - start), clamp.offset)] : []),
  ];
}

/** Holes of the clamp screws; those of both ends as one where they are alike. */
function holeSizes({ plan: { clamps }, spread }: SleeveInSight): SizeMark[] {
  const alike = clamps.every(({ hole }) => hole === clamps[0]!.hole);
  const total = clamps.reduce((sum, { heights }) => sum + heights.length, 0);
  return (alike ? clamps.slice(0, 1) : clamps).map(({ heights, offset, hole }, i): SizeMark => {
    const count = alike ? total : heights.length;
    const at = onPaper([offset, heights[0]!]);
    const alikeTo = alike ? clamps : clamps.slice(i, i + 1);
    const [dx, dy] = polar(hole / 2, 40);
    return {
      name: `${BEFORE[i]}clamp_hole_diameter`,
      value: hole,
      sign: count > 1 ? `${count} × ⌀` : '⌀',
      ...spread(hole, 'inside'),
      from: at,
      to: [at[0] + dx, at[1] + dy],
      alike: alikeTo.flatMap((clamp) => clamp.heights.map((height) => onPaper([clamp.offset, height]))),
      side: 'leader',
    };
  });
}

/** Numbers of the clamp screws beside their holes, as in the hole table. */
function numbers({ plan }: SleeveInSight): Letter[] {
  return plan.clamps
    .flatMap(({ heights, offset, head }) => heights.map((z): Point => [-z + head / 2, offset + head / 2]))
    .map((at, i) => ({ at, text: `${i + 1}`, away: [0, 0] }));
}
