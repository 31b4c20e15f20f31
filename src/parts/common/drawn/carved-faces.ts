import type { LoftLevel } from '../../../solid/convex-loft.js';
import type { Outline } from '../../../solid/outline.js';
import { type Bore, boreReach } from '../bore.js';
import { type Clamp, nutPocket } from '../clamp.js';
import type { SetScrewPocket } from '../set-screw-pocket.js';
import { roofedOutline } from '../side-hole.js';
import { faceBox, lyingFaces } from './cut-face.js';

const FAR = 1000;

/**
 * Faces of a bore on one side of the axis as [z, r]: towards +X, where a slit is, or towards −X, where flat and keyway
 * are.
 * @param levels  how far its sides are moved along the axis
 * @param keyTo   end of the keyway
 */
export function boreFaces(bore: Bore, levels: readonly LoftLevel[], keyTo: number, side: 'near' | 'far'): Outline[] {
  const reach = boreReach({ ...bore, ...(bore.key ? { key: { width: 0, depth: 0 } } : {}) });
  const wall = side === 'near' ? reach.slit : reach.far;
  const [bottom, top] = [levels[0]![0], levels.at(-1)![0]];
  const round: Outline = [
    [bottom, 0],
    [top, 0],
    ...levels.toReversed().map(([z, offset]) => [z, wall + offset] as const),
  ];
  return bore.key && side === 'far' ? [round, faceBox([bottom, keyTo], [0, wall + bore.key.depth])] : [round];
}

/** Faces that the half-plane at an angle cuts from the pockets and passages of clamp screws. */
export function clampFaces(clamp: Clamp, angle: number): Outline[] {
  const { offset, heights, hole, head, headSeat, nutSeat } = clamp;
  return heights.flatMap((height) => {
    const at = [offset, height] as const;
    return [
      ...lyingFaces({ outline: roofedOutline(hole / 2), at, from: -headSeat, to: nutSeat }, angle),
      ...lyingFaces({ outline: roofedOutline(head / 2), at, from: -FAR, to: -headSeat }, angle),
      ...lyingFaces({ outline: nutPocket(clamp), at, from: nutSeat, to: FAR }, angle),
    ];
  });
}

/** Faces of a set screw's passage, and of its nut's slot or its insert's bore, on −X. */
export function setScrewFaces({ height, hole, slot, bore }: SetScrewPocket): Outline[] {
  const passage = faceBox([height - hole / 2, height + hole / 2], [0, FAR]);
  if (bore) {
    const half = bore.diameter / 2;
    return [passage, faceBox([height - half, height + half], [bore.inner, FAR])];
  }
  return slot ? [passage, faceBox([-1, height + slot.top], [slot.inner, slot.inner + slot.thickness])] : [passage];
}
