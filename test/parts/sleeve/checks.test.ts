import { SLEEVE_CHECKS } from '../../../src/parts/sleeve/checks.js';
import { everyVerdict, type VerdictCase } from '../../support/every-verdict.js';
import { changed } from '../../support/nut-sheets.js';
import { BUSH, CLAMP } from '../../support/sleeve-sheets.js';

type Tree = { readonly [key: string]: unknown };

const bush = (changes: Tree = {}): Tree => ({ ...BUSH, ...changes });
const clamp = (changes: Tree = {}): Tree => changed(CLAMP, changes);
const above = { mounting: 'motor-above' };
const below = { mounting: 'motor-below' };
const screw = { shaft: undefined, screw: { designation: 'Tr8x2', major: 7.95 } };
const onBearing = { ...above, thrust_bearing: 'yes' };
// 300 mm of the shaft weigh 1.2 N: 30 − 20 − 1.2 = 8.8 N are pushed on to the motor, or 579 N
const LIFTED = { load: 20, upward: 30, span: 300 };
const PUSHED = { ...LIFTED, upward: 600 };
const untold = { duty: { temperature: undefined } };

const AXIAL: readonly VerdictCase<Tree>[] = [
  ['axial-grip', 'not-told', clamp(), 'nobody tells what pulls'],
  ['axial-grip', 'not-told', clamp({ mounting: undefined, duty: { load: 10 } }), 'nobody tells whether it hangs'],
  ['axial-grip', 'not-told', clamp({ duty: { load: 10, temperature: undefined } }), 'nobody tells how hot it gets'],
  ['axial-grip', 'pass', clamp({ duty: { load: 10 } }), 'a level shaft'],
  ['axial-grip', 'fail', clamp({ duty: { load: 300 } }), 'more than it holds'],
  ['axial-grip', 'fail', clamp({ mounting: undefined, duty: { load: 300 } }), 'it may hang, with more than it holds'],
  ['axial-grip', 'pass', clamp({ ...above, duty: { load: 10, upward: 0, span: 300 } }), 'a screw that hangs'],
  ['axial-grip', 'not-told', clamp({ ...below, duty: { load: 10 } }), 'nobody tells what lifts it'],
  ['axial-grip', 'pass', clamp({ ...below, duty: { load: 10, upward: 0 } }), 'nothing lifts it'],
  ['axial-grip', 'fail', clamp({ ...below, duty: { load: 10, upward: 300 } }), 'the work lifts it'],
  ['axial-grip', 'pass', clamp({ ...above, thrust_bearing: 'yes', duty: { load: 300 } }), 'a bearing'],
  ['axial-grip', 'pass', clamp({ ...above, locating_holder: 'yes', duty: { load: 300 } }), 'a holder'],
  ['both-ways', 'pass', clamp({ ...onBearing, pair: 'yes', duty: LIFTED }), 'a second collar'],
  ['both-ways', 'pass', clamp({ ...onBearing, pair: 'no', motor: { axial_limit: 15 }, duty: LIFTED }), 'the motor'],
  ['both-ways', 'fail', clamp({ ...onBearing, pair: 'no', motor: { axial_limit: 5 }, duty: LIFTED }), 'a weak motor'],
  ['both-ways', 'fail', clamp({ ...onBearing, pair: 'no', motor: { axial_limit: 900 }, duty: PUSHED }), 'it slips'],
  ['both-ways', 'not-told', clamp({ ...onBearing, duty: LIFTED }), 'nobody tells of a second collar'],
  ['both-ways', 'not-told', clamp({ ...onBearing, duty: { load: 20 } }), 'nobody tells what lifts it'],
  ['motor-thrust', 'not-told', clamp({ duty: { load: 10 } }), 'no limit of the motor'],
  ['motor-thrust', 'pass', clamp({ motor: { axial_limit: 15 }, duty: { load: 10 } }), 'a limit that suffices'],
  ['motor-thrust', 'fail', clamp({ motor: { axial_limit: 15 }, duty: { load: 20 } }), 'more than the motor carries'],
  [
    'motor-thrust',
    'fail',
    clamp({ ...above, motor: { axial_limit: 15 }, duty: { load: 14.5, span: 300 } }),
    'the screw weighs too',
  ],
];

