import { type Measured, plusMinus } from '../units/measured.js';
import type { Quantity } from '../units/quantity.js';

/** A reading with its own uncertainty, or else with the instrument's. */
export function measured(reading: Quantity, instrument: number): Measured {
  return plusMinus(reading.value, reading.half ?? instrument);
}

/** A figure that carries an uncertainty only where the sheet states one. */
export function stated(figure: Quantity): Measured {
  return plusMinus(figure.value, figure.half ?? 0);
}

/** A reading over several equal parts: value and uncertainty divided by their number. */
export function shared(reading: Quantity, count: number, instrument: number): Measured {
  return plusMinus(reading.value / count, (reading.half ?? instrument) / count);
}
