import { describe, expect, it } from 'vitest';
import { hard, soft } from '../../../src/judge/check.js';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { boresEntered } from '../../../src/parts/adapter/bores-entered.js';
import type { AdapterDesign } from '../../../src/parts/adapter/dimensions.js';
import { floatRemedies, sleeveRemedies } from '../../../src/parts/adapter/float-remedies.js';
import { advise } from '../../../src/pipeline/advise.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { readYaml } from '../../../src/sheet/read-yaml.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { FLOATING, PLAIN } from './verdict-cases.js';

type Tree = Readonly<Record<string, unknown>>;

const PLATE = changed(readYaml(startSheet('adapter')).value as Tree, {
  kind: 'floating',
  float: { sideways: 0.3, along: 0.05 },
});
const holes = (diameter: number) => ({ nut: { holes: { diameter } } });
const put = (set: Tree) =>
  Object.entries(set).reduce<Tree>(
    (tree, [path, value]) =>
      changed(tree, path.split('.').reduceRight((inner, key) => ({ [key]: inner }), value) as Tree),
    {},
  );

function curesOf(id: string, changes: Tree) {
  const sheet = changed(PLATE, changes);
  const { cures = [] } = advise(sheet).checks.find((one) => one.check === id) ?? {};
  return cures.map(({ set }) => ({ set, after: check(design(changed(sheet, put(set)))).checks }));
}
const verdict = (rows: readonly { id: string; verdict: string }[], id: string) =>
  rows.find((row) => row.id === id)?.verdict ?? 'pass';

describe('cures of an adapter whose nut floats', () => {
  // sleeves of 5 mm in 5.3 mm: 0.15 mm each way; wanted 5 + 2·(0.2 + 0.03/2 + 0.03/2 + 0.2 %·16/2 + 0.1) = 5.692
  it('are fields that bring the float to pass when they are typed in', () => {
    const cures = curesOf('mount-float', holes(5.3));
    expect(cures.map(({ set }) => set)).toContainEqual({ 'nut.holes.diameter': 5.7 });
    for (const { set, after } of cures) expect(verdict(after, 'mount-float'), JSON.stringify(set)).toBe('pass');
  });

  it('widen the bore of the plate where that is what stops the nut', () => {
    const cures = curesOf('mount-float', { ...holes(5.7), plate: { bore: 10.4 } });
    // 10.2 mm and twice 0.3 mm
    expect(cures.map(({ set }) => set)).toContainEqual({ 'plate.bore': 10.8 });
  });

  // (10.4 − 10.2)/2 = 0.1 mm each way, 3.5 mm deep in the carriage; 10.2 mm and twice 0.3 mm
  it('widen the carriage where its opening is what stops the nut', () => {
    const narrow = { ...holes(5.7), plate: { bore: 11 }, carriage: { bore: 10.4 } };
    const row = findingOf(changed(PLATE, narrow), 'mount-float')!;
    expect(row.value).toBeCloseTo(0.1, 6);
    expect(row.message).toContain(
      "the carriage's opening, which it reaches into, stops it first; open the carriage wider",
    );
    expect(curesOf('mount-float', narrow).map(({ set }) => set)).toContainEqual({ 'carriage.bore': 10.8 });
    const slot = { ...narrow, carriage: { bore: undefined, slot: [10.4, 30] } };
    expect(findingOf(changed(PLATE, slot), 'mount-float')!.message).toContain(
      'a wider opening in the carriage, or a plate',
    );
    // 0.2 mm aside: nothing is left, whichever way
    const aside = { ...narrow, carriage: { bore: 10.6, offset: [0.2, 0] } };
    expect(findingOf(changed(PLATE, aside), 'mount-float')!.value).toBeCloseTo(0, 6);
    // a plate of 12 mm keeps 11.5 mm of body to itself
    const thick = { ...narrow, plate: { bore: 11, thickness: 12 } };
    expect(findingOf(changed(PLATE, thick), 'mount-float')!.message).not.toContain('carriage');
  });

  // M3 on 2.5 mm of thread: 304 N on π/4·(5² − 3.4²) are 28.8 MPa of 26.4; π/4·(d² − 3.4²) = 304/26.4 at 5.12 mm
  it('carry sleeves that press too hard on wider ones, for which the holes are drilled', () => {
    const cures = curesOf('sleeve-seat', holes(5.3));
    expect(cures.map(({ set }) => set)).toContainEqual({ 'float.sleeve': 5.2, 'nut.holes.diameter': 5.7 });
    for (const { set, after } of cures) expect(verdict(after, 'sleeve-seat'), JSON.stringify(set)).toBe('pass');
  });

  // 5.7 mm around 5 mm are 0.7 mm of play, more than twice 0.3
  it('leave wider sleeves the play that the narrower ones had', () => {
    const nut = { flange: { diameter: 26 }, holes: { circle: 18, diameter: 5.7 }, joint: 'tapped' };
    const wider = curesOf('sleeve-seat', { nut }).find(({ set }) => 'nut.holes.diameter' in set)!;
    expect(wider.set).toEqual({ 'float.sleeve': 5.2, 'nut.holes.diameter': 5.9 });
    expect(verdict(wider.after, 'mount-float')).toBe('pass');
  });
});

