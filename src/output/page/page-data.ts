import type { Packing } from './packing.js';

/** A body as the page carries it; its mesh is packed. */
export interface PageBody {
  readonly name: string;
  readonly packing: Packing;
  readonly colour: readonly [number, number, number];
  readonly cutColour: readonly [number, number, number];
  /** where it stands in use: 3 × 4, row by row */
  readonly inUse: readonly number[];
  /** shift when pulled apart [mm] */
  readonly apart: readonly [number, number, number];
  /** where it lies on the bed as it is printed: 3 × 4, row by row */
  readonly onBed: readonly number[];
}

/** What the page's script needs to draw the part. */
export interface PageData {
  /** the meshes of bodies and companions one after the other, deflated, in base64 */
  readonly packed: string;
  readonly bodies: readonly PageBody[];
  /** what works with the part; shown translucent, never cut */
  readonly companions: readonly PageBody[];
  /** how much a companion hides, 0 to 1 */
  readonly opacity: number;
  /** direction from the axis that the section opens towards [degrees] */
  readonly cutTowards: number;
  /** where the viewer stands at first [degrees] */
  readonly azimuth: number;
  readonly elevation: number;
}
