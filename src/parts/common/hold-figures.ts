import type { Assumptions } from '../../sheet/assumptions.js';
import { SHAFT_FRICTION } from './grip.js';

/** Diametral clearance of a bore before its clamp closes, mm. @source common-practice */
const BORE_CLEARANCE = 0.1;

/** Clearance and friction of a bore: the sheet's, or the usual ones, which are listed. */
export function holdFigures(
  own: { readonly bore_clearance?: number | undefined; readonly friction?: number | undefined },
  field: string,
  assumptions: Assumptions,
): { readonly clearance: number; readonly friction: number } {
  const slides = 'slides on; the slit closes it';
  const clearance = assumptions.or<number>(own.bore_clearance, `${field}.bore_clearance`, BORE_CLEARANCE, slides);
  const friction = assumptions.or<number>(
    own.friction,
    `${field}.friction`,
    SHAFT_FRICTION,
    'steel in plastic, clean and dry',
  );
  return { clearance, friction };
}
