import { describe, expect, it } from 'vitest';
import { roleSheet, rolesOf } from '../../src/axis/roles.js';
import { findKind } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { Fields } from '../../src/sheet/fields-map.js';

const NOTHING = { fields: {}, ofKind: {} };
const kindOf = (name: string) => findKind(KINDS, name)!;

describe('the parts of an axis', () => {
  const parts = (given: Fields) => rolesOf({ parts: given }, KINDS);

  it('are of the kind that they say, or that their section is called by', () => {
    const own = { part: 'end-holder', role: 'free' };
    const { roles, faults } = parts({ nut: { body: {} }, far: own });
    expect(faults).toEqual([]);
    expect(roles.map(({ role, kind: { kind } }) => [role, kind])).toEqual([
      ['nut', 'nut'],
      ['far', 'end-holder'],
    ]);
    expect(roles[1]!.own).toBe(own);
  });

  it('are at least one', () => {
    expect(parts({})).toEqual({
      roles: [],
      faults: [{ path: 'parts', value: '', allowed: 'must hold at least one part, such as nut' }],
    });
    // what is no map is refused by the schema, a section that is none as well
    expect(rolesOf({}, KINDS)).toEqual({ roles: [], faults: [] });
    expect(rolesOf({ parts: 'nut' }, KINDS)).toEqual({ roles: [], faults: [] });
    expect(parts({ nut: 'Tr8x2' })).toEqual({ roles: [], faults: [] });
  });

  it('differ in more than the case of their letters', () => {
    const { faults } = parts({ nut: {}, NUT: { part: 'nut' }, coupling: {} });
    expect(faults).toEqual([
      { path: 'parts.nut', value: 'nut', allowed: "must differ from NUT, letters' case aside" },
      { path: 'parts.NUT', value: 'NUT', allowed: "must differ from nut, letters' case aside" },
    ]);
  });

  it('are told where no kind is meant', () => {
    expect(parts({ copling: {} }).roles).toEqual([]);
    const [one] = parts({ copling: {} }).faults;
    expect(one).toMatchObject({ path: 'parts.copling.part', value: '' });
    expect(one!.allowed).toMatch(/^is missing; must be one of nut, .*; did you mean coupling\?$/);
    const [far] = parts({ thing: {} }).faults;
    expect(far!.allowed).toMatch(/^is missing; must be one of nut, [^;]*$/);
    const [said] = parts({ nut: { part: 'nutt' } }).faults;
    expect(said).toMatchObject({ path: 'parts.nut.part', value: 'nutt' });
    expect(said!.allowed).toMatch(/^must be one of nut, .*; did you mean nut\?$/);
    expect(parts({ nut: { part: 5 } }).faults[0]).toMatchObject({ path: 'parts.nut.part', value: '5' });
  });
});

