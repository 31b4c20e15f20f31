import { PURPOSES } from '../../../src/drive/rank-screws.js';
import type { NamedScrews } from '../../../src/pipeline/compare-named.js';
import { editText } from '../../../src/sheet/edit-text.js';
import { withField, withPoint } from './state.js';

/** Something that is told of screws which are put side by side. */
export interface Asked {
  readonly id: string;
  readonly label: string;
  readonly how: string;
  readonly unit?: string;
  readonly choices?: readonly string[];
  /** where it belongs in a sheet; nothing of a single part where there is none */
  readonly path?: readonly string[];
  /** several figures, apart by blanks */
  readonly isList?: boolean;
}

export const ASKED: readonly Asked[] = [
  { id: 'screws', label: 'screws', how: 'By their designations, apart by commas: Tr8x2, Tr8x8(P2), M5.' },
  {
    id: 'from',
    label: 'taken out',
    how: 'The screw that is in now: what the controller must be told follows from it.',
  },
  {
    id: 'purpose',
    label: 'wanted for',
    how: 'What they are ranked for, with the reasons.',
    choices: PURPOSES,
  },
  {
    id: 'axis',
    label: 'axis',
    how: 'A vertical axis may fall without power.',
    choices: ['vertical', 'horizontal'],
    path: ['duty', 'axis'],
  },
  { id: 'load', label: 'load', unit: 'N', how: 'Along the screw; 1 kg weighs 9.81 N.', path: ['duty', 'load'] },
  {
    id: 'layers',
    label: 'layer heights',
    unit: 'mm',
    how: 'The heights that you print with, apart by blanks: 0.1 0.15 0.2.',
    path: ['duty', 'layer_heights'],
    isList: true,
  },
  { id: 'feed', label: 'speed', unit: 'mm/s', how: 'Wanted of the axis.', path: ['duty', 'feed'] },
  {
    id: 'span',
    label: 'free length',
    unit: 'mm',
    how: 'From bearing to bearing, or to the free end.',
    path: ['duty', 'span'],
  },
  {
    id: 'torque',
    label: "motor's torque",
    unit: 'N·m',
    how: 'Its holding torque, off its plate or its page.',
    path: ['duty', 'motor', 'torque'],
  },
];

/** What was typed, by what is asked. */
export type Compared = Readonly<Record<string, string>>;

/** What is put side by side; undefined where no screw was named yet. */
export function namedScrews(typed: Compared): NamedScrews | undefined {
  const screws = (typed.screws ?? '')
    .split(/[,;\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
  if (screws.length === 0) return undefined;
  const [from, purpose] = [typed.from?.trim(), typed.purpose];
  return {
    screws,
    ...(from ? { from } : {}),
    ...(purpose ? { purpose } : {}),
    sheet: dutyOf(typed).reduce((text, [path, value]) => editText(text, path, value), ''),
  };
}

/** A nut's sheet with the screw that was chosen, and the duty that it was chosen for. */
export function forScrew(sheet: string, designation: string, typed: Compared): string {
  const text = withField(sheet, ['screw', 'designation'], designation);
  return dutyOf(typed).reduce((now, [path, value]) => editText(now, path, value), text);
}

/** What was typed of the duty, each with its field, as a sheet writes it. */
function dutyOf(typed: Compared): [readonly string[], string | string[]][] {
  return ASKED.flatMap(({ id, path, isList = false }): [readonly string[], string | string[]][] => {
    const text = (typed[id] ?? '').trim();
    if (path === undefined || text === '') return [];
    return [[path, isList ? text.split(/[;\s]+|,\s+/).map(withPoint) : withPoint(text)]];
  });
}
