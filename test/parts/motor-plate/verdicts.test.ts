import { verdictGate } from '../../support/verdict-gate.js';
import { MOTOR_PLATE_CASES } from './verdict-cases.js';

verdictGate('motor-plate', MOTOR_PLATE_CASES, {
  part: 'motor-plate',
  name: 'bare',
  motor: 'frame-17',
  machine: { holes: { rectangle: [60, 60], screw: 'M4' }, face: 'motor' },
});
