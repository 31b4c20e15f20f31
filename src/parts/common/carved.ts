import { type LoftLevel, movedSides } from '../../solid/convex-loft.js';
import { type Outline, polygonArea } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { type Clamp, nutPocket } from './clamp.js';
import { OVERSHOOT } from './cut.js';
import { commonArea, sectionVolume } from './section-volume.js';
import type { SetScrewPocket } from './set-screw-pocket.js';
import { alongX, alongY, halfWidthAt, roofedOutline } from './side-hole.js';

/** A bore: a convex outline that changes its size along the axis, and a keyway beside it. */
export interface BoreCut {
  readonly outline: Outline;
  /** a regular polygon with a corner on +X */
  readonly isRound: boolean;
  readonly levels: readonly LoftLevel[];
  /** steps that only lead in, by the index of the level they start at */
  readonly broken?: readonly number[];
  readonly keyway?: Outline;
  readonly keywayEnds?: readonly [from: number, to: number];
  /** between these heights the bore counts; beyond, another one does */
  readonly ends: readonly [from: number, to: number];
}

/** A round standing body with what is cut into it from its sides and its ends: hubs and sleeves. As drawn. */
export interface Carved {
  readonly outline: Outline;
  /** of the outside, its chamfers included */
  readonly levels: readonly LoftLevel[];
  /** steps that only break an edge, by the index of the level they start at */
  readonly broken?: readonly number[];
  readonly bores: readonly BoreCut[];
  /** on +X; through on both sides, so that two halves are left, each clamp screw with a twin across the axis */
  readonly slit?: { readonly width: number; readonly from: number; readonly to: number; readonly through?: true };
  readonly clamps: readonly Clamp[];
  readonly setScrew?: SetScrewPocket;
  /** a hole along Y through the axis */
  readonly pin?: { readonly hole: number; readonly height: number };
  /** a notch on the outside that shows how deep a shaft goes */
  readonly marks: readonly { readonly outline: Outline; readonly from: number; readonly to: number }[];
}

const FAR = 200;

/** The body before it is carved, and its cutters. */
export function carvedShapes(carved: Carved): { readonly base: Shape; readonly cutters: Shape[] } {
  const reach = outerReach(carved) + OVERSHOOT;
  const bores = carved.bores.flatMap(({ outline, isRound, levels, broken = [], keyway, keywayEnds }): Shape[] => [
    isRound ? roundLoft(outline, levels, broken) : { kind: 'loft', outline, levels, broken },
    ...(keyway
      ? [{ kind: 'prism' as const, outlines: [keyway] as const, from: keywayEnds![0], to: keywayEnds![1] }]
      : []),
  ]);
  const closing = carved.clamps.flatMap((clamp) =>
    clamp.heights.flatMap((height) => clampShapes(clamp, height, reach)),
  );
  const marks = carved.marks.map(({ outline, from, to }): Shape => ({ kind: 'prism', outlines: [outline], from, to }));
  return {
    base: roundLoft(carved.outline, carved.levels, carved.broken),
    cutters: [
      ...bores,
      ...slitShapes(carved, reach),
      ...closing,
      ...(carved.slit?.through ? closing.map((shape): Shape => ({ kind: 'moved', turn: 180, shape })) : []),
      ...(carved.setScrew ? setScrewShapes(carved.setScrew, reach) : []),
      ...(carved.pin ? [pinShape(carved.pin, reach)] : []),
      ...marks,
    ],
  };
}

/** The loft of a circle about the axis: a lathe, which is quicker to build. */
export function roundLoft(outline: Outline, levels: readonly LoftLevel[], broken: readonly number[] = []): Shape {
  const [circle] = outline.curves ?? [];
  if (circle?.kind !== 'arc') throw new TypeError('a round loft wants the outline of a circle');
  const { radius, circumscribed } = circle;
  const contour = levels.map(([z, offset]) => [radius + offset, z] as const);
  return { kind: 'lathe', sides: outline.length, circumscribed, contour, broken };
}

function outerReach({ outline, levels }: Carved): number {
  const most = Math.max(...levels.map(([, offset]) => offset));
  return Math.max(...outline.map(([x, y]) => Math.hypot(x, y))) + most;
}

