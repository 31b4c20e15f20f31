import { describe, expect, it } from 'vitest';
import { type RememberedPart, rememberedPart } from '../../src/fleet/made-part.js';
import { pairFacts } from '../../src/fleet/pair-facts.js';
import { pairFindings } from '../../src/fleet/pairs.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { exactly } from '../../src/units/measured.js';
import { THREADED } from '../support/collar-sheets.js';
import { GUIDED, LOCATED } from '../support/end-holder-sheets.js';
import { MOUNTED } from '../support/motor-plate-sheets.js';
import { nutSheet } from '../support/nut-sheets.js';
import { CLAMP } from '../support/sleeve-sheets.js';

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
    const verdicts = (...parts: Parameters<typeof pairFindings>[0]) =>
      pairFindings(parts, undefined)
        .filter(({ message }) => message.startsWith('The screw is carried by '))
        .map(({ verdict }) => verdict);
    expect(verdicts(carried)).toEqual(['pass']);
    expect(verdicts(carried, located)).toEqual(['fail']);
    expect(verdicts(carried, { ...located, axis: 'y' })).toEqual(['pass', 'pass']);
    expect(verdicts({ role: 'end', axis: 'z', made: made({ ...GUIDED, thrust_bearing: 'no' }) })).toEqual([]);
  });

  it('keeps a coupling off the plate that the motor’s shaft comes out of', () => {
    const coupling = { role: 'coupling', axis: 'z', made: made(startSheet('coupling')) };
    const depth = coupling.made.facts.joint!.motorDepth!;
    expect(depth).toBeGreaterThan(5);
    const plate = (beyond: number, axis = 'z') => {
      const sheet = {
        ...MOUNTED,
        plate: { thickness: 6 },
        motor: { ...MOUNTED.motor, shaft: { diameter: 5, length: 6 + depth + beyond } },
      };
      return { role: 'plate', axis, made: made(sheet) };
    };
    // common practice: a millimetre of air, and none is a hub that rubs
    const room = (...parts: Parameters<typeof pairFindings>[0]) =>
      pairFindings(parts, undefined).filter(({ message }) => message.startsWith('Of '));
    expect(room(coupling, plate(1.01))).toMatchObject([{ id: 'axis-fit', verdict: 'pass' }]);
    expect(room(coupling, plate(0.9))).toMatchObject([{ verdict: 'caution' }]);
    expect(room(coupling, plate(-0.1))).toMatchObject([{ verdict: 'fail' }]);
    expect(room(coupling, plate(-0.1, 'y'))).toEqual([]);
  });

  it('compares a coupling’s bores with the motor and with the screw of its axis', () => {
    // the sheet says a motor shaft of 5 mm and a Tr8x2 of 7.95 mm
    const coupling = { role: 'coupling', axis: 'z', made: made(startSheet('coupling')) };
    const bores = (...given: Parameters<typeof pairFindings>) =>
      found(...given).filter(([id]) => id === 'coupling-motor' || id === 'coupling-screw');
    expect(bores([coupling], 5)).toEqual([['coupling-motor', 'pass']]);
    expect(bores([coupling], 5.1)).toEqual([['coupling-motor', 'caution']]);
    expect(bores([coupling], 6.35)).toEqual([['coupling-motor', 'fail']]);
    const screw = (major: string) => nut({ screw: { designation: 'Tr8x2', major } });
    expect(bores([coupling, screw('7.93 mm')], undefined)).toEqual([['coupling-screw', 'pass']]);
    expect(bores([coupling, screw('7.70 mm')], undefined)).toEqual([['coupling-screw', 'fail']]);
    expect(bores([coupling, nut()], undefined)).toEqual([['coupling-screw', 'caution']]);
    // made for a Tr8x2, whatever its end may be turned to
    expect(found([coupling, nut()], undefined)).toContainEqual(['axis-fit', 'fail']);
  });

  it('compares a sleeve and a motor plate with motor and screw as it does a coupling', () => {
    // bored for shafts of 5 and of 10 mm
    const sleeve = {
      role: 'sleeve',
      axis: 'z',
      made: made({ ...CLAMP, shaft: { diameter: 10, length: 30 } }),
    };
    const nuts = [nut({ screw: { designation: 'Tr8x2', major: 7.95 } })];
    expect(found([sleeve, ...nuts], undefined)).toContainEqual(['coupling-screw', 'fail']);
    expect(found([sleeve], 8)).toContainEqual(['coupling-motor', 'fail']);
    expect(found([sleeve], 5)).toContainEqual(['coupling-motor', 'pass']);
    const motor = { ...MOUNTED.motor, shaft: { diameter: 5, length: 24 } };
    const plate = { role: 'plate', axis: 'z', made: made({ ...MOUNTED, motor }) };
    expect(found([plate], 5)).toContainEqual(['plate-motor', 'pass']);
    expect(found([plate], 6.35)).toContainEqual(['plate-motor', 'fail']);
    const other = { ...plate, made: made({ ...MOUNTED, motor: { ...motor, shaft: { diameter: 6.35, length: 24 } } }) };
    expect(found([sleeve, other], undefined)).toContainEqual(['coupling-motor', 'fail']);
  });
});

