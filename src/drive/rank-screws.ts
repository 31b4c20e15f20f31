import type { Holding } from '../mechanics/power-screw/holding.js';
import { plain } from '../units/format.js';
import type { DriveNumbers } from './numbers.js';

/** All purposes, in the order in which they are listed. */
export const PURPOSES = ['fine-layers', 'speed', 'holding'] as const;

/** What a screw is wanted for. */
export type Purpose = (typeof PURPOSES)[number];

/** A screw's place for a purpose. */
export interface RankedScrew {
  readonly designation: string;
  /** 1 is best; equals share a place */
  readonly place: number;
  /** why, in plain words, what speaks against it last */
  readonly reasons: readonly string[];
}

interface Judge {
  /** figures to compare in turn, each the smaller the better */
  readonly keys: (numbers: DriveNumbers) => readonly number[];
  readonly reasons: (numbers: DriveNumbers) => readonly string[];
}

const HOLDING_ORDER: Readonly<Record<Holding, number>> = { holds: 0, 'may-creep': 1, falls: 2 };

const JUDGES: Readonly<Record<Purpose, Judge>> = {
  'fine-layers': {
    keys: (numbers) => [-onGridShare(numbers), numbers.full_step],
    reasons: (numbers) => [
      `a full step is ${plain(numbers.full_step, 4)} mm`,
      ...gridReasons(numbers),
      ...fallReasons(numbers),
    ],
  },
  speed: {
    keys: (numbers) => [-numbers.feed_limit.value, -numbers.efficiency.nominal],
    reasons: (numbers) => [
      `feed up to ${plain(numbers.feed_limit.value, 1)} mm/s, set by ${CAUSES[numbers.feed_limit.set_by]}`,
      `efficiency ${plain(100 * numbers.efficiency.nominal, 0)} %`,
      ...fallReasons(numbers),
    ],
  },
  holding: {
    keys: (numbers) => [HOLDING_ORDER[numbers.holding], numbers.self_locking_friction],
    reasons: (numbers) => [
      { holds: 'normally holds without power', 'may-creep': 'may creep without power', falls: 'falls without power' }[
        numbers.holding
      ],
      `the load drives it only below friction ${plain(numbers.self_locking_friction)}`,
    ],
  },
};

const CAUSES = { motor: 'the motor', whirl: 'whirl', sliding: 'the sliding speed' } as const;

/**
 * Ranks screws for a purpose: fine layers by the heights that land on full steps and then by the step; speed by the
 * feed limit and then efficiency; holding by the verdict and then the friction at which the load drives the screw.
 *
 * @param screws   drive numbers, in any order
 * @param purpose  what they are wanted for
 * @returns best first; equals share a place and stand in order of their names
 * @source common-practice: choosing a lead
 */
export function rankScrews(screws: readonly DriveNumbers[], purpose: Purpose): readonly RankedScrew[] {
  const { keys, reasons } = JUDGES[purpose];
  const judged = screws.map((numbers) => ({ numbers, keys: keys(numbers) }));
  judged.sort((a, b) => compareKeys(a.keys, b.keys) || compareText(a.numbers.designation, b.numbers.designation));
  return judged.map((entry) => ({
    designation: entry.numbers.designation,
    place: 1 + judged.filter((other) => compareKeys(other.keys, entry.keys) < 0).length,
    reasons: reasons(entry.numbers),
  }));
}

function compareKeys(a: readonly number[], b: readonly number[]): number {
  for (const [index, value] of a.entries()) {
    const apart = value - b[index]!;
    if (Math.abs(apart) > 1e-9) return apart;
  }
  return 0;
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function onGridShare(numbers: DriveNumbers): number {
  const { layers } = numbers;
  return layers.length === 0 ? 0 : layers.filter((layer) => layer.on_grid).length / layers.length;
}

function gridReasons(numbers: DriveNumbers): readonly string[] {
  const on = numbers.layers.filter((layer) => layer.on_grid).map((layer) => plain(layer.height));
  const off = numbers.layers.filter((layer) => !layer.on_grid).map((layer) => plain(layer.height));
  return [
    ...(on.length > 0 ? [`layers of ${on.join(', ')} mm land on full steps`] : []),
    ...(off.length > 0 ? [`layers of ${off.join(', ')} mm do not`] : []),
  ];
}

function fallReasons(numbers: DriveNumbers): readonly string[] {
  return numbers.holding === 'falls' ? ['a vertical axis falls without power'] : [];
}
