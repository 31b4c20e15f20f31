import { testDocComments } from './doc-examples.js';

testDocComments('mechanics');
