import { reachOf } from '../../../solid/convex.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import { beyond, crossing, line, ring } from '../../common/drawn/strokes.js';
import { threadRoot } from '../../common/drawn/thread-roots.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, Letter } from '../../part-views.js';
import { endSizes } from './end-sizes.js';
import { formOf } from './hole-form.js';
import { directionOf, HIDDEN, type HoleInSight, type NutInSight } from './in-sight.js';
import type { Member } from './member.js';

/** The nut seen from +Z, with the planes of the section. */
export function endView(nut: NutInSight, member: Member): AskedView {
  const { sizes, holes, body, plate } = nut;
  const outside = plate ?? body;
  const { title, strokes, sizes: more } = member.end;
  const past = (half: number) => half + beyond(half);
  const form = sizes.holes && formOf(sizes.holes);
  return {
    title: title ?? `Seen from ${sizes.flange ? 'the body end' : '+Z'}`,
    solid: {
      bodies: nut.bodies().flatMap(({ name, shape }) => (member.notInEnd?.includes(name) ? [] : [shape])),
      sight: { kind: 'end', from: 1 },
      hidden: HIDDEN,
    },
    strokes: [
      ...(member.threads.length > 0 ? [threadRoot(sizes)] : []),
      ...(form?.kind === 'circle' ? [ring('centre', [0, 0], form.radius)] : []),
      ...(form && form.kind !== 'circle'
        ? holes.flatMap(({ at, diameter }) => crossing(at, diameter / 2 + beyond(diameter)))
        : []),
      ...crossing(
        [0, 0],
        past(Math.max(...outside.map(([x]) => Math.abs(x)))),
        past(Math.max(...outside.map(([, y]) => Math.abs(y)))),
      ),
      ...member.planes.map((angle) => line('centre', [0, 0], polar(reachOf(outside, angle), angle))),
      ...strokes,
    ],
    sizes: [...endSizes(nut, member), ...more],
    planes: sectionPlanes(member.planes, (angle) => reachOf(outside, angle)),
    letters: holes.map(holeNumber),
  };
}

/** Beside its hole, rather outwards. */
function holeNumber({ at, diameter }: HoleInSight, i: number): Letter {
  return { at, text: `${i + 1}`, away: polar(1, directionOf(at) + 30), around: diameter / 2, small: true };
}
