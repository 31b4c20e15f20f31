import type { Finding } from '../../judge/check.js';
import { DRIVE_CAUTIONS } from '../../parts/common/cautions.js';
import { TIGHTEN_AGAIN } from '../../parts/common/grip-hardware.js';
import { type SizeMark, viewsOf } from '../../parts/part-views.js';
import { plain, worked } from '../../units/format.js';
import { sizeText } from '../drawing/size-text.js';
import { figure } from '../figures.js';
import type { Report } from '../report.js';
import { words } from '../terminal/layout.js';
import { xmlText } from '../xml-text.js';
import { table } from './html.js';
import { putSteps } from './put-steps.js';

/** First moves are made at this share of the feed. */
const FIRST_MOVES = 0.1;

/** Views of a part, with their sizes. */
export type DrawnOnes = Parameters<typeof viewsOf<{ readonly sizes: readonly SizeMark[] }>>[0];

/** One step of a card. */
export interface CardStep {
  readonly title: string;
  /** texts, escaped when they are written */
  readonly lines: readonly string[];
  /** what is to be filled in, as HTML */
  readonly more?: string;
}

/** Whether a part tells about screw or printer, and is mounted nowhere. */
export function isTestPiece(part: string): boolean {
  return part === 'coupon' || part === 'gauge';
}

export function makeSafe({ drive, checks }: Report): CardStep {
  const holding = {
    falls: 'Without power this axis falls. Prop it or run it to its lowest end before anything is loosened.',
    'may-creep': 'Without power this axis may creep down. Prop it; do not trust the screw.',
    holds: 'By its screw this axis holds without power, while it is undisturbed. Prop it all the same.',
  };
  const vertical = checks.some(({ id }) => id === 'drive-holding');
  return {
    title: 'Make safe and block the axis',
    lines: [
      'Switch off, pull the plug, wait for supplies to discharge. Hair, cuffs and gloves out of the way.',
      ...(drive && vertical ? [holding[drive.holding]] : ['Block whatever can move by its own weight.']),
    ],
  };
}

/** How each body is printed. */
export function printStep({ print: advice, bodies, applied }: Report): CardStep | undefined {
  if (!advice) return undefined;
  const files = bodies.map(({ file, material, mass }) => `${file} in ${material}, ${mass.toFixed(1)} g`);
  return {
    title: 'Print',
    lines: [
      `Face up: ${advice.face_up}${advice.support === 'none' ? '; no support' : '; with support'}.`,
      ...files.map((file) => `${file}.`),
      'Solid: walls all through or infill of 100 %, dry filament; every strength here is of solid plastic. Print a strip standing beside it and break it by hand: if it parts cleanly between two layers, print hotter or slower before anything hangs on it.',
      `Leave scaling and hole widening off in the slicer unless it says otherwise here: ${applied}.`,
    ],
  };
}

export function measure({ cautions, part }: Report, finished: DrawnOnes): CardStep {
  const marks = viewsOf<{ readonly sizes: readonly SizeMark[] }>(finished)
    .flatMap(({ sizes }) => sizes)
    .filter(({ spread }) => spread !== undefined);
  // what a test piece says of it stands in its own step
  const moist = isTestPiece(part) ? [] : cautions.filter((text) => /moisture|room air/.test(text));
  return {
    title: 'Condition and measure',
    lines: [
      'Let it cool on the bed, take the first layer’s rim off the edges, then measure at three places.',
      ...moist,
    ],
    more: marks.length === 0 ? '' : sizesToMeasure(marks),
  };
}

function sizesToMeasure(marks: readonly SizeMark[]): string {
  const rows = marks.map((mark) => [xmlText(words(mark.name)), xmlText(sizeText(mark)), '<span class="blank"></span>']);
  return table('Sizes to find, mm', ['', 'should be', 'found'], rows, [1]);
}

export function chase({ fit, drive, cautions }: Report): CardStep | undefined {
  if (!fit && !drive) return undefined;
  const screw = drive?.designation ?? 'the screw';
  return {
    title: 'Chase or lap',
    lines: [
      `Run ${screw} through by hand, clean and dry. Where it binds, work it to and fro; a spare end of the screw with a slot filed across its thread chases best.`,
      `If it still drags, run it in on the screw with ${cracks(cautions).length > 0 ? 'silicone or PFPE' : 'plain'} grease at low speed. No abrasive: it embeds in plastic and laps the screw.`,
      ...(fit
        ? [
            `Play to find along the axis: about ${length(fit.backlash.likely)} mm, from ${length(Math.max(0, fit.backlash.least))} to ${length(fit.backlash.most)}.`,
          ]
        : []),
    ],
  };
}

/** How it goes on, in the order of work of its kind. */
export function mount(report: Report): CardStep | undefined {
  const { mounting } = report;
  if (!mounting) return undefined;
  return { title: 'Mount in this order', lines: [...putSteps(report), ...mounting.settle] };
}

