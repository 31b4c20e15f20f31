import { verdictGate } from '../../support/verdict-gate.js';
import { GAUGE_CASES } from './verdict-cases.js';

verdictGate('gauge', GAUGE_CASES, { part: 'gauge', name: 'bare', screw: 'Tr8x2' });
