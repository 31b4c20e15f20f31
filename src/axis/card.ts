import {
  type CardStep,
  everyMonth,
  firstMoves,
  level,
  makeSafe,
  tellController,
  turnByHand,
} from '../output/page/card-steps.js';
import { table } from '../output/page/html.js';
import { putSteps } from '../output/page/put-steps.js';
import { cardOf } from '../output/page/workshop-card.js';
import type { Report } from '../output/report.js';
import { xmlText } from '../output/xml-text.js';
import { NUT_FLOATS } from '../parts/common/cautions.js';
import { TIGHTEN_AGAIN } from '../parts/common/grip-hardware.js';
import { hardwareWords } from '../parts/common/hardware-words.js';
import { plain } from '../units/format.js';
import type { AxisDesign } from './axis-design.js';
import { PRINTED_NUTS } from './facts.js';
import { figureOf, type Known } from './known.js';
import { leftAtFarEnd } from './lengths.js';
import { inMountingOrder } from './mounting-order.js';
import type { AxisReport } from './report.js';

/** The card of a whole refit, in the order of work. */
export function axisCard(report: AxisReport, axis: AxisDesign): string {
  // the nut's own report knows its play, its wear and what a crash does
  const driven =
    report.parts.find(({ report: { part, drive } }) => PRINTED_NUTS.includes(part) && drive)?.report ?? report;
  const steps: (CardStep | undefined)[] = [
    measureFirst(axis),
    order(report),
    printAll(report),
    tryOut(report),
    block(driven),
    isolate(axis),
    takeOut(report),
    mountAll(report, axis),
    byHand(driven, axis, floatsAt(report)),
    level(driven),
    controller(driven, report, axis),
    firstMoves(driven),
    afterTheFirstHotDay(report),
    everyMonth(driven),
  ];
  return cardOf(
    report,
    steps.flatMap((step) => (step ? [step] : [])),
  );
}

/** What everything hangs on is measured once more while the machine still runs. */
function measureFirst({ screw, sheet, along, old }: AxisDesign): CardStep {
  const { motor, lengths = {} } = sheet;
  const given: readonly (readonly [string, number | undefined])[] = [
    ['screw, over the crests at three places', screw.major.likely],
    ['motor shaft, diameter', motor?.shaft?.diameter?.value],
    ['motor shaft, length that stands out', motor?.shaft?.length],
    ['from there to the first face at the far end', lengths.clear?.value],
    ['screw, length', along.screw?.likely],
    ['all that moves, along the screw', lengths.moving?.value],
    ['travel that is wanted', lengths.travel],
  ];
  const rows = given.map(([name, value]) => [
    xmlText(name),
    value === undefined ? 'not told' : plain(value, 2),
    '<span class="blank"></span>',
  ]);
  return {
    title: 'Measure, while it still runs',
    lines: [
      `Write down what the controller holds now: ${old?.stepsPerMm === undefined ? 'steps per mm' : `steps per mm, ${plain(old.stepsPerMm, 3)} by the sheet`}, direction, feed, travel limits. Photograph the wiring.`,
      'Calipers reach in with the power off, the plug pulled and the axis propped.',
      'What differs from here goes into the sheet, and the parts are made anew, before anything is taken out.',
    ],
    more: table('Sizes that all parts hang on, mm', ['', 'told', 'found'], rows, [1]),
  };
}

function order({ hardware, checks }: AxisReport): CardStep {
  const length = checks.find(({ id }) => id === 'axis-screw-length');
  return {
    title: 'Order and cut',
    lines: [
      ...(length ? [`Screw: ${length.message}.`] : []),
      ...(hardware.length > 0 ? [`Buy ${hardwareWords(hardware).join('; ')}.`] : []),
      'Deburr the ends of the screw and break their edges; look along it, and roll it on a plate: a bent one wobbles whatever holds it.',
    ],
  };
}

function printAll({ parts }: AxisReport): CardStep {
  return {
    title: 'Print',
    lines: [
      ...inMountingOrder(parts).map(({ role, report }) => `${role}: ${printWords(report)}.`),
      'Solid: walls all through or infill of 100 %, dry filament; every strength here is of solid plastic. Print a strip standing beside each part and break it by hand: if it parts cleanly between two layers, print hotter or slower before anything hangs on it.',
      'Leave scaling and hole widening off in the slicer unless a part’s own page says otherwise.',
    ],
  };
}

