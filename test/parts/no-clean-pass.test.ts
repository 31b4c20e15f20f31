import { describe, expect, it } from 'vitest';
import type { Word } from '../../src/judge/check.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { PLAIN, THREADED } from '../support/collar-sheets.js';
import { PLAIN_COUPLING } from '../support/coupling-sheets.js';
import { GUIDED, LOCATED, PRESSED } from '../support/end-holder-sheets.js';
import { FAMILY_BASE, METAL } from '../support/family-sheet.js';
import { ADAPTED, BELTED, LOADED, MOUNTED } from '../support/motor-plate-sheets.js';
import { changed, SOUND_NUT } from '../support/nut-sheets.js';
import { BUSH, CLAMP } from '../support/sleeve-sheets.js';

type Tree = { readonly [key: string]: unknown };

/** What is odd about a sheet, the sheet, and what each check that must speak says. */
type Odd = readonly [what: string, base: Tree, changes: Tree, says: Readonly<Record<string, Word>>];

const PLATE = {
  part: 'adapter',
  name: 'plate',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
    joint: 'tapped',
  },
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 30, diameter: 3.4, screw: 'M3' }, joint: 'through' },
  plate: { thickness: 8, outline: { shape: 'round', diameter: 44 } },
  material: 'petg',
  printer: { layer: 0.2, compensation: 'file' },
  duty: { load: 20, temperature: 25, axis: 'horizontal' },
};
const COUPLING = changed(PLAIN_COUPLING, {
  mounting: 'horizontal',
  thrust_bearing: 'yes',
  screw: undefined,
  shaft: 8,
  printer: { compensation: 'file' },
  duty: { load: 20, upward: 0, span: 300 },
});
const JOINT = changed(CLAMP, { offset: 0, printer: { compensation: 'file' } });
const CATCHING = {
  body: { diameter: 25, length: 26 },
  flange: { diameter: 46 },
  holes: { circle: 36 },
  catch_nut: { across_flats: 17, height: 8 },
};
const SPLIT = {
  ...FAMILY_BASE,
  family: { kind: 'split' },
  duty: { axis: 'horizontal', load: 15, temperature: 25 },
};

