import type { z } from 'zod';
import { map, orShort, quantity, reading, word } from '../../sheet/fields.js';

/** Forms of a shaft's section. */
export const SHAFT_FORMS = ['round', 'd', 'double-d', 'keyed', 'hexagon'] as const;

const size = (about: string) => reading('length', { least: 1, most: 30 }, about).optional();

const shaftFields = map({
  form: word(SHAFT_FORMS).optional(),
  diameter: size('over the round of the shaft'),
  flat: size('of a D shaft, from the flat to the far side'),
  flats: size('of a shaft with two flats, across them'),
  across_flats: size('of a hexagonal shaft'),
  key: map({
    width: quantity('length', { above: 0, most: 12 }, 'b'),
    hub_depth: quantity('length', { above: 0, most: 6 }, 't2, depth of the keyway in the hub'),
  }).optional(),
  flat_length: quantity(
    'length',
    { above: 0, most: 100 },
    'length of the flat or of the key, from the end of the shaft',
  ).optional(),
  length: quantity('length', { above: 0, most: 500 }, 'free length that can enter the hub').optional(),
}).superRefine((shaft, context) => {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  const form = formOf(shaft);
  const needed = {
    round: undefined,
    d: 'flat',
    'double-d': 'flats',
    keyed: undefined,
    hexagon: 'across_flats',
  } as const;
  const own = needed[form];
  if (form !== 'hexagon' && shaft.diameter === undefined) refuse('diameter', 'is missing; must be 1 to 30 mm');
  if (own !== undefined && shaft[own] === undefined) refuse(own, `is missing; a ${form} shaft needs it`);
  for (const key of ['flat', 'flats', 'across_flats'] as const) {
    if (key !== own && shaft[key] !== undefined) refuse(key, `does not belong to a ${form} shaft`);
  }
  if (form !== 'keyed' && shaft.key !== undefined) refuse('key', `does not belong to a ${form} shaft`);
  if (form === 'hexagon' && shaft.diameter !== undefined)
    refuse('diameter', 'a hexagonal shaft has across_flats instead');
  const across = own === undefined ? undefined : shaft[own];
  if (form !== 'hexagon' && across && shaft.diameter) {
    const [least, most] = form === 'd' ? [0.6, 0.99] : [0.5, 0.99];
    const share = across.value / shaft.diameter.value;
    if (!(share >= least && share <= most)) refuse(own!, `must be ${least} to ${most} of the diameter`);
  }
});

/** A shaft: its diameter, or more where it is not round. */
export const shaftSection = orShort(shaftFields, (short) => ({ diameter: short }), 'quantity');
export type ShaftSheet = z.output<typeof shaftSection>;

/** The form of a shaft, by what is given of it where it is not named. */
export function formOf(shaft: {
  readonly form?: (typeof SHAFT_FORMS)[number] | undefined;
  readonly flat?: unknown;
  readonly flats?: unknown;
  readonly across_flats?: unknown;
  readonly key?: unknown;
}): (typeof SHAFT_FORMS)[number] {
  if (shaft.form !== undefined) return shaft.form;
  if (shaft.flat !== undefined) return 'd';
  if (shaft.flats !== undefined) return 'double-d';
  if (shaft.across_flats !== undefined) return 'hexagon';
  return shaft.key === undefined ? 'round' : 'keyed';
}
