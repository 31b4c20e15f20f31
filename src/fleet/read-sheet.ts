import { locating } from '../pipeline/locate-faults.js';
import type { PresetTexts } from '../presets/texts.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { readYaml } from '../sheet/read-yaml.js';
import { validate } from '../sheet/validate.js';
import { fault, shown } from '../units/faults.js';
import type { BareMachine, Entry, Find, GivenFields } from './machines.js';
import { withMotorShafts } from './motor-shafts.js';
import { type FleetSheet, fleetSchema, type MachineEntry, type PartEntry } from './sheet.js';

/** A fleet file, read: what it says, and where each piece stands. */
export interface FleetFile {
  readonly sheet: FleetSheet;
  readonly find: Find;
}

/** A fleet of thousands of machines is longer than a part sheet. */
export const LONGEST_FLEET = 8_000_000;

/**
 * Reads a fleet file (YAML).
 * @throws InputError every mistake at once, located
 */
export function readFleetSheet(text: string, file: string, presets: PresetTexts): FleetFile {
  const { value, locate } = readYaml(text, LONGEST_FLEET);
  locating(locate, () => requireFleet(value));
  const sheet = validate(fleetSchema, value, locate);
  return {
    sheet: locating(locate, () => withMotorShafts(sheet, presets)),
    find: (path) => ({ file, at: locate(path) }),
  };
}

/** @throws InputError it is the sheet of a part: one line says so, where each of its fields would be a mistake of its own */
function requireFleet(value: unknown): void {
  if (!isFields(value) || !('part' in value) || 'fleet' in value) return;
  const allowed = 'makes this the sheet of one part, and no fleet: leadwright make FILE; leadwright new fleet';
  throw fault('part', shown(value.part), allowed);
}

/** The machines that a fleet file lists itself. */
export function listedMachines({ sheet, find }: FleetFile): BareMachine[] {
  return Object.entries(sheet.machines ?? {}).map(([name, entry]) => machineOf(name, entry, find));
}

function machineOf(name: string, entry: MachineEntry, find: Find): BareMachine {
  const path = ['machines', name];
  return {
    name,
    kind: entry.kind,
    group: entry.group,
    motorShaft: entry.motor?.shaft,
    with: layer(entry.with, [...path, 'with'], find, true),
    parts: entriesOf(entry.parts, [...path, 'parts'], find),
    find: below(find, path),
  };
}

/** The parts of a machine or a kind. */
export function entriesOf(
  parts: Readonly<Record<string, PartEntry>> | undefined,
  path: readonly string[],
  find: Find,
): Map<string, Entry> {
  return new Map(
    Object.entries(parts ?? {}).map(([role, { sheet, part, with: over, quantity, spare, needs, axis, accept }]) => {
      const own = [...path, role];
      const entry: Entry = {
        sheet,
        own: layer(part, [...own, 'part'], find),
        with: layer(over, [...own, 'with'], find),
        quantity,
        spare,
        needs,
        axis,
        accept,
        find: below(find, own),
      };
      return [role, entry];
    }),
  );
}

/** Fields at a path of the file as a layer. */
export function layer(
  fields: Fields | undefined,
  path: readonly string[],
  find: Find,
  shared = false,
): GivenFields | undefined {
  return fields && { fields, find: below(find, path), shared };
}

function below(find: Find, path: readonly PropertyKey[]): Find {
  return (further) => find([...path, ...further]);
}
