import { axesOf, type Neighbour, type PairFinding } from './neighbours.js';
import { jointFindings, motorFindings } from './pair-motors.js';
import { nutPairs, sameScrew, screwBores } from './pair-screws.js';
import { carriedOnce, onePlaceEach, oneStory } from './pair-story.js';

/**
 * Compares the parts of a machine that belong together. On one axis: the nuts by lead, hand and clearance (within 0.05 mm), what else
 * is made for a screw with theirs or with each other, the bores of what joins the shafts with the screw and with the motor of the plate,
 * how far that goes on the shaft that the plate leaves, who joins and who carries the screw, what the parts say of mounting and forces.
 * Everywhere: what is made for a motor's shaft with the machine's motor.
 *
 * @param neighbours the parts that were made
 * @param motorShaft diameter of the machine's motor shaft, where known  [mm]
 * @returns one finding for each pair that was compared
 * @source common-practice
 */
export function pairFindings(neighbours: readonly Neighbour[], motorShaft: number | undefined): PairFinding[] {
  const axes = axesOf(neighbours);
  return [
    ...axes.flatMap((on) => [
      ...nutPairs(on),
      ...sameScrew(on),
      ...onePlaceEach(on),
      ...carriedOnce(on),
      ...oneStory(on),
      ...jointFindings(on),
      ...screwBores(on),
    ]),
    ...neighbours.flatMap((one) => motorFindings(one, motorShaft)),
  ];
}
