import { verdictGate } from '../../support/verdict-gate.js';
import { NUT_CASES } from './verdict-cases.js';

verdictGate('nut', NUT_CASES, {
  part: 'nut',
  name: 'bare',
  screw: 'Tr8x2',
  body: { diameter: 14, length: 15 },
  flange: { diameter: 34, thickness: 4 },
  holes: { count: 4, circle: 24, screw: 'M3' },
});
