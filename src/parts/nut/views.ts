import { grooveWidthAt } from '../../mechanics/thread/nut-thread.js';
import { reachOf } from '../../solid/convex.js';
import type { Outline } from '../../solid/outline.js';
import { sweepThread } from '../../solid/thread-sweep.js';
import { plain } from '../../units/format.js';
import { type SizeWay, spreadOf } from '../common/drawn/spread.js';
import { crossing, line } from '../common/drawn/strokes.js';
import { polar } from '../common/hole-pattern.js';
import { pocketRadius } from '../common/joints.js';
import { screwBody, threadColumns } from '../common/thread-shape.js';
import type { Companion, DrawnView, HoleRow, PartViews, Point, SizeChoice, SizeMark, Stroke } from '../part-views.js';
import type { NutDesign, NutSizes } from './dimensions.js';
import { bodyOutline, flangeOutline } from './plan.js';
import { boreOf, pocketOf } from './pockets.js';
import { topFace } from './print-advice.js';
import { endsOf } from './solid.js';

/** How far the screw stands out of the nut at either end, in pitches, and at least [mm]. */
const SCREW_BEYOND = { pitches: 2, least: 7 };

/** What a drawing and the page show of a nut besides its mesh. */
export function nutViews(design: NutDesign, choice: SizeChoice): PartViews {
  const nut = new NutInSight(design, choice);
  return {
    side: sideView(nut),
    end: endView(nut),
    holes: nut.holes,
    notes: notesOf(nut),
    material: design.material.name,
    companions: [screwIn(design)],
    cutTowards: nut.towards,
    turnedOver: topFace(design) === 'flange-face',
  };
}

/** Sizes of one choice with what several views ask of them. */
class NutInSight {
  readonly design: NutDesign;
  readonly sizes: NutSizes;
  readonly finished: boolean;
  readonly bottom: number;
  readonly top: number;
  readonly body: Outline;
  readonly plate: Outline | undefined;
  readonly bore: number;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };

  constructor(design: NutDesign, choice: SizeChoice) {
    this.design = design;
    this.sizes = design[choice];
    this.finished = choice === 'finished';
    this.spread = spreadOf(design, choice);
    const ends = endsOf(this.sizes);
    this.bottom = ends.bottom;
    this.top = ends.top;
    this.body = bodyOutline(this.sizes.body, design.printer.chordError);
    this.plate = this.sizes.flange && flangeOutline(this.sizes.flange, design.printer.chordError);
    const joint = design.holes ? boreOf(design.holes) : 0;
    this.bore = this.finished || joint !== design.holes?.diameter.likely ? joint : (this.sizes.holes?.diameter ?? 0);
  }

  /** direction of hole 1, where the section is laid through */
  get towards(): number {
    const first = this.sizes.holes?.centres[0];
    return first ? (Math.atan2(first[1], first[0]) * 180) / Math.PI : 0;
  }

  get holes(): HoleRow[] {
    const { holes } = this.design;
    return (this.sizes.holes?.centres ?? []).map((at, i) => ({
      label: `${i + 1}`,
      at,
      diameter: this.bore,
      note: holes?.screw ? `${holes.screw}, ${holes.joint}` : (holes?.joint ?? ''),
    }));
  }
}

/** The section along the axis through hole 1, the axis lying and +Z to the left. */
function sideView(nut: NutInSight): DrawnView {
  const { sizes, bottom, top } = nut;
  const { thread, leadIn } = sizes;
  const halves = [halfSection(nut, nut.towards, 1), halfSection(nut, nut.towards + 180, -1)];
  const [minor, major] = [thread.minor / 2, thread.major / 2];
  const depth = major + leadIn - minor;
  const across = (z: number, r: number): Stroke => line('outline', [-z, -r], [-z, r]);
  const root = (side: number): Stroke =>
    line('thin', [-(bottom + leadIn), side * major], [-(top - leadIn), side * major]);
  return {
    title: 'Section A–A',
    strokes: [
      ...halves.flatMap(({ strokes }) => strokes),
      ...[bottom, top].map((z) => across(z, major + leadIn)),
      ...[bottom + depth, top - depth].map((z) => across(z, minor)),
      root(1),
      root(-1),
      line('centre', [-bottom + 3, 0], [-top - 3, 0]),
    ],
    hatched: halves.map(({ region }) => region),
    sizes: sideSizes(nut),
    letters: [],
  };
}

