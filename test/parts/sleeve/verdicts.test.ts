import { verdictGate } from '../../support/verdict-gate.js';
import { SLEEVE_CASES } from './verdict-cases.js';

verdictGate('sleeve', SLEEVE_CASES, {
  part: 'sleeve',
  name: 'bare',
  form: 'clamp',
  motor: { shaft: 5, torque: 0.1 },
  shaft: 8,
});
