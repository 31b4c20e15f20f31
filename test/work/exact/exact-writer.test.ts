import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { faultLine, InputError } from '../../../src/units/faults.js';
import { exactPackage } from '../../../src/work/exact/exact-writer.js';
import { call, callFolder } from '../../support/call.js';

describe('the optional package of exact bodies', () => {
  it('is named with how to install it, in one line, where it is absent', () => {
    try {
      exactPackage([pathToFileURL(join(callFolder(), 'any.js')).href]);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).faults.map((one) => faultLine(one))).toEqual([
        '--formats: step; needs an optional package: npm install replicad-opencascadejs',
      ]);
    }
  });

  it('is not for fleets', async () => {
    const { code, stderr } = await call(callFolder(), ['fleet', 'none.yaml', '--formats', 'stl,step']);
    expect(code).toBe(2);
    expect(stderr).toContain('--formats: step; is written by make');
  });
});
