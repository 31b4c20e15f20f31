import { describe, expect, it } from 'vitest';
import { compareScrews } from '../../../src/drive/compare-screws.js';
import type { Duty } from '../../../src/drive/duty.js';
import { comparisonText } from '../../../src/output/terminal/drive-comparison.js';
import { screw } from '../../drive/screws.js';

const text = (names: readonly string[], duty: Duty = {}, colour = false) =>
  comparisonText({ ...compareScrews(names.map(screw), duty), assumptions: [] }, duty, { colour });

describe('comparison', () => {
  it('screws that do not fit side by side stand below each other, in their order', () => {
    const names = ['Tr8x2', 'Acme 1/2-10-2start', 'Tr10x2-LH', '5/16-18 UNC', 'M5'];
    const shown = text(names, { load: 25, span: 300 });
    expect(shown.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(shown.match(/^ {2}full step, mm/gm)!.length).toBeGreaterThan(1);
    const heads = shown
      .split('\n')
      .filter((line) => /^ {10,}\S/.test(line))
      .join(' ');
    expect(names.map((name) => heads.indexOf(name))).toEqual(
      names.map((name) => heads.indexOf(name)).sort((a, b) => a - b),
    );
  });

  it('leaves out what it cannot say, and names the figure that it wants', () => {
    const shown = text(['Tr8x2']);
    expect(shown).not.toMatch(/raise|whirl, column|play at/);
    expect(shown).toContain('Left out for want of a figure: torque (load), whirl and column (span).');
    expect(text(['Tr8x2'], { load: 5, span: 300 })).not.toContain('Left out');
    expect(text(['Tr8x2'], { load: 5, span: 300, motorCurrent: 1.5 })).toMatch(
      /current,\s+inductance\s+and\s+voltage\s+together/,
    );
  });

  it('offers layer heights on full steps where none were asked for', () => {
    expect(text(['Tr8x8(P2)'])).toMatch(
      /on full steps, mm\n {2}Tr8x8\(P2\) +0\.08, 0\.12, 0\.16, 0\.2, 0\.24, 0\.28, 0\.32\n/,
    );
  });

  it('a long pattern is cut, a small one passed over', () => {
    const shown = text(['Acme 1/4-16'], { layerHeights: [0.2] });
    expect(shown).toMatch(/Acme 1\/4-16, 0\.2 +(?:[+−]0\.\d+ ){6}…, every \d+\s+layers; too little to see/);
  });

  it('equals share a place', () => {
    expect(text(['Tr8x2', 'Tr8x2-LH', 'Tr8x8(P2)'])).toMatch(/speed +Tr8x8\(P2\), then Tr8x2 and Tr8x2-LH alike/);
  });

  it('two screws alike may share an axis; another hand needs care', () => {
    expect(text(['Tr8x2', 'Tr8x2'])).toMatch(/Tr8x2 with Tr8x2: yes\. Both travel the same/);
    expect(text(['Tr8x2', 'Tr8x2-LH'])).toMatch(/Tr8x2 with Tr8x2-LH: with care\. One is left-hand/);
  });

  it('warns of no fall on a horizontal axis', () => {
    expect(text(['Tr8x8(P2)', 'M5'], { axis: 'horizontal' })).not.toContain('Block it');
    expect(text(['Tr8x8(P2)', 'M5'])).toContain('Block it');
  });

  it('a dry nut that jams is told where its torque would stand', () => {
    // raising needs π·d2·cos α > f·l: at friction 0.5, 28.3 · 0.966 is less than 0.5 · 60
    const steep = { ...screw('Tr10x2'), lead: 60, starts: 24, pitch: 2.5, designation: 'steep' };
    const duty = { load: 10 };
    const shown = comparisonText({ ...compareScrews([steep], duty), assumptions: [] }, duty);
    expect(shown).toMatch(/raise 10 N, N·mm +jams where dry/);
  });

  it('headings are bold on a terminal', () => {
    expect(text(['Tr8x2', 'M5'], {}, true)).toContain('\u001b[1mWhich one\u001b[22m');
  });
});