/** One side of the axis: cut material as loops, and its lines. */
function halfSection(nut: NutInSight, angle: number, side: 1 | -1): { region: Point[][]; strokes: Stroke[] } {
  const onPaper = ([z, r]: Point): Point => [-z, side * r];
  const outer = halfOutline(nut, angle).map(onPaper);
  const opening = openingAt(nut, angle);
  const hole = opening.map(onPaper);
  const strokes: Stroke[] = [{ kind: 'path', line: 'outline', points: outer, closed: true }];
  if (hole.length > 0) {
    const middle = Math.hypot(...nut.sizes.holes!.centres[0]!);
    const [low, high] = [Math.min(...opening.map(([z]) => z)), Math.max(...opening.map(([z]) => z))];
    strokes.push({ kind: 'path', line: 'outline', points: hole, closed: true });
    strokes.push(line('centre', onPaper([low - 2, middle]), onPaper([high + 2, middle])));
  }
  return { region: hole.length > 0 ? [outer, hole] : [outer], strokes };
}

/** Corners of the material on one side of the axis, as [z, r]. */
function halfOutline(nut: NutInSight, angle: number): Point[] {
  const { sizes, bottom, top, plate } = nut;
  const { thread, leadIn, relief, fillet, flange } = sizes;
  const body = reachOf(nut.body, angle);
  const cone = thread.major / 2 + leadIn;
  const depth = cone - thread.minor / 2;
  const inside: Point[] = [
    [top, cone],
    [top - depth, thread.minor / 2],
    [bottom + depth, thread.minor / 2],
    [bottom, cone],
  ];
  const end: Point[] = [
    [top - relief, body],
    [top, body - relief],
  ];
  const start: Point[] = [
    [bottom, body - relief],
    [bottom + relief, body],
  ];
  if (!flange || !plate) return [...start, ...end, ...inside];
  const rim = reachOf(plate, angle);
  const round = Array.from({ length: 9 }, (_, i): Point => {
    const [c, s] = polar(fillet, 11.25 * i);
    return [flange.thickness + fillet - c, body + fillet - s];
  });
  return [
    ...(flange.offset > 0 ? [...start, [0, body] as const] : []),
    [0, rim - relief],
    [relief, rim],
    [flange.thickness, rim],
    ...(fillet > 0 ? round : [[flange.thickness, body] as const]),
    ...end,
    ...inside,
  ];
}

/** The hole with its pocket that stands in this direction, as [z, r]; empty where none does. */
function openingAt(nut: NutInSight, angle: number): Point[] {
  const { sizes, design } = nut;
  const first = sizes.holes?.centres[0];
  if (!first || !design.holes) return [];
  const at = polar(Math.hypot(...first), angle);
  if (!sizes.holes!.centres.some(([x, y]) => Math.hypot(x - at[0], y - at[1]) < 0.01)) return [];
  const [from, to] = sizes.flange ? [0, sizes.flange.thickness] : [nut.bottom, nut.top];
  const middle = Math.hypot(...first);
  const [r, sunk] = [nut.bore / 2, pocketOf(design.holes)];
  if (!sunk) {
    return [
      [from, middle - r],
      [from, middle + r],
      [to, middle + r],
      [to, middle - r],
    ];
  }
  const wide = pocketRadius(sunk.pocket);
  const step = sunk.side === 'flange' ? from + sunk.pocket.depth : to - sunk.pocket.depth;
  const [low, high] = sunk.side === 'flange' ? [wide, r] : [r, wide];
  return [
    [from, middle - low],
    [from, middle + low],
    [step, middle + low],
    [step, middle + high],
    [to, middle + high],
    [to, middle - high],
    [step, middle - high],
    [step, middle - low],
  ];
}

