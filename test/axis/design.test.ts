import { describe, expect, it } from 'vitest';
import { checkAxis } from '../../src/axis/check.js';
import { designAxis, isAxisSheet } from '../../src/axis/design.js';
import { makeAxis } from '../../src/axis/make.js';
import { roleSheet } from '../../src/axis/roles.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { isFields } from '../../src/sheet/fields-map.js';
import { InputError } from '../../src/units/faults.js';
import { AXIS_TEXT, axisWith, designed, found } from '../support/axis-sheets.js';
import { COLLAR } from './verdict-cases.js';

function sheetOf(role: string, changes = {}) {
  return designed(changes).parts.find((part) => part.role === role)!.sheet;
}

function lines(text: string): string[] {
  try {
    designAxis(text);
  } catch (error) {
    if (error instanceof InputError)
      return error.faults.map(
        ({ path, value, allowed, at }) => `${at?.line}:${at?.column} ${path}: ${value}; ${allowed}`,
      );
    throw error;
  }
  return [];
}

describe('what is taken to stand at the motor end', () => {
  const noted = (changes = {}) =>
    designed(changes).assumptions.filter(({ field }) => ['thrust_bearing', 'lengths.start'].includes(field));

  it('is no bearing and nothing but the coupling, as listed', () => {
    // 25 + 3 of disc + 24.90 into the coupling's hub
    expect(noted()).toMatchObject([
      { field: 'thrust_bearing', value: 'no' },
      { field: 'lengths.start', value: '52.9' },
    ]);
  });

  it('is listed no more where it is told, or a collar stands there', () => {
    expect(noted({ thrust_bearing: 'no', lengths: { start: '60 mm' } })).toEqual([]);
    expect(noted({ parts: { collar: COLLAR } })).toEqual([]);
    expect(noted({ parts: { coupling: null } }).map(({ field }) => field)).toEqual(['thrust_bearing']);
  });
});

describe('what parts inherit', () => {
  it('each takes what its kind has a field for', () => {
    expect(sheetOf('nut')).toMatchObject({
      part: 'nut',
      name: 'paper-lift-nut',
      mounting: 'flange-up',
      duty: { axis: 'vertical', load: '30 N', motor: { steps: 200, torque: '0.25 N m' } },
    });
    expect(sheetOf('nut')).not.toHaveProperty('motor');
    expect(sheetOf('nut')).not.toHaveProperty('thrust_bearing');
    expect(sheetOf('coupling')).toMatchObject({ mounting: 'motor-below', motor: { torque: '0.25 N m' } });
    expect(sheetOf('coupling')).not.toHaveProperty('duty.motor');
    expect(sheetOf('end-holder')).toMatchObject({ coupling: 'disc', nut: 'rigid' });
  });

  it('its own words go before, and its own plastic takes none of what goes with another', () => {
    expect(sheetOf('coupling', { parts: { coupling: { duty: { temperature: '40 C' } } } })).toMatchObject({
      duty: { temperature: '40 C', load: '30 N' },
    });
    const nut = { role: 'nut', kind: KINDS[0]!, own: { material: 'pa12' } };
    const { sheet, from } = roleSheet({ name: 'a', screw: 'Tr8x2', profile: 'mine' }, nut, { fields: {}, ofKind: {} });
    expect(sheet).toEqual({ part: 'nut', name: 'a-nut', screw: 'Tr8x2', material: 'pa12' });
    expect(from(['material'])).toEqual(['parts', 'nut', 'material']);
    expect(from(['screw', 'major'])).toEqual(['screw', 'major']);
  });

  it('a screw by its short name, and fields over it', () => {
    const axis = designAxis({ ...axisWith(), screw: 'tr10x2', parts: { nut: nutOf(), 'end-holder': holderOf() } });
    expect(axis.screw.designation).toBe('Tr10x2');
    const measured = designAxis({
      ...axisWith(),
      screw: 'Tr10x2',
      parts: { nut: { ...nutOf(), screw: { major: '9.9 mm' } } },
    });
    expect(measured.parts[0]!.sheet.screw).toEqual({ designation: 'Tr10x2', major: '9.9 mm' });
  });

  it('a collar is as warm as the motor, unless it says otherwise', () => {
    const collar = { part: 'collar', bore: 'thread', pin: '2 mm', bearing: 'F10-18' };
    expect(sheetOf('collar', { parts: { collar } }).duty).toMatchObject({ temperature: '58 C' });
    const cool = { ...collar, duty: { temperature: '30 C' } };
    expect(sheetOf('collar', { parts: { collar: cool } }).duty).toMatchObject({ temperature: '30 C' });
  });

  it('an adapter keeps the bought nut that it is told, a map of readings, beside a holder that asks how the nut sits', () => {
    const nut = {
      body: 10.2,
      length: 15,
      flange: { diameter: 22, thickness: 3.5 },
      holes: { count: 4, circle: 16, start: '45 deg', diameter: 3.5, screw: 'M3' },
    };
    const carriage = {
      bore: 10.8,
      thickness: 8,
      holes: { count: 4, circle: 29, start: '0 deg', diameter: 3.4, screw: 'M3' },
    };
    const adapter = { nut, carriage, plate: { thickness: 7 } };
    const axis = designed({ screw: 'Tr8x2', parts: { nut: null, adapter } });
    expect(axis.parts.find(({ role }) => role === 'adapter')!.sheet.nut).toEqual(nut);
    expect(axis.parts.find(({ role }) => role === 'end-holder')!.sheet.nut).toBe('rigid');
  });

  it('inches are inches in every section', () => {
    const inch = {
      ...axisWith(),
      units: 'inch',
      lengths: { clear: 13, far_face: 'holder', moving: 0.7, travel: 9, beyond: 1 },
    };
    const axis = designAxis(inch);
    expect(axis.along.travel).toBeCloseTo(9 * 25.4);
    expect(axis.parts.every(({ design }) => design.units === 'inch')).toBe(true);
    const { parts } = axisWith();
    expect(isFields(parts)).toBe(true);
  });
});