describe('pairs of plain facts', () => {
  const screw = {
    form: 'trapezoidal',
    flankAngle: 30,
    major: 8,
    pitchDiameter: 7,
    minor: 5.5,
    pitch: 2,
    lead: 2,
    starts: 1,
    hand: 'right',
  } as const;
  const one = (role: string, facts: object, axis: string | undefined = 'z') => ({
    role,
    axis,
    made: { facts } as unknown as RememberedPart,
  });
  const nutOf = (role: string, more: object = {}, axis?: string) => one(role, { nut: { ...screw, ...more } }, axis);

  it('tells how far a hub goes on the shaft that stands out of a plate, and what cures one that rubs', () => {
    const hub = (axis?: string) => one('hub', { joint: { kind: 'flexible', motorDepth: 18 } }, axis);
    const plate = (standsOut: number) => one('plate', { standsOut });
    const words = 'mm of shaft that stand out of plate, hub takes 18 mm';
    expect(pairFindings([hub(), plate(20)], undefined)).toEqual([
      { id: 'axis-fit', verdict: 'pass', roles: ['hub', 'plate'], message: `Of 20 ${words}.` },
    ]);
    expect(pairFindings([hub(), plate(18.5)], undefined)[0]!.message).toMatch(
      new RegExp(`^Of 18.5 ${words}: a shorter hub, `),
    );
    const loose = [hub(), plate(20)].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('compares the bore of a hub with the shaft of the plate beside it', () => {
    const hub = one('c', { joint: { kind: 'flexible', motorBore: exactly(5) } });
    expect(pairFindings([hub, one('p', { motorShaft: exactly(5) })], undefined)).toEqual([
      {
        id: 'coupling-motor',
        verdict: 'pass',
        roles: ['c', 'p'],
        message: 'It is bored for a motor shaft of 5 mm, the motor of p has 5 mm.',
      },
    ]);
    expect(pairFindings([hub, one('p', { motorShaft: exactly(6.35) })], undefined)).toMatchObject([
      { verdict: 'fail', roles: ['c', 'p'] },
    ]);
    expect(pairFindings([hub, one('p', {})], undefined)).toEqual([]);
  });

  it('names both nuts that it compares, each pair once', () => {
    const pairs = pairFindings([nutOf('a'), one('x', {}), nutOf('b'), nutOf('c')], undefined);
    expect(pairs.map(({ roles }) => roles)).toEqual([
      ['a', 'b'],
      ['a', 'c'],
      ['b', 'c'],
    ]);
    expect(pairs[0]!.message).toMatch(/^Both travel the same a turn; /);
    // parts of no axis belong to nobody
    const loose = [nutOf('a'), nutOf('b')].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('holds nothing against a nut of no axis', () => {
    const joint = { kind: 'flexible', screwBore: exactly(8) };
    const loose = [nutOf('n'), one('h', { screw }), one('c', { joint })].map((part) => ({ ...part, axis: undefined }));
    expect(pairFindings(loose, undefined)).toEqual([]);
  });

  it('tells which shaft a coupling is bored for, and by how much it may be off', () => {
    const motor = (bored: number, shaft: number) =>
      pairFindings([one('c', { joint: { kind: 'flexible', motorBore: exactly(bored) } })], shaft)[0]!;
    expect(motor(5, 5)).toEqual({
      id: 'coupling-motor',
      verdict: 'pass',
      roles: ['c'],
      message: "It is bored for a motor shaft of 5 mm, the machine's has 5 mm.",
    });
    // practice: 0.05 mm, and 0.2 at the most, to either side
    expect([5.05, 5.1, 5.2, 5.3, 4.95, 4.9, 4.7].map((bored) => motor(bored, 5).verdict)).toEqual([
      'pass',
      'caution',
      'caution',
      'fail',
      'pass',
      'caution',
      'fail',
    ]);
    expect(pairFindings([one('c', {})], 5)).toEqual([]);
  });

  it('lets a coupling be bored for a turned end, and says so', () => {
    const bored = (diameter: number, axis?: string) =>
      pairFindings(
        [one('c', { joint: { kind: 'flexible', screwBore: exactly(diameter) } }, axis), nutOf('n')],
        undefined,
      );
    const words = (diameter: number) => `It is bored for ${diameter} mm, the screw of n has 8 mm over its crests.`;
    expect(bored(8)).toEqual([{ id: 'coupling-screw', verdict: 'pass', roles: ['c', 'n'], message: words(8) }]);
    // up to 0.1 mm below the crests a screw goes in; below that its end is turned down
    expect(bored(7.92)).toMatchObject([{ verdict: 'pass', message: words(7.92) }]);
    expect(bored(6)).toMatchObject([{ verdict: 'caution', message: `${words(6)} Its end must be turned down.` }]);
    expect(bored(8.1)).toMatchObject([{ verdict: 'caution', message: words(8.1) }]);
    expect(bored(8.3)).toMatchObject([{ verdict: 'fail' }]);
    expect(bored(8, 'y')).toEqual([]);
  });

  it('tells what a part is made for, by the nut that it suits best', () => {
    const holder = (more: object = {}, axis?: string) => one('h', { screw: { ...screw, ...more } }, axis);
    expect(pairFindings([nutOf('n'), holder()], undefined)).toEqual([
      { id: 'axis-fit', verdict: 'pass', roles: ['h', 'n'], message: 'It is made for the screw of n.' },
    ]);
    expect(pairFindings([nutOf('n'), holder({ hand: 'left', pitch: 3 })], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'fail',
        roles: ['h', 'n'],
        message: 'It is made for another screw than n: pitch 2 and 3 mm, hand right and left.',
      },
    ]);
    const fits = pairFindings([nutOf('a', { pitch: 3, starts: 2 }), nutOf('b', { hand: 'left' }), holder()], undefined);
    expect(fits.filter(({ id }) => id === 'axis-fit')).toMatchObject([
      { verdict: 'fail', roles: ['h', 'b'], message: 'It is made for another screw than b: hand left and right.' },
    ]);
    expect(pairFindings([nutOf('n'), holder({}, 'y')], undefined)).toEqual([]);
    expect(pairFindings([nutOf('n'), { ...holder(), axis: undefined }], undefined)).toEqual([]);
    expect(pairFindings([one('x', {}), holder()], undefined)).toEqual([]);
    // an axis that is one part among others has a nut and all that runs on its screw
    const whole = one('w', { nut: screw, screw: { ...screw, pitch: 3 } });
    expect(pairFindings([nutOf('n'), whole], undefined).map(({ id }) => id)).toEqual(['axis-pair']);
    // without a nut the first that is made for a screw stands for it
    expect(pairFindings([one('k', { screw }), holder({ pitch: 3 })], undefined)).toMatchObject([
      { id: 'axis-fit', verdict: 'fail', roles: ['h', 'k'] },
    ]);
    // what joins a screw runs on no thread: either hand suits it
    const joins = one('c', { screw: { ...screw, hand: 'left' }, joint: { kind: 'flexible' } });
    expect(pairFindings([nutOf('n'), joins], undefined)).toMatchObject([{ id: 'axis-fit', verdict: 'pass' }]);
  });

  it('lets one place alone carry a screw, and names all that do', () => {
    const collar = one('k', { collar: true });
    const holder = (role: string, axis?: string) => one(role, { holder: { role: 'locating' } }, axis);
    const joint = (kind: string, says: object = {}) => one('c', { joint: { kind }, says });
    const verdicts = (...parts: ReturnType<typeof one>[]) =>
      pairFindings(parts, undefined)
        .filter(({ message }) => message.startsWith('The screw is carried by '))
        .map(({ verdict, roles }) => [verdict, ...roles]);
    expect(pairFindings([collar, one('x', {})], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'pass',
        roles: ['k'],
        message: 'The screw is carried by the thrust bearing at the motor end.',
      },
    ]);
    expect(pairFindings([collar, holder('h')], undefined)).toEqual([
      {
        id: 'axis-fit',
        verdict: 'fail',
        roles: ['h', 'k'],
        message:
          'The screw is carried by the end holder h and the thrust bearing at the motor end: they fight each other when it warms, keep one.',
      },
    ]);
    // a screw that stands on its disc is carried there
    const disc = joint('disc', { mounting: 'motor-below' });
    expect(verdicts(disc)).toEqual([['pass', 'c']]);
    expect(verdicts(disc, collar)).toEqual([['fail', 'k', 'c']]);
    expect(verdicts(disc, holder('h'))).toEqual([['fail', 'h', 'c']]);
    expect(verdicts(joint('disc', { mounting: 'motor-above' }), collar)).toEqual([['pass', 'k']]);
    // a part may tell of what is not among the parts
    const told = joint('flexible', { thrustBearing: true });
    expect(verdicts(told, collar)).toEqual([['pass', 'c', 'k']]);
    expect(verdicts(told, holder('h'))).toEqual([['fail', 'h', 'c']]);
    expect(verdicts(joint('flexible', { locatingHolder: true }), collar)).toEqual([['fail', 'c', 'k']]);
    // a holder that two count on is one, and the one that is there is it
    const counts = one('m', { says: { locatingHolder: true } });
    expect(verdicts(joint('flexible', { locatingHolder: true }), counts)).toEqual([['pass', 'c']]);
    expect(verdicts(joint('flexible', { locatingHolder: true }), holder('h'))).toEqual([['pass', 'h']]);
    expect(pairFindings([counts], undefined)).toMatchObject([
      { message: 'The screw is carried by the end holder that m counts on.' },
    ]);
    // where the motor is, what joins the shafts says first, and any other where that does not
    const above = one('k', { says: { mounting: 'motor-above' } });
    expect(verdicts(above, disc)).toEqual([['pass', 'c']]);
    expect(verdicts(joint('disc'), one('k', { says: { mounting: 'motor-below' } }))).toEqual([['pass', 'c']]);
    // the motor's own bearing behind a rigid sleeve gives way to one at the same end
    expect(verdicts(joint('rigid'), collar)).toEqual([['pass', 'k', 'c']]);
    expect(verdicts(joint('rigid'), holder('h'))).toEqual([['fail', 'h', 'c']]);
    // one screw has one end that is held; of two nobody tells which part is on which
    expect(verdicts(nutOf('a'), holder('h'), holder('g'))).toEqual([['fail', 'h', 'g']]);
    expect(verdicts(nutOf('a'), nutOf('b'), holder('h'), holder('g'))).toEqual([['pass', 'h', 'g']]);
    expect(verdicts(nutOf('a'), nutOf('b'), joint('rigid'), holder('h'))).toEqual([['caution', 'h', 'c']]);
    expect(verdicts(Object.assign(nutOf('a'), { pieces: 2 }), collar, holder('h'))).toEqual([['caution', 'h', 'k']]);
    expect(verdicts(collar, holder('h', 'y'))).toHaveLength(2);
  });

  it('has room for one part at each place of a screw', () => {
    const joint = { kind: 'flexible', motorBore: exactly(5), screwBore: exactly(8) };
    const joins = (role: string, more: object = {}) => one(role, { joint: { ...joint, ...more } });
    const crowds = (...parts: ReturnType<typeof one>[]) =>
      pairFindings(parts, undefined).filter(({ message }) => message.startsWith('More than one'));
    expect(crowds(nutOf('n'), joins('c'), joins('s'))).toEqual([
      {
        id: 'axis-fit',
        verdict: 'fail',
        roles: ['c', 's'],
        message: 'More than one stands between motor and screw, where one has room.',
      },
    ]);
    expect(crowds(nutOf('n'), joins('c'))).toEqual([]);
    expect(crowds(nutOf('n'), Object.assign(joins('c'), { pieces: 2 }))).toHaveLength(1);
    // two nuts may be two screws
    expect(crowds(nutOf('a'), nutOf('b'), joins('c'), joins('s'))).toEqual([]);
    // halves of one coupling, each made by a sheet of its own
    expect(crowds(joins('c', { screwBore: undefined }), joins('s', { motorBore: undefined }))).toEqual([]);
    expect(crowds(one('p', { plate: 6 }), one('q', { plate: 8 }))).toMatchObject([{ roles: ['p', 'q'] }]);
    const holder = (role: string) => one(role, { holder: { role: 'guiding' } });
    expect(crowds(holder('g'), one('r', { holder: { role: 'free' } }))).toEqual([]);
    expect(crowds(holder('g'), holder('h'))).toMatchObject([{ verdict: 'fail', roles: ['g', 'h'] }]);
  });

  it('lets parts of one axis say one thing of it', () => {
    const says = (role: string, says: object) => one(role, { says });
    const loaded = (role: string, load: number) => one(role, { nut: screw, says: { load } });
    const story = (...parts: ReturnType<typeof one>[]) =>
      pairFindings(parts, undefined).filter(({ id }) => id === 'axis-told');
    expect(
      story(says('c', { mounting: 'motor-below', load: 25 }), says('p', { mounting: 'motor-below', load: 25 })),
    ).toEqual([]);
    expect(story(says('c', { mounting: 'motor-below' }), says('p', { mounting: 'horizontal' }))).toEqual([
      {
        id: 'axis-told',
        verdict: 'fail',
        roles: ['c', 'p'],
        message: 'They do not say the same mounting: c motor-below, p horizontal.',
      },
    ]);
    expect(story(says('c', { mounting: 'motor-below' }), says('n', { axis: 'horizontal' }))).toMatchObject([
      { message: 'They do not say the same duty.axis: c vertical, n horizontal.' },
    ]);
    expect(story(says('c', { mounting: 'motor-above' }), says('n', { axis: 'vertical' }))).toEqual([]);
    expect(story(says('c', { upward: 0 }), says('k', { upward: 120 }))).toMatchObject([
      { verdict: 'fail', message: 'They do not say the same duty.upward: c 0 N, k 120 N.' },
    ]);
    // the work lifts what weighs on two nuts by both of them
    const lifted = (role: string, upward: number) => one(role, { nut: screw, says: { upward } });
    expect(story(lifted('a', 60), lifted('b', 60), says('k', { upward: 120 }))).toEqual([]);
    expect(story(lifted('n', 60), says('k', { upward: 120 }))).toHaveLength(1);
    // forces go whole through all
    expect(story(loaded('n', 25), says('c', { load: 1 }))).toMatchObject([
      { verdict: 'fail', roles: ['n', 'c'], message: 'They do not say the same duty.load: n 25 N, c 1 N.' },
    ]);
    expect(story(loaded('n', 1), says('c', { load: 25 }))).toHaveLength(1);
    // a nut that is told nothing bears the whole
    expect(story(nutOf('n'), says('c', { load: 25 }))).toEqual([]);
    // two nuts share it, or each has a screw of its own
    expect(story(loaded('a', 20), loaded('b', 20), says('c', { load: 40 }))).toEqual([]);
    expect(story(loaded('a', 20), loaded('b', 20), says('c', { load: 20 }))).toEqual([]);
    expect(story(loaded('a', 20), loaded('b', 20), says('c', { load: 19 }))).toMatchObject([{ verdict: 'caution' }]);
    expect(story(loaded('a', 20), loaded('b', 20), says('c', { load: 41 }))).toMatchObject([{ verdict: 'caution' }]);
    const held = one('m', { holdsNut: true, says: { load: 30 } });
    expect(story(held, says('c', { load: 25 }))).toMatchObject([{ verdict: 'fail', roles: ['m', 'c'] }]);
    // a bought nut shares with a printed one; the lighter of two nuts is the least that both bear
    expect(story(loaded('a', 20), one('m', { holdsNut: true, says: { load: 20 } }), says('c', { load: 40 }))).toEqual(
      [],
    );
    expect(story(loaded('a', 20), loaded('b', 30), says('c', { load: 25 }))).toEqual([]);
    // who says nothing of it counts nothing
    expect(story(says('c', { mounting: 'motor-below' }), says('n', { load: 5 }))).toEqual([]);
    expect(story(loaded('n', 25), says('c', { load: 1 }), says('x', { axis: 'vertical' }))).toHaveLength(1);
    expect(story(nutOf('a'), loaded('b', 20), says('c', { load: 19 }))).toHaveLength(1);
  });
});
