import { describe, expect, it } from 'vitest';
import { type CheckFacts, type Finding, hard, notJudged, soft, told, valued } from '../../src/judge/check.js';
import { finding, worst } from '../../src/judge/run-checks.js';
import { answerQuestions } from '../../src/output/answers/answer-questions.js';
import { firstThings } from '../../src/output/answers/first-things.js';
import { sentence } from '../../src/output/answers/sentence.js';
import type { Report } from '../../src/output/report.js';
import { reportJson } from '../../src/output/report-json.js';
import { terminalReport } from '../../src/output/terminal-report.js';
import { exactly, plusMinus } from '../../src/units/measured.js';

const ABOUT = { group: 'g', question: 'holds', unit: 'mm', source: 'common practice', moves: 'body.diameter' };
const WALL: CheckFacts = { ...ABOUT, id: 'wall', title: 'Least wall', limits: hard({ min: 1.6 }) };
const thin = finding(WALL, valued(plusMinus(0.9, 0.05), 'the wall is 0.9 mm; a body of 12 mm is the slimmest'));
const fine = finding(
  { ...ABOUT, id: 'edge', title: 'Edge', limits: hard({ min: 1, max: 3 }) },
  valued(plusMinus(2, 0.05), 'the edge is wide enough'),
);
const hot = finding({ ...ABOUT, id: 'heat', title: 'Heat', grave: true }, told('fail', 'it melts: at 60 °C'));
const untold = ['Pressure', 'Shear', 'Bending'].map((title) =>
  finding({ ...ABOUT, id: title.toLowerCase(), title }, notJudged('duty.load')),
);
const slow = finding(
  { ...ABOUT, id: 'time', question: 'prints', title: 'Time', unit: 'min', limits: soft({ max: 90 }) },
  valued(exactly(120), 'thicker layers take less'),
);
const QUESTIONS = [
  { id: 'holds', title: 'Holds?' },
  { id: 'prints', title: 'Prints?' },
];

function reportOf(checks: readonly Finding[], more: Partial<Report> = {}): Report {
  return {
    leadwright: 1,
    part: 'nut',
    name: 'z-left',
    verdict: worst(checks),
    sentence: sentence(checks),
    questions: answerQuestions(QUESTIONS, checks),
    first: firstThings(checks),
    accepted: checks.flatMap(({ id, accepted }) => (accepted === undefined ? [] : [{ check: id, reason: accepted }])),
    checks,
    dimensions: {
      finished: { thread_minor: 6.3, hub: { bore: 8 } },
      printed: { thread_minor: 6.46, hub: { bore: 8.1 } },
    },
    applied: 'shrink of 1 % is in the file',
    bodies: [],
    hardware: [],
    assumptions: [],
    cautions: [],
    ...more,
  };
}

const failing = reportOf([fine, thin]);

