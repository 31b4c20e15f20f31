import type { DesignBase } from '../parts/part-kind.js';
import type { Staging } from '../parts/part-views.js';
import type { Body } from '../solid/mesh.js';
import type { Report } from './report.js';

/** A made part as the writers of its files see it. Each writes these meshes, and changes none. */
export interface PartInHand {
  readonly design: DesignBase;
  readonly report: Report;
  readonly bodies: readonly Body[];
  /** at the printed sizes, as the meshes are */
  readonly views: Staging;
}
