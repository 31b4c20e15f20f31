import { verdictGate } from '../../support/verdict-gate.js';
import { END_HOLDER_CASES } from './verdict-cases.js';

verdictGate('end-holder', END_HOLDER_CASES, {
  part: 'end-holder',
  name: 'bare',
  role: 'guiding',
  screw: 'Tr8x2',
  bearing: 608,
  holes: { rectangle: [32, 32], screw: 'M4' },
});
