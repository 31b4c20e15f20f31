import type { FitBlock, FitFigure } from '../../fit/stack/fit-block.js';
import type { Bounds, Finding } from '../../judge/check.js';
import { worked } from '../../units/format.js';
import { figure } from '../figures.js';
import type { Report } from '../report.js';
import { chart, label, px } from './chart.js';
import { table } from './html.js';

/** As wide as it stands in the page [px]. */
const WIDTH = 420;
/** Pitches that are seen. */
const SHOWN = 1.3;
/** Pixels of a screen in a millimetre, at 96 to the inch. */
const PIXELS_PER_MM = 96 / 25.4;

/** Sizes of a thread in use, mm. */
interface Thread {
  readonly major: number;
  readonly pitchDiameter: number;
  readonly minor: number;
  readonly groove: number;
  readonly pitch: number;
}

/** One gap: where, how much, and what it must keep. */
interface Gap {
  readonly where: string;
  readonly figure: FitFigure;
  readonly checks: readonly Finding[];
}

/**
 * Screw and nut cut along the axis, one pitch much enlarged, with the gaps between them; edges are blurred as wide as the
 * gaps are unsure. Drawn from the figures by which the checks judge. Empty where no fit was predicted.
 */
export function fitPicture({ fit, checks, dimensions }: Report): string {
  const thread = threadOf(dimensions.finished);
  if (!fit || !thread) return '';
  const of = (...ids: readonly string[]) => checks.filter(({ id }) => ids.includes(id));
  const gaps: readonly Gap[] = [
    { where: 'over the crests of the screw (major)', figure: fit.crest_gap, checks: of('thread-crest-gap') },
    { where: 'under the crests of the nut (minor)', figure: fit.root_gap, checks: of('thread-root-gap') },
    {
      where: 'flanks, both together, along the axis',
      figure: fit.backlash,
      checks: of('thread-axial', 'thread-backlash'),
    },
  ];
  const rows = gaps.map(({ where, figure: { least, likely, most }, checks: own }, i) => [
    `${i + 1}&nbsp;&nbsp;${where}`,
    `${worked(likely, 'mm')} (${worked(least, 'mm')} to ${worked(most, 'mm')})`,
    own
      .map(({ limit }) => limitWords(limit))
      .filter((words) => words !== '')
      .join(', '),
  ]);
  const times = Math.round(WIDTH / (SHOWN * thread.pitch) / PIXELS_PER_MM);
  const words = `Screw and nut cut, one pitch ${times} times enlarged`;
  return [
    '<div class="fit-pair">',
    `<figure class="fit">${drawing(thread, fit, gaps, words)}<figcaption>${words}; grey edges are as wide as they are unsure.</figcaption></figure>`,
    table('The gaps of the thread, mm', ['gap', 'likely (19 of 20)', 'must be'], rows),
    '</div>',
  ].join('\n');
}

function threadOf(sizes: Report['dimensions']['finished']): Thread | undefined {
  const { thread_major, thread_pitch_diameter, thread_minor, groove_width, pitch } = sizes;
  const all = [thread_major, thread_pitch_diameter, thread_minor, groove_width, pitch];
  if (!all.every((size): size is number => typeof size === 'number')) return undefined;
  const [major, pitchDiameter, minor, groove, along] = all as [number, number, number, number, number];
  return { major, pitchDiameter, minor, groove, pitch: along };
}

function limitWords(limit: Bounds | null): string {
  const { min, max } = limit ?? {};
  return [
    ...(min === undefined ? [] : [`at least ${figure(min)}`]),
    ...(max === undefined ? [] : [`at most ${figure(max)}`]),
  ].join(', ');
}

type Point = readonly [along: number, radius: number];

