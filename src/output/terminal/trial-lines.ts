import type { TrialFinding } from '../../calibrate/trial-words.js';
import { howMany, plain } from '../../units/format.js';
import { beside, wrapped } from './layout.js';

/** What trials came to: the shape of `tryNuts`' answer that is shown. */
export interface ShownTrials {
  readonly trials: readonly { readonly nut: string; readonly wanted: { readonly play: number } }[];
  readonly estimate: {
    readonly axial: { readonly value: number; readonly sigma: number };
    readonly gap: { readonly value: number; readonly sigma: number };
  };
  readonly findings: readonly TrialFinding[];
}

/** What went wrong with finished nuts, the one number to change, and what is known by now; for people. */
export function trialLines({ trials, estimate, findings }: ShownTrials, width?: number): string[] {
  const next = findings.find(({ change }) => change !== undefined)?.change;
  const { axial, gap } = estimate;
  const play = trials.at(-1)!.wanted.play + gap.value;
  return [
    ...wrapped(`${trials.map(({ nut }) => nut).join(', ')}: ${howMany(trials.length, 'trial')}`, 0, width),
    '',
    'What was wrong',
    ...findings.flatMap(({ words }) => beside('  –', 4, words, width)),
    ...(next
      ? [
          '',
          'Change this one number, print the next, fill in its form',
          ...wrapped(
            `${next.field}: ${shown(next.field, next.to)}, it was ${shown(next.field, next.from)} (± ${shown(next.field, next.half)})`,
            2,
            width,
          ),
        ]
      : []),
    '',
    'Known by now, 19 times in 20',
    `  axial shrink ${plain(100 * axial.value, 2)} ± ${plain(200 * axial.sigma, 2)} %`,
    `  play of one tooth, run in ${plain(play, 2)} ± ${plain(2 * gap.sigma, 2)} mm`,
  ];
}

function shown(field: string, value: number): string {
  return field.includes('shrink') ? `${plain(100 * value, 3)} %` : `${plain(value, 3)} mm`;
}