function sideSizes(nut: NutInSight): SizeMark[] {
  const { sizes, bottom, top } = nut;
  const { thread, body, flange } = sizes;
  const below = reachOf(nut.plate ?? nut.body, nut.towards + 180);
  const above = reachOf(nut.plate ?? nut.body, nut.towards);
  const diameter = (
    name: string,
    value: number,
    z: number,
    side: 'left' | 'right',
    more: Partial<SizeMark>,
  ): SizeMark => ({
    name,
    value,
    sign: '⌀',
    from: [-z, -value / 2],
    to: [-z, value / 2],
    side,
    ...more,
  });
  const along = (name: string, value: number, z: number, side: 'below' | 'above'): SizeMark => ({
    name,
    value,
    from: [-(z + value), side === 'below' ? -below : above],
    to: [-z, side === 'below' ? -below : above],
    side,
    ...nut.spread(value, 'along'),
  });
  return [
    along('length', sizes.length, bottom, 'below'),
    ...(flange ? [along('flange_thickness', flange.thickness, 0, 'above')] : []),
    ...(flange && flange.offset > 0 ? [along('flange_offset', flange.offset, bottom, 'above')] : []),
    diameter('thread_minor', thread.minor, top, 'left', nut.spread(thread.minor, 'inside')),
    diameter('thread_major', thread.major, bottom, 'right', nut.spread(thread.major, 'inside')),
    ...(body.shape === 'round'
      ? [diameter('body_diameter', body.across, top, 'left', nut.spread(body.across, 'outside'))]
      : []),
    ...(flange?.shape === 'round'
      ? [diameter('flange_diameter', flange.size[0], 0, 'right', nut.spread(flange.size[0], 'outside'))]
      : []),
  ];
}

/** The end seen from +Z, with the section plane. */
function endView(nut: NutInSight): DrawnView {
  const { sizes, design, towards } = nut;
  const { thread, holes } = sizes;
  const outlines = [nut.plate, nut.body].flatMap((outline): Stroke[] =>
    outline ? [{ kind: 'path', line: 'outline', points: outline, closed: true }] : [],
  );
  const rim = Math.max(reachOf(nut.plate ?? nut.body, towards), reachOf(nut.plate ?? nut.body, towards + 180)) + 3;
  const widest = Math.max(...[...(nut.plate ?? nut.body)].flatMap(([x, y]) => [Math.abs(x), Math.abs(y)])) + 2;
  const ends = [polar(rim, towards), polar(rim, towards + 180)] as const;
  const circle = holes && onCircle(holes.centres);
  return {
    title: `Seen from ${sizes.flange ? 'the body end' : '+Z'}`,
    strokes: [
      ...outlines,
      { kind: 'circle', line: 'outline', center: [0, 0], radius: thread.minor / 2 },
      { kind: 'arc', line: 'thin', center: [0, 0], radius: thread.major / 2, from: 95, to: 355 },
      ...(holes?.centres ?? []).flatMap((center) => holeStrokes(nut, center)),
      ...(circle ? [{ kind: 'circle', line: 'centre', center: [0, 0], radius: circle } as const] : []),
      ...crossing([0, 0], widest),
      line('centre', ...ends),
    ],
    hatched: [],
    sizes: endSizes(nut),
    letters: [
      ...ends.map((at, i) => ({ at, text: 'A', away: polar(1, towards + 180 * i) })),
      ...(holes?.centres ?? []).map((at, i) => ({
        at: polar(
          Math.hypot(...at) + (design.holes ? nut.bore / 2 : 0),
          (Math.atan2(at[1], at[0]) * 180) / Math.PI + 9,
        ),
        text: `${i + 1}`,
        away: [0, 0] as const,
      })),
    ],
  };
}

function holeStrokes(nut: NutInSight, center: Point): Stroke[] {
  const sunk = nut.design.holes && pocketOf(nut.design.holes);
  const strokes: Stroke[] = [{ kind: 'circle', line: 'outline', center, radius: nut.bore / 2 }];
  if (!sunk) return strokes;
  const seen = sunk.side === 'body' ? 'outline' : 'hidden';
  return [...strokes, { kind: 'circle', line: seen, center, radius: pocketRadius(sunk.pocket) }];
}