describe('the whole sheet of a part', () => {
  const whole = (axis: Fields, kind: string, own: Fields = {}, follows: Parameters<typeof roleSheet>[2] = NOTHING) =>
    roleSheet({ name: 'lift', ...axis }, { role: 'r', kind: kindOf(kind), own }, follows);

  it('has the name of axis and section, and its kind', () => {
    expect(whole({}, 'gauge').sheet).toEqual({ part: 'gauge', name: 'lift-r' });
    expect(whole({}, 'gauge', { name: 'mine' }).sheet).toEqual({ part: 'gauge', name: 'mine' });
  });

  it('has of what the axis says all that its kind has a field for, and nothing else', () => {
    const shared = {
      units: 'mm',
      revision: 'B',
      screw: 'Tr8x2',
      thrust_bearing: 'yes',
      calipers: '0.02 mm',
      material: 'pc',
      printer: 'fine',
      duty: { load: '30 N' },
      lengths: { clear: '330 mm' },
    };
    const { lengths: _l, thrust_bearing: _t, ...own } = shared;
    expect(whole(shared, 'nut').sheet).toEqual({ part: 'nut', name: 'lift-r', ...own });
    expect(whole(shared, 'end-holder').sheet).toMatchObject({ thrust_bearing: 'yes' });
    expect(whole({ profile: 'mine' }, 'nut').sheet).toMatchObject({ profile: 'mine' });
  });

  it('goes from what follows, over what the axis says, to what the part says itself', () => {
    const follows = { fields: { nut: 'rigid', thrust_bearing: 'no', coupling: 'disc' }, ofKind: {} };
    const { sheet } = whole({ thrust_bearing: 'yes' }, 'end-holder', { nut: 'floating' }, follows);
    expect(sheet).toMatchObject({ nut: 'floating', thrust_bearing: 'yes', coupling: 'disc' });
  });

  it('takes of what follows on its neighbours only what its kind calls so: the nut of an adapter is its own', () => {
    const follows = { fields: { nut: 'rigid', coupling: 'disc' }, ofKind: {} };
    const nut = { body: '10.2 mm', flange: { diameter: '22 mm', thickness: '3.5 mm' } };
    expect(whole({}, 'adapter', { nut }, follows).sheet.nut).toEqual(nut);
    expect(whole({}, 'adapter', {}, follows).sheet).not.toHaveProperty('nut');
    expect(whole({}, 'motor-plate', {}, follows).sheet).toMatchObject({ coupling: 'disc' });
    expect(whole({}, 'end-holder', {}, follows).sheet).toMatchObject({ nut: 'rigid', coupling: 'disc' });
  });

  it('lets what follows for its kind go before the words of the axis', () => {
    const follows = { fields: {}, ofKind: { 'motor-plate': { motor: { shaft: { length: '33 mm' } } } } };
    const motor = { preset: 'frame-23', shaft: { length: '25 mm' } };
    expect(whole({ motor }, 'motor-plate', {}, follows).sheet.motor).toEqual({
      preset: 'frame-23',
      shaft: { length: '33 mm' },
    });
    expect(whole({ motor }, 'coupling', {}, follows).sheet.motor).toEqual(motor);
  });

  it('takes none of material, printer and profile that goes with another', () => {
    expect(whole({ profile: 'mine' }, 'nut', { material: 'pa12' }).sheet).toEqual({
      part: 'nut',
      name: 'lift-r',
      material: 'pa12',
    });
  });

  it.each([
    ['horizontal', 'horizontal'],
    ['motor-below', 'vertical'],
    ['motor-above', 'vertical'],
  ])('an axis that is mounted %s works %s', (mounting, axis) => {
    expect(whole({ mounting }, 'nut').sheet.duty).toEqual({ axis });
    expect(whole({ mounting }, 'nut', { duty: { axis: 'other' } }).sheet.duty).toEqual({ axis: 'other' });
  });

  it('has no way to work where it is not told, or in words that are none', () => {
    for (const mounting of [undefined, 5, 'sideways', 'constructor'])
      expect(whole({ mounting }, 'nut').sheet).not.toHaveProperty('duty');
  });

  it('has the motor where its kind asks for it: as what drives, and as what it sits on', () => {
    const motor = { torque: '0.45 N m', steps: 200, shaft: { diameter: '5 mm' } };
    expect(whole({ motor }, 'nut').sheet).toEqual({
      part: 'nut',
      name: 'lift-r',
      duty: { motor: { torque: '0.45 N m', steps: 200 } },
    });
    expect(whole({ motor }, 'coupling').sheet.motor).toMatchObject({ torque: '0.45 N m' });
    // a frame alone drives nothing, and stands where a kind has such a short form
    expect(whole({ motor: 'frame-17' }, 'nut').sheet).toEqual({ part: 'nut', name: 'lift-r' });
    expect(whole({ motor: 'frame-17' }, 'motor-plate').sheet.motor).toBe('frame-17');
    expect(whole({ motor: 'frame-17' }, 'end-holder').sheet).not.toHaveProperty('motor');
  });

  it('takes a word only where its kind knows it', () => {
    expect(whole({ mounting: 'motor-below' }, 'coupling').sheet.mounting).toBe('motor-below');
    // a nut has a field of that name for other words
    expect(whole({ mounting: 'motor-below' }, 'nut').sheet).not.toHaveProperty('mounting');
    expect(whole({}, 'nut', {}, { fields: { mounting: 'flange-up' }, ofKind: {} }).sheet.mounting).toBe('flange-up');
  });

  it('keeps other words, right or wrong, so that each kind can refuse them', () => {
    expect(whole({ units: 'furlong' }, 'nut').sheet.units).toBe('furlong');
  });

  it('of a collar is as warm as the motor, unless it says otherwise', () => {
    const motor = { temperature: '58 C' };
    expect(whole({ motor }, 'collar').sheet.duty).toMatchObject({ temperature: '58 C' });
    expect(whole({ motor, duty: { temperature: '30 C' } }, 'collar').sheet.duty).toMatchObject({ temperature: '58 C' });
    expect(whole({ motor }, 'collar', { duty: { temperature: '40 C' } }).sheet.duty).toMatchObject({
      temperature: '40 C',
    });
    expect(whole({ motor }, 'nut').sheet.duty).not.toHaveProperty('temperature');
  });

  it('of a collar is as warm as air that is warmer than the motor: 110 of 20 °C, 140 °F (60 °C) of 58', () => {
    const at = (air: unknown, motor: unknown) =>
      whole({ motor: { temperature: motor }, duty: { temperature: air } }, 'collar').sheet.duty;
    expect(at('110 C', '20 C')).toEqual({ temperature: '110 C' });
    expect(at('140 F', '58 C')).toEqual({ temperature: '140 F' });
    expect(at('130 F', '58 C')).toEqual({ temperature: '58 C' });
    expect(at('hot', '58 C')).toEqual({ temperature: '58 C' });
  });

  it('of a collar at a motor that does not tell its heat is not as warm as the room', () => {
    const duty = { temperature: '25 C' };
    for (const motor of [{ torque: '1 N m' }, 'frame-17'])
      expect(whole({ motor, duty }, 'collar').sheet.duty ?? {}).not.toHaveProperty('temperature');
    expect(whole({ duty }, 'collar').sheet.duty).toMatchObject(duty);
    expect(whole({ motor: 'frame-17', duty: { load: '5 N' } }, 'collar').sheet.duty).toEqual({ load: '5 N' });
  });
});