function slitShapes({ slit, levels }: Carved, reach: number): Shape[] {
  if (!slit) return [];
  const [bottom, top] = [levels[0]![0], levels.at(-1)![0]];
  return [
    {
      kind: 'prism',
      outlines: [box([slit.through ? -reach : 0, reach], [-slit.width / 2, slit.width / 2])],
      from: slit.from <= bottom ? bottom - OVERSHOOT : slit.from,
      to: slit.to >= top ? top + OVERSHOOT : slit.to,
    },
  ];
}

/** The hole between the seats a little past them, so that no two cutters end on one plane. */
export function clampShapes(clamp: Clamp, height: number, reach: number): Shape[] {
  const at = [clamp.offset, height] as const;
  const cutters = [
    alongY(roofedOutline(clamp.hole / 2), at, -clamp.headSeat - OVERSHOOT / 2, clamp.nutSeat + OVERSHOOT / 2),
    alongY(roofedOutline(clamp.head / 2), at, -reach, -clamp.headSeat),
    alongY(nutPocket(clamp), at, clamp.nutSeat, reach),
  ];
  return cutters.map((shape) => ({ kind: 'feature', name: 'clamp', shape }));
}

function setScrewShapes({ height, hole, slot, bore }: SetScrewPocket, reach: number): Shape[] {
  const named = (shape: Shape): Shape => ({ kind: 'feature', name: 'set-screw', shape });
  const passage = named(alongX(roofedOutline(hole / 2), [0, height], -reach, 0));
  if (bore) return [passage, named(alongX(roofedOutline(bore.diameter / 2), [0, height], -reach, -bore.inner))];
  const plan = box([-slot!.inner - slot!.thickness, -slot!.inner], [-slot!.width / 2, slot!.width / 2]);
  return [passage, named({ kind: 'prism', outlines: [plan], from: -OVERSHOOT, to: height + slot!.top })];
}

function pinShape({ hole, height }: NonNullable<Carved['pin']>, reach: number): Shape {
  return { kind: 'feature', name: 'pin', shape: alongY(roofedOutline(hole / 2), [0, height], -reach, reach) };
}

