import { beforeAll, describe, expect, it } from 'vitest';
import { design } from '../../../src/index.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import {
  figuresByArithmetic,
  figuresBySolids,
  type MateCase,
  mateCases,
  virtualMate,
} from '../../../src/parts/nut/virtual-mate.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { disagreements, expectAgreement, gridCase } from '../../support/mate-grid.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

function nut(changes: Record<string, unknown> = {}): NutDesign {
  return design(nutSheet(changes)) as NutDesign;
}

describe('a grid of 24 short nuts: every form with every count of starts, either hand', () => {
  const states: boolean[] = [];

  it.each(Array.from({ length: 24 }, (_, n) => n))('nut %s: arithmetic and solids agree', (n) => {
    states.push(expectAgreement(gridCase(n), kernel).free);
  });

  it('holds free nuts and stuck ones', () => {
    expect(states.filter((free) => free).length).toBeGreaterThan(12);
    expect(states.filter((free) => !free).length).toBeGreaterThan(1);
  });
});

describe('what the comparison notices', () => {
  const likely = (changes: Record<string, unknown> = {}) => mateCases(nut(changes), 48)[1]!;
  const sheets: readonly [string, 1 | -1, Record<string, unknown>][] = [
    ['trapezoid, more', 1, {}],
    ['trapezoid, less', -1, {}],
    ['Acme, less', -1, { screw: 'Acme 1/2-10' }],
    ['V, more', 1, { screw: 'M12', body: { diameter: 20 } }],
    ['four starts, left, less', -1, { screw: 'Tr8x8(P2)-LH' }],
  ];

  /** The solids of an altered nut against the arithmetic of the true one. */
  function noticed(mate: MateCase, altered: Partial<MateCase['nut']>): string[] {
    const solids = figuresBySolids({ ...mate, nut: { ...mate.nut, ...altered } }, kernel);
    return disagreements(figuresByArithmetic(mate), solids).map((line) => line.split(':')[0]!);
  }

  it.each(sheets)('%s: the axial clearance altered by 0.03 mm, along the axis', (_, sign, changes) => {
    const mate = likely(changes);
    expect(noticed(mate, { grooveWidth: mate.nut.grooveWidth + sign * 0.03 })).toContain('axial');
  });

  it.each(sheets)('%s: the diametral clearance altered by 0.06 mm, on the diameter', (_, sign, changes) => {
    const mate = likely(changes);
    const by = sign * 0.06;
    const { minor, pitchDiameter, major } = mate.nut;
    const wider = { minor: minor + by, pitchDiameter: pitchDiameter + by, major: major + by };
    expect(noticed(mate, wider)).toEqual(expect.arrayContaining(['diametral', 'crestGap', 'rootGap']));
  });

  it.each(sheets)('%s: a crest gap altered by 0.03 mm, radially', (_, sign, changes) => {
    const mate = likely(changes);
    const by = sign * 2 * 0.03;
    expect(noticed(mate, { major: mate.nut.major + by })).toEqual(['crestGap']);
    expect(noticed(mate, { minor: mate.nut.minor + by })).toEqual(['rootGap']);
  });

  it('nothing where nothing was altered', () => {
    for (const [, , changes] of sheets) expect(noticed(likely(changes), {})).toEqual([]);
  });
});

describe('check --mate', () => {
  it('reports free play at both material limits, and how far solids and arithmetic are apart', () => {
    const rows = virtualMate(nut({ printer: { chord_error: 0.05 } }), kernel);
    expect(rows.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['mate-play', 'pass'],
      ['mate-gaps', 'pass'],
    ]);
    expect(rows[0]!.message).toMatch(/most material: free by .*likely: free by .*least material: free by/);
  });

  it('sees a nut stuck that the stack says is stuck', () => {
    const rows = virtualMate(nut({ fit: { diametral: 0, axial: 0 }, printer: { chord_error: 0.05 } }), kernel);
    expect(rows[0]!.verdict).toBe('pass');
    expect(rows[0]!.message).toMatch(/most material: stuck/);
  });
});
