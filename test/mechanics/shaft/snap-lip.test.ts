import { describe, expect, it } from 'vitest';
import { lipStrain, snapStrain } from '../../../src/mechanics/shaft/snap-lip.js';
import { InputError } from '../../../src/units/faults.js';

describe('a lip that snaps', () => {
  // common practice, worked: 0.8/22 = 3.6 % is too much for one closed ring, 0.6/22 = 2.7 %
  it.each([
    [0.4, 0.0364],
    [0.3, 0.0273],
  ])('of %d mm on 22 mm strains its ring by %d', (reach, strain) => {
    expect(lipStrain({ reach, outside: 22 })).toBeCloseTo(strain, 4);
  });

  it('takes no more than practice gives, and no more than is elastic', () => {
    // PLA by practice 1.5 %: 50 MPa over 2,650 MPa is 1.89 %, four fifths of it 1.51 %
    expect(snapStrain({ strength: 50, modulus: 2650 }).pass).toBeCloseTo(0.0151, 4);
    expect(snapStrain({ strength: 50, modulus: 2650 }).fail).toBeCloseTo(0.0189, 4);
    // a rubber: 3 % and no more
    expect(snapStrain({ strength: 30, modulus: 60 })).toEqual({ pass: 0.03, fail: 0.03 });
  });

  it.each([
    () => lipStrain({ reach: 0, outside: 22 }),
    () => lipStrain({ reach: 0.3, outside: 0 }),
    () => snapStrain({ strength: 0, modulus: 1 }),
    () => snapStrain({ strength: 1, modulus: 0 }),
  ])('refuses what is not above 0', (work) => {
    expect(work).toThrow(InputError);
  });
});