const ODD: readonly Odd[] = [
  // nuts: heat
  ['a PLA nut in a warm cabinet', SOUND_NUT, { material: 'pla', duty: { temperature: 45 } }, { heat: 'no' }],
  ['a PETG nut at 60 °C', SOUND_NUT, { material: 'petg', duty: { temperature: 60 } }, { heat: 'no' }],
  ['a PA12 nut near its softening', SOUND_NUT, { duty: { temperature: 85 } }, { heat: 'no' }],
  // nuts: loads
  ['a load that strips its teeth in years', SOUND_NUT, { duty: { load: 700 } }, { 'thread-bending': 'no' }],
  [
    'a load nobody told',
    SOUND_NUT,
    { duty: { load: undefined } },
    { 'thread-shear': 'not-told', 'bolt-clamp': 'not-told' },
  ],
  [
    'a temperature nobody told',
    SOUND_NUT,
    { duty: { temperature: undefined } },
    { heat: 'not-told', creep: 'not-told' },
  ],
  [
    'a motor nobody told',
    SOUND_NUT,
    { duty: { motor: undefined } },
    { 'drive-torque': 'not-told', 'thread-stall': 'not-told' },
  ],
  ['nothing told of its use', SOUND_NUT, { duty: undefined }, { heat: 'not-told' }],
  [
    'a motor whose stall force breaks its teeth',
    SOUND_NUT,
    { duty: { motor: { torque: '3 N m' } } },
    { 'thread-stall': 'no' },
  ],
  ['a motor that hits the end', SOUND_NUT, { duty: { motor: { torque: '2 N m' } } }, { 'end-stop': 'but' }],
  // nuts: holes and flanges
  ['M3 in holes of 8 mm', SOUND_NUT, { holes: { diameter: 8, fit: undefined } }, { 'head-seat': 'no' }],
  [
    'holes of 8 mm for a screw nobody named',
    SOUND_NUT,
    { holes: { screw: undefined, fit: undefined, diameter: 8 } },
    { 'head-seat': 'not-told' },
  ],
  [
    "a carriage's holes that swallow the washers",
    SOUND_NUT,
    { carriage: { holes: { count: 4, circle: 27, start: 45, diameter: 7.5, screw: 'M3' } } },
    { 'head-seat': 'no' },
  ],
  [
    'a narrow flange with two far screws',
    SOUND_NUT,
    {
      body: { diameter: 14, length: 18 },
      flange: { shape: 'rectangular', diameter: undefined, size: [46, 14.5], thickness: 3.6 },
      holes: { count: 2, circle: 32, start: 0, screw: 'M4', fit: 'medium' },
      duty: { load: 150 },
    },
    { 'flange-bending': 'no' },
  ],
  [
    'two ears with far screws',
    SOUND_NUT,
    {
      flange: { shape: 'two-ear', diameter: undefined, size: [70, 20], ear: 12, thickness: 4 },
      holes: { count: 2, circle: 58, start: 0 },
      duty: { load: 60 },
    },
    { 'flange-bending': 'no' },
  ],
  [
    'a flange smaller than the bore it lies on',
    SOUND_NUT,
    { carriage: { bore: 40 }, mounting: 'flange-up', duty: { pull: 'onto' } },
    { 'seat-pressure': 'no' },
  ],
  ['a body that parts between its layers', SOUND_NUT, { duty: { load: 600 } }, { 'barrel-pull': 'no' }],
  [
    'screws that a thin plate of the carriage cannot meet',
    SOUND_NUT,
    { carriage: { holes: { count: 3, circle: 27, diameter: 3.4, screw: 'M3' } } },
    { 'hole-position': 'no' },
  ],
  [
    'screws that relax in the heat',
    SOUND_NUT,
    { mounting: 'flange-down', duty: { load: 150, temperature: 60 } },
    { 'bolt-clamp': 'no' },
  ],
  // nuts: speed, wear, dirt
  [
    'a fast nut',
    SOUND_NUT,
    { screw: 'Tr10x10(P2)', duty: { feed: 200, on_time: undefined, cycle: undefined, moving: undefined } },
    { 'wear-speed': 'no' },
  ],
  [
    'a nut that slides at 660 mm/s',
    SOUND_NUT,
    { duty: { feed: 45, on_time: undefined, cycle: undefined, moving: undefined } },
    { 'wear-speed': 'no' },
  ],
  [
    'a motor that nobody told, at the end of travel',
    SOUND_NUT,
    { duty: { motor: undefined } },
    { 'end-stop': 'not-told' },
  ],
  [
    'a nut that never rests',
    SOUND_NUT,
    { duty: { feed: 20, load: 200, moving: '100 %', on_time: undefined, cycle: undefined } },
    { 'wear-pv': 'no' },
  ],
  ['a feed nobody told', SOUND_NUT, { duty: { feed: undefined } }, { 'wear-pv': 'not-told' }],
  ['grit on the screw', SOUND_NUT, { duty: { dust: 'yes' } }, { 'wear-dust': 'but' }],
  [
    'a dry nut that stalls its motor',
    SOUND_NUT,
    { duty: { grease: 'dry', motor: { torque: '0.12 N m' } } },
    { 'drive-torque': 'but' },
  ],
  ['polycarbonate in grease', SOUND_NUT, { material: 'pc' }, { grease: 'but' }],
  [
    'a PLA nut of nobody knows how much grit',
    SOUND_NUT,
    { material: 'pla', duty: { dust: undefined } },
    { 'wear-depth': 'not-told' },
  ],
  // nuts: the axis
  [
    'a catch nut of nobody knows which side',
    SOUND_NUT,
    { ...CATCHING, mounting: undefined },
    { 'catch-nut': 'not-told' },
  ],
  [
    'a catch nut of nobody knows which axis, its flange down',
    SOUND_NUT,
    { ...CATCHING, mounting: 'flange-down', duty: { axis: undefined } },
    { 'catch-nut': 'not-told' },
  ],
  ['a steep screw upright without a brake', SOUND_NUT, { screw: 'Tr8x8(P2)' }, { 'drive-holding': 'but' }],
  [
    'a steep screw of an axis that nobody called level',
    SOUND_NUT,
    { screw: 'Tr8x8(P2)', duty: { axis: undefined } },
    { 'drive-holding': 'not-told', 'catch-nut': 'not-told' },
  ],
  ['a long thin screw that whips', SOUND_NUT, { duty: { span: 1500, feed: 30 } }, { 'drive-whirl': 'no' }],
  [
    'a long thin screw that bows out',
    SOUND_NUT,
    { duty: { span: 1200, load: 200, ends: 'fixed-free' } },
    { 'drive-column': 'no' },
  ],
  [
    'a catch nut that touches',
    { ...SPLIT, family: undefined },
    { catch_nut: { ...METAL, gap: 0.3 } },
    { 'catch-nut': 'but' },
  ],
  [
    'a catch nut a millimetre too far',
    { ...SPLIT, family: undefined },
    { catch_nut: { ...METAL, gap: 2 } },
    { 'catch-nut': 'but' },
  ],
  ['halves that a ring closes', SPLIT, { family: { closed: 'ring' } }, { 'split-hold': 'but' }],
  ['halves wedged open', SPLIT, { duty: { load: 1000, axis: 'vertical', temperature: 51 } }, { 'split-hold': 'no' }],
  [
    'a metal nut that falls on a soft floor',
    SPLIT,
    { family: { kind: 'holder', nut: METAL }, duty: { load: 950 } },
    { 'nut-seat': 'no' },
  ],
  // plates
  [
    'a plate that hangs on two far screws',
    PLATE,
    {
      carriage: { bore: 12, holes: { count: 2, circle: 100, diameter: 4.5, screw: 'M4' } },
      plate: { thickness: 7, outline: { shape: 'rectangular', diameter: undefined, size: [116, 22] } },
      duty: { load: 250, temperature: 45, pull: 'away' },
    },
    { 'plate-bending': 'no' },
  ],
  [
    'a PLA plate that sags in the sun',
    PLATE,
    {
      carriage: { bore: 26, holes: { count: 2, circle: 80, diameter: 4.5, screw: 'M4' } },
      plate: { thickness: 5, outline: { shape: 'rectangular', diameter: undefined, size: [96, 24] } },
      material: 'pla',
      duty: { load: 60, temperature: 42 },
    },
    { 'plate-bending': 'no' },
  ],
  [
    'a plate whose load nobody told',
    PLATE,
    { duty: { load: undefined } },
    { 'plate-bending': 'not-told', 'bolt-clamp-nut': 'not-told' },
  ],
  [
    'a plate whose heat nobody told',
    PLATE,
    { duty: { temperature: undefined } },
    { heat: 'not-told', 'plate-bending': 'not-told' },
  ],
  ['a plate at 60 °C', PLATE, { duty: { temperature: 60 } }, { heat: 'no' }],
  ["a nut whose holes swallow their screws' heads", PLATE, { nut: { holes: { diameter: 6 } } }, { 'head-seat': 'no' }],
  [
    'carriage holes of 5 mm, the screw not named',
    PLATE,
    { carriage: { holes: { screw: undefined, diameter: 4 } } },
    { 'head-seat': 'not-told' },
  ],
  ['an opening that the flange falls through', PLATE, { plate: { bore: 23 } }, { 'mount-seat': 'no' }],
  ['a plate of two threads', PLATE, { plate: { thickness: 2.5 } }, { 'thread-engagement': 'no' }],
  ['a plate that screws cannot hold', PLATE, { duty: { load: 800 } }, { 'bolt-clamp-carriage': 'no' }],
  [
    'a steep screw upright behind a plate',
    PLATE,
    { screw: 'Tr8x8(P2)', duty: { axis: 'vertical' } },
    { 'catch-nut': 'but' },
  ],
  ['a plate whose motor and screw nobody told', PLATE, {}, { 'end-stop': 'not-told' }],
  [
    'an upright plate whose screw nobody told',
    PLATE,
    { duty: { axis: 'vertical' } },
    { 'end-stop': 'not-told', 'catch-nut': 'not-told' },
  ],
  // couplings
  [
    'a PA12 hub on a motor of 62 °C',
    COUPLING,
    { material: 'pa12', motor: { temperature: 62 } },
    { 'grip-torque': 'no' },
  ],
  ['a PLA hub on a warm motor', COUPLING, { material: 'pla' }, { 'grip-torque': 'no', heat: 'no' }],
  ['a hanging screw', COUPLING, { mounting: 'motor-above', thrust_bearing: 'no' }, { 'coupling-axial': 'no' }],
  [
    'a standing screw, what lifts it untold',
    COUPLING,
    { mounting: 'motor-below', thrust_bearing: 'no', duty: { upward: undefined } },
    { 'coupling-axial': 'not-told' },
  ],
  [
    'a standing screw that the work lifts off',
    COUPLING,
    { mounting: 'motor-below', thrust_bearing: 'no', duty: { upward: 200 } },
    { 'coupling-axial': 'no' },
  ],
  [
    'a bearing of the motor that carries too much',
    COUPLING,
    { mounting: 'motor-below', thrust_bearing: 'no', motor: { axial_limit: 10 }, duty: { load: 40 } },
    { 'motor-thrust': 'no' },
  ],
  [
    'hubs clamped on greasy crests',
    COUPLING,
    { screw: { designation: 'Tr8x2', major: 7.95 }, shaft: undefined, screw_hub: { degreased: undefined } },
    { 'crest-grip': 'but' },
  ],
  [
    'a motor that is stronger than the jaws',
    COUPLING,
    { motor: { torque: 1 }, hubs: { outside_diameter: 29 } },
    { 'jaw-bending': 'no' },
  ],
  ['a soft insert', COUPLING, { insert: { hardness: '60 Shore A' } }, { 'insert-stress': 'no' }],
  ['shafts out of line', COUPLING, { misalignment: { parallel: 1, angular: 2 } }, { misalignment: 'no' }],
  ['a motor that its hub cannot hold', COUPLING, { motor: { torque: 4 } }, { 'grip-torque': 'no' }],
  ['a shaft that ends in the air', COUPLING, { motor: { shaft: { length: 5 } } }, { 'shaft-engagement': 'no' }],
  ['heat nobody told', COUPLING, { duty: { temperature: undefined } }, { heat: 'not-told', 'jaw-bending': 'not-told' }],
  [
    'a hub that a set screw alone holds',
    COUPLING,
    { motor_hub: { grip: 'set-screw', clamp: undefined } },
    { 'set-screw': 'but' },
  ],
  ['hubs that spin at 3,000 rpm', COUPLING, { duty: { speed: 3000 } }, { speed: 'but' }],
  [
    'a motor shaft of nobody knows which length',
    COUPLING,
    { motor: { shaft: { length: undefined } } },
    { 'shaft-engagement': 'not-told' },
  ],
  [
    'a motor shaft that nobody calls clean',
    COUPLING,
    { motor_hub: { degreased: undefined } },
    { 'grip-torque': 'not-told' },
  ],
  // sleeves
  [
    'ends that nobody calls clean',
    JOINT,
    { motor_end: { degreased: undefined }, screw_end: { degreased: undefined } },
    { 'grip-torque': 'not-told' },
  ],
  ['a bush on nobody knows which motor', BUSH, { material: 'petg', duty: { temperature: 25 } }, { heat: 'not-told' }],
  ['a PA12 sleeve on a hot motor', JOINT, { material: 'pa12', motor: { temperature: 70 } }, { 'grip-torque': 'no' }],
  [
    'a sleeve that carries a hanging screw and a load',
    JOINT,
    { mounting: 'motor-above', duty: { load: 100 } },
    { 'axial-grip': 'no' },
  ],
  ['a sleeve of nobody knows which mounting', JOINT, { mounting: undefined }, { 'axial-grip': 'not-told' }],
  [
    'a sleeve that is tightened once and carries its screw',
    JOINT,
    { mounting: 'motor-above', retighten: 'no', duty: { load: 80 } },
    { 'axial-grip': 'no' },
  ],
  ['a sleeve between shafts out of line', JOINT, { offset: 0.3 }, { 'over-constraint': 'no' }],
  ['a sleeve at 110 °C', JOINT, { motor: { temperature: 110 } }, { heat: 'no' }],
  [
    'a sleeve whose heat nobody told',
    JOINT,
    { duty: undefined, motor: { temperature: undefined } },
    { heat: 'not-told' },
  ],
  [
    'a motor that bears no thrust',
    JOINT,
    { motor: { axial_limit: 1 }, duty: { load: 30 }, mounting: 'motor-below' },
    { 'motor-thrust': 'no' },
  ],
  ['a sleeve tightened with all force', JOINT, { motor_end: { tightening: '1.5 N m' } }, { 'clamp-pressure': 'no' }],
  // collars
  ['a friction collar on a standing screw', PLAIN, { mounting: 'motor-above' }, { 'friction-alone': 'no' }],
  ['a threaded collar that may turn off', THREADED, { pin: undefined }, { 'friction-alone': 'no' }],
  ['a collar of nobody knows which mounting', PLAIN, { mounting: undefined }, { 'friction-alone': 'not-told' }],
  [
    'a greasy screw in a collar',
    PLAIN,
    { shaft: undefined, screw: 'Tr10x2', hold: { degreased: undefined }, duty: { load: 200 } },
    { 'axial-grip': 'no' },
  ],
  ['a collar at 120 °C', THREADED, { duty: { temperature: 120 } }, { heat: 'no' }],
  [
    'a collar whose motor nobody told',
    THREADED,
    { motor: undefined },
    { 'thread-hold': 'not-told', 'pin-hold': 'not-told', 'seat-pressure': 'not-told' },
  ],
  ['a pin that a jam breaks', THREADED, { motor: { torque: 12 } }, { 'pin-hold': 'no' }],
  ['a level screw that nothing holds the other way', PLAIN, { pair: 'no' }, { 'both-ways': 'no' }],
  ['a level screw of whose other way nobody tells', PLAIN, { pair: undefined }, { 'both-ways': 'not-told' }],
  ['a collar that rubs', PLAIN, { bearing: undefined }, { 'runs-on': 'but' }],
  // end holders
  [
    'a bearing pressed into plastic that gets hot',
    PRESSED,
    { duty: { temperature: 80 }, fit: { pocket: '21.95 ± 0.01 mm' } },
    { 'press-hot': 'no' },
  ],
  ['a bearing pressed in that carries along the screw', LOCATED, { held_by: 'press' }, { 'held-along': 'no' }],
  ['a located screw on a rigid sleeve', LOCATED, { coupling: 'rigid' }, { 'locating-bearings': 'no' }],
  [
    'a hanging screw that nothing carries',
    GUIDED,
    { thrust_bearing: 'no', mounting: 'motor-above' },
    { 'locating-bearings': 'no' },
  ],
  [
    'a located screw, the motor end untold',
    LOCATED,
    { thrust_bearing: undefined },
    { 'locating-bearings': 'not-told' },
  ],
  ['a bent screw that is held', GUIDED, { runout: 0.5 }, { 'screw-wobble': 'no' }],
  ['a holder of nobody knows which coupling', GUIDED, { coupling: undefined }, { 'locating-bearings': 'not-told' }],
  // motor plates
  ['a motor whose face nobody measured', MOUNTED, { motor: { temperature: undefined } }, { heat: 'no' }],
  ['a screw that stands on the spring of its motor', LOADED, { motor: { axial_limit: 10 } }, { 'motor-thrust': 'no' }],
  ['a plate that leans in time', LOADED, { duty: { load: 200 }, plate: { thickness: 4 } }, { 'plate-slope': 'no' }],
  [
    'screws that would stand on the ground of their holes',
    MOUNTED,
    { motor: { thread_depth: 2 }, plate: { thickness: 7 } },
    { 'screw-engagement': 'no' },
  ],
  ['a motor of nobody knows which weight', MOUNTED, { motor: { weight: undefined } }, { 'plate-bending': 'not-told' }],
  ['slots under a motor on a coupling', MOUNTED, { slots: { along: 'x', by: 3 } }, { slots: 'but' }],
  ['heads under the machine', ADAPTED, { motor_heads: 'proud' }, { 'heads-clear': 'no' }],
  ['a belt of nobody knows which pull', BELTED, { belt_pull: undefined }, { slip: 'not-told' }],
];

const findings = (base: Tree, changes: Tree) => check(design(changed(base, changes)));

describe('odd sheets get no clean pass', () => {
  it.each(ODD)('%s', (_, base, changes, says) => {
    const { verdict, checks } = findings(base, changes);
    expect(verdict).not.toBe('pass');
    const words = Object.fromEntries(Object.keys(says).map((id) => [id, checks.find((row) => row.id === id)?.word]));
    expect(words).toEqual(says);
  });

  it.each(
    [SOUND_NUT, PLATE, COUPLING, JOINT, SPLIT, PLAIN, THREADED, GUIDED, LOCATED, MOUNTED, LOADED, ADAPTED, BELTED].map(
      (sheet) => [sheet.part, sheet] as const,
    ),
  )('and the %s that they come from fails nowhere', (_, sheet) => {
    expect(findings(sheet, {}).checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
  });

  it('covers every kind of part that carries load', () => {
    expect(ODD.length).toBeGreaterThanOrEqual(40);
    expect(new Set(ODD.map(([, { part }]) => part))).toEqual(
      new Set(['nut', 'adapter', 'coupling', 'sleeve', 'collar', 'end-holder', 'motor-plate']),
    );
  });
});
