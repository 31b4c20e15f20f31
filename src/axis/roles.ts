import type { z } from 'zod';
import { findKind } from '../pipeline/find-kind.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { besides, fitting } from '../sheet/layers.js';
import { holds, replaced } from '../sheet/merge.js';
import { nearest } from '../sheet/nearest.js';
import { fieldsAt } from '../sheet/schema-keys.js';
import { dutySection } from '../sheet/sections/duty.js';
import { longForm } from '../sheet/short-forms.js';
import { type Fault, shown } from '../units/faults.js';
import type { Follows } from './follows.js';

/** Fields, and where in the sheet of the axis each of them was written. */
export interface Layer {
  readonly fields: Fields;
  readonly from: (path: readonly PropertyKey[]) => readonly PropertyKey[];
}

/** One part of an axis, as its own section says it. */
export interface Role {
  readonly role: string;
  readonly kind: KnownKind;
  readonly own: Fields;
}

/** A part's whole sheet, and where in the sheet of the axis a field of it was written. */
export interface RoleSheet {
  readonly sheet: Fields;
  readonly from: (path: readonly PropertyKey[]) => readonly PropertyKey[];
}

/**
 * The parts of an axis; `part` is the name of the section unless it says its own.
 * @returns them, or what is wrong with them
 */
export function rolesOf(sheet: Fields, kinds: readonly KnownKind[]): { roles: readonly Role[]; faults: Fault[] } {
  const parts = isFields(sheet.parts) ? Object.entries(sheet.parts) : [];
  const faults: Fault[] = [];
  if (isFields(sheet.parts) && parts.length === 0)
    faults.push({ path: 'parts', value: '', allowed: 'must hold at least one part, such as nut' });
  const names = kinds.map(({ kind }) => kind);
  const roles = parts.flatMap(([role, own]): Role[] => {
    if (!isFields(own)) return [];
    const twin = parts.find(([other]) => other !== role && other.toLowerCase() === role.toLowerCase());
    if (twin)
      faults.push({ path: `parts.${role}`, value: role, allowed: `must differ from ${twin[0]}, letters' case aside` });
    const part = own.part ?? role;
    const kind = findKind(kinds, part);
    if (kind) return [{ role, kind, own }];
    const near = typeof part === 'string' ? nearest(part, names) : undefined;
    const choice = `must be one of ${names.join(', ')}${near ? `; did you mean ${near}?` : ''}`;
    faults.push(
      own.part === undefined
        ? { path: `parts.${role}.part`, value: '', allowed: `is missing; ${choice}` }
        : { path: `parts.${role}.part`, value: shown(part), allowed: choice },
    );
    return [];
  });
  return { roles, faults };
}

/**
 * Puts the sheet of one part together: what follows from the other parts lowest, then what the axis says of all, then what
 * is told of this part alone.
 *
 * @param axis the sheet of the axis, as it was typed
 * @param role the part
 * @param follows what its neighbours and the lengths say, and what of it goes before the words of the axis
 */
export function roleSheet(
  axis: Fields,
  { role, kind, own }: Role,
  follows: Pick<Follows, 'fields' | 'ofKind'>,
): RoleSheet {
  const here: Layer['from'] = (path) => ['parts', role, ...path];
  const head = { part: kind.kind, name: `${String(axis.name)}-${role}` };
  const around = () => ['parts', role];
  const below = [
    { fields: meantBy(follows.fields, kind), from: around },
    ...sharedLayers(axis),
    ...asWarmAsMotor(axis, kind),
    { fields: follows.ofKind[kind.kind] ?? {}, from: around },
  ].map(({ fields, from }) => ({
    fields: besides(spokenBy(fitting(fields, kind.schema), kind.schema), own),
    from,
  }));
  const layers: Layer[] = [{ fields: head, from: here }, ...below, { fields: own, from: here }];
  const sheet = layers.reduce<Fields>((all, { fields }) => replaced(all, fields, kind.schema), {});
  return { sheet, from: (path) => whereFrom(path, layers, here) };
}

const SHARED = [
  'units',
  'revision',
  'screw',
  'motor',
  'mounting',
  'thrust_bearing',
  'calipers',
  'profile',
  'material',
  'printer',
  'duty',
] as const;

/** Words on a neighbour that only some kinds mean so: the nut of an adapter is its own, a map of readings. */
const MEANT_BY: ReadonlyMap<string, readonly string[]> = new Map([
  ['nut', ['end-holder']],
  ['coupling', ['end-holder', 'motor-plate']],
]);

function meantBy(fields: Fields, { kind }: KnownKind): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([key]) => MEANT_BY.get(key)?.includes(kind) ?? true));
}

/** What the axis says of all its parts, in the places where the kinds have it. */
function sharedLayers(axis: Fields): Layer[] {
  const shared = Object.fromEntries(SHARED.flatMap((key) => (axis[key] === undefined ? [] : [[key, axis[key]]])));
  const { motor, mounting } = axis;
  const runs = { horizontal: 'horizontal', 'motor-below': 'vertical', 'motor-above': 'vertical' };
  const way = typeof mounting === 'string' ? new Map(Object.entries(runs)).get(mounting) : undefined;
  return [
    ...(way === undefined ? [] : [{ fields: { duty: { axis: way } }, from: () => ['mounting'] }]),
    ...(isFields(motor)
      ? [
          {
            fields: { duty: { motor } },
            from: (path: readonly PropertyKey[]) => ['motor', ...path.slice(2)],
          },
        ]
      : []),
    { fields: shared, from: (path) => path },
  ];
}

/**
 * A collar lies on the motor's plate, and is as warm as the motor, or as warmer air around it, unless its own section says otherwise: of a
 * motor that tells nothing nobody knows how warm, whatever is said of the room.
 */
function asWarmAsMotor({ motor, duty }: Fields, { kind }: KnownKind): Layer[] {
  if (kind !== 'collar' || motor === undefined) return [];
  const temperature = (isFields(motor) ? motor.temperature : undefined) ?? null;
  const around = isFields(duty) ? duty.temperature : undefined;
  if (isWarmer(around, temperature)) return [];
  return [{ fields: { duty: { temperature } }, from: () => ['motor', 'temperature'] }];
}

/** Whether the air is warmer than a motor, where both are told. */
function isWarmer(around: unknown, motor: unknown): boolean {
  const [air, face] = [around, motor].map((told) => dutySection.shape.temperature.safeParse(told).data);
  return air !== undefined && face !== undefined && air > face;
}

/** Two kinds may use one field for different words: a part takes only those that its own kind knows, and short forms that it has. */
function spokenBy(fields: Fields, schema: z.ZodType): Fields {
  return Object.fromEntries(
    Object.entries(fields).filter(([key, value]) => {
      if (typeof value !== 'string') return true;
      if (key === 'motor') return longForm(schema, [key], value) !== undefined;
      const own = fieldsAt(schema, [key]);
      return key !== 'mounting' || own.length === 0 || own.some((field) => field.safeParse(value).success);
    }),
  );
}

/** The highest layer that says a field, else what is around it; a field that nobody says is missing in the part's own section. */
function whereFrom(path: readonly PropertyKey[], layers: readonly Layer[], here: Layer['from']) {
  for (let length = path.length; length > 0; length--) {
    const layer = layers.findLast(({ fields }) => holds(fields, path.slice(0, length)));
    if (layer) return layer.from(path);
  }
  return SHARED.some((key) => key === path[0]) ? path : here(path);
}
