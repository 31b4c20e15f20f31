import { nearest } from '../sheet/nearest.js';
import { partName } from '../sheet/sections/common.js';
import { shown } from '../units/faults.js';
import type {
  BareMachine,
  Entry,
  FileFault,
  Find,
  GivenFields,
  GivenFleet,
  GivenMachine,
  GivenPart,
} from './machines.js';
import { entriesOf, type FleetFile, layer } from './read-sheet.js';

/** A fleet, with all that is wrong in how its pieces hang together. */
export interface Assembled {
  readonly fleet: GivenFleet;
  readonly faults: readonly FileFault[];
}

/** What a machine gets from its kind or its group. */
interface Common {
  readonly with?: GivenFields | undefined;
  readonly motorShaft?: number | undefined;
  readonly needs: readonly string[];
  /** fields that must be measured at each machine */
  readonly readings: readonly string[];
  readonly parts: ReadonlyMap<string, Entry>;
}

/**
 * Puts together what the fleet file and its rows say: each machine with what its kind and its group give it.
 *
 * @param name the fleet's name
 * @param file the fleet file, where it is YAML
 * @param given the machines of the file and of the rows
 */
export function assembleFleet(name: string, file: FleetFile | undefined, given: readonly BareMachine[]): Assembled {
  const faults: FileFault[] = [...machineFaults(given)];
  const kinds = kindsOf(file);
  const groups = groupsOf(file);
  const machines = given.map((one): GivenMachine => {
    const parts = [...one.parts].map(([role, { find }]) => ({ name: role, what: 'part', find }));
    const axes = [...one.parts].flatMap(([, { axis, find }]) => (axis === undefined ? [] : [{ axis, find }]));
    const wrong = [
      ...nameFaults(parts),
      ...axes.flatMap(({ axis, find }) => nameFaults([{ name: axis, what: 'axis', find }])),
    ];
    faults.push(...wrong.map((fault) => ({ ...fault, machine: one.name })));
    const kind = lookUp('kind', one.kind, kinds, one, faults);
    const group = lookUp('group', one.group, groups, one, faults);
    return machineOf(one, kind, group);
  });
  if (machines.length === 0) {
    faults.push({ file: file?.find([]).file ?? '', path: 'machines', value: '', allowed: 'there is no machine' });
  }
  const find = file?.find;
  const defaults = find && layer(file.sheet.defaults, ['defaults'], find, true);
  return { fleet: { name, defaults, machines }, faults };
}

function machineFaults(given: readonly BareMachine[]): FileFault[] {
  const faults = nameFaults(given.map(({ name, find }) => ({ name, what: 'machine', find })));
  return faults.map((fault) => ({ ...fault, machine: fault.value }));
}

function kindsOf(file: FleetFile | undefined): Map<string, Common> {
  return new Map(
    Object.entries(file?.sheet.kinds ?? {}).map(([name, kind]) => {
      const path = ['kinds', name];
      const find: Find = file!.find;
      const common: Common = {
        with: layer(kind.with, [...path, 'with'], find, true),
        motorShaft: kind.motor?.shaft,
        needs: [...new Set([...(kind.needs ?? []).filter((name) => !isField(name)), ...Object.keys(kind.parts ?? {})])],
        readings: (kind.needs ?? []).filter(isField),
        parts: entriesOf(kind.parts, [...path, 'parts'], find),
      };
      return [name, common];
    }),
  );
}

/** Names of parts hold no points, fields do. */
function isField(name: string): boolean {
  return name.includes('.');
}

function groupsOf(file: FleetFile | undefined): Map<string, Common> {
  return new Map(
    Object.entries(file?.sheet.groups ?? {}).map(([name, group]) => {
      const over = layer(group.with, ['groups', name, 'with'], file!.find, true);
      return [name, { with: over, needs: [], readings: [], parts: new Map<string, Entry>() }];
    }),
  );
}

function lookUp(
  what: 'kind' | 'group',
  name: string | undefined,
  known: ReadonlyMap<string, Common>,
  { name: machine, find }: BareMachine,
  faults: FileFault[],
): Common | undefined {
  // rows without a fleet file have kinds in name only
  if (name === undefined || known.size === 0) return undefined;
  const found = known.get(name);
  if (found) return found;
  const near = nearest(name, [...known.keys()]);
  const allowed = near
    ? `no ${what} of this name; did you mean ${near}?`
    : `no ${what} of this name; known: ${[...known.keys()].join(', ')}`;
  faults.push({ ...find([what]), path: what, value: shown(name), allowed, machine });
  return undefined;
}

function machineOf(given: BareMachine, kind: Common | undefined, group: Common | undefined): GivenMachine {
  const roles = [...new Set([...(kind?.parts.keys() ?? []), ...given.parts.keys()])];
  return {
    name: given.name,
    kind: given.kind,
    group: given.group,
    motorShaft: given.motorShaft ?? kind?.motorShaft,
    needs: kind?.needs ?? [],
    parts: roles.map((role) => partOf(role, kind, group, given)),
  };
}

function partOf(role: string, kind: Common | undefined, group: Common | undefined, machine: BareMachine): GivenPart {
  const common = kind?.parts.get(role);
  const own = machine.parts.get(role);
  const isReplaced = own?.sheet !== undefined || own?.own !== undefined;
  const over = [kind?.with, common?.with, group?.with, machine.with, own?.with];
  const given = [...(isReplaced ? [own?.own] : []), machine.with, own?.with];
  return {
    role,
    sheet: isReplaced ? own?.sheet : common?.sheet,
    own: isReplaced ? own?.own : common?.own,
    over: over.filter((one) => one !== undefined),
    given: given.filter((one) => one !== undefined),
    needs: [...new Set([...(kind?.readings ?? []), ...(common?.needs ?? []), ...(own?.needs ?? [])])],
    columns: own?.columns ?? [],
    quantity: own?.quantity ?? common?.quantity ?? 1,
    spare: own?.spare ?? common?.spare ?? 0,
    axis: own?.axis ?? common?.axis,
    accept: Object.entries({ ...common?.accept, ...own?.accept }).map(([check, reason]) => ({ check, reason })),
    find: own?.find ?? common?.find ?? machine.find,
  };
}

/** Names become folders and files: plain on every disk, and different from each other even where case is ignored. */
function nameFaults(
  given: readonly { readonly name: string; readonly what: string; readonly find: Find }[],
): FileFault[] {
  const seen = new Map<string, string>();
  return given.flatMap(({ name, what, find }) => {
    const read = partName.safeParse(name);
    const wrong = (allowed: string) => [{ ...find([]), path: what, value: shown(name), allowed }];
    if (!read.success) return wrong(read.error.issues[0]?.message ?? '');
    const earlier = seen.get(name.toLowerCase());
    seen.set(name.toLowerCase(), name);
    return earlier === undefined ? [] : wrong(`must differ from ${earlier}, letters' case aside`);
  });
}
