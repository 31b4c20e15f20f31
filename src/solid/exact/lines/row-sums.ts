import { type Break, NOTHING } from './breaks.js';
import { added, atGauss, endsOf, halved, type Panel, panelOver, ruled, type Sums, ZERO } from './kronrod.js';
import type { Row } from './probe.js';
import type { Spans } from './spans.js';

/** Halvings of a stretch of x where surfaces cross, which no mark of the plan tells. */
const DEEPEST = 7;
/** How far two rules may differ, of what they find or of a millimetre's height. */
const CLOSE = 2e-6;

/** What all lines over one y find together, stretch by stretch between breaks. */
export function rowSums({ from, to, at }: Row, y: number, breaks: readonly Break[]): Sums {
  const line = (x: number) => lineSums(at(x), x, y);
  let total = ZERO;
  for (let i = 1; i < breaks.length; i++) {
    const [low, high] = [breaks[i - 1]!, breaks[i]!];
    if (high.at - low.at < NOTHING || high.at <= from || low.at >= to) continue;
    total = added(total, refined(panelOver(low.at, high.at, low.isRoot || high.isRoot), line, DEEPEST), 1);
  }
  return total;
}

function lineSums(spans: Spans, x: number, y: number): Sums {
  let [length, moment] = [0, 0];
  for (let i = 0; i < spans.length; i += 2) {
    const [low, high] = [spans[i]!, spans[i + 1]!];
    length += high - low;
    moment += (high * high - low * low) / 2;
  }
  return [length, length * x, length * y, moment];
}

function refined(panel: Panel, line: (x: number) => Sums, depth: number): Sums {
  const known = atGauss(panel, line);
  const [low, high] = endsOf(panel);
  const [first, second, third] = known;
  // between flat faces a line finds the same everywhere
  if (isSame(first, second) && isSame(second, third))
    return added(ZERO, [second[0], (second[0] * (low + high)) / 2, second[2], second[3]], high - low);
  const { sums, off } = ruled(panel, line, known);
  if (depth === 0 || off <= CLOSE * Math.max(sums[0], high - low)) return sums;
  const [lower, upper] = halved(panel).map((half) => refined(half, line, depth - 1)) as [Sums, Sums];
  return added(lower, upper, 1);
}

function isSame(a: Sums, b: Sums): boolean {
  return Math.abs(a[0] - b[0]) < NOTHING && Math.abs(a[3] - b[3]) < NOTHING;
}
