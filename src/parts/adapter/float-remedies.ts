import type { Remedy } from '../../judge/advice.js';
import type { LimitsInForce } from '../../judge/check.js';
import { rounded } from '../../units/format.js';
import { exactly, type Measured, scaled, sum } from '../../units/measured.js';
import { holeResidual } from '../common/residual.js';
import { boresEntered } from './bores-entered.js';
import { sleeveStand } from './checks/joints.js';
import type { AdapterDesign } from './dimensions.js';
import { roomBeside } from './drilled.js';
import { leftInHoles } from './float-stop.js';
import { widest } from './seated-nut.js';

const check = 'mount-float';

/**
 * What stops a floating nut sideways, each way: what stands in its holes, less what the printed pattern may come out off; the
 * plate's bore around its body, the step around its flange, the carriage's opening around what reaches into it.
 */
export function floatRooms(design: AdapterDesign): {
  readonly holes: Measured;
  readonly bore?: Measured;
  readonly step?: Measured;
  readonly carriage?: Measured;
} {
  const { nut, layout } = design;
  const entered = boresEntered(design).find(({ of }) => of === 'carriage');
  const { bore, outerStep } = layout.plate;
  const beside = (opening: number, body: Measured) =>
    scaled(sum(exactly(opening), sum(holeResidual(design, opening), scaled(body, -1))), 0.5);
  return {
    holes: leftInHoles(design),
    ...(nut?.stands === 'through' ? { bore: beside(bore, nut.body) } : {}),
    ...(nut?.seat === 'outside' && outerStep ? { step: beside(outerStep.diameter, exactly(widest(nut.flange))) } : {}),
    ...(entered ? { carriage: scaled(entered.room, 0.5) } : {}),
  };
}

/** Ways to let a nut float as far as it should, and no further: its holes, what opens around it, what stands in the holes. */
export function floatRemedies(design: AdapterDesign, { pass }: LimitsInForce): readonly Remedy[] {
  const { nut, spacers } = design;
  if (!nut || !spacers) return [];
  const { holes } = floatRooms(design);
  const { min = 0, max = Infinity } = pass;
  const wanted = Math.min(Math.max(spacers.sideways, min), max);
  // what calipers and printer leave open is kept off the limit on that side
  const aim = ({ least, likely, most }: Measured) =>
    Math.min(Math.max(wanted, min + likely - least), Math.max(0, max - (most - likely)));
  const isTight = holes.least < min;
  const opened = openedFor(design, aim, min);
  const open = openWords(opened);
  const short = 2 * (aim(holes) - holes.likely);
  const drill = upTenths(nut.pattern.diameter.likely + short);
  const drilled = isTight && drill <= roomBeside(nut) + 1e-9 ? { 'nut.holes.diameter': drill } : {};
  const pin = downTenths(spacers.pin - short);
  // bare screws are thinner than what stood around them, and may still want wider holes
  const bare = upTenths(nut.pattern.diameter.likely + short - (spacers.pin - nut.pattern.screwDiameter));
  const bared = bare > nut.pattern.diameter.likely ? { 'nut.holes.diameter': bare } : {};
  const misses = isTight || holes.most > max;
  const sleeves = isTight ? 'thinner sleeves' : 'thicker sleeves';
  const ways: readonly (readonly [string, Remedy['set']])[] = [
    ['drill the holes of the nut', drilled],
    [open, opened],
    ...(isSet(drilled) && isSet(opened)
      ? ([[`drill the holes of the nut and ${open}`, { ...drilled, ...opened }]] as const)
      : []),
    ...(spacers.spacer === 'sleeve' && misses
      ? ([
          [sleeves, { 'float.sleeve': pin, ...opened }],
          ['no sleeves, its screws never tightened', { 'float.spacer': 'bare', ...bared, ...opened }],
        ] as const)
      : []),
    ...(spacers.spacer === 'bare' && misses
      ? ([['sleeves', { 'float.spacer': 'sleeve', 'float.sleeve': pin, ...opened }]] as const)
      : []),
  ];
  return ways.filter(([, set]) => isSet(set)).map(([say, set]) => ({ check, say, set }));
}

function isSet(changes: Remedy['set']): boolean {
  return Object.keys(changes).length > 0;
}

/** Ways to carry sleeves that press too hard: on brass, or on a wider ring, for which the nut's holes are drilled. */
export function sleeveRemedies(design: AdapterDesign, limits: LimitsInForce): readonly Remedy[] {
  const stands = sleeveStand(design);
  const { nut, spacers } = design;
  if (!stands || !nut || spacers?.spacer !== 'sleeve') return [];
  const { max = Infinity } = limits.of(stands.own).pass;
  const sleeve = upTenths(Math.sqrt((4 * stands.force) / (Math.PI * max) + stands.diameter ** 2));
  const play = Math.max(2 * spacers.sideways, nut.pattern.diameter.likely - spacers.pin);
  const hole = Math.min(upTenths(sleeve + play), downTenths(roomBeside(nut)));
  const one = { check: 'sleeve-seat' };
  return [
    { ...one, say: 'inserts, whose brass carries them', set: { 'nut.joint': 'insert' } },
    {
      ...one,
      say: 'wider sleeves, for which the holes of the nut are drilled',
      set: { 'float.sleeve': sleeve, 'nut.holes.diameter': hole },
    },
  ];
}

/** Bore and step of the plate, and the carriage's bore, where they leave the nut less than it should have. */
function openedFor(
  design: AdapterDesign,
  aim: (room: Measured) => number,
  min: number,
): Readonly<Record<string, number>> {
  const { bore, step, carriage: beyond } = floatRooms(design);
  const { layout, carriage } = design;
  const { plate } = layout;
  const wider = (path: string, size: number, room: Measured | undefined) =>
    room && room.least < min ? { [path]: upTenths(size + 2 * (aim(room) - room.likely)) } : {};
  return {
    ...wider('plate.bore', plate.bore, bore),
    ...(plate.outerStep ? wider('plate.step.diameter', plate.outerStep.diameter, step) : {}),
    ...(carriage.bore ? wider('carriage.bore', carriage.bore.likely, beyond) : {}),
  };
}

function openWords(opened: Readonly<Record<string, number>>): string {
  const ofCarriage = Object.keys(opened).filter((path) => path.startsWith('carriage.')).length;
  if (ofCarriage === 0) return 'open the plate wider';
  return ofCarriage < Object.keys(opened).length ? 'open plate and carriage wider' : 'open the carriage wider';
}

function upTenths(value: number): number {
  return rounded(Math.ceil(10 * value - 1e-9) / 10);
}

function downTenths(value: number): number {
  return rounded(Math.floor(10 * value + 1e-9) / 10);
}
