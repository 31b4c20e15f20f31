import { describe, expect, it } from 'vitest';
import { changedWords, isMovedBy, questionsMovedBy } from '../../../page/live/state/moved.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';

describe('what a field moves', () => {
  it('is named by itself or by its section', () => {
    const finding = { moves: 'flange, body.length, a brake' };
    expect(isMovedBy(finding, 'flange.thickness')).toBe(true);
    expect(isMovedBy(finding, 'body.length')).toBe(true);
    expect(isMovedBy(finding, 'body.diameter')).toBe(false);
    expect(isMovedBy(finding, 'flanges')).toBe(false);
  });

  it('is told by the questions of a report, in their order', () => {
    const report = check(design(startSheet('nut')));
    expect(questionsMovedBy('screw.hand', report)).toEqual(['Goes on?']);
    expect(questionsMovedBy('flange.thickness', report)).toContain('Holds?');
    expect(questionsMovedBy('name', report)).toEqual([]);
  });
});

it('only words that changed are said', () => {
  const { questions } = check(design(startSheet('nut')));
  const wordOf = ({ word }: (typeof questions)[number]) => word;
  const said = new Map(questions.map((answer) => [answer.question, wordOf(answer)]));
  expect(changedWords(said, questions, wordOf)).toBe('');
  const [first] = questions;
  expect(changedWords(new Map(said).set(first!.question, 'no'), questions, wordOf)).toBe(
    `${first!.title} ${first!.word}`,
  );
  expect(changedWords(new Map(), questions, wordOf).split('. ')).toHaveLength(questions.length);
});
