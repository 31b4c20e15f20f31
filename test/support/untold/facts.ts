import { at, type Sheet } from './sheet.js';

/** A fact of a sheet: its path, and what a person may tell there, from the mild end to the bad one. */
export interface Fact {
  readonly path: string;
  /** nothing where the sheet has no room for it */
  readonly told: (sheet: Sheet) => readonly unknown[];
}

type Told = readonly unknown[] | ((sheet: Sheet) => readonly unknown[]);
const facts = (rows: Readonly<Record<string, Told>>): Fact[] =>
  Object.entries(rows).map(([path, told]) => ({ path, told: typeof told === 'function' ? told : () => told }));

const YES_NO = ['yes', 'no'];

/** Values for sheets of which something else is told so. */
const where = (path: string, is: (value: unknown) => boolean, values: readonly unknown[]) => (sheet: Sheet) =>
  is(at(sheet, path)) ? values : [];
const isUntold = (value: unknown) => value === undefined;

/** A number that a sheet tells, with or without its unit. */
const number = (sheet: Sheet, path: string) => Number.parseFloat(String(at(sheet, path)));

/** A bore around a body that goes through it: close, roomy, and as wide as the screws around it leave. */
function boreAround(sheet: Sheet): readonly unknown[] {
  const body = number(sheet, sheet.part === 'adapter' ? 'nut.body' : 'body.diameter');
  const circle = number(sheet, sheet.part === 'adapter' ? 'carriage.holes.circle' : 'holes.circle');
  return Number.isFinite(body) ? [body + 0.1, body + 1, ...(circle - 6 > body + 1 ? [circle - 6] : [])] : [];
}

/** Around a part, and what the axis does with it. */
const DUTY = facts({
  'duty.axis': ['vertical', 'horizontal'],
  'duty.load': [20, 300],
  // where the mounting does not say it already
  'duty.pull': where('mounting', isUntold, ['away', 'onto']),
  'duty.moving': ['5 %', '100 %'],
  'duty.on_time': ['2 s', '50 s', '3600 s'],
  'duty.cycle': ['10 s', '60 s', '7200 s'],
  // a motor is no cooler than the room
  'duty.temperature': (sheet) => {
    const motor = number(sheet, 'motor.temperature');
    return [20, 45, 60].filter((room) => !(room > motor));
  },
  'duty.grease': ['dry', 'greased'],
  'duty.regrease': YES_NO,
  'duty.dust': YES_NO,
  'duty.feed': [2, 30, 120],
  'duty.motor.torque': ['0.1 N m', '0.5 N m', '1.5 N m'],
  'duty.motor.steps': [200, 400],
  'duty.motor.microsteps': [1, 16],
  'duty.motor.gear': [0.5, 1, 4],
  'duty.motor.speed': [150, 1000],
  'duty.motor.current': [0.5, 2],
  'duty.motor.inductance': [2, 20],
  'duty.motor.voltage': [12, 48],
  'duty.span': [100, 500, 1000],
  'duty.ends': ['fixed-free', 'supported', 'fixed-supported', 'fixed-fixed'],
  'duty.layer_heights': [[0.1], [0.13]],
  // what lies is not lifted off
  'duty.upward': where('mounting', (one) => one !== 'horizontal', [0, 200]),
  'duty.reversing': YES_NO,
  // as fast as stepper motors turn screws
  'duty.speed': [100, 900],
  'duty.starts': [0, 1500],
  'duty.shock': ['light', 'moderate', 'heavy'],
});

/** The motor, and shafts. */
const MOTOR = facts({
  'motor.torque': ['0.05 N m', '0.4 N m', '2 N m'],
  'motor.axial_limit': [5, 200],
  'motor.temperature': [50, 80],
  'motor.weight': [2, 30],
  'motor.length': [20, 120],
  'motor.pilot_height': [1, 6],
  'motor.shaft.length': [6, 30],
  'motor.shaft.flat_length': [4, 20],
  'shaft.length': [6, 30],
  'shaft.flat_length': [4, 20],
  'turned_end.length': [6, 30],
});

/** How the parts of an axis stand to each other. */
const PLACE = facts({
  mounting: ['flange-up', 'flange-down', 'motor-below', 'motor-above', 'horizontal'],
  stands: ['through', 'away'],
  'nut.stands': ['through', 'away'],
  thrust_bearing: YES_NO,
  locating_holder: YES_NO,
  bearing_on: ['plate', 'machine'],
  retighten: YES_NO,
  backed_by: ['nothing', 'metal-collar'],
  pair: YES_NO,
  coupling: ['rigid', 'disc', 'flexible'],
  // as couplings that give take
  coupling_angle: where('coupling', (one) => one === 'flexible', ['1 deg', '3 deg']),
  hub_depth: [4, 14],
  belt_pull: [5, 150],
  nut: ['rigid', 'floating'],
  runout: [0, 0.1, 0.6],
  nut_gap: [5, 300],
  end_room: [0, 5],
  offset: [0, 0.1, 0.3],
  'misalignment.angular': [0, '2 deg'],
  'misalignment.parallel': [0, 0.6],
  'misalignment.axial': [0, 1.5],
  'family.lever': [10, 300],
});

