import { FIT_CLASSES } from '../../parts/common/fit-classes.js';
import { presetIds } from '../../presets/read-preset.js';
import type { PresetTexts } from '../../presets/texts.js';
import type { WordKnob } from './knob.js';

/** Another material is more than a size: what a spool costs, and trying it out  [grains]. */
const ANOTHER_MATERIAL = 8;

/** Choices that a sheet makes by one word: its material of the list, its fit by class. */
export function choicesOf(sheet: object, presets: PresetTexts): WordKnob[] {
  const { material, fit }: { material?: unknown; fit?: unknown } = sheet;
  const ownClass = typeof fit === 'object' && fit !== null && Object.keys(fit).join() === 'class';
  const now = ownClass ? Reflect.get(fit, 'class') : fit;
  return [
    ...(typeof material === 'string'
      ? [{ path: 'material', words: presetIds('material', presets), now: material, grains: ANOTHER_MATERIAL }]
      : []),
    ...(typeof now === 'string' ? [{ path: 'fit', words: Object.keys(FIT_CLASSES), now }] : []),
  ];
}
