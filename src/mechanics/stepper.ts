import { requirePositive, requireWhole } from '../units/require.js';

/** Motor speed taken where nothing is known of the motor [rpm]; small frames at 12 to 24 V keep torque to 300 to 600. */
export const ASSUMED_MOTOR_SPEED = 300;

/** Share of the holding torque that practice counts on in motion [-]. */
export const USABLE_TORQUE_SHARE = 0.5;

/** The winding of a stepper and what feeds it. */
export interface Winding {
  /** full steps a turn [-], whole, 1 to 10000 */
  readonly steps: number;
  /** I, rated current of a phase [A], > 0 */
  readonly current: number;
  /** Lp, inductance of a phase [mH], > 0 */
  readonly inductance: number;
  /** U, supply voltage of the driver [V], > 0 */
  readonly voltage: number;
}

/**
 * Speed up to which a stepper keeps its torque: beyond it the current has no time to reverse within one full step.
 *
 *     n₀ = 60·U / (2·Lp·I·N)      from U = L·di/dt with a swing of 2·I in the time of a step
 *
 * @param p.voltage     U   supply voltage of the driver   [V]   > 0
 * @param p.inductance  Lp  inductance of a phase          [mH]  > 0
 * @param p.current     I   rated current of a phase       [A]   > 0
 * @param p.steps       N   full steps a turn              [-]   whole, 1 to 10000
 * @returns n₀ [rpm]
 * @throws InputError  a value is outside its range
 * @validity a simple model: resistance and the motor's own voltage are left out, resonance too
 * @source derived: inductor under a constant voltage
 * @example cornerSpeed({ voltage: 24, inductance: 3, current: 1.5, steps: 200 }) // 800
 */
export function cornerSpeed(p: Winding): number {
  requirePositive('voltage', p.voltage);
  requirePositive('inductance', p.inductance);
  requirePositive('current', p.current);
  requireWhole('steps', p.steps, 1, 10000);
  return (60 * p.voltage) / (2 * (p.inductance / 1000) * p.current * p.steps);
}

/**
 * Highest speed at which a stepper still gives the torque needed: its torque keeps up to the corner speed, then falls
 * as 1/n (constant power), T = T₀ · min(1, n₀ / n), read backwards.
 *
 *     n = n₀ · T₀ / T,  0 where T > T₀
 *
 * @param p.torque  T₀  torque at standstill     [N·mm]  > 0
 * @param p.corner  n₀  corner speed             [rpm]   > 0
 * @param p.needed  T   torque needed            [N·mm]  > 0
 * @returns n [rpm]; 0 when the motor cannot give the torque at any speed
 * @throws InputError  a value is outside its range
 * @source derived: constant power above the corner speed
 * @example speedAtTorque({ torque: 200, corner: 800, needed: 100 }) // 1600
 */
export function speedAtTorque(p: {
  readonly torque: number;
  readonly corner: number;
  readonly needed: number;
}): number {
  requirePositive('torque', p.torque);
  requirePositive('corner', p.corner);
  requirePositive('needed', p.needed);
  return p.needed > p.torque ? 0 : (p.corner * p.torque) / p.needed;
}
