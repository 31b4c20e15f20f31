import type { Check } from '../../../judge/check.js';
import { plain } from '../../../units/format.js';
import { onceFor } from '../../../units/once.js';
import { askingFor } from '../../common/untold.js';
import type { NutDesign } from '../dimensions.js';
import { bodyHeat, UNTOLD_RESTS, warmer } from '../warmth.js';

type NutCheck = Check<NutDesign>;

/** A place of a nut that friction warms. */
interface Place {
  readonly by: (design: NutDesign) => number;
  readonly at: (design: NutDesign) => NutDesign;
  readonly name: string;
}

function place(name: string, share: number): Place {
  const by = (design: NutDesign) => (design.duty.temperature === undefined ? 0 : share * bodyHeat(design).whole);
  return { name, by, at: onceFor((design: NutDesign) => warmer(design, by(design))) };
}

/** The barrel, and the root of its flange: as warm as the nut itself, and the teeth less their skin. */
const BODY = place('', 1);

/**
 * The flange where screws and seat bear on it. What warms it comes from the barrel and goes on into a carriage that is no warmer than the air:
 * it stands halfway between the two.
 */
const FLANGE = place('its flange ', 0.5);

/** Checks of what bears beside the thread, at the end of a run. */
export function inBodyWarmth(checks: readonly NutCheck[]): NutCheck[] {
  return checks.map((check) => judgedAt(BODY, check));
}

/** Checks of what bears where the flange lies on its carriage, at the end of a run. */
export function inFlangeWarmth(checks: readonly NutCheck[]): NutCheck[] {
  return checks.map((check) => judgedAt(FLANGE, check));
}

/** What warms a nut by friction. */
const HEATED_BY = ['duty.temperature', 'duty.load', 'duty.feed', 'duty.grease', 'duty.on_time', 'duty.cycle'] as const;

function withHeat(moves: string): string {
  return [...new Set([...moves.split(', '), ...HEATED_BY])].join(', ');
}

function judgedAt({ by, at, name }: Place, check: NutCheck): NutCheck {
  return askingFor(UNTOLD_RESTS, {
    ...check,
    moves: withHeat(check.moves),
    run: (design, limits) => {
      const warm = at(design);
      const found = check.run(warm, limits);
      if (warm === design || found?.kind !== 'value') return found;
      return { ...found, message: `${name}warmed by friction, by up to ${plain(by(design), 0)} K: ${found.message}` };
    },
  });
}
