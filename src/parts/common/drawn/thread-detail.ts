import { grooveWidthAt, type ToothForm } from '../../../mechanics/thread/nut-thread.js';
import type { AskedView, Letter, Point, SizeMark, Stroke } from '../../part-views.js';
import type { SizeWay } from './spread.js';
import { line, ring } from './strokes.js';

/** A thread at the sizes of one choice. */
interface ThreadInSight {
  readonly sizes: { readonly thread: ToothForm };
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** Threaded stretches of a bore, the working one first. */
interface Stretches {
  readonly threads: readonly { readonly bottom: number; readonly top: number }[];
}

/** ISO 5455: a detail is drawn five times as large at least; and a pitch so wide [mm of paper]. */
const LEAST_SCALE = 5;
const PITCH_ON_PAPER = 7.5;
const LETTER = 'T';

/**
 * The thread cut in a plane through the axis, two grooves of it, as the nut is cut: on paper along the axis
 * to the right, away from the axis upwards.
 */
export function threadDetail({ sizes, spread }: ThreadInSight): AskedView {
  const { thread } = sizes;
  const { pitch, minor, pitchDiameter, major } = thread;
  const half = (diameter: number) => grooveWidthAt(thread, diameter) / 2;
  const [bottom, top] = [minor / 2, major / 2];
  const [left, right, far] = [-0.75 * pitch, 1.75 * pitch, top + 0.35 * pitch];
  const groove = (at: number): Point[] => [
    [at - half(minor), bottom],
    [at - half(major), top],
    [at + half(major), top],
    [at + half(minor), bottom],
  ];
  const cut: Point[] = [[left, bottom], ...groove(0), ...groove(pitch), [right, bottom]];
  const broken: Point[] = [
    [right, bottom],
    [right, far],
    [left, far],
    [left, bottom],
  ];
  const onPitch = pitchDiameter / 2;
  const across = (name: string, value: number, to: Point): SizeMark => {
    return { name, value, sign: '⌀', ...spread(value, 'inside'), from: [to[0], 0], to, side: 'leader' };
  };
  const along = (name: string, value: number, from: number, side: 'above' | 'below'): SizeMark => {
    const way = name === 'pitch' ? 'along' : 'inside';
    return { name, value, ...spread(value, way), from: [from, onPitch], to: [from + value, onPitch], side };
  };
  return {
    title: LETTER,
    enlarged: Math.max(LEAST_SCALE, PITCH_ON_PAPER / pitch),
    strokes: [
      { kind: 'path', line: 'outline', points: cut },
      { kind: 'path', line: 'thin', points: broken },
      line('centre', [left, onPitch], [right, onPitch]),
    ],
    hatched: [[[...cut, ...broken.slice(1, -1)]]],
    sizes: [
      along('groove_width', grooveWidthAt(thread, pitchDiameter), -half(pitchDiameter), 'above'),
      along('pitch', pitch, half(pitchDiameter), 'below'),
      across('thread_major', major, [pitch + half(major), top]),
      across('thread_pitch_diameter', pitchDiameter, [right, onPitch]),
      across('thread_minor', minor, [(pitch + half(minor) + right) / 2, bottom]),
    ],
    letters: [],
  };
}

/** The circle in the section around what the detail shows: the middle of the first stretch. */
export function detailMark(
  { sizes: { thread } }: Pick<ThreadInSight, 'sizes'>,
  { threads: [working] }: Stretches,
  letter = LETTER,
): { readonly strokes: readonly Stroke[]; readonly letters: readonly Letter[] } {
  if (!working) return { strokes: [], letters: [] };
  const { pitch, minor, major } = thread;
  const radius = Math.max(0.75 * pitch, 0.8 * (major - minor));
  const at: Point = [-(working.bottom + working.top) / 2, -(minor + major) / 4];
  return {
    strokes: [ring('thin', at, radius)],
    letters: [
      {
        at,
        text: letter,
        away: [Math.SQRT1_2, Math.SQRT1_2],
        around: radius,
      },
    ],
  };
}
