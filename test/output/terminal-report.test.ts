import { describe, expect, it } from 'vitest';
import { hard, told, valued } from '../../src/fit/check.js';
import { finding } from '../../src/fit/run-checks.js';
import type { Report } from '../../src/output/report.js';
import { reportJson } from '../../src/output/report-json.js';
import { terminalReport } from '../../src/output/terminal-report.js';
import { plusMinus } from '../../src/units/measured.js';

const ABOUT = { group: 'g', question: 'holds', unit: 'mm', source: 'common practice', moves: 'body.diameter' };
const thin = finding(
  { ...ABOUT, id: 'wall', title: 'Least wall', limits: hard({ min: 1.6 }) },
  valued(plusMinus(0.9, 0.05), 'the wall beside the thread is thin'),
);
const fine = finding(
  { ...ABOUT, id: 'edge', title: 'Edge', limits: hard({ min: 1, max: 3 }) },
  valued(plusMinus(2, 0.05), 'the edge is wide enough'),
);
const hot = finding({ ...ABOUT, id: 'heat', title: 'Heat' }, told('fail', 'it melts'));

const report: Report = {
  leadwright: 1,
  part: 'nut',
  name: 'z-left',
  verdict: 'fail',
  accepted: [],
  checks: [fine, thin],
  dimensions: {
    finished: { thread_minor: 6.3, hub: { bore: 8 } },
    printed: { thread_minor: 6.46, hub: { bore: 8.1 } },
  },
  applied: 'shrink of 1 % is in the file',
  bodies: [],
  hardware: [],
  assumptions: [],
  cautions: [],
};

describe('terminalReport', () => {
  it('says first what failed and what to do', () => {
    const [first, second] = terminalReport(report, { written: [] }).split('\n');
    expect(first).toBe('FAIL  z-left (nut): 1 check failed, nothing was written. Change what moves it,');
    expect(second).toContain('--accept wall=REASON');
  });

  it('shows the failing check with value, limit and what moves it, before those that pass', () => {
    const text = terminalReport(report);
    expect(text).toContain('wall   0.9 ± 0.05 mm   limit ≥ 1.6   off by 0.7');
    expect(text).toContain('moved by: body.diameter');
    expect(text.indexOf('wall')).toBeLessThan(text.indexOf('edge'));
    expect(text).toMatch(/edge\s+2 ± 0.05 mm\s+1 to 3\s+room 1/);
  });

  it('puts finished and printed sizes side by side', () => {
    expect(terminalReport(report)).toMatch(/thread minor\s+6\.300\s+6\.460\s+\+0\.16/);
    expect(terminalReport(report)).toMatch(/hub: bore\s+8\.000\s+8\.100/);
  });

  it('names accepted checks in the first lines', () => {
    const accepted = { ...hot, accepted: 'a trial piece for the bench' };
    const text = terminalReport({
      ...report,
      verdict: 'caution',
      checks: [fine, accepted],
      accepted: [{ check: 'heat', reason: 'a trial piece for the bench' }],
    });
    expect(text.split('\n').slice(0, 2).join('\n')).toContain(
      'accepted although it fails: heat — a trial piece for the bench',
    );
  });

  it('keeps to 80 columns and has no colour unless asked', () => {
    const text = terminalReport(report, { written: [] });
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(text).not.toContain('\u001b');
    expect(terminalReport(report, { colour: true })).toContain('\u001b[31m');
  });
});

describe('reportJson', () => {
  it('rounds floats, keeps the order of keys and ends with a line break', () => {
    const text = reportJson({ ...report, dimensions: { finished: { a: 0.1 + 0.2 }, printed: { a: -0 } } });
    expect(text).toContain('"a": 0.3\n');
    expect(text).toContain('"a": 0\n');
    expect(text.startsWith('{\n  "leadwright": 1,\n  "part": "nut",')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });
});
