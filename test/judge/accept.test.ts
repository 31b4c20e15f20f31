import { describe, expect, it } from 'vitest';
import { accept, isBroken, type KnownCheck } from '../../src/judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../src/judge/check.js';
import { finding, worst } from '../../src/judge/run-checks.js';
import { InputError } from '../../src/units/faults.js';
import { exactly } from '../../src/units/measured.js';

const FACTS: CheckFacts = {
  id: 'wall',
  group: 'body',
  question: 'holds',
  title: 'Wall',
  unit: 'mm',
  source: 's',
  moves: 'm',
};
const of = (id: string, value: number, group = 'body') =>
  finding({ ...FACTS, id, group, limits: hard({ min: 1 }) }, valued(exactly(value), ''));
const KNOWN: readonly KnownCheck[] = [{ id: 'wall' }, { id: 'heat', grave: true }, { id: 'hole-edge' }];

function faultOf(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return 'none';
}

describe('accept', () => {
  it('marks a failed check with the reason, and leaves its verdict and word', () => {
    const [row] = accept([of('wall', 0.5)], [{ check: 'wall', reason: 'a trial' }], KNOWN);
    expect(row).toMatchObject({ verdict: 'fail', word: 'no', accepted: 'a trial' });
    expect(worst([row!])).toBe('caution');
  });

  it('leaves what passes, and what nobody named, as it is', () => {
    const rows = [of('wall', 2), of('hole-edge', 0.5)];
    expect(accept(rows, [{ check: 'wall', reason: 'a trial' }], KNOWN)).toEqual(rows);
    expect(worst(accept(rows, [{ check: 'wall', reason: 'a trial' }], KNOWN))).toBe('fail');
  });

  it.each([
    [{ check: 'wal', reason: 'a trial' }, [], /wal; unknown check; known: wall, heat, hole-edge/],
    [{ check: 'wall', reason: ' ' }, [], /wall; wants a reason: --accept CHECK=REASON/],
    [{ check: 'heat', reason: 'too short' }, [], /at least 10 characters/],
    [{ check: 'heat', reason: '         short         ' }, [], /at least 10 characters/],
    [{ check: 'solid-closed', reason: 'a trial' }, [], /a broken solid cannot be accepted/],
    [{ check: 'wall', reason: 'a trial' }, [of('wall', 0.5, 'solid')], /a broken solid cannot be accepted/],
    [{ check: 'hole-edge', reason: 'a trial' }, [of('hole-edge', -0.01)], /cannot be accepted below 0 mm/],
  ] as const)('refuses %j', (acceptance, findings, words) => {
    expect(faultOf(() => accept(findings, [acceptance], KNOWN))).toMatch(words);
  });

  it('takes a reason of ten characters for what can hurt, and any for the rest', () => {
    expect(faultOf(() => accept([], [{ check: 'heat', reason: '0123456789' }], KNOWN))).toBe('none');
    expect(faultOf(() => accept([], [{ check: 'wall', reason: 'x' }], KNOWN))).toBe('none');
    expect(faultOf(() => accept([of('hole-edge', 0)], [{ check: 'hole-edge', reason: 'x' }], KNOWN))).toBe('none');
  });

  it('looks at the named check alone, and at every kind that has it', () => {
    const others = [of('wall', 0.5), of('shut', 0.5, 'solid'), of('hole-edge', -1)];
    expect(faultOf(() => accept(others, [{ check: 'wall', reason: 'x' }], KNOWN))).toBe('none');
    const twice: readonly KnownCheck[] = [{ id: 'heat' }, { id: 'heat', grave: true }];
    expect(faultOf(() => accept([], [{ check: 'heat', reason: 'x' }], twice))).toMatch(/at least 10 characters/);
  });

  it('names the field by which a sheet accepts', () => {
    expect(faultOf(() => accept([], [{ check: 'wall', reason: '' }], KNOWN, 'accept'))).toMatch(
      /^accept: wall; wants a reason$/,
    );
  });
});

describe('isBroken', () => {
  const row = (id: string, verdict: Finding['verdict'], value: number | null) => ({ id, verdict, value });

  it.each([
    ['hole-edge', 'fail', -0.1, true],
    ['hole-spacing', 'fail', -0.1, true],
    ['pocket-wall', 'fail', -0.1, true],
    ['clocking', 'fail', -0.1, true],
    ['rim-wall', 'fail', -0.1, true],
    ['hole-edge', 'fail', 0, false],
    ['hole-edge', 'caution', -0.1, false],
    ['hole-edge', 'fail', null, false],
    ['wall', 'fail', -0.1, false],
  ] as const)('%s, %s at %s: %s', (id, verdict, value, broken) => {
    expect(isBroken(row(id, verdict, value))).toBe(broken);
  });
});
