import { describe, expect, it } from 'vitest';
import { KINDS } from '../../src/pipeline/kinds.js';
import { knownChecks, requireAcceptable } from '../../src/pipeline/require-acceptable.js';

describe('what can hurt', () => {
  const grave = knownChecks(KINDS).flatMap((check) => (check.grave ? [check.id] : []));

  it.each(['coupling-axial', 'drive-holding', 'heat', 'motor-thrust', 'flange-bending'])(
    '%s wants a longer reason',
    (id) => {
      expect(grave).toContain(id);
      expect(() => requireAcceptable([{ check: id, reason: 'short' }])).toThrow(/at least 10/);
    },
  );

  it('is marked on every kind that has the check', () => {
    for (const kind of KINDS)
      for (const check of kind.checks)
        if (grave.includes(check.id)) expect([kind.kind, check.id, check.grave]).toEqual([kind.kind, check.id, true]);
  });
});

it('takes nothing to accept as it is, and offers the nearest of the known checks', () => {
  expect(() => requireAcceptable([])).not.toThrow();
  expect(() => requireAcceptable([{ check: 'drive-holdin', reason: 'a trial on the bench' }])).toThrow(
    'unknown check; did you mean drive-holding?',
  );
  expect(() => requireAcceptable([{ check: 'mate-travel', reason: 'a trial on the bench' }])).toThrow(
    'a broken solid cannot be accepted',
  );
});