function nutOf() {
  return (axisWith().parts as Record<string, object>).nut!;
}
function holderOf() {
  return (axisWith().parts as Record<string, object>)['end-holder']!;
}

describe('a motor plate among them', () => {
  const plate = {
    part: 'motor-plate',
    motor: { weight: '3 N' },
    machine: { holes: { rectangle: ['60 mm', '60 mm'], screw: 'M5' }, face: 'motor', thickness: '6 mm' },
    plate: { thickness: '8 mm' },
  };

  it('has the shaft from the motor’s own face, where the axis counts what stands out of the plate', () => {
    const motor = { preset: 'frame-23', shaft: { diameter: null, flat: null, flat_length: null, length: '25 mm' } };
    const axis = designed({ motor, parts: { plate } });
    // 25 mm beyond a plate of 8; the hub is 18 long, and half of the gap less the disc, (14.80 − 3)/2, lies before it
    expect(axis.parts.find(({ role }) => role === 'plate')!.sheet).toMatchObject({
      coupling: 'disc',
      hub_depth: '23.9 mm',
      motor: { preset: 'frame-23', shaft: { length: '33 mm' } },
    });
    expect(axis.sheet.motor?.shaft?.diameter?.value).toBe(6.35);
    expect(found('axis-bores', { motor, parts: { plate } })?.word).toBe('yes');
  });

  it('refuses a frame that is not there, at its place', () => {
    expect(() => designed({ motor: { preset: 'frame-99' } })).toThrow(/^motor\.preset: frame-99; /);
  });
});

