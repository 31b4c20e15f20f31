import type { z } from 'zod';
import { nearest } from '../sheet/nearest.js';
import { readYaml, type SheetText } from '../sheet/read-yaml.js';
import { validate } from '../sheet/validate.js';
import { type Fault, fault, InputError } from '../units/faults.js';
import { NEEDED_FIGURES, PRESET_FOLDERS, PRESET_SCHEMAS, type PresetData, type PresetKind } from './kinds.js';
import { type Figure, figuresOf, type Provenance, provenanceFaults } from './provenance.js';
import { SHIPPED, SHIPPED_VALUES } from './shipped.js';
import type { PresetTexts } from './texts.js';

/** A preset, read and found whole. */
export interface Preset<K extends PresetKind> {
  readonly id: string;
  readonly kind: K;
  readonly title: string;
  /** in base units */
  readonly data: PresetData<K>;
  /** every figure as it stands in the file, without the expected values */
  readonly figures: readonly Figure[];
  readonly provenance: Provenance;
}

/** The names of the presets of a kind, in order. Nothing is parsed. */
export function presetIds(kind: PresetKind, presets: PresetTexts): string[] {
  const file = new RegExp(`^${PRESET_FOLDERS[kind]}/([^/]+)\\.yaml$`);
  return Object.keys(presets)
    .flatMap((path) => file.exec(path)?.[1] ?? [])
    .sort();
}

/**
 * Reads one preset; no other file is parsed. Upper and lower case are alike.
 *
 * @param kind what is wanted
 * @param name the preset's id
 * @param presets the files, by path below presets/
 * @param field the sheet's field that names the preset, for the message
 * @returns the preset, in base units
 * @throws InputError no such preset (at `field`), or a faulty file (its path before the field's)
 */
export function readPreset<K extends PresetKind>(
  kind: K,
  name: string,
  presets: PresetTexts,
  field: string = kind,
): Preset<K> {
  const known = presetIds(kind, presets);
  const id = name.trim().toLowerCase();
  if (!known.includes(id)) throw unknownPreset(kind, name, known, field);
  const file = `${PRESET_FOLDERS[kind]}/${id}.yaml`;
  return inFile(file, () => parsedOnce(kind, id, presets));
}

/** What was parsed of a set of files, so that many sheets on one material parse it once. */
const PARSED = new WeakMap<PresetTexts, Map<string, Preset<PresetKind> & { readonly text: string }>>();

function parsedOnce<K extends PresetKind>(kind: K, id: string, presets: PresetTexts): Preset<K> {
  const known = PARSED.get(presets) ?? new Map();
  PARSED.set(presets, known);
  const file = `${PRESET_FOLDERS[kind]}/${id}.yaml`;
  const text = presets[file]!;
  if (known.get(file)?.text !== text) known.set(file, { ...parsePreset(kind, id, text), text });
  return known.get(file);
}

/** What plastics are called at the bench. */
const TRADE_NAMES: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    nylon: ['pa6', 'pa12'],
    polyamide: ['pa6', 'pa12'],
    pa: ['pa6', 'pa12'],
    acetal: ['pom'],
    polycarbonate: ['pc'],
    pet: ['petg'],
    tpu: ['tpu95a'],
  }),
);

function unknownPreset(kind: PresetKind, name: string, known: readonly string[], field: string): InputError {
  const meant = (TRADE_NAMES.get(name.trim().toLowerCase()) ?? []).filter((id) => known.includes(id));
  const near = meant.length > 0 ? meant.join(' or ') : nearest(name, known);
  const hint = near === undefined ? '' : `; did you mean ${near}?`;
  return fault(field, name, `no ${kind} preset of this name${hint} (known: ${known.join(', ')})`);
}

function parsePreset<K extends PresetKind>(kind: K, id: string, text: string): Preset<K> {
  const { value, locate } = presetText(`${PRESET_FOLDERS[kind]}/${id}.yaml`, text);
  const data: PresetData<K> = validate<z.ZodType<PresetData<K>>>(PRESET_SCHEMAS[kind], value, locate);
  const { title, provenance } = data;
  const covered = figuresOf(withoutHead(value));
  const faults = [...idFaults(id, data.id), ...missing(kind, covered), ...provenanceFaults(covered, provenance)];
  if (faults.length > 0) {
    throw new InputError(faults.map((one) => ({ ...one, at: locate(one.path.split('.')) ?? { line: 1, column: 1 } })));
  }
  return { id, kind, title, data, figures: covered.filter(({ path }) => !path.startsWith('expect.')), provenance };
}

/** A preset that ships was read when it was bundled; its text is read where a place in it is asked for. */
function presetText(file: string, text: string): SheetText {
  const json = text === SHIPPED[file] ? SHIPPED_VALUES[file] : undefined;
  return json === undefined
    ? readYaml(text)
    : { value: JSON.parse(json), locate: (path) => readYaml(text).locate(path) };
}

function withoutHead(value: unknown): Record<string, unknown> {
  const head = new Set(['id', 'kind', 'title', 'provenance']);
  return Object.fromEntries(Object.entries(value ?? {}).filter(([key]) => !head.has(key)));
}

function idFaults(id: string, given: string): Fault[] {
  return given === id ? [] : [{ path: 'id', value: given, allowed: `must be ${id}, as the file is called` }];
}

function missing(kind: PresetKind, figures: readonly Figure[]): Fault[] {
  return (NEEDED_FIGURES[kind] ?? [])
    .filter((needed) => !figures.some(({ path }) => path === needed || path.startsWith(`${needed}.`)))
    .map((path) => ({ path, value: '', allowed: 'is missing' }));
}

/** Faults inside a preset name its file, and their place in it, before the field. */
function inFile<T>(file: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(
      error.faults.map(({ path, value, allowed, at }) => {
        const place = at === undefined ? file : `${file}:${at.line}:${at.column}`;
        return { path: `${place} ${path}`.trim(), value, allowed };
      }),
    );
  }
}
