import { existsSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { linkWhole, writeWhole } from '../../../src/work/fleet/whole-file.js';

const SHARED_MEMORY = '/dev/shm';
const folder = () => mkdtempSync(join(tmpdir(), 'whole-'));
const isOtherDisk = existsSync(SHARED_MEMORY) && statSync(SHARED_MEMORY).dev !== statSync(tmpdir()).dev;

describe('linkWhole', () => {
  it('gives a file a second name, and says so only once', () => {
    const [from, to] = [join(folder(), 'a'), join(folder(), 'deep/b')];
    writeWhole(from, 'one');
    expect([linkWhole(from, to), linkWhole(from, to)]).toEqual([true, false]);
    expect(statSync(to).ino).toBe(statSync(from).ino);
  });

  it('copies where the disks differ, over what stood there, and leaves nothing beside it', (context) => {
    if (!isOtherDisk) return context.skip('there is no second disk here');
    const from = join(mkdtempSync(join(SHARED_MEMORY, 'whole-')), 'a');
    const to = join(folder(), 'b');
    writeFileSync(from, 'new');
    writeFileSync(to, 'old');
    expect(linkWhole(from, to)).toBe(true);
    expect(readFileSync(to, 'utf8')).toBe('new');
    expect(statSync(to).nlink).toBe(1);
    expect(readdirSync(join(to, '..'))).toEqual(['b']);
  });
});
