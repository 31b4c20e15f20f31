import { readPreset } from '../presets/read-preset.js';
import type { PresetTexts } from '../presets/texts.js';
import type { FleetSheet } from './sheet.js';

/**
 * The fleet with the shafts of the motor frames that its kinds and machines name, where they do not say their own.
 * @throws InputError there is no such frame
 */
export function withMotorShafts(sheet: FleetSheet, presets: PresetTexts): FleetSheet {
  const { kinds, machines } = sheet;
  return {
    ...sheet,
    ...(kinds ? { kinds: each(kinds, 'kinds', presets) } : {}),
    ...(machines ? { machines: each(machines, 'machines', presets) } : {}),
  };
}

interface Moved {
  readonly motor?: { readonly preset?: string | undefined; readonly shaft?: number | undefined } | undefined;
}

function each<T extends Moved>(entries: Record<string, T>, path: string, presets: PresetTexts): Record<string, T> {
  return Object.fromEntries(
    Object.entries(entries).map(([name, entry]) => {
      const preset = entry.motor?.preset;
      if (preset === undefined || entry.motor?.shaft !== undefined) return [name, entry];
      const { shaft } = readPreset('motor', preset, presets, `${path}.${name}.motor`).data;
      return [name, { ...entry, motor: { preset, shaft: shaft.diameter } }];
    }),
  );
}
