import { howMany, plain, rounded } from '../units/format.js';
import type { FullDuty } from './duty.js';
import type { DriveScrew } from './screw.js';

/** Kinds of slips that make an axis travel wrongly by a fixed ratio, the likelier first. */
export const SLIPS = [
  'starts-left-out',
  'lead-for-pitch',
  'old-screw',
  'starts-miscounted',
  'microsteps',
  'motor-angle',
  'gear',
  'inch-for-mm',
] as const;

/** A kind of slip. */
export type SlipKind = (typeof SLIPS)[number];

/** A slip with the ratio that gives it away. */
export interface Slip {
  readonly slip: SlipKind;
  /** travel measured over travel commanded */
  readonly ratio: number;
  /** what is wrong: the controller's figure, the machine as it was described, or the reading itself */
  readonly wrong: 'controller' | 'machine' | 'reading';
  /** steps per mm that the controller holds if this is the slip */
  readonly controller_has: number;
  /** steps per mm that are right if this is the slip */
  readonly steps_per_mm: number;
  readonly words: string;
}

type Draft = Pick<Slip, 'slip' | 'ratio' | 'wrong' | 'words'>;

const STARTS = [1, 2, 3, 4, 5, 6, 8];
const MICROSTEPS = [1, 2, 4, 8, 16, 32, 64, 128, 256];
const GEARS = [2, 3, 4, 5, 10];
const INCH = 25.4;

/**
 * Every slip that is known, for a machine as it was described.
 *
 * The machine needs k steps a mm. A controller that holds k′ makes it travel k′/k of what is asked: a wrong figure in
 * the controller shows as that ratio; a machine that is not as described shows as k/k″, with k″ what it really needs.
 *
 * @param screw  the screw as described [mm]
 * @param duty   its drive as described
 * @param right  k, steps a mm that this description needs [1/mm]
 * @param oldLead  travel a turn of the screw that was in before, where known [mm]
 * @returns slips of any ratio, the likelier first
 * @source derived: ratios of the definition of steps per mm
 */
export function knownSlips(screw: DriveScrew, duty: FullDuty, right: number, oldLead?: number): readonly Slip[] {
  const swap = forgottenSwap(screw, oldLead);
  const told = ({ slip, ratio }: Draft) =>
    swap.some((known) => known.slip === slip && Math.abs(known.ratio / ratio - 1) < 1e-9);
  const byStarts = startSlips(screw).filter((draft) => !told(draft));
  const drafts = [
    ...byStarts,
    ...commonSwaps(screw).filter((draft) => ![...swap, ...byStarts].some((known) => sameCause(known, draft))),
    ...microstepSlips(duty),
    ...angleSlips(duty),
    ...gearSlips(duty),
    ...inchSlips(screw),
  ];
  return [...swap, ...drafts.toSorted((a, b) => SLIPS.indexOf(a.slip) - SLIPS.indexOf(b.slip))].map((draft) => ({
    ...draft,
    ratio: rounded(draft.ratio, 9),
    controller_has: rounded(draft.wrong === 'controller' ? right * draft.ratio : right),
    steps_per_mm: rounded(draft.wrong === 'machine' ? right / draft.ratio : right),
  }));
}

/** The controller was never told of the new screw. */
function forgottenSwap(screw: DriveScrew, oldLead: number | undefined): readonly Draft[] {
  if (oldLead === undefined || Math.abs(oldLead / screw.lead - 1) < 1e-9) return [];
  return [
    {
      slip: 'old-screw',
      ratio: screw.lead / oldLead,
      wrong: 'controller',
      words: `The controller is still set for the old screw: it holds ${plain(oldLead, 4)} mm a turn; this one has ${plain(screw.lead, 4)} mm.`,
    },
  ];
}

function sameCause(a: Draft, b: Draft): boolean {
  return a.slip === b.slip && a.wrong === b.wrong && Math.abs(a.ratio / b.ratio - 1) < 1e-9;
}

/** Screws that are often in a machine before a swap, by their travel a turn. */
const COMMON_BEFORE: readonly (readonly [name: string, lead: number])[] = [
  ['M5', 0.8],
  ['M6', 1],
  ['M8', 1.25],
  ['M10 or Tr8x1.5', 1.5],
  ['Tr8x2', 2],
  ['Tr12x3', 3],
  ['Tr8x4(P2), Tr16x4 or Tr20x4', 4],
  ['Tr8x8(P2)', 8],
];

/** The controller was never told of the new screw, and the old one is not known: one of those that are usual. */
function commonSwaps(screw: DriveScrew): readonly Draft[] {
  return COMMON_BEFORE.filter(([, lead]) => Math.abs(lead / screw.lead - 1) > 1e-9).map(([name, lead]) => ({
    slip: 'old-screw',
    ratio: screw.lead / lead,
    wrong: 'controller',
    words: `The controller is still set for the old screw: ${plain(lead)} mm a turn is that of ${name}; this one has ${plain(screw.lead, 4)} mm.`,
  }));
}

function startSlips(screw: DriveScrew): readonly Draft[] {
  const { starts: n, pitch, lead } = screw;
  const drafts: Draft[] = [];
  if (n > 1) {
    drafts.push({
      slip: 'lead-for-pitch',
      ratio: 1 / n,
      wrong: 'controller',
      words: `The lead was taken for the pitch: the controller holds ${plain(lead)} mm times ${n} starts, ${plain(lead * n)} mm a turn. The lead of ${plain(lead)} mm has the starts in it already.`,
    });
  }
  for (const m of STARTS.filter((count) => count !== n)) drafts.push(toldStarts(m, n, pitch), realStarts(m, n, pitch));
  return drafts;
}

