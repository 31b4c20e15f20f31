import type { KnownKind } from '../pipeline/known-kind.js';
import { isFields } from '../sheet/fields-map.js';
import { nearest } from '../sheet/nearest.js';
import { dotted } from '../sheet/path.js';
import { readingPaths } from '../sheet/reading-fields.js';
import { knownKeys } from '../sheet/schema-keys.js';
import type { FileFault, GivenFields, GivenFleet } from './machines.js';

/** Fields of shared layers that no kind of part has: each is a slip, since it would be left out everywhere. */
export function sharedFaults(fleet: GivenFleet, kinds: readonly KnownKind[]): FileFault[] {
  const over = fleet.machines.flatMap(({ parts }) => parts.flatMap((part) => part.over));
  const layers = new Set([fleet.defaults, ...over].filter((layer) => layer?.shared === true));
  return [
    ...[...layers].flatMap((layer) => (layer ? unknownIn(layer.fields, [], layer, kinds) : [])),
    ...unreadable(fleet, kinds),
  ];
}

/** Fields that must be measured and that no kind of part reads. */
function unreadable(fleet: GivenFleet, kinds: readonly KnownKind[]): FileFault[] {
  const parts = fleet.machines.flatMap((machine) => machine.parts);
  const wanted = new Map(parts.flatMap((part) => part.needs.map((field) => [field, part] as const)));
  if (wanted.size === 0) return [];
  const known = [...new Set(kinds.flatMap(({ schema }) => readingPaths(schema)))];
  return [...wanted].flatMap(([field, { find }]) => {
    if (known.includes(field)) return [];
    const near = nearest(field, known);
    const allowed = near ? `no such reading; did you mean ${near}?` : `no such reading; known: ${known.join(', ')}`;
    return [{ ...find([]), path: 'needs', value: field, allowed }];
  });
}

function unknownIn(
  fields: Readonly<Record<string, unknown>>,
  path: readonly string[],
  layer: GivenFields,
  kinds: readonly KnownKind[],
): FileFault[] {
  const open = kinds.some(({ schema }) => isLeaf(schema, path));
  const known = [...new Set(kinds.flatMap(({ schema }) => knownKeys(schema, path)))];
  const all = path.length === 0 ? [...known, 'profile'] : known;
  return Object.entries(fields).flatMap(([key, value]) => {
    const here = [...path, key];
    if (all.includes(key)) return isFields(value) ? unknownIn(value, here, layer, kinds) : [];
    if (open) return [];
    const near = nearest(key, all);
    const allowed = near
      ? `unknown field; did you mean ${near}?`
      : `no kind of part has this field; known here: ${all.join(', ')}`;
    return [{ ...layer.find(here), path: dotted(here), value: '', allowed }];
  });
}

/** Whether a field that the kind has holds no map of known fields, such as limits by the names of checks. */
function isLeaf(schema: KnownKind['schema'], path: readonly string[]): boolean {
  const last = path.at(-1);
  if (last === undefined) return false;
  return knownKeys(schema, path.slice(0, -1)).includes(last) && knownKeys(schema, path).length === 0;
}
