import { dirname, isAbsolute, join } from 'node:path';
import { acceptParts, type PartAcceptance } from '../../fleet/accept-parts.js';
import { assembleFleet } from '../../fleet/assemble.js';
import { buildPlan } from '../../fleet/build-plan.js';
import { rowMachines } from '../../fleet/csv/row-machines.js';
import {
  type BareMachine,
  type FileFault,
  fileFaultLine,
  type GivenFields,
  type GivenFleet,
  type GivenPart,
} from '../../fleet/machines.js';
import type { FleetPlan } from '../../fleet/plan.js';
import { type FleetFile, LONGEST_FLEET, listedMachines, readFleetSheet } from '../../fleet/read-sheet.js';
import { sharedFaults } from '../../fleet/shared-faults.js';
import type { KnownKind } from '../../pipeline/known-kind.js';
import type { PresetTexts } from '../../presets/texts.js';
import { type Fields, isFields } from '../../sheet/fields-map.js';
import { nearest } from '../../sheet/nearest.js';
import { readYaml } from '../../sheet/read-yaml.js';
import { partName } from '../../sheet/sections/common.js';
import { fault, InputError, shown } from '../../units/faults.js';
import { type InputPlace, readInput, readTable } from '../read-input.js';
import { withProfiles } from '../with-profiles.js';
import { sha256 } from './digest.js';
import { engineDigest } from './engine-digest.js';

/** What a fleet is read with. */
export interface OpenOptions {
  readonly kinds: readonly KnownKind[];
  readonly presets: PresetTexts;
  readonly formats: readonly string[];
  /** leave machines out that the file gives wrongly, in place of refusing all */
  readonly keepGoing?: boolean;
  /** failed checks that are accepted besides those of the file */
  readonly accept?: readonly PartAcceptance[];
}

/** A fleet ready to be made, or the mistakes that refuse it; with `keepGoing` both. */
export interface OpenedFleet {
  readonly plan: FleetPlan | undefined;
  readonly faults: readonly FileFault[];
  /** presets with the measured profiles that the fleet names */
  readonly presets: PresetTexts;
}

/** Reads a fleet file (YAML, or CSV or TSV by its name), its rows and its part sheets. */
export async function openFleet(file: string, place: InputPlace, options: OpenOptions): Promise<OpenedFleet> {
  const { kinds } = options;
  try {
    const { name, sheet, machines } = await readMachines(file, place, options.presets);
    const { fleet: given, faults } = assembleFleet(name, sheet, machines);
    const fleet = acceptParts(given, options.accept ?? []);
    const all = [...faults, ...sharedFaults(fleet, kinds)];
    const stops = options.keepGoing ? all.filter(({ machine }) => machine === undefined) : all;
    if (stops.length > 0) return { plan: undefined, faults: all, presets: options.presets };
    const left = new Set(all.map(({ machine }) => machine));
    const used = { ...fleet, machines: fleet.machines.filter((one) => !left.has(one.name)) };
    const sheets = await readSheets(
      used.machines.flatMap(({ parts }) => parts),
      place,
    );
    const roles = rolesWithSheet(used.machines);
    const openSheet = (part: GivenPart) =>
      part.own ?? sheets.get(sheetPath(part) ?? '') ?? { lines: [noSheet(part, roles)] };
    const profiles = sheet?.sheet.profiles ?? {};
    const named = profileNames(fleet, [...sheets.values()]).filter((name) => !Object.hasOwn(profiles, name));
    const presets = await profileTexts(named, file, place, options.presets);
    const plan = buildPlan(used, { ...options, presets, profiles, engine: engineDigest(), digest: sha256, openSheet });
    return { plan, faults: all, presets };
  } catch (error) {
    if (error instanceof PlacedError) return { plan: undefined, faults: error.placed, presets: options.presets };
    throw error;
  }
}

/** Measured profiles that are named anywhere: they lie beside the fleet file, as those of a sheet lie beside it. */
function profileNames(fleet: GivenFleet, sheets: readonly OpenedSheet[]): string[] {
  const parts = fleet.machines.flatMap((machine) => machine.parts);
  const layers = [...parts.flatMap(({ own, over }) => [own, ...over]), fleet.defaults];
  const fields: Fields[] = [...layers, ...sheets].flatMap((one) => (one && 'fields' in one ? [one.fields] : []));
  const said = fields.flatMap(({ profile }) => (isFields(profile) ? [profile.name] : [profile]));
  return [...new Set(said.filter((name) => typeof name === 'string'))];
}

