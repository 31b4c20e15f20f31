import type { Parameter } from './print-model.js';
import type { PrintSolution } from './solve-print.js';

interface Missing {
  readonly parameters: readonly Parameter[];
  readonly what: string;
  readonly tells: string;
}

const MISSING: readonly Missing[] = [
  {
    parameters: ['plane'],
    what: 'in-plane shrink',
    tells: 'read over and between the same blocks of the scale coupon (X1, X2, Y1, Y2)',
  },
  {
    parameters: ['skew'],
    what: 'the difference of X and Y',
    tells: 'read blocks of both directions of the scale coupon (X2 and Y2)',
  },
  { parameters: ['axial'], what: 'axial shrink', tells: 'read at least two heights of the scale coupon (Z1 and Z3)' },
  {
    parameters: ['hole_at_zero', 'hole_per_mm'],
    what: 'hole offset by diameter',
    tells: 'read at least two, better four, bores of different diameters (B1 to B4)',
  },
  {
    parameters: ['post_at_zero', 'post_per_mm'],
    what: 'outside offset by diameter',
    tells: 'read at least two, better four, posts of different diameters (P1 to P4)',
  },
  {
    parameters: ['first_layer'],
    what: 'squash of the first layers',
    tells: 'read the foot of a bar (F1, F2) besides its blocks',
  },
];

/** What the readings do not tell, and which feature would; one line each. */
export function unknownWords({ untouched, borrowed, estimates }: PrintSolution): string[] {
  const lines = MISSING.filter(({ parameters }) =>
    parameters.some((name) => untouched.includes(name) || borrowed.includes(name)),
  ).map(({ what, tells, parameters }) => {
    const half = parameters.length > 1 && parameters.some((name) => estimates[name] && !borrowed.includes(name));
    return `${what}: ${half ? 'one diameter does not make a line; ' : ''}${tells}.`;
  });
  const rests = borrowed.includes('plane') && !borrowed.includes('hole_per_mm') && estimates.hole_per_mm !== undefined;
  return rests
    ? [...lines, 'the slope of the hole offset rests on the shrink of the preset until the scale coupon is read.']
    : lines;
}
