import { BUSH, FLANGED_LOCATED, GUIDED, LIPPED, LOCATED, PRESSED, RING } from '../../support/end-holder-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

/** A sheet for each word that each check can say. */
export const END_HOLDER_CASES: VerdictCases = {
  'pocket-fit': {
    yes: [PRESSED, { fit: { pocket: '21.96 ± 0.01 mm' } }],
    but: [GUIDED, { fit: { pocket: '22.2 ± 0.02 mm' } }],
    perhaps: [PRESSED, {}],
    no: [PRESSED, { fit: { pocket: '21.7 ± 0.02 mm' } }],
  },
  'lip-strain': {
    yes: [LIPPED, {}],
    but: 'a print misses the lip by more than lies between both limits',
    perhaps: [LIPPED, { material: 'pom' }],
    // 0.8/22 is 3.6 %
    no: [LIPPED, { fit: { lip: 0.4 } }],
  },
  'lip-hold': {
    yes: [LIPPED, {}],
    but: [LIPPED, { material: 'pla' }],
    perhaps: [LIPPED, { material: 'petg' }],
    no: [LIPPED, { fit: { lip: 0.03 } }],
    'not-told': [LIPPED, { duty: { temperature: undefined } }],
  },
  'ring-pressure': {
    yes: [LOCATED, {}],
    no: [FLANGED_LOCATED, { duty: { load: 2000 } }],
    'not-told': [LOCATED, { duty: { load: undefined } }],
  },
  'screw-fit': {
    yes: [GUIDED, {}],
    but: [BUSH, { bore: 9 }],
    perhaps: [GUIDED, { screw: { major: '7.98 ± 0.05 mm' } }],
    no: [GUIDED, { screw: { designation: 'Tr10x2', major: 9.9 } }],
  },
  'bush-speed': {
    yes: [BUSH, { duty: { feed: 6 } }],
    but: [BUSH, {}],
    no: [BUSH, { duty: { feed: 40 } }],
    'not-told': [BUSH, { duty: { feed: undefined } }],
  },
  shoulder: {
    yes: [GUIDED, {}],
    perhaps: [GUIDED, { fit: { shoulder: 12.2 } }],
    no: [GUIDED, { fit: { shoulder: 20.5 } }],
  },
  'press-hot': {
    yes: [PRESSED, { duty: { temperature: 20 }, fit: { pocket: '21.94 ± 0.01 mm' } }],
    perhaps: [PRESSED, { duty: { temperature: 30 } }],
    no: [PRESSED, { duty: { temperature: 80 }, fit: { pocket: '21.94 ± 0.01 mm' } }],
    'not-told': [PRESSED, { duty: { temperature: undefined } }],
  },
  'press-cold': {
    yes: [PRESSED, { duty: { temperature: 15 }, fit: { pocket: '21.96 ± 0.01 mm' } }],
    perhaps: [PRESSED, { duty: { temperature: 0 }, fit: { pocket: '21.96 ± 0.01 mm' } }],
    no: [PRESSED, { duty: { temperature: -30 }, fit: { pocket: '21.96 ± 0.01 mm' } }],
  },
  'drive-whirl': {
    yes: [GUIDED, {}],
    // 300 rpm, Tr8x2 in two bearings: 1.209e8 · 5.19 / L², so 1446 mm
    perhaps: [GUIDED, { duty: { span: 1280 } }],
    but: [GUIDED, { duty: { span: 1400 } }],
    no: [GUIDED, { duty: { span: 1500 } }],
    'not-told': [GUIDED, { duty: { span: undefined } }],
  },
  'drive-column': {
    yes: [GUIDED, {}],
    // Euler of 5.19 mm over 500 mm, in two bearings: π²·207000·35.6/500² = 291 N
    perhaps: [GUIDED, { duty: { load: 130 } }],
    but: [GUIDED, { duty: { load: 200 } }],
    no: [GUIDED, { duty: { load: 400 } }],
    'not-told': [GUIDED, { duty: { load: undefined } }],
  },
  'drive-sag': {
    yes: [GUIDED, { mounting: 'horizontal' }],
    // 85 · 7.85 = 667 mm between two bearings
    perhaps: [GUIDED, { mounting: 'horizontal', duty: { span: 667 } }],
    but: [GUIDED, { mounting: 'horizontal', duty: { span: 700 } }],
    'not-told': [GUIDED, { mounting: 'horizontal', duty: { span: undefined } }],
  },
  'over-constraint': {
    yes: [RING, {}],
    but: [BUSH, { coupling: 'rigid', thrust_bearing: undefined }],
    no: [BUSH, { coupling: 'rigid', thrust_bearing: undefined, bore: 8.0 }],
    'not-told': [GUIDED, { nut: undefined }],
  },
  'screw-wobble': {
    yes: [GUIDED, {}],
    but: [GUIDED, { runout: 0.15 }],
    // half the play is 0.075 mm, and 0.06 mm at the least
    perhaps: [GUIDED, { runout: 0.12 }],
    no: [GUIDED, { runout: 0.4 }],
    'not-told': [GUIDED, { runout: undefined }],
  },
  'nut-distance': {
    yes: [GUIDED, {}],
    but: [GUIDED, { nut_gap: 10 }],
    'not-told': [GUIDED, { nut_gap: undefined }],
  },
  'end-room': {
    yes: [GUIDED, {}],
    but: [GUIDED, { end_room: 0.4 }],
    no: [GUIDED, { end_room: 0 }],
    'not-told': [GUIDED, { end_room: undefined }],
  },
  'holding-needed': {
    yes: [GUIDED, {}],
    but: [GUIDED, { mounting: 'motor-below', duty: { span: 200 } }],
    no: [RING, { mounting: 'horizontal', duty: { span: 900 } }],
    'not-told': [GUIDED, { mounting: undefined }],
  },
  'locating-bearings': {
    yes: [GUIDED, {}],
    no: [GUIDED, { role: 'locating' }],
    'not-told': [GUIDED, { coupling: undefined }],
  },
  'bearing-rating': {
    yes: [LOCATED, { duty: { motor: { torque: '0.02 N m' } } }],
    // of 608 a quarter of 973 N is what stands along it for good
    no: [LOCATED, { duty: { load: 300, motor: { torque: '0.02 N m' } } }],
    'not-told': [LOCATED, {}],
  },
  'held-along': {
    yes: [LOCATED, {}],
    no: [LOCATED, { held_by: 'lip' }],
  },
  'bearing-wall': {
    yes: [GUIDED, {}],
    but: [
      GUIDED,
      {
        body: { length: 33 },
        holes: {
          rectangle: undefined,
          at: [
            [13, 13],
            [-13, 13],
          ],
        },
      },
    ],
    no: [
      GUIDED,
      {
        body: { length: 29 },
        holes: {
          rectangle: undefined,
          at: [
            [0, 17],
            [0, -17],
          ],
        },
      },
    ],
  },
  'body-bending': {
    yes: [LOCATED, {}],
    no: [LOCATED, { duty: { load: 3000 } }],
    'not-told': [LOCATED, { duty: { temperature: undefined } }],
  },
  'shoulder-bending': {
    yes: [LOCATED, {}],
    no: [LOCATED, { body: { thickness: 8 }, duty: { load: 60 } }],
    'not-told': [LOCATED, { duty: { temperature: undefined } }],
  },
  'shoulder-shear': {
    yes: [LOCATED, {}],
    no: [LOCATED, { duty: { load: 3000 } }],
    'not-told': [LOCATED, { duty: { temperature: undefined } }],
  },
  'end-stop': {
    // 20 and 400 N·mm on Tr8x2 push with 33 and 653 N
    yes: [LOCATED, { duty: { motor: { torque: '0.02 N m' } } }],
    but: [LOCATED, { duty: { motor: { torque: '0.4 N m' } } }],
    'not-told': [LOCATED, {}],
  },
  heat: {
    yes: [GUIDED, {}],
    no: [GUIDED, { duty: { temperature: 60 } }],
    'not-told': [GUIDED, { duty: undefined }],
  },
  'bolt-clamp': {
    yes: [LOCATED, {}],
    no: [LOCATED, { duty: { load: 3000 } }],
    'not-told': [LOCATED, { duty: { temperature: undefined } }],
  },
  'hole-clearance': {
    yes: [GUIDED, {}],
    but: [GUIDED, { holes: { screw: undefined, rectangle: [90, 90], diameter: 20 } }],
    perhaps: [GUIDED, { holes: { fit: 'fine' } }],
    no: [GUIDED, { holes: { fit: undefined, diameter: 3.5 } }],
  },
  'head-seat': {
    yes: [GUIDED, {}],
    perhaps: [GUIDED, { holes: { diameter: 6.49 } }],
    but: [GUIDED, { holes: { diameter: 8.3 } }],
    no: [GUIDED, { holes: { diameter: 9.2 } }],
    'not-told': [GUIDED, { holes: { screw: undefined, diameter: 2 } }],
  },
  'head-room': {
    yes: [GUIDED, {}],
    but: [GUIDED, { body: { length: 40.5 } }],
    no: [GUIDED, { body: { length: 38 } }],
  },
  wall: {
    yes: [GUIDED, {}],
    but: [GUIDED, { body: { length: 39.4 } }],
    no: [GUIDED, { body: { length: 38 } }],
  },
  'shrink-applied-once': {
    yes: [GUIDED, { printer: { compensation: 'file' } }],
    but: [GUIDED, { printer: { compensation: undefined } }],
  },
};
