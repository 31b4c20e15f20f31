import { describe, it } from 'vitest';
import {
  CURABLE_LONG,
  expectBrought,
  expectCured,
  expectHopeless,
  HOPELESS_LONG,
  OTHERS_LONG,
} from '../support/advice-cases.js';

describe('advice that takes seconds', () => {
  it.each(CURABLE_LONG)('%s: the printed lines of %j end the fail', expectCured);
  it.each(OTHERS_LONG)('%s, %s: the printed lines of %j bring it there', (_, id, sheet) => expectBrought(id, sheet));
  it.each(HOPELESS_LONG)('%s: says why nothing cures %j', expectHopeless);
});