function endSizes(nut: NutInSight): SizeMark[] {
  const { sizes } = nut;
  const { body, flange, holes } = sizes;
  const marks: SizeMark[] = [];
  if (flange && flange.shape !== 'round') {
    const [x, y] = [flange.size[0] / 2, flange.size[1] / 2];
    const sign = flange.shape === 'square' ? '□' : '';
    marks.push({ ...mark('flange_diameter', flange.size[0], sign), from: [-x, -y], to: [x, -y], side: 'below' });
    if (flange.shape !== 'square')
      marks.push({ ...mark('flange_width', flange.size[1]), from: [x, -y], to: [x, y], side: 'right' });
  }
  if (flange?.flats !== undefined) {
    const y = flange.flats / 2;
    marks.push({
      ...mark('flange_flats', flange.flats),
      from: [flange.size[0] / 2, -y],
      to: [flange.size[0] / 2, y],
      side: 'right',
    });
  }
  if (body.shape !== 'round') {
    const half = body.across / 2;
    marks.push({
      ...mark('body_diameter', body.across, body.shape === 'square' ? '□' : ''),
      from: [-half, half],
      to: [half, half],
      side: 'above',
    });
  }
  const first = holes?.centres[0];
  if (holes && first) {
    const count = holes.centres.length;
    const last = holes.centres[count - 1]!;
    const angle = (Math.atan2(last[1], last[0]) * 180) / Math.PI;
    const edge = polar(nut.bore / 2, angle);
    marks.push({
      name: 'hole_diameter',
      value: holes.diameter,
      sign: `${count} × ⌀`,
      ...nut.spread(holes.diameter, 'inside'),
      from: last,
      to: [last[0] + edge[0], last[1] + edge[1]],
      side: 'leader',
    });
    const spacing = 2 * Math.hypot(...first);
    marks.push({
      ...mark('hole_circle', spacing, '⌀'),
      after: 'over the holes',
      from: [0, 0],
      to: polar(spacing / 2, angle + 24),
      side: 'leader',
    });
  }
  return marks;

  function mark(name: string, value: number, sign = '') {
    return { name, value, sign, ...nut.spread(value, 'outside') };
  }
}

function notesOf({ design, sizes }: NutInSight): string[] {
  const { thread, lead } = sizes;
  const { screw } = design;
  const width = grooveWidthAt(thread, thread.pitchDiameter);
  return [
    `Thread for ${screw.designation ?? 'the measured screw'}: ${screw.hand}-hand, ${screw.starts} ${screw.starts === 1 ? 'start' : 'starts'}, pitch ${plain(thread.pitch)}, lead ${plain(lead)}`,
    `Flank angle ${plain((Math.atan(thread.flankSlope) * 180) / Math.PI, 1)}°, pitch diameter ${plain(thread.pitchDiameter)}, groove there ${plain(width)} wide`,
    `Lead-in ${plain(sizes.leadIn, 2)} × 45° past the thread, edges broken ${plain(sizes.relief, 2)}${sizes.fillet > 0 ? `, fillet R ${plain(sizes.fillet, 2)}` : ''}`,
  ];
}

/** The screw at its likely size, standing in the middle of its play. */
function screwIn({ screw, finished, printer, printed }: NutDesign): Companion {
  const { bottom, top } = endsOf(printed);
  const beyond = Math.max(SCREW_BEYOND.least, SCREW_BEYOND.pitches * screw.lead);
  const bar = {
    ...finished.thread,
    minor: screw.minor.likely,
    pitchDiameter: screw.pitchDiameter.likely,
    major: screw.major.likely,
    pitch: printed.thread.pitch,
    grooveWidth: printed.thread.pitch / 2,
  };
  const columns = Math.min(96, threadColumns(bar, screw.lead, printer.chordError));
  const run = { starts: screw.starts, hand: screw.hand, columns, from: bottom - beyond, to: top + beyond };
  return { name: screw.designation ?? 'screw', mesh: sweepThread(screwBody(bar, run)) };
}

function onCircle(centres: readonly Point[]): number | undefined {
  const radius = Math.hypot(...centres[0]!);
  return centres.every((at) => Math.abs(Math.hypot(...at) - radius) < 1e-6) ? radius : undefined;
}