/** How a piece that tells about screw or printer is used; it carries nothing. */
export function tryOut({ cautions }: Report): CardStep {
  return { title: 'Try it and write down', lines: cautions.filter((text) => !DRIVE_CAUTIONS.includes(text)) };
}

export function turnByHand({ drive }: Report): CardStep {
  return {
    title: 'Turn by hand over the whole travel',
    lines: [
      'Power off. It must turn evenly from end to end. A tight spot once a turn is a bent screw or a crooked coupling; one that grows towards an end is alignment.',
      ...(drive ? [`One turn moves the axis ${plain(drive.lead)} mm; measure it over ten.`] : []),
    ],
  };
}

export function tellController({ drive, checks }: Report): CardStep | undefined {
  if (!drive) return undefined;
  return {
    title: 'Tell the controller',
    lines: [
      `Steps per mm: ${plain(drive.steps_per_mm)} (lead ${plain(drive.lead)} mm, full step ${figure(drive.full_step)} mm). Read the value that is set now, and write it down first.`,
      ...(drive.hand === 'left'
        ? [
            'A left-hand screw: in place of a right-hand one the direction turns round. Invert it in the controller, or reverse one coil pair with the power off, not both.',
          ]
        : ['If the screw that came out was left-hand, the direction turns round: invert it in the controller.']),
      `Feed at most ${worked(drive.feed_limit.value, 'mm/s')} mm/s on this axis, jogging and homing included.`,
      ...(check(checks, 'thread-stall')
        ? ['Set travel limits and end stops inside the nut’s ends: a crash pushes with up to twice the stall force.']
        : []),
      ...(drive.play
        ? [`Play ${length(drive.play.axial)} mm at each reversal, if the controller can take it up.`]
        : []),
    ],
  };
}

export function firstMoves({ drive, checks }: Report): CardStep {
  const crash = check(checks, 'end-stop')?.message;
  const wanted = drive?.motor_rpm === undefined ? undefined : (drive.motor_rpm * drive.lead) / 60;
  const feed = drive && Math.min(wanted ?? drive.feed_limit.value, drive.feed_limit.value);
  return {
    title: 'First moves at a tenth of the feed',
    lines: [
      feed === undefined
        ? 'Run at a tenth of the usual feed, a hand on the stop.'
        : `Run at ${worked(FIRST_MOVES * feed, 'mm/s')} mm/s, a hand on the stop. Command 50 mm, measure 50 mm, in the middle of the travel and near both ends.`,
      ...(crash === undefined
        ? []
        : [
            `Before the first fast move: fit end stops at both ends and try that each stops the motor. ${sentence(crash)}`,
          ]),
    ],
  };
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

export function level({ drive }: Report): CardStep | undefined {
  if (!drive) return undefined;
  const leftHand = drive.hand === 'left';
  return {
    title: 'Level both ends',
    lines: [
      'Where two screws carry the axis: power off, the same block under both ends, hold one coupling and turn the other.',
      `To lift an end, turn its screw ${leftHand ? 'counter-clockwise' : 'clockwise'} as seen from above, wherever the motor sits: ${worked(36 / drive.lead, '°')}° for 0.1 mm. Then check near both ends of the travel.`,
    ],
  };
}

export function afterADay({ fit, cautions }: Report): CardStep {
  const play = fit ? `the play should still be below ${length(fit.backlash.most)} mm` : 'compare with the sizes above';
  return {
    title: 'After a day: retighten and remeasure',
    lines: [
      ...cautions.filter((text) => text === TIGHTEN_AGAIN),
      `Plastic settles under screws. Tighten them once more, and measure again: ${play}. Note it here for the next time.`,
    ],
  };
}

/** A worn nut is changed before it lets go. */
export function everyMonth({ checks }: Report): CardStep | undefined {
  const worn = check(checks, 'wear-limit');
  if (typeof worn?.value !== 'number') return undefined;
  const drops = checks.some(({ id }) => id === 'drive-holding')
    ? ' A nut that is worn through drops the axis: prop it before you look.'
    : '';
  return {
    title: 'Every month: look at the play',
    lines: [
      `Replace the nut when its play has grown by ${length(worn.value)} mm, a quarter of its tooth, or when plastic lies on the screw.${drops}`,
    ],
  };
}

/** A length that was worked out, in mm. */
function length(value: number): string {
  return worked(value, 'mm');
}

/** What is said of plastics that crack in oil. */
function cracks(cautions: readonly string[]): readonly string[] {
  return cautions.filter((text) => /cracks under stress/.test(text));
}

function check(checks: readonly Finding[], id: string): Finding | undefined {
  return checks.find((finding) => finding.id === id);
}