function printWords({ print, bodies, applied }: Report): string {
  const files = bodies.map(({ file, material, mass }) => `${file} in ${material}, ${mass.toFixed(1)} g`);
  const laid = print ? [`face up: ${print.face_up}`, print.support === 'none' ? 'no support' : 'with support'] : [];
  return [...files, ...laid, applied].join('; ');
}

/** What does not fit on the bench fits no better in the machine. */
function tryOut({ parts }: AxisReport): CardStep {
  const try_ = (of: string | readonly string[], words: string) =>
    parts.filter(({ report: { part } }) => [of].flat().includes(part)).map(({ role }) => `${role}: ${words}`);
  return {
    title: 'Try everything on the bench',
    lines: [
      'Let the parts cool and lie for a day, then measure them by the tables on their own pages.',
      ...try_(
        PRINTED_NUTS,
        'run it over the whole length of the new screw by hand, clean and dry. Where it binds it is worked to and fro until it does not.',
      ),
      ...try_('coupling', 'push each hub on its shaft, put the insert in, and turn it by hand.'),
      ...try_('sleeve', 'push it on both shafts.'),
      ...try_(
        'end-holder',
        'put in its bearing, if it has one, and the screw through it: it must turn with two fingers.',
      ),
      ...try_('collar', 'put it on the screw with its bearing, and turn it.'),
    ],
  };
}

/** Power and cuffs have their own step here. */
function block(driven: Report): CardStep {
  const { lines } = makeSafe(driven);
  return {
    title: 'Block the axis',
    lines: [
      ...lines.slice(1),
      'Use wood or a strap that carries all that hangs on the axis, under the carriage and not under the nut.',
    ],
  };
}

function isolate({ drive }: AxisDesign): CardStep {
  return {
    title: 'Isolate the power',
    lines: [
      'Switch off, pull the plug, wait for supplies to discharge, and keep the plug where you see it. Hair, cuffs and gloves out of the way.',
      'Never pull a motor’s connector with the power on: it ends its driver.',
      ...(drive.holding === 'holds' ? [] : ['From here on only the block holds the axis.']),
    ],
  };
}

function takeOut({ parts }: AxisReport): CardStep {
  const has = (part: string) => parts.some(({ report }) => report.part === part);
  return {
    title: 'Take out',
    lines: [
      'Mark what goes where: screw end up, hub to motor, plate to frame.',
      'Loosen the screws of the old coupling at both ends, then what holds the far end of the screw.',
      `Loosen the screws of the old nut${has('adapter') ? ' and keep the nut' : ''}, and draw the screw out through it towards the freer end. Let nothing hang by one screw.`,
      'Clean the faces that the new parts sit on, and the motor’s shaft.',
    ],
  };
}

function mountAll(report: AxisReport, { along }: AxisDesign): CardStep {
  const at = (known: Known, words: (value: string) => string) => {
    const value = figureOf(known);
    return value ? [words(plain(value.likely, 2))] : [];
  };
  const places: Readonly<Record<string, readonly string[]>> = {
    coupling: [
      ...at(along.shaftRoom, (room) => `its motor half stands ${room} mm off the motor plate`),
      ...at(along.screwStart, (start) => `the screw begins ${start} mm from the plate`),
    ],
    sleeve: at(along.screwStart, (start) => `the screw begins ${start} mm from the plate`),
  };
  const parts = inMountingOrder(report.parts);
  const lastNut = parts.findLast(({ report: { part } }) => HOLD_A_NUT.includes(part));
  const steps = parts.flatMap((one) => [
    stepsOf(one.role, places[one.report.part] ?? [], putSteps(one.report)),
    ...(one === lastNut ? [stepsOf('screw', [], [turnIn(along)])] : []),
  ]);
  const settled = parts.flatMap(({ role, report: { mounting } }) =>
    (mounting?.settle ?? []).map((step) => `${role}: ${step}`),
  );
  return {
    title: 'Mount, from the nut to the far end',
    lines: [findsItsPlace(report)],
    more: [...steps, stepsOf('all parts are in', [], settled)].join(''),
  };
}

/** What holds a nut, or is one: the screw goes through it. */
const HOLD_A_NUT: readonly string[] = [...PRINTED_NUTS, 'adapter'];

