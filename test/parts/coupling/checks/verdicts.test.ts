import { COUPLING_CHECKS } from '../../../../src/parts/coupling/checks/index.js';
import { couplingSheet } from '../../../support/coupling-sheets.js';
import { everyVerdict, type VerdictCase } from '../../../support/every-verdict.js';

type Changes = NonNullable<Parameters<typeof couplingSheet>[0]>;

const greased = { screw_hub: { degreased: 'no' } };
const flat = { motor: { shaft: { flat_length: 12 } } };
const above = { mounting: 'motor-above' };
const level = { mounting: 'horizontal' };
const slim = { hubs: { outside_diameter: 29 } };
const untold = { duty: undefined };

const GRIP: readonly VerdictCase<Changes>[] = [
  ['grip-torque', 'pass', {}, 'two screws with washers'],
  ['grip-torque', 'caution', { motor_hub: { clamp: { count: 1 } }, duty: { load: 25 } }, 'one slips when jammed'],
  ['grip-torque', 'fail', { ...greased, motor: { torque: 0.5 } }, 'grease on the screw'],
  ['grip-torque', 'fail', { material: 'pa12', ...untold }, 'it slips in the coolest room'],
  ['grip-torque', 'not-told', untold, 'nobody tells how hot it gets'],
  [
    'grip-torque',
    'not-told',
    { screw: { major: undefined }, screw_hub: { friction: 0.08, clamp: { count: 1 } } },
    'nobody measured the screw',
  ],
  ['flat-pressure', 'pass', {}, 'the clamp holds more than the motor gives'],
  [
    'flat-pressure',
    'fail',
    { ...flat, motor_hub: { clamp: { count: 1 }, friction: 0.03 } },
    'a jam after the clamp has slipped',
  ],
  [
    'flat-pressure',
    'fail',
    { ...flat, motor_hub: { friction: 0.02, clamp: { count: 1 } }, duty: { reversing: 'no' } },
    'all work on the flat',
  ],
  [
    'flat-pressure',
    'not-told',
    {
      ...untold,
      motor: { torque: 0.05, shaft: { flat_length: 12 } },
      motor_hub: { friction: 0.02, clamp: { count: 1 } },
    },
    'nobody tells how hot the flat gets',
  ],
  ['clamp-pressure', 'pass', { motor_hub: { tightening: 0.4 } }, '667 N on 29.4 mm²'],
  ['clamp-pressure', 'fail', { motor_hub: { tightening: 0.65 } }, '1083 N on 29.4 mm²: 36.8 of 34.5 MPa'],
  ['clamp-pressure', 'fail', { motor_hub: { clamp: { washers: 'no' }, tightening: 0.4 } }, '667 N on 14.7 mm²'],
  ['closing-strain', 'pass', {}, 'a small play'],
  ['closing-strain', 'not-told', { screw: { major: undefined } }, 'nobody measured the screw'],
  ['closing-strain', 'fail', { motor_hub: { bore_clearance: 0.3 } }, 'a loose bore'],
  ['closing-strain', 'fail', { material: 'pla' }, 'a brittle plastic'],
  ['crest-grip', 'pass', { screw_hub: { length: 40 } }, 'a long hub'],
  ['crest-grip', 'caution', greased, 'grease left on the screw'],
  ['crest-grip', 'caution', { screw_hub: { clamp: { screw: 'M5' } } }, 'crests that sink in'],
  ['bore-pressure', 'pass', {}, 'a light clamp'],
  ['bore-pressure', 'caution', { motor_hub: { clamp: { screw: 'M6', washers: 'yes' } } }, 'a strong clamp'],
  ['set-screw', 'caution', { screw_hub: { grip: 'set-screw' } }, 'a set screw by itself'],
];

