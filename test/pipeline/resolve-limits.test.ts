import { describe, expect, it } from 'vitest';
import type { CheckFacts, Finding } from '../../src/judge/check.js';
import { resolveLimits } from '../../src/pipeline/resolve-limits.js';

const ABOUT = { group: 'a', question: 'q', title: 't', unit: 'mm', source: 's', moves: 'm' };
const CHECKS: readonly CheckFacts[] = [
  { ...ABOUT, id: 'own', limits: { pass: { max: 3 } } },
  { ...ABOUT, id: 'by-design' },
  { ...ABOUT, id: 'warmth', unit: '°C', limits: { pass: { max: 80 } } },
  { ...ABOUT, id: 'reserve', unit: 'K', limits: { pass: { min: 20 } } },
];

/** Which checks are run for the limits of a sheet. */
function asked(limits: Parameters<typeof resolveLimits>[0]) {
  const ids: string[] = [];
  const finding = (id: string) => {
    ids.push(id);
    return { id, limit: { min: 2 }, value: 4 } as Finding;
  };
  return { changes: resolveLimits(limits, { checks: CHECKS, finding }), ids };
}

describe('limits of a sheet', () => {
  it('cost no check that has limits of its own', () => {
    expect(asked({ own: { max: 5 } })).toEqual({ changes: { own: { max: 5 } }, ids: [] });
  });

  it('ask only the check whose limits hang on the design', () => {
    expect(asked({ own: { max: 5 }, 'by-design': { min: 1 } }).ids).toEqual(['by-design']);
    expect(() => asked({ 'by-design': { max: 1 } })).toThrow(/this check has no max, only a min/);
  });

  // 32 °F = 0 °C, 9 °F = 5 K
  it('count °F from 32 as a temperature, and from 0 as a difference', () => {
    expect(asked({ warmth: { max: '77 F' }, reserve: { min: '27 F' } }).changes).toEqual({
      warmth: { max: 25 },
      reserve: { min: 15 },
    });
  });
});