const GRIP: readonly VerdictCase<Tree>[] = [
  ['grip-torque', 'pass', clamp(), 'washers and a second tightening'],
  ['grip-torque', 'caution', clamp({ motor: { torque: 0.32 } }), 'it slips when jammed'],
  ['grip-torque', 'fail', clamp({ motor: { torque: 0.9 } }), 'a strong motor'],
  ['grip-torque', 'fail', clamp({ ...above, motor: { torque: 0.36 } }), 'the axis falls where it slips'],
  ['grip-torque', 'fail', clamp({ mounting: undefined, motor: { torque: 0.36 } }), 'nobody tells that it lies'],
  ['grip-torque', 'not-told', clamp(untold), 'nobody tells of the room'],
  ['flat-pressure', 'pass', clamp(), 'the clamp holds'],
  [
    'flat-pressure',
    'fail',
    clamp({ motor: { torque: 0.4 }, motor_end: { friction: 0.02 } }),
    'a jam after the clamp has slipped',
  ],
  [
    'flat-pressure',
    'fail',
    clamp({ motor_end: { friction: 0.02, clamp: { washers: 'no' } }, duty: { reversing: 'no' } }),
    'all work on the flat',
  ],
  ['clamp-pressure', 'pass', clamp({ motor_end: { tightening: 0.4 } }), 'tightened by the card'],
  ['clamp-pressure', 'fail', clamp({ motor_end: { tightening: 0.65 } }), 'tightened too hard'],
  ['closing-strain', 'pass', clamp(), 'a small play'],
  ['closing-strain', 'fail', clamp({ screw_end: { bore_clearance: 0.3 } }), 'a loose bore'],
  ['crest-grip', 'pass', clamp({ ...screw, length: 60, screw_end: { degreased: 'yes' } }), 'a long end'],
  ['crest-grip', 'caution', clamp(screw), 'grease on the crests'],
  ['bore-pressure', 'pass', clamp(), 'long bores'],
  [
    'bore-pressure',
    'caution',
    clamp({ motor: { shaft: { length: 9 } }, motor_end: { clamp: { screw: 'M4' } } }),
    'a short shaft',
  ],
];

const BODY: readonly VerdictCase<Tree>[] = [
  ['wall', 'pass', clamp(), 'walls of four lines'],
  ['wall', 'caution', clamp({ printer: { nozzle: 0.8, layer: 0.3 } }), 'fewer lines of a wide nozzle'],
  ['shaft-engagement', 'pass', clamp(), 'long bores'],
  ['shaft-engagement', 'fail', clamp({ motor: { shaft: { length: 6 } } }), 'a shaft that ends short'],
  ['tool-access', 'pass', clamp(), 'heads in pockets'],
  ['tool-access', 'fail', clamp({ limits: { 'tool-access': { min: 3 } } }), 'a sheet that asks for more room'],
  ['head-inside', 'pass', clamp(), 'nothing stands out'],
  ['head-inside', 'fail', clamp({ limits: { 'head-inside': { min: 5 } } }), 'a sheet that asks for more cover'],
  ['print-bridge', 'pass', clamp(), 'short bridges'],
  ['print-bridge', 'caution', clamp({ limits: { 'print-bridge': { max: 2 } } }), 'a printer that bridges badly'],
  ['over-constraint', 'caution', clamp(), 'nobody measured the offset'],
  ['over-constraint', 'pass', clamp({ offset: 0.03 }), 'shafts in line'],
  ['over-constraint', 'caution', clamp({ offset: 0.1 }), 'shafts out of line'],
  ['over-constraint', 'fail', clamp({ offset: 0.3 }), 'shafts far out of line'],
  ['locating-bearings', 'pass', clamp(), "the motor's own bearing"],
  ['locating-bearings', 'pass', clamp({ thrust_bearing: 'yes' }), 'a thrust bearing beside it'],
  ['locating-bearings', 'fail', clamp({ locating_holder: 'yes' }), 'a holder that fights it'],
  ['speed', 'pass', clamp({ duty: { speed: 1500 } }), 'a usual motor'],
  ['speed', 'caution', clamp({ duty: { speed: 1501 } }), 'a spindle'],
  ['bush-wall', 'pass', bush(), 'a wall of lines'],
  ['bush-wall', 'caution', bush({ bore: 6.4 }), 'a wall of hardly two lines'],
  ['bush-wall', 'fail', bush({ bore: 6.05, printer: { nozzle: 0.6, layer: 0.2 } }), 'a wall below one line'],
  ['bore-entry', 'pass', clamp(), 'bores that are compensated'],
  ['bore-entry', 'fail', clamp({ printer: { compensation: 'none' } }), 'bores that nobody compensates'],
  [
    'bore-entry',
    'caution',
    clamp({
      printer: { compensation: 'none' },
      motor_end: { bore_clearance: 0.15 },
      screw_end: { bore_clearance: 0.15 },
    }),
    'wide ones',
  ],
  ['bore-runout', 'pass', bush({ shaft: '5 ± 0.01 mm', material: 'pla' }), 'close fits'],
  ['bore-runout', 'caution', bush({ shaft: 19, bore: 40, length: 40, material: 'pa12' }), 'a wide bush of nylon'],
  ['heat', 'pass', clamp(), 'PC on a warm motor'],
  ['heat', 'fail', clamp({ material: 'pla' }), 'PLA on a motor'],
  ['heat', 'not-told', clamp(untold), 'nobody tells of the room'],
  ['shrink-applied-once', 'pass', clamp({ printer: { compensation: 'file' } }), 'the file compensates'],
  ['shrink-applied-once', 'caution', clamp(), 'nobody said who scales'],
];

everyVerdict<Tree>({
  checks: SLEEVE_CHECKS,
  cases: [...AXIAL, ...GRIP, ...BODY],
  sheetOf: (sheet) => sheet,
  never: { 'wall: fail': 'the layout refuses an outline with less' },
});
