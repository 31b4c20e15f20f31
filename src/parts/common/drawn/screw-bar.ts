import type { Screw } from '../../../sheet/resolve-screw.js';
import type { Mesh } from '../../../solid/mesh.js';
import { sweepThread } from '../../../solid/thread-sweep.js';
import type { Companion } from '../../part-views.js';
import { screwBody, threadColumns } from '../thread-shape.js';

/** Columns around a screw that is only looked at. */
const MOST_COLUMNS = 64;

/** Where a screw is shown. */
export interface ScrewPlace {
  readonly from: number;
  readonly to: number;
  /** that of the thread it stands in; its own where it stands in none */
  readonly pitch?: number;
  readonly chordError: number;
}

/**
 * A screw at its likely size, standing in the middle of its play. Its mesh is made when it is first asked for: a drawing
 * needs none.
 */
export function screwBar(screw: Screw, { from, to, chordError, pitch = screw.pitch.likely }: ScrewPlace): Companion {
  const bar = {
    minor: screw.minor.likely,
    pitchDiameter: screw.pitchDiameter.likely,
    major: screw.major.likely,
    pitch,
    grooveWidth: pitch / 2,
    flankSlope: Math.tan((screw.flankAngle * Math.PI) / 180),
  };
  const columns = Math.min(MOST_COLUMNS, threadColumns(bar, screw.lead, chordError));
  const run = { starts: screw.starts, hand: screw.hand, columns, from, to };
  let mesh: Mesh | undefined;
  return {
    name: screw.designation ?? 'screw',
    get mesh() {
      mesh ??= sweepThread(screwBody(bar, run));
      return mesh;
    },
  };
}