/** A rectangle between two x and two y. */
export function box([x0, x1]: readonly [number, number], [y0, y1]: readonly [number, number]): Outline {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** How far the sides of a loft are moved at a height [mm]. */
export function offsetAtHeight(levels: readonly LoftLevel[], z: number): number {
  for (let i = 1; i < levels.length; i++) {
    const [[below, from], [above, to]] = [levels[i - 1]!, levels[i]!];
    if (z <= above) return from + ((to - from) * (z - below)) / (above - below);
  }
  return levels.at(-1)![1];
}

/** A loft's outline at a height. */
export function outlineAt(outline: Outline, levels: readonly LoftLevel[], z: number): Outline {
  return movedSides(outline, offsetAtHeight(levels, z));
}

/**
 * Area of a section of the carved body by its height, by the drawn polygons alone, clamp screws aside. Pieces that are
 * cut twice are counted once: bore and keyway, slit and bore, set screw and bore, pin and bore. Other cutters keep apart;
 * of a body whose bore is not among its cuts, slit and pin are both counted where they cross.
 */
export function carvedArea(carved: Carved): (z: number) => number {
  const { slit, setScrew, pin, bores, marks } = carved;
  const pinPlan = pin && roofedOutline(pin.hole / 2);
  const slitPlan = slit && slitBox(slit);
  const setPlans = setScrew && setScrewPlans(setScrew);
  return (z) => {
    const disc = outlineAt(carved.outline, carved.levels, z);
    const bore = bores.find(({ ends }) => z >= ends[0] && z <= ends[1]);
    const round = bore && outlineAt(bore.outline, bore.levels, z);
    const key = bore?.keyway && z > bore.keywayEnds![0] && z < bore.keywayEnds![1] ? bore.keyway : undefined;
    const inBore = (plan: Outline) =>
      (round ? commonArea(round, plan) : 0) + (key ? commonArea(key, plan) - commonArea(round!, key, plan) : 0);
    const beside = (plan: Outline) => commonArea(disc, plan) - inBore(plan);
    const keyed = key ? polygonArea(key) - commonArea(round!, key) : 0;
    let area = polygonArea(disc) - (round ? polygonArea(round) : 0) - keyed;
    if (slitPlan && z > slit.from && z < slit.to) area -= beside(slitPlan);
    for (const plan of setPlans?.(z) ?? []) area -= beside(plan);
    const across = pinPlan ? halfWidthAt(pinPlan, z - pin!.height) : 0;
    if (across > 0) area -= beside(box([-across, across], [-FAR, FAR]));
    for (const { outline, from, to } of marks) if (z > from && z < to) area -= commonArea(disc, outline);
    return area;
  };
}

function slitBox({ width, through }: NonNullable<Carved['slit']>): Outline {
  return box([through ? -FAR : 0, FAR], [-width / 2, width / 2]);
}

/**
 * Volume that the clamp screws take beside the slit: head pocket, hole and nut pocket side by side. They stand where the
 * outside is straight and the slit is open, so each takes the same.
 */
export function clampVolume({ outline, clamps, slit }: Pick<Carved, 'outline' | 'clamps' | 'slit'>): number {
  const slitPlan = slit && slitBox(slit);
  const sides = slit?.through ? 2 : 1;
  const one = (clamp: Clamp) => {
    const { offset, hole, head, headSeat, nutSeat } = clamp;
    const pieces = [
      [roofedOutline(head / 2), -FAR, -headSeat],
      [roofedOutline(hole / 2), -headSeat, nutSeat],
      [nutPocket(clamp), nutSeat, FAR],
    ] as const;
    return pieces.reduce((sum, [plan, from, to]) => {
      const areaAt = (up: number) => {
        const half = halfWidthAt(plan, up);
        const strip = box([offset - half, offset + half], [from, to]);
        return half > 0 ? commonArea(outline, strip) - (slitPlan ? commonArea(slitPlan, strip) : 0) : 0;
      };
      return (
        sum +
        sectionVolume(
          areaAt,
          plan.map(([, up]) => up),
        )
      );
    }, 0);
  };
  return clamps.reduce((sum, clamp) => sum + sides * clamp.heights.length * one(clamp), 0);
}

type Plans = (z: number) => Outline[];

/** What a set screw takes at a height: disjoint pieces from the axis outwards. */
function setScrewPlans({ height, hole, slot, bore }: SetScrewPocket): Plans {
  const passage = roofedOutline(hole / 2);
  const insert = bore && roofedOutline(bore.diameter / 2);
  const strip = (from: number, to: number, half: number): Outline[] =>
    half > 0 ? [box([-to, -from], [-half, half])] : [];
  return (z) => {
    const half = halfWidthAt(passage, z - height);
    if (bore) {
      const wide = Math.max(half, halfWidthAt(insert!, z - height));
      return [...strip(0, bore.inner, half), ...strip(bore.inner, FAR, wide)];
    }
    const { inner, thickness, width, top } = slot!;
    return [
      ...strip(0, inner, half),
      ...strip(inner, inner + thickness, z < height + top ? width / 2 : half),
      ...strip(inner + thickness, FAR, half),
    ];
  };
}

/** Heights at which the law of the section changes, clamp screws aside. */
export function carvedBreaks({ levels, bores, slit, setScrew, pin, marks }: Carved): number[] {
  const [bottom, top] = [levels[0]![0], levels.at(-1)![0]];
  const about = (outline: Outline, height: number) => outline.map(([, up]) => height + up);
  const set = setScrew
    ? [
        ...about(roofedOutline(setScrew.hole / 2), setScrew.height),
        ...(setScrew.bore ? about(roofedOutline(setScrew.bore.diameter / 2), setScrew.height) : []),
        ...(setScrew.slot ? [setScrew.height + setScrew.slot.top] : []),
      ]
    : [];
  const all = [
    ...levels.map(([z]) => z),
    ...bores.flatMap((bore) => [...bore.levels.map(([z]) => z), ...bore.ends, ...(bore.keywayEnds ?? [])]),
    ...(slit ? [slit.from, slit.to] : []),
    ...set,
    ...(pin ? about(roofedOutline(pin.hole / 2), pin.height) : []),
    ...marks.flatMap(({ from, to }) => [from, to]),
  ];
  return all.filter((z) => z >= bottom && z <= top);
}
