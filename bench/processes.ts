import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { timedProcess } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

const COMMAND = 'dist/leadwright.js';

/** Whole processes, as ratios to bare node measured in the same run. */
export function processRows(): Row[] {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-bench-'));
  try {
    const sheet = join(folder, 'nut.yaml');
    writeFileSync(sheet, JSON.stringify(benchNut()));
    const bare = timedProcess(['-e', '0'], 15);
    const help = timedProcess([COMMAND, '--help'], 15);
    const check = timedProcess([COMMAND, 'check', sheet]);
    const make = timedProcess([COMMAND, 'make', sheet, '--out', folder]);
    return [
      { what: 'bare node -e 0', value: bare.ms, unit: 'ms' },
      { what: '--help', value: help.ms, unit: 'ms' },
      { what: '--help / bare node', value: help.ms / bare.ms, unit: '×' },
      { what: 'check', value: check.ms, unit: 'ms' },
      { what: 'check / bare node', value: check.ms / bare.ms, unit: '×' },
      { what: 'make', value: make.ms, unit: 'ms' },
      { what: 'make / bare node', value: make.ms / bare.ms, unit: '×' },
      { what: 'make, peak memory', value: make.peakMb, unit: 'MB' },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
