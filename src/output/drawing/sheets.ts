import type { DrawnViews } from '../../parts/draw-views.js';
import { type DrawnView, type HoleRow, viewsOf } from '../../parts/part-views.js';
import { boxOf, isWithin } from './bands.js';

/** What stands on one sheet: a further one has no side view. */
export type SheetViews = Omit<DrawnViews, 'side'> & { readonly side?: DrawnView };

/** Views are not drawn larger than this for the sake of a sheet of their own. */
const LIFE_SIZE = 1;

/**
 * Views by sheets. All stand on one where that shows the part no smaller than it is; else bodies that stand alone go to
 * further sheets, as many on each as leave every one the scale that it has by itself, or life size.
 *
 * @param views   all of them
 * @param scaleOf the scale at which a sheet shows what stands on it
 */
export function sheetsOf(views: DrawnViews, scaleOf: (views: SheetViews) => number): readonly SheetViews[] {
  const { further = [] } = views;
  const alone = further.filter(({ isAlone }) => isAlone);
  if (alone.length === 0 || scaleOf(views) >= LIFE_SIZE) return [views];
  const first = { ...views, further: further.filter(({ isAlone }) => !isAlone) };
  const { side: _side, other: _other, further: _further, ...rest } = views;
  const own = (sheet: SheetViews) => Math.min(LIFE_SIZE, scaleOf(sheet));
  const withHoles = (sheet: SheetViews): SheetViews => ({ ...sheet, holes: shownOn(sheet, views.holes) });
  const sheets = [withHoles(first)];
  for (const view of alone) {
    const last = sheets.at(-1)!;
    const single = withHoles({ ...rest, end: view });
    const joined = withHoles({ ...last, further: [...(last.further ?? []), view] });
    if (scaleOf(joined) >= Math.max(own(last), own(single))) sheets.splice(-1, 1, joined);
    else sheets.push(single);
  }
  return sheets;
}

/** The rows of the hole table that a sheet shows. */
function shownOn(sheet: SheetViews, holes: readonly HoleRow[]): HoleRow[] {
  const boxes = viewsOf<DrawnView>(sheet)
    .filter(({ seenFrom }) => seenFrom !== undefined)
    .map(boxOf);
  return holes.filter(({ at }) => boxes.some((box) => isWithin(at, box)));
}
