import { verdictGate } from '../../support/verdict-gate.js';
import { COUPLING_CASES } from './verdict-cases.js';

verdictGate('coupling', COUPLING_CASES, {
  part: 'coupling',
  name: 'bare',
  motor: { shaft: 5, torque: 0.3 },
  shaft: 8,
  mounting: 'motor-below',
});