/** A part by its role, where it stands, and its steps in order. */
function stepsOf(role: string, places: readonly string[], steps: readonly string[]): string {
  const head = [xmlText(role), ...places.map(xmlText)];
  const items = steps.map((step) => `<li>${xmlText(step)}</li>`).join('');
  return `<p><strong>${head[0]}</strong>${head.length > 1 ? `: ${head.slice(1).join('; ')}` : ''}</p><ol class="own">${items}</ol>`;
}

function turnIn({ screwStart }: AxisDesign['along']): string {
  const start = figureOf(screwStart);
  const until = start ? ` until it begins ${plain(start.likely, 2)} mm from the motor plate` : '';
  return `Turn the screw by hand through the nut, from the freer end${until}. What stands between nut and coupling goes onto it on the way.`;
}

/** Nothing is tight before the axis has shown where it wants to be. */
function findsItsPlace(report: AxisReport): string {
  const floats = floatsAt(report);
  const hasPlate = report.parts.some(({ report: { part } }) => part === 'motor-plate');
  const atMotor = [...(hasPlate ? ['the motor plate'] : []), ...(floats ? [] : ['the nut'])];
  const loose = floats ? 'What holds the ends' : 'Every screw of nut and ends';
  return [
    `${loose} stays finger tight until the axis has found its place, when all parts are in:`,
    ...(atMotor.length > 0
      ? [
          `drive it by hand to the motor end and tighten ${atMotor.join(', then ')} there, crosswise in two rounds, then`,
        ]
      : ['drive it by hand']),
    'to the far end and tighten what holds the screw.',
    ...(floats ? ['A nut that floats stays free.'] : []),
  ].join(' ');
}

/** Whether a nut of it floats, or one on its plate. */
function floatsAt({ parts }: AxisReport): boolean {
  return parts.some(({ report: { cautions } }) => cautions.some((text) => text.startsWith(NUT_FLOATS)));
}

function byHand(driven: Report, { along }: AxisDesign, floats: boolean): CardStep {
  const step = turnByHand(driven);
  const gap = leftAtFarEnd(along);
  return {
    ...step,
    lines: [
      ...step.lines,
      ...(along.travel === undefined || gap === undefined
        ? []
        : [
            `Begin ${plain(along.nearGap, 0)} mm off the first thing at the motor end: ${plain(along.travel, 0)} mm further at least ${plain(gap, 0)} mm must be left at the far end.`,
          ]),
      floats
        ? 'Push the nut aside by hand at both ends of the travel: it must still give every way. Where it stands hard to one side, motor or holder stand off the axis, and are moved.'
        : 'Loosen the nut’s screws once more where it goes tight: if it frees itself, motor or holder stand off the axis, and are moved, not the nut.',
    ],
  };
}

/** The nut's own step, with what the change of screw means. */
function controller(driven: Report, { checks }: AxisReport, { along }: AxisDesign): CardStep | undefined {
  const step = tellController(driven);
  if (!step) return undefined;
  const change = checks.find(({ id }) => id === 'axis-steps')?.message;
  return {
    ...step,
    title: 'Set steps and direction',
    lines: [
      ...step.lines.slice(0, 1),
      ...(change === undefined
        ? []
        : [`${change.slice(0, 1).toUpperCase()}${change.slice(1)}${change.endsWith('.') ? '' : '.'}`]),
      'Power on with the axis in mid travel and nothing near it. Move it 1 mm: where it goes the other way, power off and turn the direction round, once.',
      ...step.lines.slice(2),
      ...(along.travel === undefined ? [] : [`Travel limits: ${plain(along.travel, 0)} mm apart.`]),
    ],
  };
}

function afterTheFirstHotDay({ parts }: AxisReport): CardStep {
  const again = parts.filter(({ report: { cautions } }) => cautions.includes(TIGHTEN_AGAIN)).map(({ role }) => role);
  const play = parts.find(({ report: { fit } }) => fit)?.report.fit?.backlash.most;
  return {
    title: 'After the first hot day: retighten',
    lines: [
      'Cold, power off, the axis blocked. Plastic settles under screws: tighten those of every part once more, crosswise.',
      ...(again.length > 0 ? [`${again.join(', ')}: ${TIGHTEN_AGAIN}`] : []),
      ...(play === undefined
        ? []
        : [`Measure the play of the nut again: it should still be below ${plain(play, 2)} mm.`]),
      'Paint a line across heads and parts, and look at it now and then.',
    ],
  };
}
