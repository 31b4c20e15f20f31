import { listPresets, PRESET_KINDS, type PresetRow, presetKind } from '../presets/list-presets.js';
import { SHIPPED } from '../presets/shipped.js';
import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';

/**
 * The presets that ship, of one kind or of all.
 * @throws InputError there is no such kind
 */
export function shippedPresets(name?: string): PresetRow[] {
  if (name === undefined) return listPresets(SHIPPED);
  const kind = presetKind(name);
  if (kind) return listPresets(SHIPPED, kind);
  const near = nearest(name, PRESET_KINDS);
  const allowed = near ? `did you mean ${near}?` : `known: ${PRESET_KINDS.join(', ')}`;
  throw fault('', name, `unknown kind of preset; ${allowed}`);
}
