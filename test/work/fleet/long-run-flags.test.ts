import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { longRunFlags } from '../../../src/work/fleet/long-run-flags.js';

describe('longRunFlags', () => {
  it('names only flags that this engine knows', () => {
    const known = execFileSync(process.execPath, ['--v8-options'], { encoding: 'utf8' });
    const names = longRunFlags(process.versions.v8).map((flag) => flag.split('=')[0]!);
    expect(names).not.toEqual([]);
    for (const name of names) expect(known).toMatch(new RegExp(`^ +${name} `, 'm'));
  });

  it('leaves out for later engines what they do not know', () => {
    expect(longRunFlags('11.3.244.8-node.33')).toHaveLength(2);
    expect(longRunFlags('13.6.233.10-node.28')).toHaveLength(1);
  });
});
