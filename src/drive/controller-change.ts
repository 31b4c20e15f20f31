import { plain, rounded } from '../units/format.js';
import { requirePositive } from '../units/require.js';

/** What the controller must be told when one screw replaces another. */
export interface ControllerChange {
  /** new steps per mm over old */
  readonly factor: number;
  /** the figure to set; absent when the old one is not known */
  readonly steps_per_mm?: number;
  /** travel of a machine that was not told, over what was asked */
  readonly if_forgotten: number;
  /** the new screw is of the other hand: the direction turns round */
  readonly reverses: boolean;
  readonly words: string;
}

/**
 * Steps per millimetre after a change of screw.
 *
 *     k₂ = k₁ · l₁ / l₂
 *
 * @param p.oldLead        l₁  lead of the screw taken out      [mm]    > 0
 * @param p.newLead        l₂  lead of the screw put in         [mm]    > 0
 * @param p.oldStepsPerMm  k₁  what the controller held so far  [1/mm]  > 0; leave it out for the factor alone
 * @param p.reverses       the hands of the screws differ
 * @returns the factor, the figure, and what happens when it is forgotten
 * @throws InputError  a value is not above 0
 * @source derived: from the definitions
 * @example controllerChange({ oldLead: 8, newLead: 2, oldStepsPerMm: 400 }).steps_per_mm // 1600
 */
export function controllerChange(p: {
  readonly oldLead: number;
  readonly newLead: number;
  readonly oldStepsPerMm?: number | undefined;
  readonly reverses?: boolean | undefined;
}): ControllerChange {
  requirePositive('oldLead', p.oldLead);
  requirePositive('newLead', p.newLead);
  if (p.oldStepsPerMm !== undefined) requirePositive('oldStepsPerMm', p.oldStepsPerMm);
  const factor = p.oldLead / p.newLead;
  const steps = p.oldStepsPerMm === undefined ? undefined : p.oldStepsPerMm * factor;
  return {
    factor: rounded(factor, 9),
    ...(steps !== undefined && { steps_per_mm: rounded(steps) }),
    if_forgotten: rounded(1 / factor, 9),
    reverses: p.reverses === true,
    words: changeWords(factor, p.oldStepsPerMm, steps) + (p.reverses ? ` ${TURNS_ROUND}` : ''),
  };
}

/** What a screw of the other hand asks of the controller. */
export const TURNS_ROUND =
  'The hand is the other one, so the axis moves the other way: invert the direction in the controller, or reverse one coil pair with the power off, not both.';

function changeWords(factor: number, before: number | undefined, after: number | undefined): string {
  if (Math.abs(factor - 1) < 1e-9) return 'The lead is the same: the controller needs no change.';
  const told =
    before === undefined || after === undefined
      ? `Multiply the steps per mm by ${plain(factor, 4)}`
      : `Set ${plain(after, 3)} steps per mm instead of ${plain(before, 3)}`;
  return `${told}; forgotten, 100 mm become ${plain(100 / factor, 1)} mm.`;
}
