import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Pitch error of a nut that runs free for some turns and then jams: all of its play is then used up.
 *
 *     e = c / (n·P)
 *
 * @param p.play   c  axial play of the thread, over both flanks     [mm]  0 or above
 * @param p.turns  n  pitches after which it jams                    [-]   > 0
 * @param p.pitch  P                                                 [mm]  > 0
 * @returns e, by which the file is to be scaled along the axis, up or down [-]
 * @throws InputError  a value is outside its range
 * @source common-practice
 * @example pitchError({ play: 0.1, turns: 10, pitch: 2 }) // 0.005
 */
export function pitchError(p: { readonly play: number; readonly turns: number; readonly pitch: number }): number {
  requireNotNegative('play', p.play);
  requirePositive('turns', p.turns);
  requirePositive('pitch', p.pitch);
  return p.play / (p.turns * p.pitch);
}
