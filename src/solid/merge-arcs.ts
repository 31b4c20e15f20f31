import type { Drawn, PaperPoint } from './drawn.js';
import { joined, type Span, without } from './hidden-spans.js';

/** A piece of a circle on the paper, by the angles of its ends, the shorter way round [degrees]. */
export interface ArcPiece {
  readonly center: PaperPoint;
  readonly radius: number;
  readonly ends: readonly [number, number];
  readonly hidden: boolean;
}

/** Circles nearer than this are one, mm; gaps below this are none, degrees. */
const SAME = 1e-3;
const GAP = 0.02;

/** Pieces of the same circles joined; what is seen is not drawn hidden as well. */
export function mergeArcs(pieces: readonly ArcPiece[]): { readonly visible: Drawn[]; readonly hidden: Drawn[] } {
  const circles: { center: PaperPoint; radius: number; seen: Span[]; unseen: Span[] }[] = [];
  for (const { center, radius, ends, hidden } of pieces) {
    let circle = circles.find(
      (one) =>
        Math.abs(one.radius - radius) < SAME && Math.hypot(one.center[0] - center[0], one.center[1] - center[1]) < SAME,
    );
    if (!circle) {
      circle = { center, radius, seen: [], unseen: [] };
      circles.push(circle);
    }
    (hidden ? circle.unseen : circle.seen).push(...spansOf(ends));
  }
  const visible: Drawn[] = [];
  const unseen: Drawn[] = [];
  for (const { center, radius, seen, unseen: hidden } of circles) {
    const shown = joined(seen, GAP);
    visible.push(...arcs(center, radius, shown));
    const padded = shown.map(([from, to]): Span => [from - GAP, to + GAP]);
    unseen.push(...arcs(center, radius, without(joined(hidden, GAP), padded)));
  }
  return { visible, hidden: unseen };
}

/** The shorter way between two angles, in 0 to 360; in two pieces where it passes 0. */
function spansOf([a, b]: readonly [number, number]): Span[] {
  const turn = ((((b - a) % 360) + 540) % 360) - 180;
  const from = (((turn < 0 ? b : a) % 360) + 360) % 360;
  const to = from + Math.abs(turn);
  return to > 360
    ? [
        [from, 360],
        [0, to - 360],
      ]
    : [[from, to]];
}

function arcs(center: PaperPoint, radius: number, spans: readonly Span[]): Drawn[] {
  const kept = spans.filter(([from, to]) => ((to - from) * Math.PI * radius) / 180 > SAME);
  const [first, last] = [kept[0], kept.at(-1)];
  if (!first || !last) return [];
  const meets = first[0] < GAP && last[1] > 360 - GAP;
  if (meets && kept.length === 1) return [{ kind: 'circle', center, radius }];
  const whole = meets ? [...kept.slice(1, -1), [last[0], first[1] + 360] as const] : kept;
  return whole.map(([from, to]) => ({ kind: 'arc', center, radius, from, to }));
}
