import { describe, expect, it } from 'vitest';
import { type CheckFacts, type Finding, hard, notJudged, soft, told, valued } from '../../../src/judge/check.js';
import { finding } from '../../../src/judge/run-checks.js';
import { answerQuestions } from '../../../src/output/answers/answer-questions.js';
import { firstThings } from '../../../src/output/answers/first-things.js';
import { sentence } from '../../../src/output/answers/sentence.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

const FACTS: CheckFacts = {
  id: 'a',
  group: 'g',
  question: 'holds',
  title: 'Gap',
  unit: 'mm',
  source: 's',
  moves: 'm',
  limits: soft({ min: 1 }, { min: 0.5 }),
};
const QUESTIONS = [{ id: 'holds', title: 'Holds?' }];
const row = (id: string, value: number, half = 0.1, more: Partial<CheckFacts> = {}) =>
  finding({ ...FACTS, ...more, id }, valued(plusMinus(value, half), `gap ${id}`));
const leadOf = (...rows: readonly Finding[]) => answerQuestions(QUESTIONS, rows)[0];

const yes = row('yes', 3);
const but = row('but', 0.8);
const perhaps = row('perhaps', 1.05);
const no = row('no', 0.2);
const accepted: Finding = { ...no, id: 'accepted', accepted: 'for a trial' };
const untold = finding({ ...FACTS, id: 'untold' }, notJudged('duty.load'));
const grave = finding({ ...FACTS, id: 'grave', title: 'Heat', grave: true }, notJudged('duty.temperature'));

describe('answerQuestions', () => {
  it('tells what was found where the figure is a bare share of what is allowed', () => {
    const facts = { ...FACTS, unit: '', title: 'Holding', limits: soft({ max: 1 }) };
    const share = finding(facts, valued(exactly(1.221), 'the axis falls; fit a brake'));
    expect(leadOf(share)?.text).toBe('Holding: the axis falls');
    const layers = finding({ ...facts, limits: soft({ min: 1 }) }, valued(exactly(0.8), 'thin'));
    expect(leadOf(layers)?.text).toBe('Holding: 0.8, at least 1');
    const long = finding({ ...facts, unit: 'mm' }, valued(exactly(1.2), 'long'));
    expect(leadOf(long)?.text).toBe('Holding: 1.2 mm, at most 1');
  });

  it('says what is wanted where nothing else will do', () => {
    const places = { ...FACTS, unit: '', title: 'Places', limits: soft({ min: 1, max: 1 }) };
    expect(leadOf(finding(places, valued(exactly(2), 'two')))?.text).toBe('Places: 2, wanted 1');
  });

  it('is led by the worst word', () => {
    const worstFirst = [no, accepted, grave, perhaps, untold, but, yes];
    worstFirst.forEach((worst, i) => {
      const rest = worstFirst.slice(i);
      expect(leadOf(...rest)?.check).toBe(worst.id);
      expect(leadOf(...[...rest].reverse())?.check).toBe(worst.id);
    });
  });

  it('among alike ones, by the one with least room in units of its own doubt', () => {
    expect(leadOf(row('far', 3, 0.1), row('near', 2, 0.1))?.check).toBe('near');
    expect(leadOf(row('sure', 2, 0.01), row('unsure', 3, 1))?.check).toBe('unsure');
    expect(leadOf(row('exact', 1.05, 0), row('doubt', 1.2, 0.15))?.check).toBe('exact');
    expect(leadOf(row('worse', 0.1), row('bad', 0.3))?.check).toBe('worse');
    const band = { limits: soft({ min: 1, max: 3 }) };
    expect(leadOf(row('middle', 2, 0.1, band), row('high', 2.8, 0.1, band))?.check).toBe('high');
  });

  it('lets trifles and what has no figure come last', () => {
    expect(leadOf(row('chamfer', 1, 0, { trifle: true }), row('wall', 9))?.check).toBe('wall');
    expect(leadOf(finding({ ...FACTS, id: 'told' }, told('pass', 'so')), row('wall', 9))?.check).toBe('wall');
    const none = finding({ ...FACTS, id: 'none', limits: hard({ max: 0 }) }, valued(exactly(0), 'none'));
    expect(leadOf(none, row('wall', 9))?.check).toBe('wall');
    const trifle = row('chamfer', 0.8, 0, { trifle: true });
    expect(leadOf(trifle, yes)?.check).toBe('chamfer');
  });

  it('says the figure against its limit, and that a fail was accepted', () => {
    expect(leadOf(accepted)).toEqual({
      question: 'holds',
      title: 'Holds?',
      word: 'no',
      check: 'accepted',
      text: 'Gap: 0.2 ± 0.1 mm, at least 1',
      accepted: true,
    });
    expect(leadOf(row('b', 2, 0, { limits: soft({ min: 1, max: 3 }) }))?.text).toBe('Gap: 2 mm, 1 to 3');
    expect(leadOf(row('b', 2, 0, { limits: soft({ max: 3 }) }))?.text).toBe('Gap: 2 mm, at most 3');
    expect(leadOf(grave)?.text).toBe('Heat: duty.temperature is not told');
    expect(leadOf(finding(FACTS, told('caution', 'it is so; do that')))?.text).toBe('Gap: it is so');
  });

  it('leaves out what nobody asked of this part, and the axis where nothing was told of it', () => {
    expect(answerQuestions([...QUESTIONS, { id: 'turns', title: 'Turns?' }], [yes])).toHaveLength(1);
    const axis = [{ id: 'holds', title: 'The axis?', onlyWhereTold: true as const }];
    expect(answerQuestions(axis, [untold])).toEqual([]);
    expect(answerQuestions(axis, [untold, yes])).toHaveLength(1);
    expect(answerQuestions(axis, [untold, grave])).toHaveLength(1);
  });
});

