import { describe, expect, it } from 'vitest';
import { findKind } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { longForm, SHORT } from '../../src/sheet/short-forms.js';

/** A part whose sheet has the field, where it stands, and what may be written there. */
const WRITTEN: Readonly<Record<string, readonly [kind: string, path: readonly string[], short: unknown]>> = {
  bearing: ['end-holder', ['bearing'], '608'],
  clamp: ['coupling', ['motor_hub', 'clamp'], 'M4'],
  fit: ['nut', ['fit'], 'close'],
  float: ['nut', ['float'], 0.3],
  mark: ['nut', ['mark'], 'LEFT'],
  material: ['nut', ['material'], 'pa12'],
  outline: ['adapter', ['plate', 'outline'], 'round'],
  pad: ['coupling', ['insert', 'pad'], 'disc'],
  printer: ['nut', ['printer'], 'nozzle-0.4-layer-0.2'],
  profile: ['nut', ['profile'], 'mine'],
  screw: ['nut', ['screw'], 'Tr8x2'],
  set_screw: ['coupling', ['motor_hub', 'set_screw'], 'M4'],
  shaft: ['coupling', ['motor', 'shaft'], 5],
};

describe('short forms by name', () => {
  it('are all tried here', () => {
    expect(Object.keys(WRITTEN).sort()).toEqual(Object.keys(SHORT).sort());
  });

  it.each(Object.entries(WRITTEN))('%s stands for what its schema says', (field, [kind, path, short]) => {
    expect(longForm(findKind(KINDS, kind)!.schema, path, short)).toEqual({ [SHORT[field]!]: short });
  });
});
