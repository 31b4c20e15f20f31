import type { Identification, IdentifiedScrew } from '../../identify/identify.js';
import type { NextMeasurement } from '../../identify/next-measurement.js';
import type { MeasurementKind, Readings } from '../../identify/readings.js';
import { plain } from '../../units/format.js';
import { candidateLines, percent } from './candidate-lines.js';
import { beside, wrapped } from './layout.js';
import { type Paint, paint } from './paint.js';
import { sectionsText } from './sections.js';

/**
 * What readings of a screw say, for people: its name or why it has none, the candidates, what to measure next, what does
 * not go together, and a block for a part sheet; at most 80 columns where words allow.
 *
 * @param found what the readings say
 * @param readings what was read
 * @param options colour
 * @returns lines, a line break after each
 */
export function identificationText(
  found: Identification,
  readings: Readings,
  { colour = false }: { readonly colour?: boolean } = {},
): string {
  const style = paint(colour);
  const { nextMeasurement: next, contradictions } = found;
  return sectionsText(
    [
      ['', headLines(found, readings, style)],
      ['Does not go together', contradictions.flatMap((one) => beside('  –', 4, one))],
      ['Measure next', next !== null && wantsMore(found, next) ? nextLines(next) : []],
      [found.fits ? 'Candidates' : 'Nearest of the series', candidateLines(found)],
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

function headLines(found: Identification, readings: Readings, style: Paint): string[] {
  const { candidates, fits, separable, twins } = found;
  const first = candidates[0]!;
  if (readings.crest === 'round') return [style.bold('A ball screw: a printed nut is wrong for it.')];
  if (!fits) {
    return [
      style.bold(
        found.contradictions.length === 0
          ? 'An odd screw: none of the series fits these readings.'
          : 'None of the series fits these readings as they are; look at them again first.',
      ),
      ...wrapped(`The nearest is ${first.designation}, ${formWords(first)}.`),
      ...handLines(readings),
    ];
  }
  if (separable) {
    return [
      `${style.bold(first.designation)}, ${percent(first.probability)} likely`,
      ...wrapped(`${formWords(first)}, ${handWords(first, readings)}`),
    ];
  }
  const names = [first.designation, ...twins];
  return [
    ...wrapped(`${alternatives(names)}: these readings cannot tell them apart.`).map(style.bold),
    ...sharedLines(candidates.filter(({ designation }) => names.includes(designation))),
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
function sharedLines(screws: readonly IdentifiedScrew[]): string[] {
  const one = (values: readonly string[]) => (new Set(values).size === 1 ? [values[0]!] : []);
  const shared = [
    ...one(screws.map(({ form }) => FORMS[form])),
    ...one(screws.map(({ major }) => `${plain(major)} mm over the crests`)),
    ...one(screws.map(({ pitch }) => `pitch ${plain(pitch, 4)} mm`)),
  ];
  return shared.length === 0 ? [] : wrapped(`Common to all: ${shared.join(', ')}.`);
}

function handWords({ hand }: IdentifiedScrew, readings: Readings): string {
  return readings.hand === undefined ? 'right-hand unless you see it climb to the left' : `${hand}-hand`;
}

function handLines({ hand }: Readings): string[] {
  return hand === undefined ? wrapped('Which hand it has was not given: look at it.') : [];
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

function nextLines({ what, why, wire }: NextMeasurement): string[] {
  const option = wire === undefined ? OPTION[what] : OPTION[what].replace('WIRE', plain(wire));
  return [...wrapped(why, 2), ...wrapped(`Then add ${option}`, 2)];
}

function blockLines(block: string): string[] {
  return block
    .trimEnd()
    .split('\n')
    .map((line) => `  ${line}`);
}
