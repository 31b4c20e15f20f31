import { z } from 'zod';
import { type Check, hard, notJudged, soft, told, valued } from '../../src/judge/check.js';
import { finding } from '../../src/judge/run-checks.js';
import { box } from '../../src/parts/common/drawn/strokes.js';
import type { DesignBase, PartKind } from '../../src/parts/part-kind.js';
import { knownKind } from '../../src/pipeline/known-kind.js';
import { map, quantity } from '../../src/sheet/fields.js';
import { partName } from '../../src/sheet/sections/common.js';
import { limitsSection } from '../../src/sheet/sections/limits.js';
import { fault } from '../../src/units/faults.js';
import { exactly, plusMinus } from '../../src/units/measured.js';

const cubeSchema = map({
  part: z.literal('cube'),
  name: partName,
  size: quantity('length', { above: 0, most: 100 }),
  hole: quantity('length', { least: 0, most: 100 }).optional(),
  bodies: z.number().optional(),
  mates: z.boolean().optional(),
  measures: z.boolean().optional(),
  breaks: z.boolean().optional(),
  limits: limitsSection.optional(),
});
type CubeSheet = z.output<typeof cubeSchema>;

interface CubeDesign extends DesignBase {
  readonly sheet: CubeSheet;
}

const ABOUT = { question: 'prints', unit: 'mm', source: 'common practice', moves: 'size' };
const CHECKS: readonly Check<CubeDesign>[] = [
  {
    ...ABOUT,
    id: 'cube-size',
    group: 'cube',
    title: 'Edge',
    limits: hard({ min: 5 }),
    run: ({ sheet }) => valued(plusMinus(sheet.size, 0.1), `the edge is ${sheet.size} mm`),
  },
  {
    ...ABOUT,
    id: 'cube-wish',
    group: 'cube',
    title: 'Wished edge',
    limits: soft({ max: 20 }, { max: 60 }),
    run: ({ sheet }) => valued(exactly(sheet.size), 'large cubes take long to print'),
  },
  {
    ...ABOUT,
    id: 'heat',
    group: 'cube',
    title: 'Heat',
    grave: true,
    run: ({ sheet }) => told(sheet.size === 13 ? 'fail' : 'pass', 'a cube of 13 melts'),
  },
  { ...ABOUT, id: 'cube-load', group: 'cube', title: 'Load', run: () => notJudged('duty.load') },
];

/** The smallest part kind there can be: a cube that stands on z = 0, with one relation between fields. */
export const cubeKind: PartKind<CubeSheet, CubeDesign> = {
  kind: 'cube',
  questions: [{ id: 'prints', title: 'Prints?' }],
  schema: cubeSchema,
  design: (sheet) => {
    if (sheet.hole !== undefined && sheet.hole >= sheet.size) throw fault('hole', sheet.hole, 'must be below size');
    const sizes = { edge: sheet.size, inner: { hole: sheet.hole ?? 0 } };
    return {
      part: 'cube',
      name: sheet.name,
      dimensions: { finished: sizes, printed: { edge: sheet.size * 1.01 } },
      assumptions: sheet.hole === undefined ? [{ field: 'hole', value: 0, why: 'none was given' }] : [],
      limits: sheet.limits ?? {},
      densities: { pla: 1.24 },
      sheet,
    };
  },
  checks: CHECKS,
  particulars: () => ({
    hardware: [{ item: 'socket cap screw ISO 4762', size: 'M3x10', count: 4 }],
    cautions: ['Mind the corners.'],
    applied: 'Shrink of 1 % is in the file.',
    print: { face_up: 'top', why: 'all faces are alike', support: 'none' },
  }),
  sizeField: (name) => (name === 'edge' ? 'size' : undefined),
  bodies: ({ sheet }) => {
    const half = sheet.size / 2;
    return Array.from({ length: sheet.bodies ?? 1 }, (_, i) => ({
      recipe: {
        name: `b${i + 1}`,
        material: 'pla',
        shape: {
          kind: 'lathe' as const,
          sides: 4,
          circumscribed: true,
          turn: 45,
          contour: sheet.breaks
            ? []
            : ([
                [half, 0],
                [half, sheet.size],
              ] as const),
        },
      },
      expected: () => ({
        volume: sheet.measures === false ? 1 : sheet.size ** 3,
        mark: 0,
        bounds: [
          [-half, -half, 0],
          [half, half, sheet.size],
        ] as const,
      }),
      leastWall: { where: 'cube', size: sheet.breaks ? 0 : sheet.size },
      printer: { layer: 0.2, lineWidth: 0.45, compensation: { shrink: 'file' as const, holes: 'none' as const } },
    }));
  },
  mate: ({ sheet }) => [
    finding(
      {
        id: 'mate-play',
        group: 'mate',
        question: 'prints',
        title: 'Mate',
        unit: 'mm³',
        source: 'quality of a solid',
        moves: 'size',
        limits: hard({ max: 0 }),
      },
      valued(exactly(sheet.mates === false ? 2 : 0), 'common volume with the counterpart'),
    ),
  ],
  views: ({ sheet, dimensions }, choice) => {
    const { edge } = dimensions[choice];
    const half = Number(edge) / 2;
    const square = box('outline', [-half, -half], [half, half]);
    const view = (title: string) => ({
      title,
      solid: { bodies: [], sight: { kind: 'end', from: 1 } as const },
      strokes: [square],
      sizes: [],
      letters: [],
    });
    const names = Array.from({ length: sheet.bodies ?? 1 }, (_, i) => `b${i + 1}`);
    return {
      side: view('Side'),
      end: view('End'),
      holes: [],
      notes: [],
      material: 'pla',
      companions: [],
      inUse: Object.fromEntries(names.map((name, i) => [name, { by: [i * (sheet.size + 8), 0, 0] as const }])),
      cutTowards: 0,
    };
  },
};

export const CUBES = [knownKind(cubeKind)];
