import type { Word } from '../../src/judge/check.js';
import type { Fields } from '../../src/sheet/fields-map.js';

const RING_HOLES = { rectangle: ['40 mm', '40 mm'], screw: 'M4', fit: 'coarse' };
const MEASURED = {
  screw: { designation: null, form: 'trapezoidal', major: '9.94 mm', pitch: '2 mm', starts: 1 },
};
export const HELD = {
  'end-holder': {
    role: 'guiding',
    bearing: '6000',
    held_by: 'plate',
    turned_end: '9.98 ± 0.01 mm',
    body: null,
  },
};
export const COLLAR = { part: 'collar', bore: 'thread', pin: '2 mm', bearing: 'F10-18' };

/** What of the demonstration is replaced for each word that a check may say. */
export const AXIS_CASES: Readonly<Record<string, Readonly<Partial<Record<Word, Fields>>>>> = {
  'axis-screw': {
    yes: {},
    no: { parts: { nut: { screw: 'Tr10x3' } } },
  },
  'axis-hand': {
    yes: {},
    no: { parts: { nut: { screw: 'Tr10x2-LH' } } },
    'not-told': MEASURED,
  },
  'axis-bores': {
    yes: {},
    but: { parts: { coupling: { motor: { shaft: { diameter: '6.45 ± 0.01 mm' } } } } },
    no: { parts: { coupling: { motor: { shaft: { diameter: '8 mm', flat: '7.5 mm' } } } } },
    'not-told': { motor: { shaft: null } },
  },
  'axis-told': {
    yes: {},
    no: { parts: { 'end-holder': { coupling: 'flexible' } } },
  },
  'axis-parts': {
    yes: {},
    but: { parts: { nut: null } },
    no: {
      parts: {
        ring: { part: 'end-holder', role: 'free', runout: '0.3 mm', frame: { thickness: '6 mm' }, holes: RING_HOLES },
      },
    },
  },
  'axis-travel': {
    yes: {},
    // 330 − 52.90 − 18 − 5 − 5 = 249.10
    perhaps: { lengths: { travel: '249 mm', clear: '330 ± 0.5 mm' } },
    but: { lengths: { travel: '255 mm' } },
    no: { lengths: { travel: '300 mm' } },
    'not-told': { lengths: { moving: null } },
  },
  'axis-screw-length': {
    yes: {},
    // a pitch beyond the ring's far face at 335 mm asks for 335 + 2 − 28 = 309 mm
    perhaps: { lengths: { screw: '309.2 ± 0.5 mm' } },
    but: { lengths: { screw: '308 ± 0.1 mm' } },
    no: { lengths: { screw: '306 mm' } },
    'not-told': { lengths: { far_face: null } },
  },
  'axis-shaft-room': {
    yes: {},
    but: { motor: { shaft: { length: '24.4 mm' } } },
    no: { motor: { shaft: { length: '21 mm' } } },
    'not-told': { motor: { shaft: { length: null } } },
  },
  'axis-span': {
    yes: { duty: { span: '283 mm' } },
    but: { duty: { span: '260 mm' } },
    no: { duty: { span: '150 mm' } },
  },
  'axis-locating': {
    yes: {},
    no: { parts: { collar: COLLAR } },
    'not-told': { mounting: null, parts: { coupling: { mounting: 'motor-below' } } },
  },
  'axis-steps': { yes: {}, 'not-told': { motor: { microsteps: null } } },
  'axis-old-steps': { yes: {}, but: { old: { steps_per_mm: 800 } } },
  'axis-feed': {
    yes: {},
    // 300 rpm of a motor that nobody tells more of: 10 mm/s at a lead of 2 mm
    but: { duty: { feed: '11 mm/s' } },
    'not-told': { duty: { feed: null } },
  },
  'axis-whirl': {
    yes: {},
    perhaps: { duty: { feed: '103 mm/s' } },
    but: { duty: { feed: '115 mm/s' } },
    no: { duty: { feed: '140 mm/s' } },
    'not-told': { lengths: { clear: null } },
  },
  'axis-column': {
    yes: {},
    perhaps: { duty: { load: '410 N' } },
    but: { duty: { load: '600 N' } },
    no: { duty: { load: '900 N' } },
    'not-told': { lengths: { clear: null } },
  },
  'axis-torque': {
    yes: { parts: { nut: null } },
    but: { parts: { nut: null }, duty: { load: '70 N' } },
    no: { parts: { nut: null }, duty: { load: '200 N' } },
    'not-told': { parts: { nut: null, coupling: null }, motor: { torque: null } },
  },
  'axis-heat': {
    yes: {},
    no: { motor: { temperature: '108 C' } },
    'not-told': { motor: { temperature: null }, parts: { coupling: { material: 'abs' } } },
  },
};
