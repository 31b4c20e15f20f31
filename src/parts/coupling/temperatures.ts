import { ROOM } from '../../mechanics/strength/plastic.js';
import type { HubTemperature } from '../common/held.js';
import type { HubName } from './pieces.js';

/**
 * Temperatures of both hubs: that on the motor's shaft is as hot as this, the other stands between it and the room.
 * A room that nobody tells is at least as warm as where strengths are measured.
 */
export function hubTemperatures(motor: number, around: number | undefined): Readonly<Record<HubName, HubTemperature>> {
  const known = around !== undefined;
  const room = around ?? ROOM;
  return {
    'motor-hub': { at: Math.max(motor, room), known },
    'screw-hub': { at: Math.max(room, (motor + room) / 2), known },
  };
}

/** Temperature of the insert: between the motor's shaft and the room. */
export function insertTemperature(design: {
  readonly motor: { readonly temperature: number };
  readonly duty: { readonly temperature?: number };
}): HubTemperature {
  return hubTemperatures(design.motor.temperature, design.duty.temperature)['screw-hub'];
}
