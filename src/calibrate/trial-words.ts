import { howMany, plain } from '../units/format.js';
import { CALIPERS } from '../units/measured.js';
import type { Trial } from './trial.js';
import type { TrialEstimate } from './trial-estimate.js';

/** What went wrong in the trade's words, and the one number that cures it. */
export interface TrialFinding {
  readonly cause:
    | 'pitch-error'
    | 'flank-gap-small'
    | 'flank-gap-large'
    | 'bore-small'
    | 'bore-large'
    | 'first-layer'
    | 'moisture'
    | 'wear'
    | 'heat'
    | 'seam'
    | 'bent-screw'
    | 'oval'
    | 'alignment'
    | 'none';
  readonly words: string;
  /** the one number to change; none where the nut is not to blame */
  readonly change?: { readonly field: string; readonly from: number; readonly to: number; readonly half: number };
}

/** What is off by less than this is left alone [mm]. */
const SLIGHT = { play: 0.02, bore: 0.06, foot: 0.1 } as const;
/** A pitch error that takes this share of the play is the first thing to mend. */
const TAKES = 0.35;

/**
 * Play that the last of several nuts has more than was wanted. Wanted is that of the first nut with its diametral
 * clearance: what changed in the axial clearance since then makes up for the printer.
 *
 * @param trials    the oldest first
 * @param estimate  gap by all trials
 * @returns run in, one tooth                               [mm]
 */
export function playBeyondWanted(trials: readonly Trial[], { gap }: TrialEstimate): number {
  const last = trials.at(-1)!;
  const first = trials.find(({ fit }) => fit.diametral === last.fit.diametral)!;
  return last.wanted.play + gap.value - first.wanted.play;
}

/**
 * What went wrong with the last of several nuts, the cause to mend first leading; each with the one number to change.
 * Signs by common practice at the bench.
 *
 * @param trials   the oldest first
 * @param estimate shrink and gap by all trials
 * @returns at least one finding
 */
export function trialFindings(trials: readonly Trial[], estimate: TrialEstimate): TrialFinding[] {
  const trial = trials.at(-1)!;
  const [pitch, bore, flank] = [
    byPitch(trial, estimate),
    byBore(trial),
    byFlank(trial, playBeyondWanted(trials, estimate), estimate.gap.sigma),
  ];
  // a pitch error does not keep a nut from starting, and a nut that does not start tells nothing of its play
  const bySize = trial.goes === 'no' ? [...bore, ...flank, ...pitch] : [...pitch, ...bore, ...flank];
  const found = [...byPlace(trial), ...byTime(trial), ...bySize];
  return found.length > 0
    ? found
    : [{ cause: 'none', words: 'The nut is as wanted, within what the readings tell: keep the settings.' }];
}

const PLACES: Readonly<Partial<Record<NonNullable<Trial['tight']>, TrialFinding>>> = {
  'once-a-turn-with-nut': {
    cause: 'seam',
    words:
      'Tight once a turn, the place stays with the nut: a ridge of the seam. Put the seam in a relief slot or chase the thread; the clearance stays.',
  },
  'once-a-turn-with-screw': {
    cause: 'bent-screw',
    words:
      'Tight once a turn, the place stays with the screw: it is bent or a crest is bruised. Nothing in the nut cures that: straighten it, or let the nut float half of its run-out and 0.1 mm.',
  },
  'twice-a-turn': {
    cause: 'oval',
    words: 'Tight twice a turn: the thread is oval. Print it upright; X and Y shrink apart, read a scale coupon.',
  },
  'one-place': {
    cause: 'alignment',
    words:
      'Tight in one place of the travel: loosen the screws of the nut there. If it frees, motor or holder are out of line; if not, the screw is bowed there. The nut stays as it is.',
  },
};

