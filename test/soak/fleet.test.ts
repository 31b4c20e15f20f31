import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type BuiltCommand, builtCommand } from '../support/built-command.js';
import { filesBelow, folderOf } from '../support/fleet-folder.js';
import { cached, halves, runKilled, runWhole } from '../support/kill-and-resume.js';
import { smallFleet } from '../support/small-fleet.js';

const DISTINCT = 8;
const KILLS = 50;
let command: BuiltCommand;

beforeAll(() => {
  command = builtCommand();
});
afterAll(() => command.remove());

it('survives fifty kills at random moments: nothing lost, nothing half, nothing twice', async () => {
  const text = smallFleet(DISTINCT);
  const cwd = folderOf({ 'fleet.yaml': text });
  const start = performance.now();
  runWhole(command.file, cwd);
  const time = performance.now() - start;
  const whole = filesBelow(join(cwd, 'out'));
  for (let left = KILLS; left > 0; ) {
    const here = folderOf({ 'fleet.yaml': text });
    // a fleet is killed a few times in a row, as by a machine that fails again and again
    for (let again = 0; again < 5 && left > 0; again++, left--) {
      const before = cached(here);
      await runKilled(command.file, here, Math.random() * time);
      expect(halves(here, whole)).toEqual([]);
      expect(cached(here)).toBeGreaterThanOrEqual(before);
    }
    const before = cached(here);
    expect(runWhole(command.file, here)).toMatchObject({ made: DISTINCT - before, reused: before });
    expect(filesBelow(join(here, 'out'))).toEqual(whole);
  }
});
