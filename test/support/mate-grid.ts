import { expect } from 'vitest';
import { design } from '../../src/index.js';
import type { NutDesign } from '../../src/parts/nut/dimensions.js';
import {
  figuresByArithmetic,
  figuresBySolids,
  MATE_AGREEMENT,
  type MateCase,
  type MateFigures,
  mateCases,
} from '../../src/parts/nut/virtual-mate.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { nutSheet } from './nut-sheets.js';
import { seededUniform } from './seeded.js';

const FORMS = ['trapezoidal', 'acme', 'metric-v'] as const;
const FITS: readonly (readonly [diametral: number, axial: number])[] = [
  [0.3, 0.1],
  [0.2, 0.07],
  [0.4, 0.25],
  [0.25, 0.15],
  [0.06, 0],
];

/** The nth nut of a grid over forms, starts, hands, sizes, fits and corners of what may be printed. */
export function gridCase(n: number): { readonly title: string; readonly mate: MateCase } {
  const draw = seededUniform(1000 + n);
  const form = FORMS[n % 3]!;
  const starts = 1 + (Math.floor(n / 3) % 4);
  const hand = Math.floor(n / 12) % 2 === 0 ? 'right' : 'left';
  const major = 6 + Math.round(40 * draw()) / 4;
  const most = form === 'metric-v' ? 2 : Math.min(4, major / 4);
  const pitch = Math.max(1, Math.round(4 * most * (0.5 + 0.5 * draw())) / 4);
  const [diametral, axial] = FITS[n % 5]!;
  const sheet = nutSheet({
    screw: { form, major, pitch, starts, hand, pitch_diameter: major - (form === 'metric-v' ? 0.6495 : 0.5) * pitch },
    body: { diameter: major + 8, length: 3 * pitch + 4 },
    flange: undefined,
    holes: undefined,
    fit: { diametral, axial },
    material: ['pla', 'petg', 'pa12', 'pom'][n % 4],
  });
  const mate = mateCases(design(sheet) as NutDesign, 48)[Math.floor(3 * draw())]!;
  const name = `${form} ${major}x${pitch * starts}(P${pitch}) ${hand}, c ${diametral}, a ${axial}, ${mate.name}`;
  return { title: name, mate };
}

/** Where arithmetic and solids differ by more than they may, in words. */
export function disagreements(told: MateFigures, seen: MateFigures): string[] {
  const pairs = [
    ['axial', MATE_AGREEMENT.axial],
    ['diametral', MATE_AGREEMENT.diametral],
    ['crestGap', MATE_AGREEMENT.gap],
    ['rootGap', MATE_AGREEMENT.gap],
  ] as const;
  const apart = pairs.filter(([key, most]) => Math.abs(Math.max(0, told[key]) - seen[key]) > most);
  const edge = Math.abs(told.axial) < MATE_AGREEMENT.axial && told.free !== seen.free;
  return [
    ...(told.free === seen.free || edge ? [] : ['free']),
    ...apart.map(([key]) => `${key}: ${told[key].toFixed(4)} told, ${seen[key].toFixed(4)} seen`),
  ];
}

/** Holds the solids of a case against its arithmetic. */
export function expectAgreement({ title, mate }: ReturnType<typeof gridCase>, kernel: Kernel): MateFigures {
  const seen = figuresBySolids(mate, kernel);
  expect(disagreements(figuresByArithmetic(mate), seen), title).toEqual([]);
  return seen;
}
