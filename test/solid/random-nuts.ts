import fc from 'fast-check';
import type { ThreadMate } from '../../src/solid/mate.js';
import { sidesFor } from '../../src/solid/outline.js';

import type { Lathe, Shape } from '../../src/solid/recipe.js';
import { cylinder } from '../../src/solid/recipe.js';
import { narrowest, nutThread, screwThread, type ThreadFigures, widest } from './examples.js';

/** A nut's recipe with the bounds it must have. */
export interface RandomNut {
  readonly figures: ThreadFigures;
  readonly shape: Shape;
  readonly reach: number;
  readonly length: number;
}

/** Threads of all forms, 3 to 60 mm, leads up to twice the diameter. */
export const randomThread: fc.Arbitrary<ThreadFigures> = fc
  .record({
    major: fc.oneof(fc.integer({ min: 3, max: 60 }), fc.double({ min: 3, max: 60, noNaN: true })),
    fineness: fc.double({ min: 0, max: 1, noNaN: true }),
    starts: fc.integer({ min: 1, max: 6 }),
    flankAngle: fc.oneof(fc.constantFrom(15, 14.5, 30), fc.double({ min: 3, max: 45, noNaN: true })),
    hand: fc.constantFrom('right' as const, 'left' as const),
    diametralClearance: fc.constantFrom(0, 0.2, 0.3, 0.4),
    axialClearance: fc.constantFrom(0, 0.07, 0.1, 0.25),
    round: fc.boolean(),
  })
  .map(({ fineness, round, ...rest }) => {
    const { major, starts } = rest;
    const most = Math.min(major / 3, (2 * major) / starts, 12);
    const least = Math.min(0.4, most);
    const exact = least + fineness * (most - least);
    const pitch = round ? Math.max(least, Math.round(exact * 4) / 4) : exact;
    const axialClearance = Math.min(rest.axialClearance, 0.15 * pitch);
    return { ...rest, axialClearance, pitch, columns: sidesFor(major / 2 + 0.5, 0.01) };
  });

/** A pair of threads whose flanks overlap by an axial amount, mm. */
export function tightMate(figures: ThreadFigures, pitches: number, overlap: number): ThreadMate {
  const tight = { ...figures, diametralClearance: 0, axialClearance: -overlap };
  const threads = { nut: nutThread(tight, 0, 1), screw: screwThread(tight, 0, 1) };
  return { ...threads, play: -overlap, length: pitches * figures.pitch };
}

/** Nuts with round, square or hexagonal bodies, fillets, holes, counterbores and chamfers. */
export const randomNut: fc.Arbitrary<RandomNut> = fc
  .record({
    figures: randomThread,
    turns: fc.double({ min: 1.5, max: 5, noNaN: true }),
    body: fc.constantFrom('round' as const, 'square' as const, 'hexagonal' as const),
    wall: fc.double({ min: 1.2, max: 6, noNaN: true }),
    fillet: fc.boolean(),
    chamfered: fc.boolean(),
    holes: fc.integer({ min: 0, max: 6 }),
    start: fc.oneof(fc.constantFrom(0, 30, 45, 90), fc.double({ min: 0, max: 360, noNaN: true })),
    counterbored: fc.boolean(),
  })
  .map(({ figures, turns, body, wall, fillet, chamfered, holes, start, counterbored }) => {
    const length = 3 + Math.max(4, turns * figures.pitch);
    const thread = nutThread(figures, -figures.pitch / 2, length + figures.pitch / 2);
    const [top, foot] = [widest(thread), narrowest(thread)];
    const across = top * 1.01 + wall;
    const circle = across * 1.5 + 4;
    const reach = circle + 4;
    const flange = cylinder({ radius: reach, sides: 120, circumscribed: false, from: 0, to: 3 });
    const hole = cylinder({ radius: 1.6, sides: 32, circumscribed: true, from: -1, to: 4 });
    const counterbore = cylinder({ radius: 3, sides: 40, circumscribed: true, from: 1.8, to: 4 });
    const cutters: Shape[] = [{ kind: 'thread', thread }];
    if (chamfered) cutters.push(...chamfers(figures.columns, top, foot, length));
    for (let i = 0; i < holes; i++) {
      const at = { turn: start + (360 * i) / holes, kind: 'moved' as const };
      cutters.push({ ...at, shape: { kind: 'moved', by: [circle, 0, 0], shape: hole } });
      if (counterbored) cutters.push({ ...at, shape: { kind: 'moved', by: [circle, 0, 0], shape: counterbore } });
    }
    const solid: Shape = { kind: 'union', of: [flange, bodyOf(body, across, fillet ? 1 : 0, length)] };
    return { figures, reach, length, shape: { kind: 'difference', of: [solid, ...cutters] } };
  });

function bodyOf(body: 'round' | 'square' | 'hexagonal', across: number, fillet: number, length: number): Lathe {
  const sides = { round: sidesFor(across, 0.01), square: 4, hexagonal: 6 }[body];
  const curve =
    fillet === 0
      ? []
      : [0, 22.5, 45, 67.5].map((angle) => {
          const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
          return [across + fillet * (1 - s), 3 + fillet * (1 - c)] as const;
        });
  return {
    kind: 'lathe',
    sides,
    circumscribed: body !== 'round',
    turn: body === 'square' ? 45 : 0,
    contour: [[across + fillet, 1.5], ...curve, [across, 3 + fillet], [across, length - 0.3], [across - 0.3, length]],
  };
}

function chamfers(sides: number, top: number, foot: number, length: number): Lathe[] {
  const [wide, narrow] = [top + 0.3, foot * 0.97];
  const depth = Math.min(wide - narrow, length / 3);
  const bore = { kind: 'lathe', sides, circumscribed: true } as const;
  return [
    {
      ...bore,
      contour: [
        [wide + 1, -1],
        [wide, 0],
        [narrow, depth],
      ],
    },
    {
      ...bore,
      contour: [
        [narrow, length - depth],
        [wide, length],
        [wide + 1, length + 1],
      ],
    },
  ];
}
