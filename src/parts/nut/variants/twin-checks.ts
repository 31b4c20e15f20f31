import { type Check, notJudged, soft, valued } from '../../../judge/check.js';
import { DRY_PRINT_MOST, DRY_PRINT_WORDS, FRICTION } from '../../../mechanics/friction.js';
import { plain } from '../../../units/format.js';
import { borneShare } from '../../common/borne-share.js';
import type { NutDesign } from '../dimensions.js';
import { sideOf } from './twin-side.js';

type NutCheck = Check<NutDesign>;
const about = { group: 'family', source: 'derived: moments about the screw', unit: '' } as const;

/**
 * A load beside the screw tilts a carriage on its two threads: too far out, it locks.
 *
 *     share = 2 · friction · lever / distance of the threads; friction = 0.2 greased, else 0.5, at most 1.1
 */
export const twinBinding: NutCheck = {
  ...about,
  id: 'twin-binding',
  question: 'turns',
  title: 'Lever of the load over that at which both threads lock',
  limits: soft({ max: 0.5 }, { max: 1 }),
  moves: 'family.lever, family.apart, duty.grease',
  run: ({ family, duty }, { pass: { max = 1 } }) => {
    if (family?.kind !== 'twin') return undefined;
    if (family.lever === undefined) return notJudged('family.lever');
    const dry = duty.grease !== 'greased';
    const friction = dry ? FRICTION.high : FRICTION.nominal;
    const locks = family.apart / (2 * friction);
    const share = family.lever / locks;
    const value = { least: share, likely: share, most: dry ? (share * DRY_PRINT_MOST) / friction : share };
    const reached = dry ? `, ${DRY_PRINT_WORDS}, then from ${plain((locks * friction) / DRY_PRINT_MOST, 0)} mm on` : '';
    const cure =
      value.most > max ? '; set the threads further apart, bring the load nearer, or guide the carriage' : '';
    return valued(
      value,
      `the load acts ${plain(family.lever)} mm beside the screw; at friction ${plain(friction, 2)} threads ${plain(family.apart)} mm apart lock from ${plain(locks, 0)} mm on${reached}${cure}`,
    );
  },
};

/** What tilts a carriage presses the threads sideways on the screw, one each way. */
export const twinPressure: NutCheck = {
  ...about,
  id: 'twin-pressure',
  question: 'holds',
  title: 'Sideways pressure on threads',
  limits: soft({ max: 1 }, { max: 1 }),
  moves: 'family.lever, family.apart, body.length, duty.load',
  run: (design, { pass }) => {
    const { family } = design;
    if (family?.kind !== 'twin') return undefined;
    if (family.lever === undefined) return notJudged('family.lever');
    return borneShare(design, pass, {
      stresses: (force) => [{ kind: 'pressure', stress: sideOf(design, force)!.pressure }],
      sudden: 1,
      where: 'sideways on each thread',
      cure: 'set the threads further apart, make them longer, or guide the carriage',
    });
  },
};
