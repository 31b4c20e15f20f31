import type { Identification, IdentifiedScrew } from '../../identify/identify.js';
import type { NextMeasurement } from '../../identify/next-measurement.js';
import type { MeasurementKind, Readings } from '../../identify/readings.js';
import { plain } from '../../units/format.js';
import { candidateLines, percent } from './candidate-lines.js';
import { beside, WIDTH, wrapped } from './layout.js';
import { type Paint, paint } from './paint.js';
import { sectionsText } from './sections.js';

/**
 * What readings of a screw say, for people: its name or why it has none, the candidates, what to measure next, what does
 * not go together, and a block for a part sheet; as wide as the terminal where words allow.
 *
 * @param found what the readings say
 * @param readings what was read
 * @param options colour, and columns of the terminal
 * @returns lines, a line break after each
 */
export function identificationText(
  found: Identification,
  readings: Readings,
  { colour = false, width = WIDTH }: { readonly colour?: boolean; readonly width?: number } = {},
): string {
  const style = paint(colour);
  const { nextMeasurement: next, contradictions } = found;
  return sectionsText(
    [
      ['', headLines(found, readings, style, width)],
      ['Does not go together', contradictions.flatMap((one) => beside('  –', 4, one, width))],
      ['Measure next', next !== null && wantsMore(found, next) ? nextLines(next, width) : []],
      [found.fits ? 'Candidates' : 'Nearest of the series', candidateLines(found, width)],
      ['For a part sheet', found.block === '' ? [] : blockLines(found.block)],
    ],
    style,
  );
}

/** Below this the first candidate deserves another look, although it stands alone. */
const SURE = 0.97;

function wantsMore({ candidates, separable }: Identification, next: NextMeasurement): boolean {
  return !separable || candidates[0]!.probability < SURE || next.what === 'crest';
}

function headLines(found: Identification, readings: Readings, style: Paint, width: number): string[] {
  const { candidates, fits, separable, twins } = found;
  const first = candidates[0]!;
  if (readings.crest === 'round') return [style.bold('A ball screw: a printed nut is wrong for it.')];
  if (!fits) {
    return [
      ...wrapped(
        found.contradictions.length === 0
          ? 'An odd screw: none of the series fits these readings.'
          : 'None of the series fits these readings as they are; look at them again first.',
        0,
        width,
      ).map(style.bold),
      ...wrapped(`The nearest is ${first.designation}, ${formWords(first)}.`, 0, width),
      ...handLines(readings, width),
    ];
  }
  if (separable) {
    return [
      `${style.bold(first.designation)}, ${percent(first.probability)} likely`,
      ...wrapped(`${formWords(first)}, ${handWords(first, readings)}`, 0, width),
    ];
  }
  const names = [first.designation, ...twins];
  return [
    ...wrapped(`${alternatives(names)}: these readings cannot tell them apart.`, 0, width).map(style.bold),
    ...sharedLines(
      candidates.filter(({ designation }) => names.includes(designation)),
      width,
    ),
  ];
}

/** At most this many names in a sentence. */
const MOST_NAMES = 5;

function alternatives(names: readonly string[]): string {
  if (names.length > MOST_NAMES)
    return `${names.slice(0, MOST_NAMES).join(', ')} or one of ${names.length - MOST_NAMES} more`;
  return `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

const FORMS = { trapezoidal: 'trapezoidal, 30°', acme: 'Acme, 29°', 'metric-v': 'V thread, 60°' } as const;

function formWords({ form, major, pitch, starts, lead }: IdentifiedScrew): string {
  const turn = starts === 1 ? 'one start' : `${starts} starts, so a turn travels ${plain(lead)} mm`;
  return `${FORMS[form]}, ${plain(major)} mm over the crests, pitch ${plain(pitch, 4)} mm, ${turn}`;
}

/** What holds whichever of them it is. */
function sharedLines(screws: readonly IdentifiedScrew[], width: number): string[] {
  const one = (values: readonly string[]) => (new Set(values).size === 1 ? [values[0]!] : []);
  const shared = [
    ...one(screws.map(({ form }) => FORMS[form])),
    ...one(screws.map(({ major }) => `${plain(major)} mm over the crests`)),
    ...one(screws.map(({ pitch }) => `pitch ${plain(pitch, 4)} mm`)),
  ];
  return shared.length === 0 ? [] : wrapped(`Common to all: ${shared.join(', ')}.`, 0, width);
}

function handWords({ hand }: IdentifiedScrew, readings: Readings): string {
  return readings.hand === undefined ? 'right-hand unless you see it climb to the left' : `${hand}-hand`;
}

function handLines({ hand }: Readings, width: number): string[] {
  return hand === undefined ? wrapped('Which hand it has was not given: look at it.', 0, width) : [];
}

const OPTION: Readonly<Record<MeasurementKind, string>> = {
  starts: '--starts N',
  crest: '--crest flat or --crest sharp',
  travel: '--travel 10=LENGTH',
  crests: '--crests 20=LENGTH',
  major: '--major A,B,C',
  crest_flat: '--crest-flat WIDTH',
  minor: '--minor DIAMETER',
  wires: '--wires WIRE=OVER',
};

function nextLines({ what, why, wire }: NextMeasurement, width: number): string[] {
  const option = wire === undefined ? OPTION[what] : OPTION[what].replace('WIRE', plain(wire));
  return [...wrapped(why, 2, width), ...wrapped(`Then add ${option}`, 2, width)];
}

function blockLines(block: string): string[] {
  return block
    .trimEnd()
    .split('\n')
    .map((line) => `  ${line}`);
}
