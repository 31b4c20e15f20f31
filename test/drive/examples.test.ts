import { driveScrewOf } from '../../src/drive/screw.js';
import { parseDesignation } from '../../src/standards/threads/designation.js';
import { testDocComments } from '../mechanics/doc-examples.js';

testDocComments('drive', { driveScrewOf, parseDesignation });
