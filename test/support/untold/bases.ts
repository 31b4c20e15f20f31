import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { type Fields, isFields } from '../../../src/sheet/fields-map.js';
import { readYaml } from '../../../src/sheet/read-yaml.js';
import { START_KINDS } from '../../../src/sheet/start-kinds.js';
import { COLLAR, HELD } from '../../axis/verdict-cases.js';
import { AXIS, axisWith } from '../axis-sheets.js';
import { HALVES, PLAIN, THREADED, THREADED_HALVES } from '../collar-sheets.js';
import { couplingSheet, PLAIN_COUPLING } from '../coupling-sheets.js';
import { END_HOLDERS } from '../end-holder-sheets.js';
import { FAMILY_BASE, METAL, SPRING } from '../family-sheet.js';
import { LOADED, MOTOR_PLATES } from '../motor-plate-sheets.js';
import { changed, SOUND_NUT } from '../nut-sheets.js';
import { ADAPTERS } from '../odd-sheets.js';
import { BUSH, CLAMP } from '../sleeve-sheets.js';

const SHIPPED = join(import.meta.dirname, '../../../presets/sheets');
const FILES = ['axis', 'fleet', 'results', 'trial', 'demo-results'];

function plain(text: string): Fields {
  const { value } = readYaml(text);
  if (!isFields(value)) throw new TypeError('no map');
  return value;
}
const named = (prefix: string, sheets: Readonly<Record<string, object>>) =>
  Object.entries(sheets).map(([name, sheet]): [string, Fields] => [`${prefix} ${name}`, sheet as Fields]);

/** The start sheets of `new`, for parts. */
export const STARTS: readonly [string, Fields][] = START_KINDS.filter((k) => !FILES.includes(k)).map((kind) => [
  `start ${kind}`,
  plain(startSheet(kind)),
]);
/** The demonstrations. */
export const DEMOS: readonly [string, Fields][] = readdirSync(SHIPPED)
  .filter((f) => !f.includes('axis'))
  .map((file) => [file, plain(readFileSync(join(SHIPPED, file), 'utf8'))]);
const family = (more: Fields) => changed(FAMILY_BASE, { duty: SOUND_NUT.duty, mounting: 'flange-up', ...more });
/** Axes: as they ship, and with what else may hold the screw. */
export const AXES: readonly [string, Fields][] = [
  ['demo axis', AXIS],
  ['start axis', plain(startSheet('axis'))],
  ['guided', axisWith({ parts: HELD })],
  [
    'on a collar',
    axisWith({ lengths: { start: '60 mm' }, parts: { collar: COLLAR, coupling: { insert: { pad: 'none' } } } }),
  ],
];
/** Sheets of every form, as tests have them. */
export const OWN: readonly [string, Fields][] = [
  ['sound nut', SOUND_NUT],
  [
    'nut with carriage',
    changed(SOUND_NUT, {
      carriage: { bore: 17.6, thickness: 6, holes: { count: 4, circle: 27, start: 45, screw: 'M3', diameter: 3.6 } },
    }),
  ],
  ['split', family({ family: { kind: 'split' } })],
  ['split, level', family({ family: { kind: 'split' }, duty: { ...SOUND_NUT.duty, axis: 'horizontal' } })],
  ['clamped', family({ family: { kind: 'clamped' } })],
  ['anti-backlash', family({ family: { kind: 'anti-backlash', spring: SPRING } })],
  ['holder', family({ family: { kind: 'holder', nut: METAL } })],
  ['catch nut', family({ catch_nut: METAL })],
  ['coupling', PLAIN_COUPLING],
  [
    'coupling on shaft',
    couplingSheet({
      screw: undefined,
      shaft: 8,
      mounting: 'horizontal',
      thrust_bearing: 'yes',
      duty: { load: 20, upward: 0, span: 300 },
    }),
  ],
  [
    'coupling, motor above',
    couplingSheet({
      mounting: 'motor-above',
      thrust_bearing: 'yes',
      duty: { load: 20, upward: 0, span: 300, starts: 60, shock: 'light' },
    }),
  ],
  ['sleeve', CLAMP],
  ['bush', BUSH],
  [
    'sleeve on screw',
    changed(CLAMP, {
      shaft: undefined,
      screw: { designation: 'Tr8x2', major: 7.95 },
      mounting: 'motor-below',
      duty: { load: 10, upward: 0, span: 200, speed: 200, shock: 'light' },
    }),
  ],
  ['collar threaded', THREADED],
  ['collar plain', PLAIN],
  ['collar halves', HALVES],
  ['collar threaded halves', THREADED_HALVES],
  ...named('holder', END_HOLDERS),
  ...named('motor plate', MOTOR_PLATES),
  ['motor plate loaded', LOADED],
  ...named('adapter', ADAPTERS),
];
