import type { Material } from '../../presets/material.js';
import type { JointHole } from './joints.js';

/** Cautions that go with every printed part of a screw drive. */
export const DRIVE_CAUTIONS: readonly string[] = [
  'A vertical axis falls: block or lower it before the nut or coupling is taken out, and do not rely on the screw alone to hold it.',
  'Isolate the power and wait for supplies to discharge before reaching in; motors can start without warning.',
  'Keep hair, cuffs and gloves away from turning screws and couplings, and guard them.',
  'Printed plastic wears, creeps and softens: inspect it, and never use it to lift people, to hold loads over people, or as the only means of holding a load that can hurt.',
  'Turn by hand over the whole travel first, then run at a tenth of the feed with a hand on the stop.',
  'This is geometry and arithmetic, not certification: local codes, employer rules and licensed practice come first.',
];

/**
 * Said of plastics that crack under stress in oil, before anybody reaches for the threadlocker.
 * @param instead what to do in its place, in sentences
 */
export function crackCautions(
  { name, stressCracks }: Pick<Material, 'name' | 'stressCracks'>,
  ...instead: readonly string[]
): string[] {
  if (!stressCracks) return [];
  return [[`${name} cracks under stress: no threadlocker, solvent, spray or oil near it.`, ...instead].join(' ')];
}

/** What locks the screws of a plate or flange in place of a threadlocker. */
export const LOCK_BY_NUTS = 'Lock screws by captive or prevailing-torque nuts.';

/** What a printed thread may be greased with where oil cracks it. */
export const GREASE_ALONE = 'Grease with silicone or PFPE alone.';

/** How the line begins that says how a floating nut is held, in place of tightened screws. */
export const NUT_FLOATS = 'The nut floats';

const MEMBRANE = 'Each pocket on the bed is closed by one layer';
const STEPPED = 'The pockets on the bed are roofed in steps';

/**
 * What to do with roofs over pockets that opened on the bed. A head there gets a washer; a nut fills its pocket and gets none.
 * @param roofed holes whose pockets are roofed
 */
export function roofCautions(roofed: readonly JointHole[]): string[] {
  const [first] = roofed;
  if (!first) return [];
  const washers = roofed.some(({ joint }) => joint === 'counterbore') ? 'put a washer under each head there, and ' : '';
  const settle = `${washers}tighten again the next day: what is bridged beds in`;
  return first.roof === 'membrane' ? [`${MEMBRANE}: drill it through, then ${settle}.`] : [`${STEPPED}: ${settle}.`];
}