const BODY: readonly VerdictCase<Changes>[] = [
  ['wall', 'pass', {}, 'walls of four lines'],
  ['wall', 'caution', { printer: { nozzle: 0.6, layer: 0.2 } }, 'fewer lines of a wide nozzle'],
  ['shaft-engagement', 'pass', {}, 'long bores'],
  ['shaft-engagement', 'fail', { motor: { shaft: { length: 9 } } }, 'a shaft that ends short'],
  ['bore-runout', 'pass', {}, 'a close bore'],
  ['bore-runout', 'caution', { motor_hub: { bore_clearance: 0.3 } }, 'a loose bore'],
  ['tool-access', 'pass', {}, 'heads in pockets'],
  ['tool-access', 'fail', { limits: { 'tool-access': { min: 3 } } }, 'a sheet that asks for more room'],
  ['head-inside', 'pass', {}, 'nothing stands out'],
  ['head-inside', 'fail', { limits: { 'head-inside': { min: 5 } } }, 'a sheet that asks for more cover'],
  ['print-bridge', 'pass', {}, 'short bridges'],
  ['print-bridge', 'caution', { limits: { 'print-bridge': { max: 2 } } }, 'a printer that bridges badly'],
  ['heat', 'pass', {}, 'PC on a motor'],
  ['heat', 'fail', { motor: { temperature: 110 } }, 'a hub on a hot shaft'],
  ['heat', 'fail', { material: 'pla' }, 'PLA on a motor'],
  ['heat', 'not-told', untold, 'nobody tells of the room'],
  ['shrink-applied-once', 'pass', { printer: { compensation: 'file' } }, 'the file compensates'],
  ['shrink-applied-once', 'caution', {}, 'nobody said who scales'],
];

const AXIS: readonly VerdictCase<Changes>[] = [
  ['coupling-axial', 'fail', above, 'a hanging screw, whatever is said of load'],
  ['coupling-axial', 'fail', { ...above, duty: { load: 0 } }, 'a screw that hangs by its own weight'],
  ['coupling-axial', 'fail', { ...above, screw: undefined }, 'a hanging screw that nobody describes'],
  ['coupling-axial', 'pass', { ...above, locating_holder: 'yes' }, 'a hanging screw that a holder locates'],
  ['coupling-axial', 'pass', { ...above, duty: { load: 25 }, thrust_bearing: 'yes' }, 'a thrust bearing'],
  ['coupling-axial', 'not-told', { duty: { load: 25 } }, 'a standing screw that work may lift'],
  ['coupling-axial', 'pass', { duty: { upward: 0 } }, 'a standing screw that nothing lifts'],
  ['coupling-axial', 'not-told', { duty: { upward: 5 } }, 'a standing screw that is lifted, its weight untold'],
  ['coupling-axial', 'pass', { duty: { upward: 20, load: 25 } }, 'lifted less than it weighs'],
  ['coupling-axial', 'fail', { duty: { upward: 30, load: 25 } }, 'lifted more than it weighs'],
  ['coupling-axial', 'not-told', level, 'a level screw, nobody tells what pulls'],
  ['coupling-axial', 'pass', { ...level, duty: { load: 0 } }, 'a level screw that nothing pulls'],
  ['coupling-axial', 'fail', { ...level, duty: { load: 25 } }, 'a pulled screw lying down'],
  ['motor-thrust', 'not-told', { duty: { load: 25 } }, 'an axial limit that is not known'],
  ['motor-thrust', 'not-told', { motor: { axial_limit: 40 } }, 'a load that is not known'],
  ['motor-thrust', 'pass', { duty: { load: 25 }, motor: { axial_limit: 40 } }, 'a motor that carries more'],
  ['motor-thrust', 'fail', { duty: { load: 25 }, motor: { axial_limit: 10 } }, 'a motor that carries less'],
  [
    'motor-thrust',
    'fail',
    { duty: { load: 25, span: 400 }, motor: { axial_limit: 26 } },
    'the load, not the screw besides',
  ],
  ['insert-thrust', 'pass', {}, 'a disc'],
  ['insert-thrust', 'caution', { duty: { load: 25 }, insert: { pad: 'soft' } }, 'a soft pad, which creeps'],
  ['insert-thrust', 'fail', { duty: { load: 2000 }, insert: { pad: 'none' } }, 'weight on the lobes'],
  ['insert-thrust', 'not-told', { insert: { pad: 'soft' } }, 'nobody tells what stands on it'],
  ['shaft-gap', 'pass', {}, 'a pad'],
  ['shaft-gap', 'fail', { insert: { pad: { kind: 'disc', thickness: 0.3 } } }, 'a pad that is hardly there'],
  [
    'shaft-gap',
    'fail',
    { motor: { shaft: { length: 20 } }, insert: { pad: 'disc' } },
    'a shaft too short for its disc',
  ],
  ['shaft-gap', 'caution', { ...level, motor_hub: { stop: 'none' } }, 'nothing that ends the bores'],
  ['assembly-room', 'pass', {}, 'room at the floors'],
  ['assembly-room', 'fail', { misalignment: { axial: 2 } }, 'jaws pushed onto the floor'],
  ['assembly-entry', 'pass', {}, 'bevelled tips'],
  ['assembly-entry', 'caution', { jaws: { bevel: 0 }, insert: { flank_clearance: -0.1 } }, 'sharp tips'],
  [
    'matched-half',
    'pass',
    { screw: undefined, hubs: { outside_diameter: 29 }, jaws: { count: 3, height: 10, width: 6.4, inner: 13 } },
    'measured jaws',
  ],
  ['matched-half', 'caution', { screw: undefined }, 'jaws that nobody measured'],
  ['speed', 'pass', { duty: { speed: 300 } }, 'a slow shaft'],
  ['speed', 'caution', { duty: { speed: 2400 } }, 'a fast shaft'],
];

