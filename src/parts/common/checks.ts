import { type Bounds, type Check, hard, notJudged, type Outcome, told, valued } from '../../judge/check.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { askingPlastic } from './plastic-told.js';

/**
 * A warm part softens.
 *
 *     reserve = softening temperature of the material − temperature around the part
 */
export const heat: Check<{ readonly duty: DutySheet; readonly material: Material }> = askingPlastic({
  id: 'heat',
  group: 'body',
  question: 'holds',
  title: 'Reserve before it softens',
  unit: 'K',
  source: 'common practice',
  limits: hard({ min: 20 }),
  moves: 'duty.temperature, material',
  grave: true,
  run: ({ duty, material }, { pass }) => {
    if (duty.temperature === undefined) return notJudged('duty.temperature');
    return judgeHeat({ material, temperature: duty.temperature, where: 'around it' }, pass, {
      cure: 'use a material that softens later, or keep the heat away',
    });
  },
});

/** What is left before a material softens at a temperature. */
export function judgeHeat(
  {
    material,
    temperature,
    where,
  }: { readonly material: Material; readonly temperature: number; readonly where: string },
  { min = 0 }: Bounds,
  { cure }: { readonly cure: string },
): Outcome {
  const reserve = material.softening - temperature;
  return valued(
    exactly(reserve),
    `${material.name} softens at ${plain(material.softening, 0)} °C, ${plain(temperature, 0)} °C ${where}${reserve < min ? `; ${cure}` : ''}`,
  );
}

/** Sizes must be corrected once, not twice. */
export const shrinkAppliedOnce: Check<{ readonly printer: Printer }> = {
  id: 'shrink-applied-once',
  group: 'print',
  question: 'prints',
  source: 'common practice',
  title: 'Correction of shrink and holes',
  unit: '',
  moves: 'printer.compensation',
  run: ({ printer }) => {
    const { shrink, holes } = printer.compensation;
    if (!printer.compensationKnown) {
      return told(
        'caution',
        'this file is already compensated: set the slicer to scale for neither shrink nor holes, then say so with printer.compensation: file',
      );
    }
    const who = { file: 'this file', slicer: 'the slicer', none: 'nobody' };
    return told('pass', `shrink is taken out by ${who[shrink]}, hole offset by ${who[holes]}`);
  },
};
