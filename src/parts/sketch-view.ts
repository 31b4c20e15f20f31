import { axialSection } from '../solid/axial-section.js';
import { facesBehind } from '../solid/faces-behind.js';
import { withoutFeatures } from '../solid/recipe.js';
import { joinedRegions } from '../solid/regions.js';
import { rimsBehind } from '../solid/rims-behind.js';
import { byTurns, OMIT } from './draw-views.js';
import type { AskedView, DrawnView, Point, Stroke } from './part-views.js';

/**
 * A section without the kernel, good enough to type on: what is cut, and of what lies behind it the walls of slits
 * and the rims of holes.
 *
 * @param view  as a kind asks for it
 * @returns the view with its lines; undefined where it is no section
 */
export function sketchView({ solid, ...view }: AskedView): DrawnView | undefined {
  if (solid?.sight.kind !== 'section') return undefined;
  const { planes } = solid.sight;
  const bodies = solid.bodies.map((body) => withoutFeatures(body, OMIT));
  const regions = bodies.map((body) => axialSection(body, planes));
  const faces = facesBehind(bodies, planes, joinedRegions(regions));
  const rims = regions.flatMap((region) => rimsBehind(joinedRegions([region, faces])));
  return {
    ...view,
    strokes: [
      ...[...regions.flat(), ...faces].map((points): Stroke => outline(points, true)),
      ...rims.map((points) => outline(points, false)),
      ...view.strokes,
    ],
    ...byTurns(regions),
  };
}

function outline(points: readonly Point[], closed: boolean): Stroke {
  return { kind: 'path', points, closed, line: 'outline' };
}