function drawing(thread: Thread, fit: FitBlock, gaps: readonly Gap[], words: string): string {
  const { major, minor, pitchDiameter, groove, pitch } = thread;
  const depth = (major - minor) / 2;
  const [top, bottom] = [major / 2 + 0.45 * depth, minor / 2 - fit.root_gap.likely - 0.45 * depth];
  const scale = WIDTH / (SHOWN * pitch);
  const height = Math.round((top - bottom) * scale);
  const at = ([along, radius]: Point): string => `${px(WIDTH / 2 + along * scale)} ${px((top - radius) * scale)}`;
  const slope = Math.tan((fit.flank_angle * Math.PI) / 180);
  const half = (radius: number) => groove / 2 - (radius - pitchDiameter / 2) * slope;
  const nut = teeth({ crest: minor / 2, root: major / 2, half, pitch });
  const [tip, core] = [major / 2 - fit.crest_gap.likely, minor / 2 - fit.root_gap.likely];
  const screwHalf = (radius: number) => half(radius) - fit.backlash.likely / 2;
  const screw = teeth({ crest: core, root: tip, half: screwHalf, pitch });
  const edge = (points: readonly Point[]) => points.map(at).join('L');
  const far = SHOWN * pitch;
  const closed = (points: readonly Point[], side: number) => `M${edge([[-far, side], ...points, [far, side]])}Z`;
  const unsure = (points: readonly Point[], { least, most }: FitFigure, share: number) =>
    `<path class="unsure" stroke-width="${px(Math.max(1, (most - least) * share * scale))}" d="M${edge(points)}"/>`;
  const mean = (tip + core) / 2;
  const flank = [pitch / 2, mean] as const;
  const between = (a: Point, b: Point, i: number) => mark(a, b, { i, at, isKept: isKept(gaps[i]!) });
  return chart(WIDTH, height, words, [
    `<rect class="air" x="0" y="0" width="${WIDTH}" height="${height}"/>`,
    `<path class="nut-cut" d="${closed(nut, top + depth)}"/>`,
    `<path class="screw-cut" d="${closed(screw, bottom - depth)}"/>`,
    unsure(
      [
        [-screwHalf(tip), tip],
        [screwHalf(tip), tip],
      ],
      fit.crest_gap,
      1,
    ),
    ...[-1, 1].map((side) =>
      unsure(
        [
          [side * screwHalf(core), core],
          [side * pitch * 0.75, core],
        ],
        fit.root_gap,
        1,
      ),
    ),
    ...[-1, 1].map((side) =>
      unsure(
        [
          [side * screwHalf(core), core],
          [side * screwHalf(tip), tip],
        ],
        fit.backlash,
        0.5 * Math.cos((fit.flank_angle * Math.PI) / 180),
      ),
    ),
    between([0, tip], [0, major / 2], 0),
    between([flank[0] * 1.05, core], [flank[0] * 1.05, minor / 2], 1),
    between([screwHalf(mean), mean], [half(mean), mean], 2),
    label(10, 20, 'nut'),
    label(10, height - 10, 'screw'),
  ]);
}

interface Teeth {
  readonly crest: number;
  readonly root: number;
  readonly half: (radius: number) => number;
  readonly pitch: number;
}

/** The outline of three teeth along the axis. */
function teeth({ crest, root, half, pitch }: Teeth): Point[] {
  return [-1, 0, 1].flatMap((tooth): Point[] => {
    const middle = tooth * pitch;
    return [
      [middle - half(crest), crest],
      [middle - half(root), root],
      [middle + half(root), root],
      [middle + half(crest), crest],
    ];
  });
}

function isKept({ checks }: Gap): boolean {
  return checks.every(({ word }) => word !== 'no');
}

/** A line across a gap with its number beside it. */
function mark(
  from: Point,
  to: Point,
  { i, at, isKept: kept }: { readonly i: number; readonly at: (point: Point) => string; readonly isKept: boolean },
): string {
  const [[x1, y1], [x2, y2]] = [from, to].map((point) => at(point).split(' ').map(Number)) as unknown as [Point, Point];
  const [x, y] = y1 === y2 ? [(x1 + x2) / 2, y1 - 22] : [x1 + 22, (y1 + y2) / 2];
  const word = kept ? '' : ' no-fit';
  return `<path class="gap${word}" d="M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}"/><circle class="${word.trim()}" cx="${px(x)}" cy="${px(y)}" r="11"/><text class="number" x="${px(x)}" y="${px(y + 4.5)}" text-anchor="middle">${i + 1}</text>`;
}