describe('firstThings', () => {
  it('puts accepted fails first, then open ones, then what can hurt and was not told', () => {
    const things = firstThings([yes, but, untold, perhaps, grave, no, accepted]);
    expect(things.map(({ checks }) => checks[0])).toEqual(['accepted', 'no', 'grave', 'perhaps', 'untold', 'but']);
    expect(things[0]).toMatchObject({ word: 'no', accepted: 'for a trial', text: 'Gap: gap no' });
  });

  it('tells what only a limit of the sheet lets pass, the worse by far the sooner', () => {
    const eased = (id: string, value: number) =>
      finding({ ...FACTS, id }, valued(exactly(value), `gap ${id}`), { min: 0.1 });
    const things = firstThings([yes, eased('thin', 0.8), untold, eased('spared', 0.3), grave, no]);
    expect(things.map(({ checks }) => checks[0])).toEqual(['no', 'spared', 'grave', 'untold', 'thin']);
    expect(things[1]).toEqual({
      word: 'yes',
      checks: ['spared'],
      text: 'Gap: gap spared; by the limit of the sheet alone: usually ≥ 1 mm',
    });
    expect(sentence([yes, eased('thin', 0.8)])).toBe('It fits: every check passes.');
    expect(sentence([but, eased('spared', 0.3)])).toBe(
      'It fits only as far as you stand by limits of your own, without which it fails: spared.',
    );
    expect(sentence([accepted, eased('spared', 0.3), grave])).toBe(
      'It fits only as far as you stand by what you accepted although it fails: accepted, and by limits of your own, without which it fails: spared, and if duty.temperature allows it, which nobody told.',
    );
  });

  it('asks for a section once, and not for what is in it besides', () => {
    const asking = (id: string, field: string) => finding({ ...FACTS, id, grave: true }, notJudged(field));
    const rows = [asking('stall', 'duty.motor.torque'), asking('drive', 'duty.motor'), asking('like', 'duty.motors')];
    const things = firstThings(rows);
    expect(things.map(({ field }) => field)).toEqual(['duty.motor', 'duty.motors']);
    expect(things[0]!.checks).toEqual(['stall', 'drive']);
    expect(sentence(rows)).toBe('It fits if duty.motor and duty.motors allow it, which nobody told.');
  });

  it('makes one thing of all that hangs on one missing field, what can hurt first in it', () => {
    const titled = (title: string, hurts: boolean, ...fields: string[]) =>
      finding({ ...FACTS, id: title.toLowerCase(), title, grave: hurts }, notJudged(...fields));
    const rows = [titled('Shear', false, 'duty.load'), titled('Flange', true, 'duty.load', 'duty.axis')];
    expect(firstThings(rows)).toEqual([
      {
        word: 'not-told',
        checks: ['flange', 'shear'],
        field: 'duty.load',
        text: 'duty.load is not told, and without it nobody can judge: flange and shear',
      },
      {
        word: 'not-told',
        checks: ['flange'],
        field: 'duty.axis',
        text: 'duty.axis is not told, and without it nobody can judge: flange',
      },
    ]);
  });
});

describe('sentence', () => {
  const broken = finding({ ...FACTS, id: 'solid-closed', group: 'solid' }, told('fail', 'open'));

  it.each<[readonly Finding[], RegExp]>([
    [[yes], /^It fits: every check passes\.$/],
    [[yes, but], /^It fits, but may disappoint: gap \(0\.8 ± 0\.1 mm, at least 1\)\.$/],
    [[but, row('falls', 0.8, 0.1, { title: 'Falls', grave: true })], /^It fits, but may disappoint: falls /],
    [
      [no, row('parts', 0.2, 0.1, { title: 'Parts', grave: true })],
      /^Do not print it yet, because 2 checks fail, above all: parts /,
    ],
    [
      [
        row('near', 0.4, 0.1, { title: 'Near', grave: true }),
        row('gone', -0.2, 0.1, { title: 'Gone', grave: true }),
        row('parts', 0.2, 0.1, { title: 'Parts', grave: true }),
      ],
      /above all: gone /,
    ],
    [
      [row('near', 0.4, 0.1, { title: 'Near', grave: true }), row('parts', 0.2, 0.1, { title: 'Parts', grave: true })],
      /above all: parts /,
    ],
    [[yes, untold, but], /^It fits, as far as it can be judged without duty\.load\.$/],
    [[untold, perhaps], /^It fits if all turns out as is likely, since this is not sure: gap \(1\.05/],
    [[perhaps, row('breaks', 1.05, 0.1, { title: 'Breaks', grave: true })], / since this is not sure: breaks \(/],
    [[perhaps, grave], /^It fits if duty\.temperature allows it, which nobody told\.$/],
    [[accepted, but], /^It fits only as far as you stand by what you accepted although it fails: accepted\.$/],
    [[accepted, grave], /although it fails: accepted, and if duty\.temperature allows it, which nobody told\.$/],
    [[no, grave], /^Do not print it yet, because one check fails: gap \(0\.2 ± 0\.1 mm, at least 1\)\.$/],
    [[no, accepted, no], /^Do not print it yet, because 2 checks fail, above all: gap/],
    [[no, broken], /^Do not print it: the solid is not what was worked out, which is our own fault/],
  ])('%#', (rows, words) => {
    expect(sentence(rows)).toMatch(words);
  });

  it('says what a kind promises', () => {
    expect(sentence([yes], 'It tells what it should')).toBe('It tells what it should: every check passes.');
  });
});
