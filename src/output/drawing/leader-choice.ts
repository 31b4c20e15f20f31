import { costTogether, lineCost, type Obstacles, shelfCost } from './leader-cost.js';
import { shelfBox, type Way } from './leader-ways.js';

/** Of each leader's ways, these many are tried with those of others. */
const TRIED = 150;
/** Looks at a way beside others, after which the best so far is taken. */
const LOOKS = 6000;

interface Priced {
  readonly way: Way;
  readonly cost: number;
}

/** Ways of all leaders, and what they cost together. */
interface Choice {
  readonly ways: readonly Way[];
  readonly cost: number;
}

/**
 * A way for each leader, so that they cost least together: what is dearer than the best so far is not followed.
 *
 * @param choices   ways of each leader
 * @param obstacles what else is drawn of the view
 */
export function fewestCrossings(choices: readonly (readonly Way[])[], obstacles: Obstacles): Choice {
  const offers = choices.map((ways) => cheapest(ways, obstacles));
  const least = offers.map((ways) => ways[0]!.cost);
  // what the leaders from one on cost at least
  const rest = [...offers.keys(), offers.length].map((i) => least.slice(i).reduce((sum, cost) => sum + cost, 0));
  let best: Choice = { ways: [], cost: Number.POSITIVE_INFINITY };
  let looks = 0;
  const follow = (ways: readonly Way[], spent: number): void => {
    const i = ways.length;
    if (i === offers.length) {
      if (spent < best.cost) best = { ways, cost: spent };
      return;
    }
    for (const { way, cost } of offers[i]!) {
      if (spent + cost + rest[i + 1]! >= best.cost || (best.ways.length > 0 && looks > LOOKS)) return;
      looks++;
      const together = ways.reduce((sum, other) => sum + costTogether(way, other), 0);
      if (spent + cost + together + rest[i + 1]! < best.cost) follow([...ways, way], spent + cost + together);
    }
  };
  follow([], 0);
  return best;
}

/** The cheapest way from each circle to each shelf, so that others find room beside them. */
function cheapest(ways: readonly Way[], obstacles: Obstacles): Priced[] {
  const shelves = new Map<string, number>();
  const best = new Map<string, Priced>();
  for (const way of ways) {
    const shelf = `${way.runs} ${way.points.at(-1)!.join(' ')}`;
    const known = shelves.get(shelf) ?? shelfCost(shelfBox(way), obstacles);
    shelves.set(shelf, known);
    const cost = known + lineCost(way, obstacles);
    const place = `${shelf} ${way.circle?.center.join(' ')}`;
    if (cost < (best.get(place)?.cost ?? Number.POSITIVE_INFINITY)) best.set(place, { way, cost });
  }
  return [...best.values()].sort((a, b) => a.cost - b.cost).slice(0, TRIED);
}