/** On sleeves of 5 mm, its body of 10.2 mm in a bore of 12; nothing comes out off but by its spread. */
const SLEEVES = changed(changed(PLAIN, FLOATING), {
  printer: { compensation: 'file', bridging: 'none' },
  plate: { bore: 12 },
  carriage: { bore: 12 },
});
const made = (changes: Tree = {}) => workOut(changed(SLEEVES, changes)) as AdapterDesign;
const ways = (changes: Tree) => floatRemedies(made(changes), limitsInForce(soft({ min: 0.2, max: 0.5 })));
const sets = (changes: Tree) => ways(changes).map(({ set }) => set);

describe('ways to let a nut float, before they are tried', () => {
  // 0.2 are left at the least of 0.2 + 0.03/2 + 0.03/2 + 0.2 %·20/2 + 0.1 = 0.35 mm each way
  it('are all that could serve, and nothing else', () => {
    expect(ways({ nut: { holes: { diameter: 5.2 } } })).toEqual([
      { check: 'mount-float', say: 'drill the holes of the nut', set: { 'nut.holes.diameter': 5.7 } },
      { check: 'mount-float', say: 'thinner sleeves', set: { 'float.sleeve': 4.5 } },
      { check: 'mount-float', say: 'no sleeves, its screws never tightened', set: { 'float.spacer': 'bare' } },
    ]);
    // thicker ones keep 0.35 mm of (6.6 − 5)/2; bare screws of 3 mm play more still
    expect(sets({ nut: { holes: { diameter: 6.6 } } })).toEqual([{ 'float.sleeve': 5.9 }, { 'float.spacer': 'bare' }]);
    // 3 + 2·0.35 for bare screws, which sleeves of 2.5 mm would not leave
    expect(sets({ float: { spacer: 'bare' }, nut: { holes: { diameter: 3.1 } } })).toEqual([
      { 'nut.holes.diameter': 3.7 },
      { 'float.spacer': 'sleeve', 'float.sleeve': 2.4 },
    ]);
    expect(sets({ float: { spacer: 'bare' }, nut: { holes: { diameter: 3.8 } } })).toEqual([]);
    expect(sets({ nut: { holes: { diameter: 5.8 } } })).toEqual([]);
  });

  it('open what is narrow together', () => {
    const narrow = ways({ nut: { holes: { diameter: 5.8 } }, plate: { bore: 10.4 }, carriage: { bore: 10.4 } });
    expect(narrow.map(({ say }) => say)).toEqual(['open plate and carriage wider']);
    expect(narrow[0]!.set).toMatchObject({ 'carriage.bore': 10.8 });
  });

  // 0.2 mm that the body may be thicker or thinner leave 0.1 mm less than 0.5 on either side
  it('keep off the limit by what calipers leave open', () => {
    const [open] = ways({
      float: { sideways: 0.5 },
      nut: { body: '10.2 ± 0.2 mm', holes: { diameter: 6 } },
      plate: { bore: 10.4 },
    });
    expect(open!.set['plate.bore']).toBeGreaterThan(10.6);
    expect(open!.set['plate.bore']).toBeLessThanOrEqual(11);
  });

  // 2·(7.95 − 10.2/2) = 5.7 mm, to the last bit what is wanted
  it('drill as far as the body, and no farther', () => {
    const beside = (circle: number) =>
      sets({ nut: { body: '10.2 ± 0 mm', holes: { circle, diameter: 5.2 } } }).filter(
        (set) => 'nut.holes.diameter' in set,
      );
    expect(beside(15.9)).toEqual([{ 'nut.holes.diameter': 5.7 }]);
    expect(beside(15.8)).toEqual([]);
  });

  it('are none of keys, which hold without sleeves', () => {
    const keys = {
      kind: 'floating',
      hold: 'keys',
      float: 0.6,
      nut: { flange: { flats: 24 } },
      carriage: { holes: { circle: 70 } },
      plate: { outline: { diameter: 84 } },
    };
    expect(floatRemedies(workOut(changed(SLEEVES, keys)) as AdapterDesign, limitsInForce(soft({ max: 0.5 })))).toEqual(
      [],
    );
    expect(findingOf(changed(SLEEVES, keys), 'mount-float')!.message).toMatch(
      /; another float, from 0\.2 to 0\.5 mm, is usual$/,
    );
  });

  it('for sleeves that press too hard are none of shoulders, nor of bare screws', () => {
    const press = (changes: Tree) => sleeveRemedies(made(changes), limitsInForce(hard({ max: 1 }))).length;
    expect(press({})).toBe(2);
    expect(press({ float: { spacer: 'bare' } })).toBe(0);
    const nut = { flange: { diameter: 44 }, holes: { circle: 30, screw: 'M5', diameter: 6.6 } };
    expect(
      press({
        float: { spacer: 'shoulder' },
        nut,
        carriage: { holes: { circle: 60 } },
        plate: { outline: { diameter: 76 } },
      }),
    ).toBe(0);
  });
});

