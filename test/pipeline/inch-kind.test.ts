import { describe, expect, it } from 'vitest';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { checksSection } from '../../src/output/page/checks-section.js';
import { sizesSection } from '../../src/output/page/lists-section.js';
import { terminalReport } from '../../src/output/terminal-report.js';
import { drawViews } from '../../src/parts/draw-views.js';
import { changedLines, changedSheet } from '../../src/pipeline/advice/changed-sheet.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { readDriveSheet } from '../../src/pipeline/drive-sheet.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { InputError } from '../../src/units/faults.js';
import { sharedKernel } from '../support/shared-kernel.js';

const SIZES = `screw: {form: trapezoidal, major: 0.315 ± 0.001 in, pitch: 0.0787 in, starts: 1, hand: right}
body: {shape: round, diameter: 0.55 in, length: 5/8 in}
flange: {shape: round, diameter: 1 1/4 in, thickness: 0.157 in}
holes: {count: 4, circle: 0.906 in, start: 45 deg, screw: M3, head: body}
carriage: {bore: 0.567 in, thickness: 0.236 in}
limits: {thread-backlash: 0.02 in}
`;
const REST = 'material: pa12\nduty: {axis: vertical, load: 25 N, temperature: 25 C}\n';
const IN_MM = `part: nut\nname: z\n${SIZES}${REST}`;
const BARE = SIZES.replaceAll(' in', '');
const IN_INCHES = `part: nut\nname: z\nunits: inch\n${BARE}${REST}`;

function faultOf(sheet: string): string {
  try {
    design(sheet);
  } catch (error) {
    if (error instanceof InputError) return error.message;
  }
  return '';
}

describe('units: inch', () => {
  it('reads bare lengths as inches, forces, angles and limits by their own units', () => {
    const { units, ...bare } = design(IN_INCHES);
    const { limits: _, ...told } = design(IN_MM);
    expect(units).toBe('inch');
    expect(bare).toMatchObject(told);
    const limit = (sheet: string) => check(design(sheet)).checks.find(({ id }) => id === 'thread-backlash')!.limit;
    expect(limit(IN_INCHES)).toEqual({ max: 0.508 });
    expect(limit(IN_MM)).toEqual({ max: 0.508 });
  });

  it('takes units: mm for what it is, and nothing else', () => {
    expect(design(`units: mm\n${IN_MM}`)).toEqual(design(IN_MM));
    expect(faultOf(`units: feet\n${IN_MM}`)).toMatch(/^1:8 units: feet; must be one of mm, inch/);
    expect(faultOf(IN_INCHES.replace('0.55,', '-0.55,'))).toMatch(/^5:32 body\.diameter: -0\.55 in; must be above 0/);
  });

  it('says in one line that a sheet was typed in inches throughout, and how to say so', () => {
    const sheet = `part: nut\nname: z\n${BARE.replace(/ ± 0.001|limits.*\n/g, '')
      .replace('5/8', '0.625')
      .replace('1 1/4', '1.25')}${REST}`;
    expect(faultOf(sheet)).toMatch(/^(\d+:\d+ )?units: is missing: \d lengths are wrong .* add the line units: inch$/);
    // one slip is told as one
    expect(faultOf(IN_MM.replace('0.315 ± 0.001 in', '0.315'))).toMatch(/screw\.major: 0\.315; .*write "0\.315 in"/);
  });

  it('states inches beside mm in report and terminal, once', () => {
    const report = check(design(IN_INCHES));
    expect(report.units).toBe('inch');
    const goes = report.questions.find(({ question }) => question === 'goes-on')!.text;
    const [, mm, half, inch] = /: ([\d.]+) ± ([\d.]+) mm \(([\d.]+) ± [\d.]+ in\), at least/.exec(goes)!;
    expect(Number(half)).toBeGreaterThan(0);
    expect(Number(inch)).toBeCloseTo(Number(mm) / 25.4, 3);
    expect(JSON.stringify(report)).not.toMatch(/in\) \(/);
    const all = terminalReport(report, { all: true });
    // 0.55 in are 13.97 mm
    expect(all).toMatch(/body diameter +13\.970 .* 0\.5500 /);
    expect(all).toMatch(/thread-clearance +[\d.]+ ± [\d.]+ mm \([\d.]+ ± [\d.]+ in\)/);
    expect(all).toMatch(/crest gap +[\d.]+ +[\d.]+ to [\d.]+ +0\.0\d+, 0\.0\d+ to 0\.0\d+/);
    expect(terminalReport(check(design(IN_MM)), { all: true })).not.toMatch(/\d in\b/);
  });

  it('states them in the sections of the page', () => {
    const report = check(design(IN_INCHES));
    expect(sizesSection(report)).toMatch(/body diameter.*13\.970.*0\.5500/);
    expect(checksSection(report)).toMatch(/<td class="n">[\d.]+ ± [\d.]+ mm \([\d.]+ ± [\d.]+ in\)<\/td>/);
    const inMm = check(design(IN_MM));
    expect(sizesSection(inMm) + checksSection(inMm)).not.toMatch(/\d in\b|, in</);
  });

  it('states inches in brackets in the drawing', async () => {
    const made = design(IN_INCHES);
    const views = drawViews(await sharedKernel, kindOfDesign(KINDS, made).views(made, 'printed'));
    const [svg = ''] = writeDrawing(
      { name: 'z', part: 'nut', applied: '', units: 'inch' },
      { sizes: 'printed', views },
    );
    const texts = [...svg.matchAll(/data-size="[^"]+"[^>]*>([^<]+)</g)].map(([, text]) => text!);
    expect(texts.length).toBeGreaterThan(6);
    for (const text of texts) {
      const [, mm, inch] = /([\d.]+) \[([\d.]+)\]/.exec(text)!;
      expect(Math.abs(Number(mm) / 25.4 - Number(inch)), text).toBeLessThanOrEqual(0.00051);
    }
    expect(svg).toContain('Sizes, mm [in]');
    expect(svg).toMatch(/>Thread for .* pitch \d[\d.]* \[0\.\d+\], lead \d[\d.]* \[0\.\d+\]</);
  });

  it('changes lengths with their unit where advice is tried and told', () => {
    const changes = { 'fit.axial': 0.12, 'duty.load': 30, 'body.length': 20 };
    const sheet = { part: 'nut', units: 'inch', fit: 'running', body: { length: 0.5 } };
    expect(changedSheet(sheet, changes)).toMatchObject({
      fit: { class: 'running', axial: '0.12 mm' },
      duty: { load: 30 },
    });
    expect(changedLines(sheet, changes)).toContain('body: {length: 20 mm}');
    expect(changedLines({ ...sheet, units: undefined }, changes)).toContain('body: {length: 20}');
  });

  it('holds for a drive read from a sheet', () => {
    expect(readDriveSheet(IN_INCHES).screw.major).toBeCloseTo(8.001, 9);
  });
});