function byPlace(trial: Trial): TrialFinding[] {
  const { tight, body, body_at_bed: foot } = trial;
  const place = tight === undefined ? undefined : PLACES[tight];
  if (place) return [place];
  const spread = body && foot ? foot.value - body.value : undefined;
  if (tight !== 'bed-end' && !(spread !== undefined && spread > SLIGHT.foot)) return [];
  const inset = spread === undefined ? 0.15 : spread / 2;
  return [
    {
      cause: 'first-layer',
      words: `Tight at the end that lay on the bed: the first layers are squashed outwards${spread === undefined ? '' : ` by ${plain(spread, 2)} mm`}. Inset the first layer by ${plain(inset, 2)} mm a side in the slicer, or set the figure so that the chamfer clears it.`,
      change: { field: 'printer.first_layer', from: 0, to: inset, half: 0.05 },
    },
  ];
}

function byTime({ since }: Trial): TrialFinding[] {
  switch (since) {
    case 'tighter-after-days':
      return [
        {
          cause: 'moisture',
          words:
            'Tighter after days: the plastic took up moisture and grew. Measure it again after two days in room air and set state: room; or dry it, seal it, or take a plastic that takes up less.',
        },
      ];
    case 'looser-after-weeks':
      return [
        {
          cause: 'wear',
          words: 'Looser after weeks: wear. A preload spring takes it up; a tighter print wears the same way.',
        },
      ];
    case 'tighter-when-warm':
      return [
        { cause: 'heat', words: 'Tighter when warm: tell duty.temperature in the sheet; the fit counts it then.' },
      ];
    default:
      return [];
  }
}

function byPitch(trial: Trial, { axial, sure }: TrialEstimate): TrialFinding[] {
  const { applied, wanted, pitch } = trial;
  const error = applied.axial - axial.value;
  const drift = Math.abs(error) * wanted.length;
  const matters = trial.goes === 'jams' || drift > TAKES * Math.max(0.05, wanted.play);
  const stands = Math.abs(error) > 1.5 * axial.sigma;
  if (!matters || (!stands && trial.goes !== 'jams')) return [];
  const way = error < 0 ? 'short' : 'long';
  const told =
    trial.goes === 'jams' ? `It goes free and jams after ${howMany(plain(trial.jams_after ?? 0), 'turn')}: ` : '';
  const doubt =
    sure < 0.9
      ? ' Which way is not sure: measure the length over all; if the next one jams sooner, it is the other way.'
      : '';
  return [
    {
      cause: 'pitch-error',
      words: `${told}${told === '' ? 'A' : 'a'} pitch error over the length, the pitch is ${way} by ${plain(1000 * Math.abs(error) * pitch, 1)} µm a turn, ${plain(drift, 2)} mm over the nut.${doubt}`,
      change: { field: 'material.shrink.axial', from: applied.axial, to: axial.value, half: 2 * axial.sigma },
    },
  ];
}

function byBore({ bore, wanted, applied }: Trial): TrialFinding[] {
  if (!bore) return [];
  const off = wanted.bore - bore.value;
  if (Math.abs(off) <= SLIGHT.bore) return [];
  const half = Math.hypot(0.05, bore.half ?? CALIPERS);
  return [
    {
      cause: off > 0 ? 'bore-small' : 'bore-large',
      words: `The bore is ${plain(Math.abs(off), 2)} mm too ${off > 0 ? 'small: holes come out smaller, or too much plastic flows' : 'large'}.`,
      change: { field: 'printer.hole_offset', from: applied.hole_offset, to: applied.hole_offset + off, half },
    },
  ];
}

function byFlank({ fit, goes }: Trial, off: number, sigma: number): TrialFinding[] {
  if (Math.abs(off) <= SLIGHT.play || Math.abs(off) <= sigma) return [];
  const small = off < 0;
  const feel = small ? (goes === 'no' ? 'It does not start or is tight at once: t' : 'T') : 'T';
  return [
    {
      cause: small ? 'flank-gap-small' : 'flank-gap-large',
      words: `${feel}he gap between the flanks is ${plain(Math.abs(off), 2)} mm ${small ? 'smaller' : 'larger'} than wanted: ${small ? 'tight' : 'loose'} all along.`,
      change: { field: 'fit.axial', from: fit.axial, to: fit.axial - off, half: 2 * sigma },
    },
  ];
}
