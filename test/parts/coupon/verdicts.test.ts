import { verdictGate } from '../../support/verdict-gate.js';
import { COUPON_CASES } from './verdict-cases.js';

verdictGate('coupon', COUPON_CASES, { part: 'coupon', name: 'bare', screw: 'Tr8x2', material: 'pa12' });