/** Of hubs: whether grease is where they hold. */
const HOLDS = facts(
  Object.fromEntries(
    ['motor_hub', 'screw_hub', 'motor_end', 'screw_end', 'hold'].map((hub) => [`${hub}.degreased`, YES_NO]),
  ),
);

/** What a part is mounted to. */
const AROUND = facts({
  'carriage.bore': boreAround,
  'carriage.spigot': [15, 20, 40],
  'carriage.thickness': [2, 6, 15],
  'carriage.thread': ['clear', 'tapped'],
  'carriage.holes.screw': (sheet) => screwFor(sheet, 'carriage.holes'),
  'carriage.holes.diameter': (sheet) => holeFor(sheet, 'carriage.holes'),
  'carriage.holes.fit': ['fine', 'medium', 'coarse'],
  'nut.length': [8, 15, 40],
  'nut.thread': ['clear', 'tapped'],
  'nut.holes.screw': (sheet) => screwFor(sheet, 'nut.holes'),
  'nut.holes.diameter': (sheet) => holeFor(sheet, 'nut.holes'),
  'nut.holes.fit': ['fine', 'medium', 'coarse'],
  'holes.screw': (sheet) => screwFor(sheet, 'holes'),
  'machine.bare': ['clear', 'tapped'],
  'machine.thickness': [2, 6, 20],
  'machine.opening': [20, 60],
  'frame.thickness': [2, 6, 20],
});

const CLEARANCE: readonly (readonly [screw: string, fine: number, coarse: number])[] = [
  ['M2.5', 2.7, 3.1],
  ['M3', 3.2, 3.6],
  ['M4', 4.3, 4.8],
  ['M5', 5.3, 5.8],
];

/** Holes that a screw is drilled for, ISO 273 fine to coarse; what is told of the pattern otherwise stands. */
function holeFor(sheet: Sheet, pattern: string): readonly unknown[] {
  const [, fine, coarse] = CLEARANCE.find(([screw]) => screw === at(sheet, `${pattern}.screw`)) ?? [];
  return fine === undefined ? [] : [fine, coarse];
}

/** The screws that a hole of known size may be drilled for. */
function screwFor(sheet: Sheet, pattern: string): readonly unknown[] {
  const diameter = number(sheet, `${pattern}.diameter`);
  return CLEARANCE.filter(([, fine, coarse]) => diameter >= fine && diameter <= coarse + 0.5).map(([screw]) => screw);
}

/** Of the screw, as calipers read it. */
const SCREW = facts({
  'screw.major': (sheet) =>
    ({ Tr8x2: ['7.95 ± 0.02 mm', '7.84 ± 0.02 mm'], Tr10x2: ['9.95 ± 0.02 mm', '9.84 ± 0.02 mm'] })[
      designation(sheet)
    ] ?? [],
  'screw.minor': (sheet) =>
    ({ Tr8x2: ['5.8 ± 0.05 mm', '5.3 ± 0.05 mm'], Tr10x2: ['7.4 ± 0.05 mm', '7.2 ± 0.05 mm'] })[designation(sheet)] ??
    [],
  'screw.pitch_diameter': (sheet) =>
    ({ Tr8x2: ['6.93 ± 0.02 mm', '6.75 ± 0.02 mm'], Tr10x2: ['8.93 ± 0.02 mm', '8.75 ± 0.02 mm'] })[
      designation(sheet)
    ] ?? [],
  'screw.hand': where('screw.designation', isUntold, ['right', 'left']),
  calipers: [0, 0.03],
});

function designation(sheet: Sheet): 'Tr8x2' | 'Tr10x2' {
  return String(at(sheet, 'screw.designation') ?? at(sheet, 'screw')) as 'Tr8x2';
}

/** What a printer does to sizes. */
const PRINTER = facts({
  'printer.hole_offset': [0, 0.15, 0.3],
  'printer.outside_offset': [0, 0.2],
  'printer.first_layer': [0, 0.3],
});

/** Along the screw of an axis, its motor, and what its controller was set for. */
const AXIS = facts({
  'lengths.clear': [200, 330, 500],
  'lengths.far_face': ['holder', 'frame'],
  'lengths.screw': [150, 290, 310, 400],
  'lengths.start': [60, 150],
  'lengths.moving': [15, 30, 60],
  'lengths.travel': [50, 150, 300],
  'lengths.beyond': [2, 30],
  'motor.steps': [200, 400],
  'motor.microsteps': [1, 16],
  'motor.gear': [0.5, 1, 4],
  'motor.speed': [150, 1000],
  'motor.current': [0.5, 2],
  'motor.inductance': [2, 20],
  'motor.voltage': [12, 48],
  'old.screw': ['Tr8x2', 'Tr10x2-LH'],
  'old.steps_per_mm': [100, 1600],
});

/** Every fact that a sheet may leave out. What the engine sizes by itself, and how the part is printed, are choices and stand on the card. */
export const FACTS: readonly Fact[] = [...DUTY, ...MOTOR, ...PLACE, ...HOLDS, ...AROUND, ...SCREW, ...PRINTER, ...AXIS];
