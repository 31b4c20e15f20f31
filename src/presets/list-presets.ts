import { PRESET_FOLDERS, type PresetKind } from './kinds.js';
import { originOf } from './provenance.js';
import { type Preset, presetIds, readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';

/** A preset as it is listed. */
export interface PresetRow {
  readonly kind: PresetKind;
  readonly id: string;
  readonly title: string;
  /** its figures as typed, `nozzle 0.4 mm, layer 0.12 mm` */
  readonly summary: string;
  /** keys of the bibliography that its figures rest on */
  readonly source: string;
  /** how a sheet names it */
  readonly example: string;
  /** in which sheets that stands, and what else names it */
  readonly where: string;
}

/** The field that names a preset of a kind, and where it stands. */
const NAMED_AT: Readonly<Record<PresetKind, { readonly field: string; readonly where: string }>> = {
  material: { field: 'material', where: 'in every sheet, and in the insert of a coupling' },
  printer: { field: 'printer', where: 'in every sheet' },
  screw: { field: 'screw', where: 'in every sheet with a screw, and after drive' },
  flange: { field: 'flange', where: 'in a nut that is printed; nut: NAME in an adapter for one that was bought' },
  motor: {
    field: 'motor',
    where:
      'in a coupling, sleeve, collar, motor plate or axis, and for a kind or machine of a fleet; machine: NAME in a motor plate for what was made for it',
  },
  profile: { field: 'profile', where: 'in every sheet, in place of material and printer' },
};

/** Every kind of preset, in the order in which they are listed. */
export const PRESET_KINDS: readonly PresetKind[] = ['material', 'printer', 'screw', 'flange', 'motor'];

/**
 * Lists what ships, of one kind or of all. Part sheets to start from are no presets of a kind and are left out.
 * @throws InputError a faulty preset file
 */
export function listPresets(presets: PresetTexts, kind?: PresetKind): PresetRow[] {
  const kinds = kind === undefined ? PRESET_KINDS : [kind];
  return kinds.flatMap((one) => presetIds(one, presets).map((id) => rowOf(readPreset(one, id, presets))));
}

/** A kind of preset by its name or its folder's: `material` or `materials`; undefined where there is none. */
export function presetKind(name: string): PresetKind | undefined {
  return PRESET_KINDS.find((kind) => name === kind || name === PRESET_FOLDERS[kind]);
}

function rowOf({ kind, id, title, figures, provenance }: Preset<PresetKind>): PresetRow {
  const sources = figures.flatMap(({ path }) => originOf(path, provenance)?.source ?? []);
  return {
    kind,
    id,
    title,
    summary: figures.map(({ path, typed }) => `${path} ${typed}`).join(', '),
    source: [...new Set(sources)].join(', '),
    example: `${NAMED_AT[kind].field}: ${id}`,
    where: NAMED_AT[kind].where,
  };
}
