import { screwsOfOneAxisMayDiffer, threadDifferences } from '../drive/axis-pair.js';
import { judge } from '../judge/judge.js';
import { BORE_MATCH, OVER_CRESTS } from '../parts/common/bore-match.js';
import { plain } from '../units/format.js';
import { exactly } from '../units/measured.js';
import type { Neighbour, PairFinding } from './neighbours.js';

/** Nuts of one axis move it alike. */
export function nutPairs(on: readonly Neighbour[]): PairFinding[] {
  return on.flatMap((first, i) =>
    on.slice(i + 1).flatMap((second): PairFinding[] => {
      const [a, b] = [first.made.facts.nut, second.made.facts.nut];
      if (!a || !b) return [];
      const { may, reasons } = screwsOfOneAxisMayDiffer(a, b);
      const verdict = { yes: 'pass', 'with-care': 'caution', no: 'fail' } as const;
      return [{ id: 'axis-pair', verdict: verdict[may], roles: [first.role, second.role], message: reasons.join(' ') }];
    }),
  );
}

/** Whatever else runs on a screw is made for that of a nut; where there is no nut, for that of the first of them. */
export function sameScrew(on: readonly Neighbour[]): PairFinding[] {
  const screws = screwsOf(on);
  return on.flatMap((part): PairFinding[] => {
    const { screw, joint } = part.made.facts;
    if (!screw || screws.some(({ role }) => role === part.role)) return [];
    const rows = screws.map((other) => {
      // what only joins it runs on no thread
      const hand = joint || other.screw.hand === screw.hand ? [] : [`hand ${other.screw.hand} and ${screw.hand}`];
      return { other: other.role, differences: [...threadDifferences(other.screw, screw), ...hand] };
    });
    // an axis may have two screws: the part belongs to the one that it suits best
    const best = rows.sort((a, b) => a.differences.length - b.differences.length)[0];
    if (!best) return [];
    const fits = best.differences.length === 0;
    const message = fits
      ? `It is made for the screw of ${best.other}.`
      : `It is made for another screw than ${best.other}: ${best.differences.join(', ')}.`;
    return [{ id: 'axis-fit', verdict: fits ? 'pass' : 'fail', roles: [part.role, best.other], message }];
  });
}

/** What joins the shafts is bored for the screw. */
export function screwBores(on: readonly Neighbour[]): PairFinding[] {
  return on.flatMap((part) => {
    const bored = part.made.facts.joint?.screwBore?.likely;
    if (bored === undefined) return [];
    const others = screwsOf(on.filter(({ made }) => !made.facts.joint));
    return others.map(({ role, screw: { major } }): PairFinding => {
      const over = bored - major;
      const verdict = over < -OVER_CRESTS ? 'caution' : judge(exactly(Math.max(0, over)), BORE_MATCH);
      const turned = verdict === 'caution' && over < 0 ? ' Its end must be turned down.' : '';
      const message = `It is bored for ${plain(bored)} mm, the screw of ${role} has ${plain(major)} mm over its crests.${turned}`;
      return { id: 'coupling-screw', verdict, roles: [part.role, role], message };
    });
  });
}

/** The screws that an axis is known by: those of its nuts, else that of the first part that is made for one. */
function screwsOf(on: readonly Neighbour[]) {
  const nuts = on.flatMap(({ role, made: { facts } }) => (facts.nut ? [{ role, screw: facts.nut }] : []));
  const others = on.flatMap(({ role, made: { facts } }) => (facts.screw ? [{ role, screw: facts.screw }] : []));
  return nuts.length > 0 ? nuts : others.slice(0, 1);
}
