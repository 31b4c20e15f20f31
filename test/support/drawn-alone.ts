import { type DrawnViews, drawViews } from '../../src/parts/draw-views.js';
import { type AskedView, type DrawnView, type PartViews, type Stroke, viewsOf } from '../../src/parts/part-views.js';
import type { Kernel } from '../../src/solid/kernel.js';

/**
 * Draws views, and of each view its bodies one by one: where bodies are put together or pressed into one another, an edge
 * of one ends on such a line of another, which may itself be hidden there. All in one go, so that a body is fused once.
 *
 * @returns the views, and for each, in the order of `viewsOf`, the lines of its bodies alone; none of a single body
 */
export function drawnAlone(
  kernel: Kernel,
  asked: PartViews,
): { readonly views: DrawnViews; readonly alone: readonly (readonly Stroke[])[] } {
  const { further: own = [] } = asked;
  const singles = viewsOf<AskedView>(asked).map(bodyByBody);
  const { further = [], ...views } = drawViews(kernel, { ...asked, further: [...own, ...singles.flat()] });
  const drawn: DrawnView[] = further.slice(own.length);
  return {
    views: own.length > 0 ? { ...views, further: further.slice(0, own.length) } : views,
    alone: singles.map(({ length }) => drawn.splice(0, length).flatMap(({ strokes }) => strokes)),
  };
}

function bodyByBody(view: AskedView): AskedView[] {
  const { solid } = view;
  if (!solid || solid.bodies.length < 2) return [];
  return solid.bodies.map((body) => ({ ...view, solid: { ...solid, bodies: [body] } }));
}
