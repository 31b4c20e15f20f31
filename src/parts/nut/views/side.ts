import { flatArea } from '../../common/drawn/flat-area.js';
import { beyond, line, loop } from '../../common/drawn/strokes.js';
import type { DrawnView, Point, Stroke } from '../../part-views.js';
import type { NutSizes } from '../dimensions.js';
import { directionOf, type NutInSight } from './in-sight.js';
import { holeFaces, profileOf, threadFace } from './material.js';
import { type Faces, type Member, onSide, type Threaded } from './member.js';
import { sideSizes } from './side-sizes.js';

/** The section along the axis, +Z to the left; the planes of its halves are turned into one. */
export function sideView(nut: NutInSight, member: Member): DrawnView {
  const halves = ([1, -1] as const).map((side, i) => halfSection(nut, member, { side, angle: member.planes[i]! }));
  const [upper, lower] = halves.map(({ loops }) => loops);
  const others = halves.flatMap((half) => half.others);
  const reach = beyond(member.top - nut.bottom);
  return {
    title: 'Section A–A',
    strokes: [
      ...halves.flatMap(({ loops, others, strokes }) => [
        ...[...loops, ...others].map((points) => loop('outline', points)),
        ...strokes,
      ]),
      ...member.threads.flatMap((place) => threadStrokes(nut.sizes, place)),
      line('centre', [reach - nut.bottom, 0], [-member.top - reach, 0]),
      ...member.side.strokes,
    ],
    hatched: member.inHalves ? [upper!] : [[...upper!, ...lower!]],
    ...(member.inHalves || others.length > 0 ? { crossHatched: member.inHalves ? [lower!] : [others] } : {}),
    sizes: [...sideSizes(nut, member), ...member.side.sizes],
    letters: member.side.letters ?? [],
  };
}

interface Half {
  readonly side: 1 | -1;
  readonly angle: number;
}

/** What is cut on one side of the axis, with the openings of its holes. */
function halfSection(nut: NutInSight, member: Member, { side, angle }: Half) {
  const up = (points: readonly Point[]) => points.map(onSide(side));
  const holes = holeFaces(nut, angle);
  const { added, cut } = member.faces(angle);
  const bores = member.threads.map((place) => threadFace(nut.sizes, place));
  const material = (faces: Faces) => flatArea(faces.added, faces.cut).map(up);
  return {
    loops: material({ added: [profileOf(nut, angle), ...added], cut: [...bores, ...holes, ...cut] }),
    others: member.others(angle).flatMap(({ added, cut }) => material({ added, cut: [...bores, ...cut] })),
    strokes: [...holes.map((points) => loop('outline', up(points))), ...holeAxes(nut, { side, angle })],
  };
}

/** Centre lines of the holes whose middle lies in the plane. */
function holeAxes({ holes }: NutInSight, { side, angle }: Half): Stroke[] {
  return holes
    .filter(({ at }) => Math.abs(((directionOf(at) - angle + 540) % 360) - 180) < 0.05)
    .map(({ at, ends: [low, high] }) => {
      const [r, reach] = [Math.hypot(...at), beyond(high - low)];
      return line('centre', onSide(side)([low - reach, r]), onSide(side)([high + reach, r]));
    });
}

/** ISO 6410: crests as outlines, roots thin; the edges of the cones straight across. */
export function threadStrokes({ thread, leadIn }: NutSizes, { bottom, top }: Threaded): Stroke[] {
  const [minor, major] = [thread.minor / 2, thread.major / 2];
  const depth = major + leadIn - minor;
  const across = (z: number, r: number): Stroke => line('outline', [-z, -r], [-z, r]);
  return [
    ...[bottom, top].map((z) => across(z, major + leadIn)),
    ...[bottom + depth, top - depth].map((z) => across(z, minor)),
    ...[1, -1].flatMap((side) => [
      line('thin', [-(bottom + leadIn), side * major], [-(top - leadIn), side * major]),
      line('outline', [-(bottom + depth), side * minor], [-(top - depth), side * minor]),
    ]),
  ];
}
