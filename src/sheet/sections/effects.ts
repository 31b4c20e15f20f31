import { map, orShort, word } from '../fields.js';

/** Effects of the printer on a size that the predicted fit counts. */
export const EFFECTS = ['shrink', 'hole_offset', 'facets', 'layers', 'first_layer', 'moisture', 'temperature'] as const;
export type Effect = (typeof EFFECTS)[number];

/** Which effects count. */
export type Effects = Readonly<Record<Effect, boolean>>;

const ABOUT: Readonly<Record<Effect, string>> = {
  shrink: 'spread of the shrink that is left after compensation',
  hole_offset: 'spread of the hole offset that is left after compensation',
  facets: 'room in the corners of a bore drawn with facets',
  layers: 'edges of whole layers that stand out of the flanks until the nut has run in',
  first_layer: 'the squashed first layer at the end of the bore',
  moisture: 'growth from dry to room air',
  temperature: 'expansion against the steel screw at duty.temperature',
};

const onOff = ['on', 'off'] as const;
const switchOf = (effect: Effect) => word(onOff, ABOUT[effect]).optional();

/** Effects to leave out of the predicted fit; all are on unless switched off here. */
export const effectsSection = orShort(
  map({
    shrink: switchOf('shrink'),
    hole_offset: switchOf('hole_offset'),
    facets: switchOf('facets'),
    layers: switchOf('layers'),
    first_layer: switchOf('first_layer'),
    moisture: switchOf('moisture'),
    temperature: switchOf('temperature'),
  }),
  (short) => Object.fromEntries(EFFECTS.map((effect) => [effect, short])),
  'string',
);

/** The switches of a sheet: whatever it does not say is on. */
export function resolveEffects(sheet: Partial<Record<Effect, 'on' | 'off' | undefined>> = {}): Effects {
  const isOn = (effect: Effect) => sheet[effect] !== 'off';
  return {
    shrink: isOn('shrink'),
    hole_offset: isOn('hole_offset'),
    facets: isOn('facets'),
    layers: isOn('layers'),
    first_layer: isOn('first_layer'),
    moisture: isOn('moisture'),
    temperature: isOn('temperature'),
  };
}
