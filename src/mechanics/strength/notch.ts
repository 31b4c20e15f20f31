import { requireNotNegative, requirePositive } from '../../units/require.js';

/** More than this a plastic under load does not see: what is above it yields and creeps away. @source memory: 1.5 to 2 for poor fillets */
const MOST = 2;

/** A shoulder as high over the section as that is thick, on either side: higher ones hardly differ. 2h/D of the tables. */
const STEP = 2 / 3;

type Coefficients = readonly [constant: number, root: number, linear: number];

/** C1 to C4 of the tables, over h/r up to 2 and above. */
const BENDING = {
  blunt: [
    [1.007, 1, -0.031],
    [-0.27, -2.404, 0.749],
    [0.677, 1.133, -0.904],
    [-0.414, 0.271, 0.186],
  ],
  sharp: [
    [1.042, 0.982, -0.036],
    [-3.599, 1.619, -0.431],
    [6.084, -5.607, 1.158],
    [-2.527, 3.006, -0.691],
  ],
} as const;

/**
 * How much more than the section the root of a shoulder bears in bending, on its tension side.
 *
 *     K = min(2, Σ Ci·(2h/D)^(i−1)),  Ci = a + b·√(h/r) + c·h/r;  h = t, so 2h/D = 2/3
 *
 * @param p.fillet     r  at the root                                   [mm]  0 or above
 * @param p.thickness  t  of what bends beside the shoulder  [mm]  > 0
 * @returns K, 2 for a sharp corner [-]
 * @throws InputError  a value is outside its range
 * @source stress-tables
 * @source memory: what a plastic sees of it at most
 * @example rootNotch({ fillet: 1, thickness: 4 }) // 1.464
 */
export function rootNotch(p: { readonly fillet: number; readonly thickness: number }): number {
  requireNotNegative('fillet', p.fillet);
  requirePositive('thickness', p.thickness);
  const steep = p.thickness / Math.max(p.fillet, p.thickness / 20);
  const factors = (steep > 2 ? BENDING.sharp : BENDING.blunt).map((of) => valueAt(of, Math.max(0.1, steep)));
  return Math.max(
    1,
    Math.min(
      MOST,
      factors.reduce((sum, factor, i) => sum + factor * STEP ** i, 0),
    ),
  );
}

/**
 * How much more than the net section a sharp corner in plan bears, of a slab in bending. A plate that bends is notched less than
 * one that is pulled (1 + 0.6·(K − 1) of a thick plate; memory); the pulled one's is taken, as far as a plastic sees it.
 * @source memory: what a plastic sees of it at most
 */
export const PLAN_CORNER_NOTCH = MOST;

function valueAt([constant, root, linear]: Coefficients, steep: number): number {
  return constant + root * Math.sqrt(steep) + linear * steep;
}
