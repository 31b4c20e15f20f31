import { HOW_TO_MEASURE } from '../identify/guide.js';
import { identify } from '../identify/identify.js';
import { identificationJson } from '../identify/json.js';
import { jsonText } from '../output/report-json.js';
import { identificationText } from '../output/terminal/identification.js';
import { type Locate, locating } from '../pipeline/locate-faults.js';
import { readingsOf } from '../pipeline/readings.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { replaced } from '../sheet/merge.js';
import { listed, plainValue } from '../sheet/plain-value.js';
import { readYaml } from '../sheet/read-yaml.js';
import { readingsSection } from '../sheet/sections/readings.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';
import { readInput } from '../work/read-input.js';
import { EXIT } from './exit-codes.js';
import { type Io, wantsColour, widthOf } from './io.js';
import { tellFaults } from './tell-faults.js';
import { namingOptions, paired, type TypedField, typedFields } from './typed.js';

/** `6.1`, or `6.0=6.3`: the shank that goes in and the one that does not. */
function shankOrPair(text: string, option: string): unknown {
  return text.includes('=') ? paired('goes', 'stops', '6.0=6.3')(text, option) : plainValue(text);
}

const READINGS = {
  major: { path: 'major', read: listed },
  crests: { path: 'crests', read: paired('count', 'length', '10=20.05') },
  travel: { path: 'travel', read: paired('turns', 'length', '10=80.1') },
  starts: { path: 'starts' },
  minor: { path: 'minor' },
  'nut-bore': { path: 'nut_bore', read: shankOrPair },
  'crest-flat': { path: 'crest_flat' },
  wires: { path: 'wires', read: paired('wire', 'over', '1.0=8.31') },
  crest: { path: 'crest' },
  hand: { path: 'hand' },
  cannot: { path: 'cannot', read: listed },
  uncertainty: { path: 'uncertainty' },
} as const satisfies Record<string, TypedField>;

/** What `identify` was called with. */
export interface IdentifyArgs extends Fields {
  readonly file?: string | undefined;
  readonly how?: boolean | undefined;
  readonly json?: boolean | undefined;
}

/** Names the screw that the readings of a file, of the options, or of both belong to; options go before the file. */
export async function identifyCall(args: IdentifyArgs, io: Io): Promise<number> {
  const { file } = args;
  if (args.how === true) {
    io.stdout.write(args.json === true ? jsonText({ how: HOW_TO_MEASURE }) : HOW_TO_MEASURE);
    return EXIT.done;
  }
  const typed = typedFields(args, READINGS);
  if (file === undefined) {
    if (Object.keys(typed).length === 0) throw nothingRead();
    return answer(args, {}, typed, () => undefined, io);
  }
  try {
    const { value, locate } = readYaml(await readInput(file, io));
    return answer(args, readingFields(value, locate), typed, locate, io);
  } catch (error) {
    return tellFaults(error, io, file);
  }
}

function nothingRead() {
  const options = ['major', 'crests', 'travel', 'minor', 'wires', 'nut-bore'].map((name) => `--${name}`).join(', ');
  return fault(
    '',
    '',
    `readings are missing: a file, or some of ${options}; leadwright identify --how shows how to measure`,
  );
}

function readingFields(value: unknown, locate: Locate): Fields {
  if (isFields(value)) return value;
  // What is no map is refused by the section, which says what is wanted.
  validate(readingsSection, value, locate);
  return {};
}

function answer(args: IdentifyArgs, fields: Fields, typed: Fields, locate: Locate, io: Io): number {
  const readings = namingOptions(args, READINGS, () =>
    readingsOf(validate(readingsSection, replaced(fields, typed), locate)),
  );
  const found = namingOptions(args, READINGS, () => locating(locate, () => identify(readings)));
  io.stdout.write(
    args.json === true
      ? jsonText(identificationJson(found))
      : identificationText(found, readings, { colour: wantsColour(io), width: widthOf(io) }),
  );
  return EXIT.done;
}