/** The controller was told m starts, the screw has n. */
function toldStarts(m: number, n: number, pitch: number): Draft {
  const told = `the controller holds ${plain(m * pitch)} mm a turn`;
  if (m === 1) {
    const words = `The starts were left out: ${told}, the pitch; with ${n} starts it is ${plain(n * pitch)} mm.`;
    return { slip: 'starts-left-out', ratio: n / m, wrong: 'controller', words };
  }
  const words = `The controller is still set for another screw: ${told}, that of ${m} starts; this one has ${howMany(n, 'start')}, ${plain(n * pitch)} mm.`;
  return { slip: 'old-screw', ratio: n / m, wrong: 'controller', words };
}

/** The screw was described with n starts and has m. */
function realStarts(m: number, n: number, pitch: number): Draft {
  const real = `the screw travels ${plain(m * pitch)} mm a turn`;
  if (n === 1) {
    const words = `The starts were left out: ${real}, it has ${howMany(m, 'start')} of pitch ${plain(pitch)} mm.`;
    return { slip: 'starts-left-out', ratio: m / n, wrong: 'machine', words };
  }
  if (m === 1) {
    const words = `The lead was taken for the pitch, or the starts were counted where there is one: ${real}, not ${plain(n * pitch)} mm.`;
    return { slip: 'lead-for-pitch', ratio: m / n, wrong: 'machine', words };
  }
  const words = `The starts were miscounted: with ${howMany(m, 'start')} ${real}.`;
  return { slip: 'starts-miscounted', ratio: m / n, wrong: 'machine', words };
}

function microstepSlips(duty: FullDuty): readonly Draft[] {
  const told = duty.microsteps;
  return MICROSTEPS.filter((other) => other !== told).flatMap((other): readonly Draft[] => [
    {
      slip: 'microsteps',
      ratio: other / told,
      wrong: 'controller',
      words: `The controller counts ${other} microsteps a full step; the driver makes ${told}.`,
    },
    {
      slip: 'microsteps',
      ratio: told / other,
      wrong: 'machine',
      words: `The driver makes ${other} microsteps a full step, not ${told}: look at its switches or its set-up.`,
    },
  ]);
}

function angleSlips(duty: FullDuty): readonly Draft[] {
  const other = { 200: 400, 400: 200 }[duty.steps];
  if (other === undefined) return [];
  const angle = (steps: number) => `${plain(360 / steps)}° motor, ${steps} steps a turn`;
  return [
    {
      slip: 'motor-angle',
      ratio: duty.steps / other,
      wrong: 'machine',
      words: `The motor is a ${angle(other)}, not a ${angle(duty.steps)}.`,
    },
    {
      slip: 'motor-angle',
      ratio: other / duty.steps,
      wrong: 'controller',
      words: `The controller is set for a ${angle(other)}; this is a ${angle(duty.steps)}.`,
    },
  ];
}

function gearSlips(duty: FullDuty): readonly Draft[] {
  const { gear } = duty;
  if (gear === 1) {
    return GEARS.map((other) => ({
      slip: 'gear',
      ratio: 1 / other,
      wrong: 'machine',
      words: `A gear or belt was forgotten: the motor turns ${other} times for one turn of the screw.`,
    }));
  }
  const ratio = plain(gear);
  return [
    {
      slip: 'gear',
      ratio: 1 / gear,
      wrong: 'controller',
      words: `The gear was forgotten: the controller does not know that the motor turns ${ratio} times for one turn of the screw.`,
    },
    {
      slip: 'gear',
      ratio: 1 / gear ** 2,
      wrong: 'controller',
      words: `The gear was taken upside down: the controller divides by ${ratio} where it must multiply.`,
    },
    {
      slip: 'gear',
      ratio: gear,
      wrong: 'machine',
      words: `There is no gear of ${ratio}: the motor turns the screw directly.`,
    },
  ];
}

function inchSlips(screw: DriveScrew): readonly Draft[] {
  const drafts: Draft[] = [
    {
      slip: 'inch-for-mm',
      ratio: INCH,
      wrong: 'controller',
      words: 'Inches stand for mm in the controller: it takes lengths as inches, or its figure is steps per inch.',
    },
    {
      slip: 'inch-for-mm',
      ratio: 1 / INCH,
      wrong: 'controller',
      words: 'Inches stand for mm: the lead in mm was taken as inches when the figure was worked out.',
    },
    {
      slip: 'inch-for-mm',
      ratio: 1 / INCH,
      wrong: 'reading',
      words: 'Inches stand for mm: the travel was read in inches.',
    },
  ];
  const threadsPerInch = INCH / screw.pitch;
  const inchThread = Math.abs(threadsPerInch - Math.round(threadsPerInch)) < 1e-3;
  if (!inchThread || screw.form === 'trapezoidal') return drafts;
  const turns = plain(threadsPerInch, 2);
  return [
    ...drafts,
    {
      slip: 'inch-for-mm',
      ratio: screw.lead / threadsPerInch,
      wrong: 'controller',
      words: `The ${turns} threads per inch were taken for mm a turn; the lead is ${plain(screw.lead, 4)} mm.`,
    },
  ];
}