const INSERT: readonly VerdictCase<Changes>[] = [
  ['insert-stress', 'pass', {}, 'lobes that carry'],
  ['insert-stress', 'fail', { ...slim, motor: { torque: 2.5 } }, 'a small insert at a large torque'],
  ['insert-stress', 'not-told', untold, 'nobody tells how warm it gets'],
  ['insert-stress-peak', 'pass', {}, 'an even drive'],
  [
    'insert-stress-peak',
    'fail',
    { ...slim, motor: { torque: 1.3 }, duty: { shock: 'heavy', starts: 1200 } },
    'heavy shock',
  ],
  ['insert-stress-peak', 'not-told', untold, 'nobody tells how warm it gets'],
  ['insert-squeeze', 'pass', {}, 'a light squeeze'],
  [
    'insert-squeeze',
    'caution',
    { insert: { flank_clearance: -0.3 }, misalignment: { parallel: 1.5 } },
    'lobes squeezed hard',
  ],
  ['insert-squeeze', 'fail', { insert: { flank_clearance: -0.3 }, misalignment: { parallel: 3 } }, 'lobes crushed'],
  ['misalignment', 'pass', {}, 'shafts in line'],
  ['misalignment', 'caution', { misalignment: { parallel: 0.3 } }, 'shafts out of line'],
  ['misalignment', 'fail', { misalignment: { parallel: 0.6 } }, 'shafts far out of line'],
  ['coupling-play', 'pass', {}, 'no play'],
  ['coupling-play', 'caution', { insert: { flank_clearance: 0.2 } }, 'lobes with room'],
  ['lost-motion', 'pass', {}, 'a short lead'],
  [
    'lost-motion',
    'caution',
    { screw: { designation: 'Tr8x8(P2)' }, insert: { flank_clearance: 0.3 } },
    'a long lead with play',
  ],
  ['jaw-bending', 'pass', {}, 'jaws that keep'],
  ['jaw-bending', 'fail', { motor: { torque: 4 }, hubs: { outside_diameter: 30 } }, 'weak jaws'],
  ['jaw-bending', 'not-told', untold, 'nobody tells how hot they get'],
  ['jaw-shear', 'pass', {}, 'jaws that keep'],
  ['jaw-shear', 'fail', { motor: { torque: 9 }, hubs: { outside_diameter: 30 }, jaws: { width: 4.5 } }, 'thin jaws'],
  ['jaw-shear', 'not-told', untold, 'nobody tells how hot they get'],
  ['jaw-bare', 'pass', {}, 'a jaw by itself that keeps'],
  ['jaw-bare', 'caution', { motor: { torque: 2 }, hubs: { outside_diameter: 30 } }, 'a weak jaw by itself'],
  ['jaw-bare', 'not-told', untold, 'nobody tells how hot it gets'],
  ['print-lines', 'pass', {}, 'wide jaws'],
  ['print-lines', 'caution', { printer: { nozzle: 0.8, layer: 0.3 } }, 'a wide nozzle'],
  ['print-lines', 'fail', { printer: { nozzle: 1.2, layer: 0.4 }, jaws: { count: 6 } }, 'a nozzle wider than a jaw'],
];

everyVerdict<Changes>({
  checks: COUPLING_CHECKS,
  cases: [...GRIP, ...BODY, ...AXIS, ...INSERT],
  never: { 'wall: fail': 'the layout refuses an outline with less' },
  sheetOf: couplingSheet,
});
