import { verdictGate } from '../../support/verdict-gate.js';
import { ADAPTER_CASES } from './verdict-cases.js';

verdictGate('adapter', ADAPTER_CASES, {
  part: 'adapter',
  name: 'bare',
  nut: { body: 10.2, flange: { diameter: 22, thickness: 3.5 }, holes: { count: 4, circle: 16, diameter: 3.5 } },
  carriage: { bore: 10.8, holes: { count: 4, circle: 30, diameter: 3.4 } },
});
