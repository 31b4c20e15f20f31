import * as z from 'zod';
import { isFields } from '../sheet/fields-map.js';
import { revisionField } from '../sheet/sections/common.js';
import { validate } from '../sheet/validate.js';
import type { KnownKind } from './known-kind.js';

/** A part kind whose sheets may say `revision`, which goes on the drawing; the kind itself knows nothing of it. */
export function revisedKind(kind: KnownKind): KnownKind {
  const { schema } = kind;
  if (!(schema instanceof z.ZodObject)) return kind;
  return {
    ...kind,
    schema: schema.safeExtend({ revision: revisionField.optional() }),
    read: (value, locate) => {
      if (!isFields(value)) return kind.read(value, locate);
      const { revision: given, ...sheet } = value;
      if (given === undefined) return kind.read(sheet, locate);
      const { revision } = validate(z.object({ revision: revisionField }), { revision: given }, locate);
      const read = kind.read(sheet, locate);
      return { design: (presets) => ({ ...read.design(presets), revision }) };
    },
  };
}