describe('terminalReport, brief', () => {
  it('answers first, then each question, then what to see to, then how to go on', () => {
    expect(terminalReport(failing, { written: [] }).split('\n')).toEqual([
      'FAIL  z-left (nut): Do not print it yet, because one check fails: least wall',
      '      (0.9 ± 0.05 mm, at least 1.6).',
      '',
      '  Holds?  no  Least wall: 0.9 ± 0.05 mm, at least 1.6',
      '',
      '  ! Least wall: the wall is 0.9 mm; a body of 12 mm is the slimmest',
      '',
      '  change what moves it, or accept it by name: --accept wall=REASON',
      '  nothing was written',
      '',
    ]);
  });

  it('offers by name what can hurt, as the first lines do', () => {
    const text = terminalReport(reportOf([thin, { ...thin, id: 'falls', title: 'Falls', grave: true }]));
    expect(text).toContain('above all: falls');
    expect(text).toContain('--accept falls=REASON');
  });

  it('tells cautions of one cause once, with all that hangs on it', () => {
    const text = terminalReport(reportOf([...untold, slow, fine]));
    expect(text).toContain('– duty.load is not told, and without it nobody can judge: pressure, shear and');
    expect(text.match(/duty\.load/g)).toHaveLength(3);
    expect(text).toMatch(/Holds\? +not told +Pressure: duty.load is not told/);
    expect(text).toMatch(/Prints\? +yes, but +Time: 120 min, at most 90/);
  });

  it('tells all that nobody told as one thing, where it is more than one field', () => {
    const cold = finding({ ...ABOUT, id: 'cold', title: 'Cold' }, notJudged('duty.temperature'));
    const text = terminalReport(reportOf([...untold, cold, fine]));
    expect(text).toContain('– duty.load and duty.temperature are not told, and 4 checks wait for them');
    expect(text).not.toContain('nobody can judge');
  });

  it('does not repeat what the sentence has said of the first thing', () => {
    const crash = finding(
      { ...ABOUT, id: 'crash', title: 'Crash' },
      told('caution', 'the flange may break; fit a stop'),
    );
    const lines = terminalReport(reportOf([crash, fine])).split('\n');
    expect(lines[0]).toMatch(/crash \(the flange may/);
    expect(lines).toContain('  – Crash: fit a stop');
  });

  it('tells a question by the title of what leads it, where its words have no room', () => {
    const words = `it goes wrong ${'in many ways '.repeat(30)}`;
    const rows = Array.from({ length: 8 }, (_, i) => ({
      ...thin,
      question: `q${i}`,
      id: `q${i}`,
      value: null,
      message: words,
    }));
    const questions = rows.map(({ id }) => ({ id, title: `${id}?` }));
    const text = terminalReport(reportOf(rows, { questions: answerQuestions(questions, rows) }));
    expect(text).toMatch(/^ {2}q1\? {2}no {2}Least wall$/m);
  });

  it('shows every accepted fail with its reason, before all else that is to be seen to', () => {
    const many = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ ...hot, id, accepted: `for a trial of ${id}` }));
    const text = terminalReport(reportOf([slow, ...many, fine]));
    for (const id of 'abcde') expect(text).toContain(`! accepted although it fails: ${id} — for a trial of ${id}.`);
    expect(text).toContain('and 1 more, and every figure: --all');
    expect(text).toMatch(/Holds\? +no, accepted +Heat: it melts/);
  });

  it('shortens what was accepted to the check and its reason where there is little room', () => {
    const long = `a finding that has much to say: ${'and one word more '.repeat(40)}`;
    const questions = Array.from({ length: 6 }, (_, i) => ({ id: `q${i}`, title: `Question ${i}?` }));
    const rows = questions.map(({ id }) => ({ ...fine, question: id, id: `row-${id}` }));
    const stood = ['a', 'b', 'c'].map((id) => ({
      ...thin,
      question: 'q0',
      id,
      message: long,
      accepted: `trial of ${id}`,
    }));
    const checks = [...rows, ...stood];
    const text = terminalReport(
      reportOf(checks, {
        questions: answerQuestions(questions, checks),
        hardware: [{ item: 'a screw of '.repeat(12), size: 'M3', count: 4 }],
      }),
      { written: ['out/z-left/z-left.stl', 'out/z-left/report.html'] },
    );
    for (const id of 'abc')
      expect(text).toMatch(new RegExp(`^  ! accepted although it fails: ${id} — trial of ${id}`, 'm'));
    expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
  });

  it('says what is left, and takes no more lines than a terminal has', () => {
    const questions = Array.from({ length: 6 }, (_, i) => ({ id: `q${i}`, title: `Question ${i}?` }));
    const long = `a finding that has much to say: ${'and one word more '.repeat(40)}`;
    const rows = questions.map(({ id }) => ({ ...thin, question: id, id, message: long }));
    const text = terminalReport(
      reportOf(rows, {
        questions: answerQuestions(questions, rows),
        hardware: [{ item: 'screw', size: 'M3', count: 4 }],
      }),
      { written: [] },
    );
    expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
    expect(text).toMatch(/and \d more, and every figure: --all/);
  });

  it('shortens the title of a figure before its limit, where the terminal has no more lines', () => {
    const titles = [
      'Clearance of the thread on its pitch line, the printer counted',
      'Lost motion when the load turns round',
    ];
    const questions = Array.from({ length: 12 }, (_, i) => ({ id: `q${i}`, title: `Question ${i}?` }));
    const rows = questions.map(({ id }, i) => ({ ...thin, question: id, id, title: titles[i % 2]! }));
    const long = { ...thin, question: 'q0', id: 'long', message: 'one word more '.repeat(40) };
    const report = reportOf([...rows, long], {
      questions: answerQuestions(questions, rows),
      hardware: [{ item: 'screw', size: 'M3', count: 4 }],
    });
    const lines = terminalReport(report, { written: [] }).split('\n');
    const answers = lines.filter((line) => line.startsWith('  Question'));
    expect(answers).toHaveLength(12);
    for (const line of answers) expect(line).toMatch(/ …: 0\.9 ± 0\.05 mm, at least 1\.6$/);
    expect(Math.max(...answers.map(({ length }) => length))).toBeLessThanOrEqual(80);
  });

  it('names files by their folder once, how to print, what to buy and what to mind', () => {
    const made = reportOf([fine], {
      bodies: [
        {
          file: 'z-left.stl',
          material: 'pa12',
          facets: 9,
          volume: 2000,
          mass: 4.16,
          closed: true,
          turn_over: false,
          bounds: [[], []],
        },
      ],
      print: { face_up: 'body end up', why: 'the thread stands', support: 'none' },
      hardware: [{ item: 'socket cap screw ISO 4762', size: 'M3x10', count: 4 }],
    });
    const text = terminalReport(made, { written: ['out/z-left/z-left.stl', 'out/z-left/report.html'] });
    expect(text).toContain('  written   out/z-left/ z-left.stl, report.html\n');
    expect(text).toContain('  print     pa12, 4.2 g, face up: body end up, no support\n');
    expect(text).toContain('  buy       4 × M3x10 socket cap screw ISO 4762\n');
    expect(text).toMatch(/ {2}mind {6}isolate power .*\n? *.*card in report\.html says how/);
  });
});

