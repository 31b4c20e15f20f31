import { drawViews } from '../../src/parts/draw-views.js';
import type { AskedView, PartViews, Stroke } from '../../src/parts/part-views.js';
import type { Kernel } from '../../src/solid/kernel.js';

const NOTHING: Omit<PartViews, 'side'> = {
  end: { title: '', strokes: [], sizes: [], letters: [] },
  holes: [],
  notes: [],
  material: '',
  companions: [],
  cutTowards: 0,
};

/**
 * Lines of each body of a view drawn by itself: where bodies are put together or pressed into one another, an edge of
 * one ends on such a line of another, which may itself be hidden there.
 */
export function drawnAlone(kernel: Kernel, view: AskedView): readonly Stroke[] {
  const { solid } = view;
  if (!solid || solid.bodies.length < 2) return [];
  return solid.bodies.flatMap(
    (body) => drawViews(kernel, { ...NOTHING, side: { ...view, solid: { ...solid, bodies: [body] } } }).side.strokes,
  );
}