describe('what a nut enters', () => {
  const entered = (changes: Tree) =>
    boresEntered(workOut(changed({ ...PLAIN, nut: { ...PLAIN.nut, body: 10.2 } }, changes)) as AdapterDesign).map(
      ({ of }) => of,
    );
  it('is plate, step and carriage, each where it reaches in', () => {
    expect(entered({})).toEqual(['plate', 'carriage']);
    // a recess is cut to the flange
    expect(entered({ register: { nut: 'recess' } })).toEqual(['plate', 'carriage']);
    expect(entered({ register: { nut: 'none' }, plate: { step: { diameter: 24, depth: 2 } } })).toEqual([
      'plate',
      'step',
      'carriage',
    ]);
    // from the carriage's side the flange is what goes in there, and the step is on the other face
    const seated = { nut: { seat: 'carriage' }, carriage: { bore: 26 }, register: { nut: 'none' } };
    expect(entered(seated)).toEqual(['plate', 'carriage']);
    expect(entered({ ...seated, plate: { step: { diameter: 24, depth: 2 } } })).toEqual(['plate', 'carriage']);
  });
});

describe('how far a bought flange is drilled', () => {
  const words = (changes: Tree) => findingOf(changed(SLEEVES, changes), 'hole-size')!.message;
  const sleeve = { spacer: 'sleeve', sleeve: 5 };
  const NARROW = { body: '10.2 ± 0 mm', holes: { circle: 16.2, diameter: 4.9 } };
  // 5 + 2·0.5 = 6 = 2·(8.1 − 5.1)
  it('is to the float, as long as that leaves its body whole', () => {
    expect(words({ float: { ...sleeve, sideways: 0.5 }, nut: NARROW })).toContain(
      '; drill the holes of the nut to 6 mm,',
    );
    expect(words({ float: { ...sleeve, sideways: 0.55 }, nut: NARROW })).toContain(
      "; holes of 6.1 mm cut into the nut's body",
    );
    const at = [
      [9, 0],
      [-7.9, 0],
    ];
    const uneven = { body: '10.2 ± 0 mm', holes: { circle: undefined, count: undefined, at, diameter: 4.9 } };
    expect(words({ float: { ...sleeve, sideways: 0.5 }, nut: uneven })).toContain(
      "; holes of 6 mm cut into the nut's body",
    );
  });

  it('is further for sleeves than for bare screws', () => {
    expect(words({ float: { spacer: 'bare' }, nut: { holes: { diameter: 2.9 } } })).toContain(
      '; drill the holes of the nut to 3.7 mm, or wider for sleeves,',
    );
  });
});
