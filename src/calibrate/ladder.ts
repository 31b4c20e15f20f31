/** How a step of a ladder felt, tightest first. */
export const FELT = ['no', 'tight', 'good', 'loose'] as const;
export type Felt = (typeof FELT)[number];

/** A step of a ladder with what the hand says; clearances as they came out, mm. */
export interface FeltStep {
  readonly mark: string;
  readonly clearance: number;
  readonly felt: Felt;
}

/** The clearance that the hand likes, or why the ladder does not tell. */
export type Liked =
  | { readonly known: true; readonly clearance: number; readonly half: number; readonly how: string }
  | { readonly known: false; readonly why: string };

/**
 * The clearance that the hand likes: the middle of the good steps, or else the middle between the last tight and the
 * first loose one.
 *
 * @param steps tried steps of one ladder
 * @returns clearance and the half-width within which the next steps would have felt otherwise  [mm]
 * @example likedClearance([{ mark: 'T1', clearance: 0.2, felt: 'tight' }, { mark: 'T2', clearance: 0.3, felt: 'good' }, { mark: 'T3', clearance: 0.4, felt: 'loose' }]).clearance // 0.3
 */
export function likedClearance(steps: readonly FeltStep[]): Liked {
  const rising = [...steps].sort((a, b) => a.clearance - b.clearance);
  const wrong = rising.find((step, i) => i > 0 && rank(step) < rank(rising[i - 1]!));
  if (wrong) {
    const before = rising[rising.indexOf(wrong) - 1]!;
    return {
      known: false,
      why: `${wrong.mark} is ${wrong.felt} although it is wider than ${before.mark}, which is ${before.felt}; are two marks mixed up?`,
    };
  }
  const good = rising.filter(({ felt }) => felt === 'good');
  const tight = rising.filter(({ felt }) => rank({ felt }) < 2).at(-1);
  const loose = rising.find(({ felt }) => felt === 'loose');
  if (good.length > 0) {
    const [first, last] = [good[0]!.clearance, good.at(-1)!.clearance];
    const low = tight ? (tight.clearance + first) / 2 : first - stepOf(rising) / 2;
    const high = loose ? (loose.clearance + last) / 2 : last + stepOf(rising) / 2;
    const marks = good.map(({ mark }) => mark).join(', ');
    return { known: true, clearance: (first + last) / 2, half: (high - low) / 2, how: `the hand likes ${marks}` };
  }
  if (tight && loose) {
    const clearance = (tight.clearance + loose.clearance) / 2;
    const half = (loose.clearance - tight.clearance) / 2;
    return { known: true, clearance, half, how: `between ${tight.mark}, tight, and ${loose.mark}, loose` };
  }
  if (!tight && !loose) return { known: false, why: 'no step was tried' };
  return {
    known: false,
    why: tight
      ? `even ${tight.mark}, the widest that was tried, is ${tight.felt === 'no' ? 'too tight to go on' : 'tight'}; print steps with more clearance`
      : `even ${loose!.mark}, the narrowest that was tried, is loose; print steps with less clearance`,
  };
}

function rank({ felt }: Pick<FeltStep, 'felt'>): number {
  return FELT.indexOf(felt);
}

function stepOf(rising: readonly FeltStep[]): number {
  if (rising.length < 2) return 0.05;
  return (rising.at(-1)!.clearance - rising[0]!.clearance) / (rising.length - 1);
}
