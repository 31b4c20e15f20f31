import { nearest } from '../sheet/nearest.js';
import { readYaml } from '../sheet/read-yaml.js';
import { PROFILE_NAME, type ProfileSheet, type SlicerAnswer, type State } from '../sheet/sections/profile.js';
import { fault } from '../units/faults.js';
import { PRESET_FOLDERS, type PresetData } from './kinds.js';
import { originOf } from './provenance.js';
import { type Preset, presetIds, readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';

/** What a part says of the profile it was made with; plain data. */
export interface ProfileUse {
  readonly name: string;
  readonly revision: number;
  /** of the coupon when it was read, and of the part in use */
  readonly state: State;
  readonly state_in_use: State;
  readonly slicer_compensates: SlicerAnswer;
  /** figures that were measured, by their path in the profile */
  readonly measured: readonly string[];
  /** figures that nobody has measured yet */
  readonly assumed: readonly string[];
  /** readings that the figures rest on */
  readonly readings: number;
}

/** A profile, ready to stand in for material and printer in a sheet. */
export interface Profile {
  readonly use: ProfileUse;
  /** the two fields as a sheet would have them */
  readonly typed: { readonly material: unknown; readonly printer: unknown };
  /** clearances of a thread that the hand likes */
  readonly fit?: NonNullable<PresetData<'profile'>['fit']>;
}

/** Figures of a profile that a coupon can measure. */
const MEASURABLE = ['material.shrink.plane', 'material.shrink.axial', 'printer.hole_offset', 'printer.outside_offset'];

/**
 * A profile by its name, upper and lower case alike.
 *
 * @param sheet name, and the state of the part in use
 * @param presets files, `profiles/NAME.yaml` among them
 * @returns what it supplies
 * @throws InputError no such profile (at `profile`), or a faulty file
 */
export function resolveProfile({ name, state = 'room' }: ProfileSheet, presets: PresetTexts): Profile {
  const { id, data, provenance, figures } = readProfile(name, presets);
  const isMeasured = (path: string) =>
    figures.some((one) => one.path === path || one.path.startsWith(`${path}.`)) &&
    originOf(path, provenance)?.type === 'measured';
  const measured = MEASURABLE.filter(isMeasured);
  return {
    use: {
      name: id,
      revision: data.revision,
      state: data.state,
      state_in_use: state,
      slicer_compensates: data.slicer_compensates,
      measured,
      assumed: MEASURABLE.filter((path) => !measured.includes(path)),
      readings: data.runs.reduce((sum, { readings }) => sum + countOf(readings), 0),
    },
    typed: typedFields(presets[`${PRESET_FOLDERS.profile}/${id}.yaml`] ?? ''),
    ...(data.fit ? { fit: data.fit } : {}),
  };
}

/**
 * Reads a profile as it stands in its file.
 * @throws InputError no such profile (at `profile`), or a faulty file
 */
export function readProfile(name: string, presets: PresetTexts): Preset<'profile'> {
  const known = presetIds('profile', presets);
  const id = name.trim().toLowerCase();
  if (!PROFILE_NAME.test(id))
    throw fault('profile', name, 'must be the name of a profile: small letters, digits, points and hyphens');
  if (!known.includes(id)) {
    const near = nearest(id, known);
    const hint = near ? `; did you mean ${near}?` : known.length > 0 ? ` (there are ${known.join(', ')})` : '';
    const where = `no ${id}.yaml beside the sheet, nor in profiles/ there or in the working folder`;
    throw fault('profile', name, `${where}${hint}`);
  }
  return readPreset('profile', id, presets, 'profile');
}

/** Material and printer as they were typed; the file compensates for what is left of both. */
function typedFields(text: string): Profile['typed'] {
  const { value } = readYaml(text);
  const fields: Record<string, unknown> = typeof value === 'object' && value !== null ? { ...value } : {};
  const printer = typeof fields.printer === 'object' ? fields.printer : {};
  return { material: fields.material, printer: { ...printer, compensation: 'file' } };
}

/** Readings below `read` of every feature. */
function countOf(readings: unknown): number {
  if (typeof readings !== 'object' || readings === null) return 0;
  return Object.values(readings).reduce<number>((sum, row: unknown) => {
    const read = typeof row === 'object' && row !== null && 'read' in row ? row.read : [];
    return sum + (Array.isArray(read) ? read.length : 1);
  }, 0);
}