describe('terminalReport, all', () => {
  const text = terminalReport(failing, { all: true });

  it('shows the failing check with value, limit and what moves it, before those that pass', () => {
    expect(text).toContain('wall   0.9 ± 0.05 mm   limit ≥ 1.6   off by 0.7');
    expect(text).toContain('moved by: body.diameter');
    expect(text.indexOf('off by')).toBeLessThan(text.indexOf('room 1'));
    expect(text).toMatch(/edge\s+2 ± 0.05 mm\s+1 to 3\s+room 1/);
  });

  it('puts finished and printed sizes side by side', () => {
    expect(text).toMatch(/thread minor\s+6\.300\s+6\.460\s+\+0\.16/);
    expect(text).toMatch(/hub: bore\s+8\.000\s+8\.100/);
  });

  it('says verdict and sentence last too', () => {
    const [first] = text.split('\n');
    expect(text.trimEnd().split('\n').at(-2)).toBe(first);
  });

  it('names accepted checks in the first lines', () => {
    const accepted = terminalReport(reportOf([fine, { ...hot, accepted: 'a trial piece for the bench' }]), {
      all: true,
    });
    expect(accepted.split('\n').slice(0, 4).join('\n')).toContain(
      'accepted although it fails: heat — a trial piece for the bench',
    );
  });

  it('groups what was not told', () => {
    const grouped = terminalReport(reportOf([...untold, slow]), { all: true });
    expect(grouped).toMatch(/Not told\n {2}– duty\.load is not told/);
    expect(grouped).not.toContain('not judged');
  });
});

describe('the width', () => {
  it.each([60, 80, 100, 160])('of %d columns is kept, and used', (width) => {
    const talking = finding(WALL, valued(exactly(0.9), 'a finding that has much to say, at length. '.repeat(5)));
    const wide = reportOf([...untold, slow, talking], {
      cautions: ['A caution that goes on for long. '.repeat(9)],
      assumptions: [{ field: 'screw.minor', value: 5.5, why: 'from the form, since nobody measured it; '.repeat(4) }],
    });
    for (const all of [false, true]) {
      const lengths = terminalReport(wide, { all, width })
        .split('\n')
        .map(({ length }) => length);
      expect(Math.max(...lengths)).toBeLessThanOrEqual(width);
      expect(Math.max(...lengths)).toBeGreaterThan(width - 20);
    }
  });

  it('has no colour unless asked', () => {
    expect(terminalReport(failing, { written: [] })).not.toContain('\u001b');
    expect(terminalReport(failing, { colour: true })).toContain('\u001b[31m');
  });
});

describe('reportJson', () => {
  it('rounds floats, keeps the order of keys and ends with a line break', () => {
    const text = reportJson({ ...failing, dimensions: { finished: { a: 0.1 + 0.2 }, printed: { a: -0 } } });
    expect(text).toContain('"a": 0.3\n');
    expect(text).toContain('"a": 0\n');
    expect(text.startsWith('{\n  "leadwright": 1,\n  "part": "nut",')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });
});
