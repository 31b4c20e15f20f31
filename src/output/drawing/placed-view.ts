import type { DrawnView, Point } from '../../parts/part-views.js';
import type { Bands } from './bands.js';

/** A view in its place on the paper. */
export interface PlacedView extends Pick<Bands, 'box' | 'beside' | 'start'> {
  readonly view: DrawnView;
  readonly scale: number;
  /** paper place of a point of the view */
  readonly at: (point: Point) => Point;
}