describe('where a field was written', () => {
  const follows = { fields: { nut: 'rigid' }, ofKind: { collar: { length: '12 mm' } } };
  const place = (path: readonly PropertyKey[], kind = 'nut', own: Fields = {}) =>
    roleSheet(
      {
        name: 'lift',
        screw: 'Tr8x2',
        mounting: 'motor-below',
        motor: { torque: '1 N m', temperature: '58 C' },
        duty: { load: '30 N' },
      },
      { role: 'r', kind: kindOf(kind), own },
      follows,
    ).from(path);

  it('is the section of the part, for what it says and for what nobody says', () => {
    expect(place(['body', 'length'], 'nut', { body: { length: 18 } })).toEqual(['parts', 'r', 'body', 'length']);
    expect(place(['body'])).toEqual(['parts', 'r', 'body']);
    expect(place(['name'])).toEqual(['parts', 'r', 'name']);
  });

  it('is the sheet of the axis, for what all share, said or missing', () => {
    expect(place(['screw', 'major'])).toEqual(['screw', 'major']);
    expect(place(['duty', 'load'])).toEqual(['duty', 'load']);
    expect(place(['duty', 'span'])).toEqual(['duty', 'span']);
    expect(place(['material'])).toEqual(['material']);
    expect(place(['duty', 'load'], 'nut', { duty: { load: '20 N' } })).toEqual(['parts', 'r', 'duty', 'load']);
    // below what a part says itself is its own too
    expect(place(['duty', 'load', 'value'], 'nut', { duty: { load: '20 N' } })[0]).toBe('parts');
  });

  it('is the field that it comes from by another name', () => {
    expect(place(['duty', 'axis'])).toEqual(['mounting']);
    expect(place(['duty', 'motor', 'torque'])).toEqual(['motor', 'torque']);
    expect(place(['duty', 'temperature'], 'collar')).toEqual(['motor', 'temperature']);
  });

  it('is the section of the part, for what follows from its neighbours', () => {
    expect(place(['nut'], 'end-holder')).toEqual(['parts', 'r']);
    expect(place(['length'], 'collar')).toEqual(['parts', 'r']);
  });
});
