import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/pipeline/advise.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { readYaml } from '../../../src/sheet/read-yaml.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

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
