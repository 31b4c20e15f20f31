import { onceFor } from '../units/once.js';
import type { NozzleAndLayer } from './printer.js';
import { presetIds, readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';

/** Nozzles with their layers on the list of printer presets: what a person can buy and set. */
export const printerList = onceFor((presets: PresetTexts): readonly NozzleAndLayer[] =>
  presetIds('printer', presets).flatMap((id) => {
    const { nozzle, layer } = readPreset('printer', id, presets).data;
    return nozzle === undefined || layer === undefined ? [] : [{ nozzle, layer }];
  }),
);
