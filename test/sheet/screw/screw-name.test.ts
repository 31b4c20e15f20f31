import { describe, expect, it } from 'vitest';
import { resolved } from '../../support/resolved-screw.js';

describe('the name of a screw', () => {
  it('spells a screw with other starts than its designation by its whole name, and says so', () => {
    const { screw, assumptions } = resolved({ designation: 'Tr8x2', starts: 4 });
    expect(screw).toMatchObject({ designation: 'Tr8x8(P2)', lead: 8 });
    expect(assumptions.list.find(({ field }) => field === 'screw.designation')?.why).toContain('Tr8x2 with 4 starts');
    expect(resolved({ designation: 'Tr8x8(P2)', starts: 4 }).screw.designation).toBe('Tr8x8(P2)');
  });

  it('is refused where it cannot be read, with the field and the text', () => {
    expect(() => resolved({ designation: 'Tr8by2' })).toThrow(/screw\.designation: Tr8by2; /);
  });
});
