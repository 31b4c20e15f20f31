import { findKind } from '../pipeline/find-kind.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import type { Fields } from '../sheet/fields-map.js';
import { besides, fitting } from '../sheet/layers.js';
import { holds, replaced } from '../sheet/merge.js';
import type { Find, GivenFields, GivenPart } from './machines.js';
import { withoutAsTemplate } from './readings.js';
import type { FleetSheet } from './sheet.js';

/** A part's whole sheet, and where each of its fields was written. */
export interface WholeSheet {
  readonly sheet: Fields;
  readonly find: Find;
  readonly kind: KnownKind | undefined;
}

type Profiles = NonNullable<FleetSheet['profiles']>;

/**
 * Puts a part's sheet together from its layers: defaults below its own sheet, then what its kind of machine, its
 * group, its machine and its own entry put over it. Fields of shared layers that its kind of part does not have are
 * left out; a profile stands for its material and printer.
 *
 * @param part the part as given
 * @param base its own sheet: the file's or the one written in place
 * @param defaults fields for every part
 * @param profiles material and printer by name
 * @param kinds the part kinds
 */
export function putTogether(
  part: GivenPart,
  base: GivenFields,
  defaults: GivenFields | undefined,
  profiles: Profiles,
  kinds: readonly KnownKind[],
): WholeSheet {
  const below = defaults ? [{ ...defaults, fields: besides(defaults.fields, base.fields) }] : [];
  const layers = [...below, base, ...part.over];
  const kind = findKind(
    kinds,
    part.over.findLast(({ fields }) => fields.part !== undefined)?.fields.part ?? base.fields.part,
  );
  const used = layers
    .map((one) => (one.shared && kind ? { ...one, fields: fitting(one.fields, kind.schema) } : one))
    .map((one) => withoutAsTemplate(one, kind));
  const sheet = used.reduce<Fields>((all, { fields }) => withLayer(all, fields, profiles, kind?.schema), {});
  const named = sheet.name === undefined ? { ...sheet, name: part.role } : sheet;
  return { sheet: named, find: (path) => whereFrom(path, used, part), kind };
}

/**
 * A profile takes the place of the material and the printer below it. One of the fleet file stands for both from here
 * on; any other is left for the sheet's reader.
 */
function withLayer(all: Fields, fields: Fields, profiles: Profiles, schema: KnownKind['schema'] | undefined): Fields {
  const name = fields.profile;
  if (name === undefined || name === null) return replaced(all, fields, schema);
  const { material: _material, printer: _printer, profile: _old, ...below } = all;
  const profile = typeof name === 'string' && Object.hasOwn(profiles, name) ? profiles[name] : undefined;
  if (!profile) return replaced(below, fields, schema);
  const { profile: _profile, ...over } = fields;
  return replaced({ ...below, ...profile }, over, schema);
}

/** The highest layer that says a field; else the highest that says what is around it; else the part's entry. */
function whereFrom(path: readonly PropertyKey[], layers: readonly GivenFields[], part: GivenPart): ReturnType<Find> {
  for (let length = path.length; length > 0; length--) {
    const nearer = path.slice(0, length);
    const layer = layers.findLast(({ fields }) => holds(fields, nearer));
    if (layer) return layer.find(path);
  }
  return part.find([]);
}
