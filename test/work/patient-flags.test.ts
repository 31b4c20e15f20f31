import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { patientFlags } from '../../src/work/patient-flags.js';

describe('patientFlags', () => {
  it('names only flags that this engine knows', () => {
    const known = execFileSync(process.execPath, ['--v8-options'], { encoding: 'utf8' });
    for (const flag of patientFlags(process.versions.v8))
      expect(known).toMatch(new RegExp(`^ +${flag.split('=')[0]} `, 'm'));
  });

  it('tells engines that count bytecode alone', () => {
    expect(patientFlags('11.3.244.8-node.33')).toHaveLength(1);
    expect(patientFlags('12.4.254.21-node.21')).toEqual([]);
    expect(patientFlags('13.6.233.10-node.28')).toEqual([]);
  });
});