async function profileTexts(
  names: readonly string[],
  file: string,
  place: InputPlace,
  presets: PresetTexts,
): Promise<PresetTexts> {
  let texts = presets;
  for (const name of names) {
    const sheet = JSON.stringify({ profile: name });
    texts = (await withProfiles(sheet, file, place, { presets: texts })).presets ?? texts;
  }
  return texts;
}

/** Mistakes with the file that they are in. */
class PlacedError extends Error {
  readonly placed: readonly FileFault[];

  constructor(file: string, { faults }: InputError) {
    super(file);
    this.placed = faults.map((one) => ({ ...one, file }));
  }
}

interface ReadMachines {
  readonly name: string;
  readonly sheet: FleetFile | undefined;
  readonly machines: readonly BareMachine[];
}

async function readMachines(file: string, place: InputPlace, presets: PresetTexts): Promise<ReadMachines> {
  const read = isTable(file) ? readTable : readInput;
  const text = await inFile(file, () => read(file, place, LONGEST_FLEET));
  if (isTable(file))
    return inFile(file, () => {
      const machines = rowMachines(text, file);
      if (machines.length === 0) throw fault('', '', 'there is no machine below its header');
      return { name: tableName(file), sheet: undefined, machines };
    });
  const sheet = await inFile(file, () => readFleetSheet(text, file, presets));
  const listed = listedMachines(sheet);
  if (sheet.sheet.rows === undefined) return { name: sheet.sheet.fleet, sheet, machines: listed };
  const rows = besideFile(file, sheet.sheet.rows);
  const table = await inFile(rows, () => readTable(rows, place, LONGEST_FLEET));
  const more = await inFile(rows, () => rowMachines(table, rows));
  return { name: sheet.sheet.fleet, sheet, machines: [...listed, ...more] };
}

function isTable(file: string): boolean {
  return /\.(?:csv|tsv|txt)$/i.test(file);
}

/** A table's fleet is called as its file. */
function tableName(file: string): string {
  const name = file
    .split(/[/\\]/)
    .at(-1)!
    .replace(/\.\w+$/, '')
    .replace(/[^\w-]+/g, '-')
    .slice(0, 64);
  if (!partName.safeParse(name).success)
    throw fault('', shown(name), 'a fleet is called as its file; give the file another name');
  return name;
}

async function inFile<T>(file: string, step: () => T | Promise<T>): Promise<T> {
  try {
    return await step();
  } catch (error) {
    if (error instanceof InputError) throw new PlacedError(file, error);
    throw error;
  }
}

/** A path that a file names, seen from that file. */
function besideFile(file: string, path: string): string {
  return isAbsolute(path) ? path : join(dirname(file), path);
}

/** A sheet's path, seen from the file that names it. */
function sheetPath({ sheet, find }: GivenPart): string | undefined {
  return sheet === undefined ? undefined : besideFile(find(['sheet']).file, sheet);
}

function noSheet({ find, role }: GivenPart, roles: readonly string[]): string {
  const near = nearest(role, roles);
  const allowed = `has no sheet; give sheet or part${near ? `, or did you mean ${near}?` : ''}`;
  return fileFaultLine({ ...find([]), path: role, value: '', allowed });
}

/** Roles that a part of the fleet has a sheet for, each once. */
function rolesWithSheet(machines: readonly { readonly parts: readonly GivenPart[] }[]): string[] {
  const parts = machines.flatMap((machine) => machine.parts);
  return [...new Set(parts.filter((part) => part.own || sheetPath(part)).map(({ role }) => role))];
}

type OpenedSheet = GivenFields | { readonly lines: readonly string[] };

/** Every sheet that parts name, each read once. */
async function readSheets(parts: readonly GivenPart[], place: InputPlace): Promise<Map<string, OpenedSheet>> {
  const sheets = new Map<string, OpenedSheet>();
  for (const part of parts) {
    const path = sheetPath(part);
    if (path !== undefined && !sheets.has(path)) sheets.set(path, await readSheet(path, place));
  }
  return sheets;
}

async function readSheet(path: string, place: InputPlace): Promise<OpenedSheet> {
  try {
    const { value, locate } = readYaml(await readInput(path, place));
    if (!isFields(value)) throw fault('', shown(value), 'must be a map of fields that begins with part');
    return { fields: value, find: (field) => ({ file: path, at: locate(field) }) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { lines: error.faults.map((one) => fileFaultLine({ ...one, file: path })) };
  }
}
