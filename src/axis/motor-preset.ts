import { readPreset } from '../presets/read-preset.js';
import type { PresetTexts } from '../presets/texts.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { plain } from '../units/format.js';

/**
 * The sheet of an axis with the shaft of the motor frame that it names put under what it says of the shaft itself. The
 * torque stays with the parts that hold the shaft: the most of its frame is safe for a grip, and no promise for a drive.
 *
 * @throws InputError there is no such frame
 */
export function withMotorShaft(sheet: Fields, presets: PresetTexts): Fields {
  const motor = typeof sheet.motor === 'string' ? { preset: sheet.motor } : sheet.motor;
  if (!isFields(motor) || typeof motor.preset !== 'string') return sheet;
  const { shaft } = readPreset('motor', motor.preset, presets, 'motor.preset').data;
  const own = motor.shaft === undefined || isFields(motor.shaft) ? (motor.shaft ?? {}) : { diameter: motor.shaft };
  const known = {
    diameter: `${plain(shaft.diameter)} mm`,
    ...(shaft.flat === undefined ? {} : { flat: `${plain(shaft.flat)} mm` }),
  };
  const isOther = ['diameter', 'across_flats', 'form'].some((key) => (own as Fields)[key] !== undefined);
  return { ...sheet, motor: { ...motor, shaft: isOther ? own : { ...known, ...own } } };
}
