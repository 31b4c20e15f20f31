import { type Check, notJudged, soft, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import type { CollarDesign } from '../dimensions.js';
import { engagedIn } from '../held-in.js';
import { boreEnd } from '../plan.js';

/**
 * A shaft that ends inside its collar leaves the clamp half empty, which tilts it.
 *
 *     share = (length of the shaft − height of the bearing) / length of the bore, at most 1
 */
export const shaftEngagement: Check<CollarDesign> = {
  id: 'shaft-engagement',
  group: 'body',
  question: 'holds',
  title: 'Share of the bore that the shaft fills',
  unit: '',
  source: 'common practice',
  limits: soft({ min: 1 }, { min: 0.5 }),
  moves: 'shaft.length, turned_end.length, length, bearing',
  run: (design, { pass }) => {
    const { length, lengthField } = design.shaft;
    if (length === undefined) return lengthField === undefined ? undefined : notJudged(lengthField);
    const [engaged, bored] = [engagedIn(design), boreEnd(design.finished)];
    const share = engaged / bored;
    const behind = design.bearing ? ' behind the bearing' : '';
    const cure = keeps(share, pass) ? '' : '; a shorter collar or a longer shaft fills it';
    return valued(exactly(share), `${plain(engaged, 1)} mm of ${plain(bored, 1)} mm${behind}${cure}`);
  },
};
