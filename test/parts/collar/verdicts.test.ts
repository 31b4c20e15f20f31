import { verdictGate } from '../../support/verdict-gate.js';
import { COLLAR_CASES } from './verdict-cases.js';

verdictGate('collar', COLLAR_CASES, { part: 'collar', name: 'bare', shaft: 8, bearing: 'F8-16' });