describe('mistakes', () => {
  it('stand where they were written, whichever part finds them, and once', () => {
    const text = AXIS_TEXT.replace('torque: 0.25 N m', 'torque: -1 N m').replace('thickness: 8 mm}', 'thickness: x}');
    const told = lines(text);
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/^\d+:\d+ motor\.torque: -1 N m; must be above 0/);
    expect(told[1]).toMatch(/^\d+:\d+ parts\.nut\.flange\.thickness: x; /);
  });

  it('a part that no kind makes, an unknown field above and in a section', () => {
    const text = AXIS_TEXT.replace('  coupling:\n', '  copling:\n')
      .replace('mounting: motor-below', 'mountin: motor-below')
      .replace('runout: 0.3 mm', 'runut: 0.3 mm');
    const told = lines(text).join('\n');
    expect(told).toMatch(/parts\.copling\.part: ; is missing; must be one of .*did you mean coupling\?/);
    expect(told).toMatch(/mountin: ; unknown field; did you mean mounting\?/);
    expect(told).toMatch(/parts\.end-holder\.runut: ; unknown field; did you mean runout\?/);
  });

  it('what all parts lack is asked for above', () => {
    expect(lines(AXIS_TEXT.replace('mounting: motor-below\n', ''))[0]).toMatch(/ mounting: ; is missing/);
  });

  it('two parts that would share a folder, none at all, and a limit of no check', () => {
    const { nut } = axisWith().parts as Record<string, object>;
    expect(() => designAxis({ ...axisWith(), parts: { nut: nut!, Nut: { ...nut, part: 'nut' } } })).toThrow(
      /must differ from/,
    );
    expect(() => designAxis({ ...axisWith(), parts: {} })).toThrow(/at least one part/);
    expect(() => designed({ limits: { 'axis-travl': '1 mm' } })).toThrow(/did you mean axis-travel\?/);
    expect(found('axis-travel', { limits: { 'axis-travel': '255 mm' } })?.word).toBe('but');
  });

  it('an axis is told from a part, and from what cannot be read', () => {
    expect(isAxisSheet(AXIS_TEXT)).toBe(true);
    expect(isAxisSheet('part: nut # of an axis\n')).toBe(false);
    expect(isAxisSheet('part: [axis\n')).toBe(false);
    expect(isAxisSheet({ part: 'axis' })).toBe(true);
  });
});

describe('the report', () => {
  const report = checkAxis(designed());

  it('says of which parts a compensation holds, where they differ', () => {
    const each = report.parts.map(({ role, report: { applied } }) => ({ role, applied }));
    expect(new Set(each.map(({ applied }) => applied)).size).toBeGreaterThan(1);
    for (const { role, applied } of each) {
      const [said] = report.applied.split(' · ').filter((words) => words.split(': ')[0]!.split(', ').includes(role));
      expect(said?.endsWith(`: ${applied}`), role).toBe(true);
    }
  });

  it('asks for bought things by one name each', () => {
    const names = report.hardware.map(({ item, size }) => `${item.match(/ISO \d+/)?.[0] ?? item} ${size}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('ISO 7089 M3');
  });

  it('asks across the parts first, then has a line a part', () => {
    expect(report.questions.map(({ title }) => title)).toEqual([
      'Parts agree?',
      'Lengths add up?',
      'Carried once?',
      'Runs as told?',
      'Stands the heat?',
      'nut',
      'coupling',
      'end-holder',
    ]);
    expect(report.parts.map(({ folder, report: { part } }) => [folder, part])).toEqual([
      ['nut', 'nut'],
      ['coupling', 'coupling'],
      ['end-holder', 'end-holder'],
    ]);
  });

  it('fails with any of its parts, and is accepted by part and check', () => {
    const thin = { parts: { nut: { flange: { thickness: '2.2 mm' }, limits: { wall: '9 mm' } } } };
    const bad = checkAxis(designed(thin));
    expect(bad.verdict).toBe('fail');
    expect(bad.sentence).toMatch(/nut: /);
    const fails = bad.checks.filter(({ verdict }) => verdict === 'fail').map(({ id }) => id);
    expect(fails.every((id) => id.startsWith('nut/'))).toBe(true);
    const accept = fails.map((check) => ({ check, reason: 'a bench trial without load' }));
    expect(checkAxis(designed(thin), { accept }).verdict).toBe('caution');
    expect(() => checkAxis(designed(), { accept: [{ check: 'wall', reason: 'why not at all' }] })).toThrow(
      /PART\/CHECK/,
    );
    expect(() => checkAxis(designed(), { accept: [{ check: 'nutt/wall', reason: 'why not at all' }] })).toThrow(
      /its parts: nut, coupling, end-holder/,
    );
  });

  it('names a missing field where it belongs', () => {
    const { first } = checkAxis(designed({ duty: { load: null }, parts: { 'end-holder': { runout: null } } }));
    const fields = first.flatMap(({ field }) => field ?? []);
    expect(fields).toContain('duty.load');
    expect(fields).toContain('parts.end-holder.runout');
  });

  it('gives no file where a part fails', async () => {
    const { files } = await makeAxis(designed({ parts: { nut: { limits: { wall: { min: '9 mm' } } } } }));
    expect(files.length).toBe(0);
  });
});
