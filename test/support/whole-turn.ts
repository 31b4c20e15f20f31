import type { Kernel } from '../../src/solid/kernel.js';
import { matePoses, NO_COMMON_VOLUME, type ThreadMate } from '../../src/solid/mate.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';

/** The greatest volume in common, of a nut all around and not of one column of it, mm³. */
export function commonOverTheTurn(kernel: Kernel, { nut, screw, play, length = 2 * nut.pitch }: ThreadMate): number {
  const radius = 1.5 * Math.max(...[...nut.ridge, ...screw.ridge].map(([, r]) => r));
  const ring = cylinder({ radius, sides: nut.columns, circumscribed: true, from: 0, to: length });
  const around: Shape = {
    kind: 'difference',
    of: [ring, { kind: 'thread', thread: { ...nut, from: -1, to: length + 1 } }],
  };
  const bar: Shape = { kind: 'thread', thread: { ...screw, from: -nut.pitch, to: length + nut.pitch } };
  const { pitch, starts, columns, hand } = screw;
  return Math.max(...kernel.commonVolumes(around, bar, matePoses({ play, lead: pitch * starts, columns, hand })));
}

/**
 * How far two volumes of one overlap may be apart: by four digits, and by its area times what float32 rounds off the
 * corners, twice the radius times 2⁻²³.
 */
export function sameVolume(volume: number, { screw, play }: ThreadMate): number {
  const widest = Math.max(...screw.ridge.map(([, radius]) => radius));
  return NO_COMMON_VOLUME + volume * (1e-4 + (2 * widest * 2 ** -23) / Math.abs(play));
}
