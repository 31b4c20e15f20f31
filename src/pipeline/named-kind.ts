import * as z from 'zod';
import type { PresetTexts } from '../presets/texts.js';
import type { Assumption } from '../sheet/assumptions.js';
import { orShort } from '../sheet/fields.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { replaced } from '../sheet/merge.js';
import { withoutField } from '../sheet/without-field.js';
import type { KnownKind } from './known-kind.js';
import { type NamedField, namedFields } from './named-fields.js';

/**
 * A part kind whose sheets may name a flange, a motor or a screw that ships in place of its figures. What the preset
 * holds is put under what the sheet says itself, and listed as assumed; the kind itself knows nothing of it.
 */
export function namedKind(kind: KnownKind): KnownKind {
  const fields = namedFields(kind.kind);
  return {
    ...kind,
    schema: withNames(kind.schema, fields),
    read: (value, locate) => {
      if (!isFields(value) || !fields.some((field) => nameIn(value, field) !== undefined))
        return kind.read(value, locate);
      return {
        design: (presets) => {
          const { sheet, assumed } = spelledOut(value, fields, presets);
          const made = kind.read(sheet, locate).design(presets);
          return { ...made, assumptions: [...assumed, ...made.assumptions] };
        },
      };
    },
  };
}

/** The name of a preset that a sheet gives at a field, and where: at the field itself, in its `preset`, or as older sheets do. */
function nameIn(
  sheet: Fields,
  { field, key, older, isName }: NamedField,
): { readonly name: string; readonly path: string } | undefined {
  const given = sheet[field];
  if (!isFields(given)) return typeof given === 'string' && isName(given) ? { name: given, path: field } : undefined;
  const name = given[key];
  if (typeof name === 'string' && isName(name)) return { name, path: `${field}.${key}` };
  const number = older && given[older.key];
  if (!older || (typeof number !== 'number' && typeof number !== 'string')) return undefined;
  return { name: older.name(number), path: `${field}.${older.key}` };
}

function spelledOut(
  value: Fields,
  fields: readonly NamedField[],
  presets: PresetTexts,
): { readonly sheet: Fields; readonly assumed: readonly Assumption[] } {
  let sheet = value;
  const assumed: Assumption[] = [];
  for (const one of fields) {
    const named = nameIn(sheet, one);
    if (named === undefined) continue;
    const { name, path } = named;
    const { [one.field]: given, ...others } = sheet;
    const own = isFields(given)
      ? [one.key, ...(one.older ? [one.older.key] : [])].reduce((fields, key) => withoutField(fields, [key]), given)
      : {};
    const { figures, why } = one.resolve(name, presets, path);
    const told = Object.keys(own).length > 0 ? { ...others, [one.field]: own } : others;
    const said = besidesBlanks(told, figures);
    sheet = replaced(givenBy(figures, said), said);
    if (why !== undefined) assumed.push({ field: one.field, value: name, why });
  }
  return { sheet, assumed };
}

/** A field that was left blank is not told: the preset's figure stands. */
function besidesBlanks(told: Fields, figures: Fields): Fields {
  return Object.fromEntries(
    Object.entries(told).flatMap(([key, value]) => {
      const figure = figures[key];
      if (figure === undefined) return [[key, value]];
      if (value === null) return [];
      return [[key, isFields(value) && isFields(figure) ? besidesBlanks(value, figure) : value]];
    }),
  );
}

/** A map that says one of these says its whole form, and takes nothing from a preset. */
const WHOLE_FORMS = ['shape', 'form', 'rectangle', 'at'];

/** What a preset gives a sheet: nothing where that says a whole form itself. */
function givenBy(figures: Fields, own: Fields): Fields {
  return Object.fromEntries(
    Object.entries(figures).flatMap(([key, figure]) => {
      const said = own[key];
      if (!isFields(said) || !isFields(figure)) return [[key, figure]];
      return WHOLE_FORMS.some((form) => said[form] !== undefined) ? [] : [[key, givenBy(figure, said)]];
    }),
  );
}

/** The schema for those who write sheets: a name or a map with `preset` at each such field, and nothing asked for that it gives. */
function withNames(schema: z.ZodType, fields: readonly NamedField[]): z.ZodType {
  if (!(schema instanceof z.ZodObject)) return schema;
  const shape: Record<string, z.ZodType> = {};
  for (const { field, about, gives, older } of fields) {
    for (const key of gives) if (key in schema.shape) shape[key] = optional(schema.shape[key]);
    if (about !== undefined)
      shape[field] = optional(nameable(schema.shape[field], { about, ...(older ? { older } : {}) }));
  }
  return schema.safeExtend(shape);
}

type Names = Pick<NamedField, 'older'> & { readonly about: string };

function nameable(schema: z.ZodType, names: Names): z.ZodType {
  if (schema instanceof z.ZodOptional) return nameable(schema.unwrap() as z.ZodType, names);
  if (!(schema instanceof z.ZodObject)) return schema;
  const shape = Object.fromEntries(Object.entries(schema.shape).map(([key, one]) => [key, optional(one as z.ZodType)]));
  const open = schema.safeExtend({
    ...shape,
    preset: z.string('must be the name of a preset').optional().describe(names.about),
    ...(names.older ? { [names.older.key]: z.int('must be its number').optional().describe(names.older.about) } : {}),
  });
  return orShort(open, (short) => ({ preset: short }), 'string');
}

function optional(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional ? schema : schema.optional();
}
