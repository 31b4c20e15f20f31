import type { Finding } from '../judge/check.js';
import { plain } from '../units/format.js';
import { boundsText, figuresOf, valueText } from './figures.js';
import type { Report } from './report.js';

const INCH = 25.4;

/** A length in inches, without its unit. */
export function inchFigure(mm: number, places = 4): string {
  return (mm / INCH).toFixed(places);
}

/** One or two lengths in mm with their spread, inches not beside them yet: `0.295 ± 0.06 mm`, `4 to 5 mm`. */
const LENGTHS =
  /(?:([−-]?\d+(?:\.\d+)?) (to|×|and|or) )?([−-]?\d+(?:\.\d+)?)( ± (\d+(?:\.\d+)?))? mm(?![\w/²³·]| \([−\d][^)]* in\))/g;

/** One or two temperatures with their spread; what is told in K is a difference and stays. */
const TEMPERATURES =
  /(?:([−-]?\d+(?:\.\d+)?) (to) )?([−-]?\d+(?:\.\d+)?)( ± (\d+(?:\.\d+)?))? °C(?! \([−\d][^)]* °F\))/g;

/** The limit of a figure, told after it without its unit: `0.47 mm, at least 0.15`. */
const LIMITS = /( mm| °C)(, (?:at least|at most|wanted|[−-]?\d+(?:\.\d+)? to) [−-]?\d+(?:\.\d+)?)(?=$|[),;]|\.$|\. )/g;

/**
 * A text in which inches stand beside each length in mm, and °F beside °C.
 * @example besideInches('0.254 ± 0.05 mm at 80 °C') // '0.254 ± 0.05 mm (0.01 ± 0.002 in) at 80 °C (176 °F)'
 */
export function besideInches(text: string): string {
  const whole = text.replace(LIMITS, '$1$2$1');
  const inches = beside(whole, LENGTHS, 'in', { value: (mm) => mm / INCH, width: (mm) => mm / INCH, places: 4 });
  return beside(inches, TEMPERATURES, '°F', {
    value: (warmth) => 32 + 1.8 * warmth,
    width: (half) => 1.8 * half,
    places: 1,
  });
}

interface OtherUnit {
  readonly value: (figure: number) => number;
  readonly width: (half: number) => number;
  readonly places: number;
}

function beside(text: string, found: RegExp, unit: string, { value, width, places }: OtherUnit): string {
  const told = (figure: string) => plain(value(Number(figure.replace('−', '-'))), places).replace('-', '−');
  return text.replace(found, (all, from?: string, word?: string, figure = '', _?: string, half?: string) => {
    const first = from === undefined ? '' : `${told(from)} ${word} `;
    const spread = half === undefined ? '' : ` ± ${plain(width(Number(half)), places)}`;
    return `${all} (${first}${told(figure)}${spread} ${unit})`;
  });
}

/** A size of a part by its name, in inches; an angle has none. */
export function inchSize(name: string, value: number | undefined): string {
  return value === undefined || name.endsWith('clocking') ? '–' : inchFigure(value);
}

/** The value of a check, inches beside it where they are asked for. */
export function valueBeside(finding: Finding, units: 'inch' | undefined): string {
  return units === 'inch' ? besideInches(valueText(finding)) : valueText(finding);
}

/** The limit of a check, with its unit and inches beside it where they are asked for. */
export function limitBeside(finding: Finding, units: 'inch' | undefined): string {
  const bounds = boundsText(figuresOf(finding).limit);
  return units === 'inch' && bounds !== '' ? besideInches(`${bounds} ${finding.unit}`).trimEnd() : bounds;
}

/** A report whose texts state inches beside mm and °F beside °C; its figures stay mm and °C. */
export function reportBesideInches(report: Report): Report {
  const { print, fit, mounting } = report;
  return {
    ...report,
    units: 'inch',
    sentence: besideInches(report.sentence),
    questions: report.questions.map((one) => ({ ...one, text: besideInches(one.text) })),
    first: report.first.map((one) => ({ ...one, text: besideInches(one.text) })),
    checks: report.checks.map((one) => ({ ...one, message: besideInches(one.message) })),
    applied: besideInches(report.applied),
    ...(report.figures === undefined ? {} : { figures: besideInches(report.figures) }),
    ...(print ? { print: { ...print, why: besideInches(print.why) } } : {}),
    ...(fit ? { fit: { ...fit, words: besideInches(fit.words) } } : {}),
    assumptions: report.assumptions.map((one) => ({
      ...one,
      value: typeof one.value === 'string' ? besideInches(one.value) : one.value,
      why: besideInches(one.why),
    })),
    ...(mounting
      ? { mounting: { put: mounting.put.map(besideInches), settle: mounting.settle.map(besideInches) } }
      : {}),
    cautions: report.cautions.map(besideInches),
  };
}
