import { type Bounds, type Limits, type Outcome, soft, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';

/** Turns a minute up to which a printed clamp body need not be balanced. @source common-practice */
export const UNBALANCED: Limits = soft({ max: 1500 });

/** Speed of a body with clamp screws on one side, which the print does not balance; undefined where nobody tells it. */
export function judgeSpeed(rpm: number | undefined, pass: Bounds, balanced: string): Outcome | undefined {
  if (rpm === undefined) return undefined;
  const cure = keeps(rpm, pass) ? '' : `; turn slower, or use ${balanced}`;
  return valued(
    exactly(rpm),
    `${plain(rpm, 0)} rpm; screws on one side are not balanced: above ${plain(pass.max!, 0)} rpm it may shake${cure}`,
  );
}
