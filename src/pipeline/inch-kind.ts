import * as z from 'zod';
import type { PartViews } from '../parts/part-views.js';
import { map, word } from '../sheet/fields.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { inInches, speltInches } from '../sheet/inches.js';
import { validate } from '../sheet/validate.js';
import { fault, InputError } from '../units/faults.js';
import type { KnownKind } from './known-kind.js';

const units = word(['mm', 'inch'], 'of bare lengths; with inch all that is told states inches beside mm').optional();
const unitsAlone = map({ units });

/**
 * A part kind whose sheets may say `units: inch`: bare lengths are then inches. The kind itself sees them spelt out, and
 * knows nothing of it. Where a sheet without `units` is wrong as millimetres and right as inches, that is what is said.
 */
export function inchKind(kind: KnownKind): KnownKind {
  const { schema } = kind;
  return {
    ...kind,
    schema: schema instanceof z.ZodObject ? schema.safeExtend({ units }) : schema,
    read: (value, locate) => {
      if (!isFields(value) || value.units === undefined) return orInches(kind, value, () => kind.read(value, locate));
      const { units: chosen, ...sheet } = value;
      if (validate(unitsAlone, { units: chosen }, locate).units === 'mm') return kind.read(sheet, locate);
      const read = kind.read(sheetInInches(kind, sheet), locate);
      return { design: (presets) => ({ ...read.design(presets), units: 'inch' as const }) };
    },
    views: (design, choice) => {
      const views = kind.views(design, choice);
      return design.units === 'inch' ? withInches(views) : views;
    },
  };
}

function sheetInInches({ schema, checks }: KnownKind, sheet: Fields): Fields {
  const spelt = inInches(schema, sheet);
  const { limits, ...others } = isFields(spelt) ? spelt : sheet;
  if (!isFields(limits)) return limits === undefined ? others : { ...others, limits };
  // a limit has the unit of its check
  const lengths = new Set(checks.filter(({ unit }) => unit === 'mm').map(({ id }) => id));
  const bounds = Object.entries(limits).map(([id, bound]) => {
    if (!lengths.has(id)) return [id, bound];
    if (!isFields(bound)) return [id, speltInches(bound)];
    return [id, Object.fromEntries(Object.entries(bound).map(([side, at]) => [side, speltInches(at)]))];
  });
  return { ...others, limits: Object.fromEntries(bounds) };
}

/** One wrong length may be a slip of the pen; more, all right as inches, are inches. */
const FEW = 1;

function orInches<T>(kind: KnownKind, value: unknown, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError) || error.faults.length <= FEW || !isFields(value)) throw error;
    try {
      kind.read(sheetInInches(kind, value), () => undefined);
    } catch {
      throw error;
    }
    throw fault(
      'units',
      '',
      `is missing: ${error.faults.length} lengths are wrong as millimetres, and all are right as inches; add the line units: inch`,
    );
  }
}

/** Every size of the views with its inches beside. */
function withInches(views: PartViews): PartViews {
  const marked = <View extends PartViews['side']>(view: View): View => ({
    ...view,
    sizes: view.sizes.map((mark) => ({ ...mark, inches: true as const })),
  });
  return {
    ...views,
    side: marked(views.side),
    end: marked(views.end),
    ...(views.other ? { other: marked(views.other) } : {}),
    ...(views.further ? { further: views.further.map(marked) } : {}),
  };
}
