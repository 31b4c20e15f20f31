import { isStraight } from '../solid/axial-section.js';
import type { Drawn } from '../solid/drawn.js';
import type { Kernel, SurfacedMesh } from '../solid/kernel.js';
import { acrossAxis, alongAxis, below, halfBehind, type Look, wholeBehind } from '../solid/look.js';
import { type Shape, withoutFeatures } from '../solid/recipe.js';
import { type SeenLines, seenLines } from '../solid/seen-lines.js';
import { onceFor } from '../units/once.js';
import {
  type AskedView,
  type DrawnView,
  type LineKind,
  type PartViews,
  type Point,
  type SolidLines,
  type Stroke,
  viewsOf,
} from './part-views.js';

/** Raised letters of a part's name: a drawing leaves them out. */
export const OMIT: readonly string[] = ['mark'];

/** Views with their lines. */
export type DrawnViews = Omit<PartViews, 'side' | 'end' | 'other' | 'further'> & {
  readonly side: DrawnView;
  readonly end: DrawnView;
  readonly other?: DrawnView;
  readonly further?: readonly DrawnView[];
};

/**
 * Draws what views ask of the solid.
 *
 * @param kernel  builds the bodies, threads as plain cylinders
 * @param views   as a kind asks for them
 * @returns the same views with all their lines and what is hatched
 */
export function drawViews(kernel: Kernel, views: PartViews): DrawnViews {
  const { side, end, other, further, ...rest } = views;
  const bare = onceFor((body: Shape) => withoutFeatures(body, OMIT));
  const plans = viewsOf<AskedView>(views).map((view) => planOf(view, bare));
  const meshes = kernel.surfaced(plans.flatMap(({ looks }) => looks.flatMap(({ bodies }) => bodies)));
  const drawn = new Map(plans.map((plan) => [plan.view, drawView(plan, meshes)]));
  const draw = (view: AskedView): DrawnView => drawn.get(view)!;
  return {
    ...rest,
    side: draw(side),
    end: draw(end),
    ...(other ? { other: draw(other) } : {}),
    ...(further ? { further: further.map(draw) } : {}),
  };
}

/** A view with the solids that it shows, each look with its own. */
interface Plan {
  readonly view: AskedView;
  readonly looks: readonly { readonly look: Look; readonly bodies: readonly Shape[] }[];
}

/** @param bare a body without what drawings leave out, the same each time, so that the kernel builds it once */
function planOf(view: AskedView, bare: (body: Shape) => Shape): Plan {
  if (!view.solid) return { view, looks: [] };
  const { bodies, sight } = view.solid;
  const shown = bodies.map(bare);
  return { view, looks: looksOf(sight).map(({ look, cut }) => ({ look, bodies: shown.map(cut) })) };
}

/** @param meshes those of this view come first, and are taken */
function drawView({ view: { solid, ...view }, looks }: Plan, meshes: SurfacedMesh[]): DrawnView {
  if (!solid) return { hatched: [], ...view };
  const seen = looks.map(({ look, bodies }) =>
    seenLines(meshes.splice(0, bodies.length), look, { hidden: solid.hidden ?? [] }),
  );
  const regions = solid.bodies.map((_, i) => seen.flatMap((half) => half.regions[i]!));
  return {
    ...view,
    ...(solid.sight.kind === 'end' ? { seenFrom: solid.sight.from } : {}),
    strokes: [...seen.flatMap(strokesOf), ...view.strokes],
    ...byTurns(regions),
  };
}

/** Bodies that are cut, hatched by turns one way and the other. */
export function byTurns(
  regions: readonly (readonly (readonly Point[])[])[],
): Pick<DrawnView, 'hatched' | 'crossHatched'> {
  const hatched = (turn: 0 | 1) => regions.filter((loops, i) => i % 2 === turn && loops.length > 0);
  return { hatched: hatched(0), ...(hatched(1).length > 0 ? { crossHatched: hatched(1) } : {}) };
}

interface Cut {
  readonly look: Look;
  readonly cut: (body: Shape) => Shape;
}

function looksOf(sight: SolidLines['sight']): Cut[] {
  switch (sight.kind) {
    case 'end':
      return [{ look: alongAxis(sight.from), cut: (body) => body }];
    case 'side':
      return [{ look: acrossAxis(sight.upwards), cut: (body) => body }];
    case 'across':
      return [{ look: alongAxis(1), cut: (body) => below(body, sight.height) }];
    case 'section': {
      const [up, down] = sight.planes;
      if (isStraight(sight.planes)) return [{ look: acrossAxis(up), cut: (body) => wholeBehind(body, up) }];
      return [
        { look: acrossAxis(up), cut: (body) => halfBehind(body, up, 1) },
        { look: acrossAxis(down, -1), cut: (body) => halfBehind(body, down, -1) },
      ];
    }
  }
}

function strokesOf({ visible, hidden }: SeenLines): Stroke[] {
  const as = (line: LineKind) => (drawn: Drawn) => ({ ...drawn, line });
  return [...visible.map(as('outline')), ...hidden.map(as('hidden'))];
}
