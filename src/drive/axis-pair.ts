import { holding } from '../mechanics/power-screw/holding.js';
import { plain } from '../units/format.js';
import { type DriveScrew, requireDriveScrew, screwName } from './screw.js';

/** A screw with the clearances of its nut where known [mm]. */
export type PairedScrew = DriveScrew & {
  readonly diametralClearance?: number | undefined;
  /** besides, over both flanks */
  readonly axialClearance?: number | undefined;
};

/** Whether two screws may drive one axis together, and why or why not. */
export interface PairVerdict {
  /** yes: alike in all that matters; with-care: works, but see the reasons; no: the axis would tilt or jam */
  readonly may: 'yes' | 'with-care' | 'no';
  readonly reasons: readonly string[];
}

/** Lead difference that counts as none: 0.05 mm in 100 mm [-]. */
const SAME_LEAD = 0.0005;
/** Difference of the nuts' clearances that practice allows, diametral [mm]. */
const SAME_CLEARANCE = 0.05;

/**
 * Whether the two screws of one axis may differ as these do.
 *
 * @param a  the first screw, lengths [mm], its nut's `diametralClearance` [mm] where known
 * @param b  the second
 * @returns a verdict with its reasons in plain words
 * @throws InputError  a screw that cannot be
 * @source common-practice: equal lead, clearance within 0.05 mm
 * @example screwsOfOneAxisMayDiffer(driveScrewOf(parseDesignation('Tr8x2')), driveScrewOf(parseDesignation('Tr8x8(P2)'))).may // 'no'
 */
export function screwsOfOneAxisMayDiffer(a: PairedScrew, b: PairedScrew): PairVerdict {
  requireDriveScrew(a);
  requireDriveScrew(b);
  const never = leadReasons(a, b);
  const care = [...handReasons(a, b), ...holdingReasons(a, b), ...nutReasons(a, b)];
  if (never.length > 0) return { may: 'no', reasons: [...never, ...care] };
  if (care.length > 0) return { may: 'with-care', reasons: care };
  return {
    may: 'yes',
    reasons: ['Both travel the same a turn; print both nuts in one batch, and level the ends after each power-off.'],
  };
}

function leadReasons(a: DriveScrew, b: DriveScrew): readonly string[] {
  if (Math.abs(a.lead / b.lead - 1) <= SAME_LEAD) return [];
  const drift = 100 * Math.abs(1 - Math.min(a.lead, b.lead) / Math.max(a.lead, b.lead));
  return [
    `The leads differ, ${plain(a.lead, 4)} and ${plain(b.lead, 4)} mm: the ends part by ${plain(drift, 2)} mm every 100 mm, and the axis tilts until it jams.`,
  ];
}

function handReasons(a: DriveScrew, b: DriveScrew): readonly string[] {
  if (a.hand === b.hand) return [];
  return ['One is left-hand: its motor must turn the other way, and a belt cannot tie both.'];
}

function holdingReasons(a: DriveScrew, b: DriveScrew): readonly string[] {
  const [first, second] = [holding(a), holding(b)];
  if (first === second) return [];
  const [one, other] = screwName(a) === screwName(b) ? ['the first', 'the second'] : [screwName(a), screwName(b)];
  return [
    `Without power ${one} ${HOLDING_WORDS[first]} and ${other} ${HOLDING_WORDS[second]}: a vertical axis drops at one end.`,
  ];
}

const HOLDING_WORDS = { falls: 'falls', 'may-creep': 'may creep', holds: 'holds' } as const;

/** What two threads differ in, each with both figures; nothing where one screw has both. */
export function threadDifferences(a: PairedScrew, b: PairedScrew): string[] {
  const differ = (name: string, first: string | number, second: string | number, unit = '') =>
    `${name} ${first} and ${second}${unit}`;
  return [
    ...(a.form === b.form ? [] : [differ('form', a.form, b.form)]),
    ...(a.starts === b.starts ? [] : [differ('starts', a.starts, b.starts)]),
    ...(Math.abs(a.major - b.major) > 0.1 ? [differ('major', plain(a.major), plain(b.major), ' mm')] : []),
    ...(Math.abs(a.pitch - b.pitch) > 0.005 ? [differ('pitch', plain(a.pitch), plain(b.pitch), ' mm')] : []),
  ];
}

function nutReasons(a: PairedScrew, b: PairedScrew): readonly string[] {
  const reasons: string[] = [];
  const differing = threadDifferences(a, b);
  if (differing.length > 0) {
    reasons.push(`The threads differ, ${differing.join(', ')}: each needs a nut of its own, and they wear apart.`);
  }
  if (a.diametralClearance !== undefined && b.diametralClearance !== undefined) {
    const apart = Math.abs(a.diametralClearance - b.diametralClearance);
    if (apart > SAME_CLEARANCE + 1e-9) {
      reasons.push(
        `The nuts' clearances differ by ${plain(apart)} mm, more than ${SAME_CLEARANCE} mm: the ends reverse unevenly.`,
      );
    }
  }
  return reasons;
}
