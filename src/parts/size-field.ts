import type { AskedView, PartViews } from './part-views.js';

/** Said of a size in place of a field: it is worked out, or chosen by a rule, and no field of the sheet states it. */
export const DERIVED = 'derived';

/** Fields of the sheet by the sizes that show them. */
export type FieldsOfSizes = Readonly<Record<string, string>>;

/** A table as a function; undefined for a size that it does not know. */
export function fieldFrom(table: FieldsOfSizes): (name: string) => string | undefined {
  return (name) => (Object.hasOwn(table, name) ? table[name] : undefined);
}

/** Views whose sizes name the fields that they show. */
export function withFields(views: PartViews, fieldOf: (name: string) => string | undefined): PartViews {
  const { side, end, other, further } = views;
  const view = (one: AskedView): AskedView => ({
    ...one,
    sizes: one.sizes.map((mark) => {
      const field = fieldOf(mark.name);
      return field === undefined ? mark : { ...mark, field };
    }),
  });
  return {
    ...views,
    side: view(side),
    end: view(end),
    ...(other ? { other: view(other) } : {}),
    ...(further ? { further: further.map(view) } : {}),
  };
}
