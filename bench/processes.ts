import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { timedProcess } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

const COMMAND = 'dist/leadwright.js';
const COUPLING = 'presets/sheets/demo-coupling.yaml';

/** Whole processes, as ratios to bare node measured in the same run. */
export function processRows(): Row[] {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-bench-'));
  try {
    const sheet = join(folder, 'nut.yaml');
    writeFileSync(sheet, JSON.stringify(benchNut()));
    const bare = timedProcess(['-e', '0'], 15);
    const help = timedProcess([COMMAND, '--help'], 15);
    const check = timedProcess([COMMAND, 'check', sheet]);
    const stl = timedProcess([COMMAND, 'make', sheet, '--formats', 'stl', '--out', folder]);
    const all = timedProcess([COMMAND, 'make', sheet, '--out', folder]);
    const coupling = timedProcess([COMMAND, 'make', COUPLING, '--formats', 'stl', '--out', folder]);
    const whole = timedProcess([COMMAND, 'make', COUPLING, '--out', folder]);
    return [
      { what: 'bare node -e 0', value: bare.ms, unit: 'ms' },
      { what: '--help', value: help.ms, unit: 'ms' },
      { what: '--help / bare node', value: help.ms / bare.ms, unit: '×', goal: '≤ 1.6' },
      { what: 'check', value: check.ms, unit: 'ms' },
      { what: 'check / bare node', value: check.ms / bare.ms, unit: '×', goal: '≤ 3' },
      { what: 'make, STL and report', value: stl.ms, unit: 'ms' },
      { what: 'make, STL and report / bare node', value: stl.ms / bare.ms, unit: '×', goal: '≤ 6.5' },
      { what: 'make, STL and report, peak memory', value: stl.peakMb, unit: 'MB', goal: '≤ 110' },
      { what: 'make, all formats', value: all.ms, unit: 'ms' },
      { what: 'make, all formats / bare node', value: all.ms / bare.ms, unit: '×', goal: '≤ 9' },
      { what: 'make, all formats / STL and report', value: all.ms / stl.ms, unit: '×' },
      { what: 'make, all formats, peak memory', value: all.peakMb, unit: 'MB', goal: '≤ 120' },
      { what: 'make of a coupling, three bodies', value: coupling.ms, unit: 'ms' },
      { what: 'make of a coupling / bare node', value: coupling.ms / bare.ms, unit: '×' },
      { what: 'make of a coupling, all formats / bare node', value: whole.ms / bare.ms, unit: '×', goal: '≤ 9' },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
