import { describe, expect, it } from 'vitest';
import { type RememberedPart, rememberedPart } from '../../src/fleet/made-part.js';
import { pairFacts } from '../../src/fleet/pair-facts.js';
import { pairFindings } from '../../src/fleet/pairs.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { THREADED } from '../support/collar-sheets.js';
import { GUIDED, LOCATED } from '../support/end-holder-sheets.js';
import { nutSheet } from '../support/nut-sheets.js';

function made(sheet: string | object): RememberedPart {
  const worked = design(sheet);
  return rememberedPart('', check(worked), pairFacts(worked), []);
}
const nut = (changes: Record<string, unknown> = {}, role = 'nut', axis = 'z') => ({
  role,
  axis,
  made: made(nutSheet(changes)),
});
const found = (...given: Parameters<typeof pairFindings>) =>
  pairFindings(...given).map(({ id, verdict }) => [id, verdict]);

describe('pairFindings', () => {
  // practice: equal lead, clearance within 0.05 mm
  it.each([
    [{}, 'pass'],
    [{ screw: 'Tr10x2-LH' }, 'caution'],
    [{ screw: 'Tr10x3' }, 'fail'],
    [{ fit: { diametral: 0.34, axial: 0.1 } }, 'pass'],
    [{ fit: { diametral: 0.36, axial: 0.1 } }, 'caution'],
  ])('the second nut of an axis with %j: %s', (changes, verdict) => {
    expect(found([nut(), nut(changes, 'other')], undefined)).toEqual([['axis-pair', verdict]]);
  });

  it('compares nuts of one axis only', () => {
    expect(found([nut(), nut({ screw: 'Tr10x3' }, 'other', 'y')], undefined)).toEqual([]);
  });

  it('holds what else is made for a screw against the nuts of its axis', () => {
    const on = (role: string, sheet: object) => ({ role, axis: 'z', made: made(sheet) });
    const thrust = (screw: object) => on('collar', { ...THREADED, screw });
    const own = { designation: 'Tr8x2', major: 7.95 };
    const nuts = [nut({ screw: own })];
    expect(found([...nuts, thrust(own)], undefined)).toEqual([
      ['axis-fit', 'pass'],
      ['axis-fit', 'pass'],
    ]);
    expect(found([...nuts, thrust({ designation: 'Tr8x2-LH', major: 7.95 })], undefined)[0]).toEqual([
      'axis-fit',
      'fail',
    ]);
    expect(found([...nuts, thrust({ designation: 'Tr8x8(P2)', major: 7.95 })], undefined)[0]).toEqual([
      'axis-fit',
      'fail',
    ]);
    // two screws, one of them left-handed: the part belongs to one of both
    const both = [nut({ screw: own }), nut({ screw: { designation: 'Tr8x2-LH', major: 7.95 } }, 'other')];
    expect(found([...both, thrust({ designation: 'Tr8x2-LH', major: 7.95 })], undefined)).toContainEqual([
      'axis-fit',
      'pass',
    ]);
  });

  it('lets one place alone carry a screw along its axis', () => {
    const carried = { role: 'collar', axis: 'z', made: made(THREADED) };
    const located = { role: 'end', axis: 'z', made: made(LOCATED) };
    expect(found([carried], undefined)).toEqual([['axis-fit', 'pass']]);
    expect(found([carried, located], undefined)).toEqual([['axis-fit', 'fail']]);
    expect(found([carried, { ...located, axis: 'y' }], undefined)).toEqual([
      ['axis-fit', 'pass'],
      ['axis-fit', 'pass'],
    ]);
    const guided = { role: 'end', axis: 'z', made: made(GUIDED) };
    expect(found([guided], undefined)).toEqual([]);
  });

  it('compares a coupling’s bores with the motor and with the screw of its axis', () => {
    // the sheet says a motor shaft of 5 mm and a Tr8x2 of 7.95 mm
    const coupling = { role: 'coupling', axis: 'z', made: made(startSheet('coupling')) };
    expect(found([coupling], 5)).toEqual([['coupling-motor', 'pass']]);
    expect(found([coupling], 5.1)).toEqual([['coupling-motor', 'caution']]);
    expect(found([coupling], 6.35)).toEqual([['coupling-motor', 'fail']]);
    const screw = (major: string) => nut({ screw: { designation: 'Tr8x2', major } });
    expect(found([coupling, screw('7.93 mm')], undefined)).toEqual([['coupling-screw', 'pass']]);
    expect(found([coupling, screw('7.70 mm')], undefined)).toEqual([['coupling-screw', 'fail']]);
    expect(found([coupling, nut()], undefined)).toEqual([['coupling-screw', 'caution']]);
  });
});
