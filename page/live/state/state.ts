import type { Acceptance } from '../../../src/judge/accept.js';
import type { Cure } from '../../../src/judge/advice.js';
import { editText, putSection } from '../../../src/sheet/edit-text.js';
import { SHORT } from '../../../src/sheet/short-forms.js';
import type { AxisPart } from './axis-part.js';
import type { Card } from './cards.js';
import type { Typed } from './readings.js';

/** Where a person is on the way. */
export type Step = 'start' | 'screw' | 'compare' | 'part';

/** The kinds of part that have a start sheet, by what happened at the bench. */
export const REASONS = [
  { kind: 'nut', words: 'The nut is worn or missing', screwFirst: true },
  { kind: 'twin-nut', words: 'The carriage tilts on its nut', screwFirst: true },
  { kind: 'adapter', words: "The nut's holes miss the carriage", screwFirst: false },
  { kind: 'coupling', words: 'Motor and screw are to be joined, a little out of line', screwFirst: false },
  { kind: 'sleeve', words: 'The shafts do not match', screwFirst: false },
  { kind: 'collar', words: 'Nothing carries the screw along its axis', screwFirst: false },
  { kind: 'end-holder', words: 'The far end of the screw whips, or its bearing is gone', screwFirst: false },
  { kind: 'motor-plate', words: 'The motor does not fit the machine', screwFirst: false },
  { kind: 'coupon', words: 'I want to know what my printer does', screwFirst: false },
  { kind: 'gauge', words: 'I want rings to try on my screw first', screwFirst: true },
  { kind: 'axis', words: 'Everything on one screw is to be made', screwFirst: false },
] as const;

/** Whether a sheet is of a kind that begins with the screw in the hand. */
export function startsWithScrew(sheet: string): boolean {
  const kind = /^part:\s*([\w-]+)/m.exec(sheet)?.[1];
  return REASONS.some((one) => one.kind === kind && one.screwFirst);
}

export type Kind = (typeof REASONS)[number]['kind'];

/** All that a person has told; everything else follows from it. */
export interface State {
  readonly step: Step;
  readonly readings: Typed;
  /** what was told of screws that stand side by side */
  readonly compared: Readonly<Record<string, string>>;
  /** the sheet, the only model of the part */
  readonly sheet: string;
  /** the axis that this part was opened from */
  readonly from?: AxisPart | undefined;
  /** failed checks that are taken all the same, each with its reason */
  readonly accepted: readonly Acceptance[];
  /** what was seen on the printed part, on its form; empty before it was asked for */
  readonly form: string;
  /** sheets and profiles that are kept */
  readonly cards: readonly Card[];
}

export const FRESH: State = {
  step: 'start',
  readings: {},
  compared: {},
  sheet: '',
  accepted: [],
  form: '',
  cards: [],
};

/** The same with one check taken all the same; an empty reason takes that back. */
export function accepting(accepted: readonly Acceptance[], check: string, reason: string): readonly Acceptance[] {
  const others = accepted.filter((one) => one.check !== check);
  return reason.trim() === '' ? others : [...others, { check, reason: reason.trim() }];
}

/** A comma between figures is a point. */
export function withPoint(typed: string): string {
  return typed.trim().replace(/^(-?\d+),(\d+)(?=$|\s)/, '$1.$2');
}

/** The sheet with one field changed; a comma between figures is a point. */
export function withField(sheet: string, path: readonly string[], typed: string): string {
  return editText(sheet, path, withPoint(typed), SHORT);
}

/** The sheet with a cure's changes. */
export function withCure(sheet: string, set: Cure['set']): string {
  return Object.entries(set).reduce((text, [path, value]) => withField(text, path.split('.'), String(value)), sheet);
}

/** The sheet made by a profile, which stands for material and printer. */
export function withProfile(sheet: string, name: string): string {
  const there = ['profile', 'material', 'printer'].filter((key) => new RegExp(`^${key}:`, 'm').test(sheet));
  const [first = 'profile', ...others] = there;
  const text = putSection(sheet, first, `profile: ${name}`);
  return others.reduce((left, key) => putSection(left, key, `# ${key}: as the profile has it`), text);
}

/** The sheet with the screw that was named; its comments are the identification's own. */
export function withScrew(sheet: string, block: string): string {
  return putSection(sheet, 'screw', block);
}
