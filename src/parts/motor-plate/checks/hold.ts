import { type Check, type Limits, notJudged, type Outcome, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { dryFriction } from '../../../mechanics/friction.js';
import { allowableStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import { HOURS } from '../../../mechanics/strength/plastic.js';
import { creepModulus } from '../../../mechanics/strength/stiffness.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { type BoltedPattern, clampForce, clampLeft, judgeClamp } from '../../common/bolting.js';
import { heat, judgeHeat } from '../../common/checks.js';
import { seatDiameter } from '../../common/joints.js';
import { judgeCases, judgedTemperature, type LoadCase } from '../../common/load-cases.js';
import { askingPlastic } from '../../common/plastic-told.js';
import { judgeFloors } from '../../common/pocket-floor.js';
import { stallForce } from '../../common/stall-force.js';
import { bendPlate, plateReach } from '../bending.js';
import type { MotorPlateDesign } from '../dimensions.js';
import { goesIntoMotor, goesIntoPlate, loaded, thrustOf, untoldLoads, untoldSeat } from '../loads.js';
import { motorGrip } from '../plan.js';

type PlateCheck = Check<MotorPlateDesign>;
const about = { group: 'plate', question: 'holds', source: 'derived: one law of strength', grave: true } as const;

/** The face of a motor is the warmest thing on its axis. */
const face: PlateCheck = askingPlastic({
  ...heat,
  title: "Reserve before it softens at the motor's face",
  moves: 'motor.temperature, material',
  run: ({ duty, material }, { pass }) =>
    judgeHeat({ material, temperature: judgedTemperature(duty), where: "at the motor's face" }, pass, {
      cure: 'use a material that softens later, less motor current (30 % less is half the heat), or a metal plate between',
    }),
});

/** The plate hangs between motor and machine. */
const plateBending: PlateCheck = {
  ...about,
  id: 'plate-bending',
  title: 'Bending of the plate',
  unit: 'MPa',
  moves: 'plate.thickness, machine.holes, material, motor.temperature',
  run: (design, limits) => {
    const { along, moment, words } = thrustOf(design);
    const { strip } = bendPlate(design);
    const borne = ({ force, duration }: LoadCase) => ({
      value: force * strip.stress,
      allowed: allowableStress(design.material, {
        kind: 'tension',
        duration,
        temperature: judgedTemperature(design.duty),
      }),
      words: `${words}: ${plain(along, 1)} N along and ${plain(moment, 0)} N·mm across the shaft, ${plain(strip.section.area, 0)} mm² bend at ${plain(strip.distance, 1)} mm from the axis`,
    });
    const cure = 'make the plate thicker, or bolt it nearer to the motor';
    return orUntold(design, judgeCases(loaded(design), limits, { borne, cure }));
  },
};

/** A stalled motor pushes on its own plate with all that its screw makes of its torque; who does not tell the screw hides it. */
const motorStall: PlateCheck = {
  ...about,
  id: 'motor-stall',
  title: 'Push of the stalled motor',
  unit: 'N',
  limits: { pass: {} },
  moves: 'screw, motor.torque, thrust_bearing, bearing_on',
  run: (design) => {
    if (!goesIntoPlate(design)) return undefined;
    const { screw, duty } = design;
    const force = screw && stallForce({ duty, screw });
    if (force === undefined)
      return notJudged(
        ...untoldSeat(design),
        ...(screw ? [] : ['screw']),
        ...(duty.motor?.torque === undefined ? ['motor.torque'] : []),
      );
    return valued(
      exactly(force),
      `stalled it pushes with ${plain(force, 0)} N along the screw; bending and clamps are judged by it`,
    );
  },
};

/** A plate that leans in time takes the shaft out of line. */
const plateSlope: PlateCheck = {
  ...about,
  id: 'plate-slope',
  question: 'in-line',
  title: 'Slope of the motor, plate crept',
  unit: '°',
  source: 'derived: beam with the modulus of its time and heat',
  moves: 'plate.thickness, machine.holes, material, motor.temperature, coupling',
  run: (design, inForce) => {
    const { drive, angle, material, duty } = design;
    if (drive === 'belt') return undefined;
    const missing = [...(angle === undefined ? ['coupling'] : []), ...untoldLoads(design)];
    if (angle === undefined || missing.length > 0) return notJudged(...missing);
    const hours = HOURS[standingDuration(duty.axis)];
    const temperature = judgedTemperature(duty);
    const modulus = creepModulus(material, { hours, temperature });
    const when = `after ${plain(hours, 0)} h at ${plain(temperature, 0)} °C`;
    if (modulus === 0) return told('fail', `${material.name} is soft ${when}: it leans without end`);
    const slope = (thrustOf(design).together * bendPlate(design).lean) / modulus;
    const own = soft({ max: angle / 2 }, { max: angle });
    const { pass } = inForce.of(own);
    const cure = keeps(slope, pass) ? '' : '; a thicker plate leans less by the cube of its thickness';
    return valued(
      exactly(slope),
      `${when}; half of the ${plain(angle, 2)}° that the coupling takes is left for it${cure}`,
      own,
    );
  },
};

/** The holes to the machine as bolting sees them: a washer over a slot has less under it. */
function machinePattern({ joints, finished }: MotorPlateDesign): BoltedPattern {
  const { machine, thickness } = finished;
  const across = seatDiameter(joints.machine);
  const hole = machine.slot
    ? { ...joints.machine, diameter: Math.sqrt((4 * machine.diameter * across) / Math.PI) }
    : joints.machine;
  return { hole, centres: machine.centres, length: thickness, edge: plateReach(finished) };
}

function motorPattern({ joints, finished }: MotorPlateDesign): BoltedPattern {
  return { hole: joints.motor, centres: finished.motor.centres, length: motorGrip(finished) };
}

const clamp = { group: 'bolts', question: 'holds', unit: '', source: 'derived: relaxation of held strains' } as const;

/** Screws that go slack let the motor move. */
const motorClamp: PlateCheck = {
  ...clamp,
  id: 'bolt-clamp-motor',
  title: "Clamp force that the motor's screws keep, over the load",
  moves: 'material, motor.temperature, motor_heads',
  run: (design, limits) =>
    judgePatternClamp(design, { pattern: motorPattern(design), goesIn: goesIntoMotor(design) }, limits),
};

/** Screws to the machine that go slack let motor and plate move together. */
const machineClamp: PlateCheck = {
  ...clamp,
  id: 'bolt-clamp',
  title: 'Clamp of screws over load',
  moves: 'machine.holes, material, motor.temperature',
  run: (design, limits) =>
    judgePatternClamp(design, { pattern: machinePattern(design), goesIn: goesIntoPlate(design) }, limits),
};

/** Screws, and whether what acts along the screw of the axis pulls on them. */
interface Clamping {
  readonly pattern: BoltedPattern;
  readonly goesIn: boolean;
}

function judgePatternClamp(
  design: MotorPlateDesign,
  { pattern, goesIn }: Clamping,
  limits: Parameters<typeof judgeClamp>[2],
): ReturnType<typeof judgeClamp> {
  return orUntold(
    design,
    judgeClamp(pattern, { ...loaded(design, goesIn), material: design.material, carries: 'away' }, limits),
  );
}

/** What is not judged names what the sheet does not say of the loads, where it does not say it. */
function orUntold(design: MotorPlateDesign, found: Outcome | undefined): Outcome | undefined {
  const missing = untoldLoads(design);
  return found?.kind === 'not-judged' && missing.length > 0 ? notJudged(...missing) : found;
}

/** The floor under sunk heads is a ledge that the motor's screws pull on. */
const floorBending: PlateCheck = {
  ...about,
  id: 'floor-bending',
  title: "Bending of the floor under the motor's sunk heads",
  unit: 'MPa',
  moves: 'plate.thickness, motor_heads, duty.load, material, motor.temperature',
  run: (design, limits) => {
    const { finished, joints, material } = design;
    const { centres, sunk } = finished.motor;
    if (!sunk) return undefined;
    const pattern = {
      hole: joints.motor,
      centres,
      pocket: { kind: 'round' as const, ...sunk },
      floor: motorGrip(finished),
    };
    const pulled = { ...loaded(design, goesIntoMotor(design)), material };
    return orUntold(design, judgeFloors([{ ...pattern, carries: 'away' }], pulled, limits));
  },
};

/** What slides along its slots, or turns about its only screw, once friction lets go; elsewhere pilot and shanks catch it. */
const SLIDES = 1;

/** Torque, belt and a motor that lies want to turn and shift the plate: friction alone keeps it where it was set. */
const slip: PlateCheck = {
  ...clamp,
  id: 'slip',
  question: 'in-line',
  title: 'Friction that the screws keep, over what torque, belt and weight ask',
  moves: 'machine.holes, slots, motor.torque, belt_pull, motor.weight, duty.load, material, motor.temperature',
  run: (design, inForce) => {
    const missing = [...(design.motor.torque === undefined ? ['motor.torque'] : []), ...untoldLoads(design)];
    if (missing.length > 0) return notJudged(...missing);
    const rows = [
      slipOf(design, { who: "the motor's screws", pattern: motorPattern(design), goesIn: goesIntoMotor(design) }),
      slipOf(design, {
        who: 'the screws to the machine',
        pattern: machinePattern(design),
        goesIn: goesIntoPlate(design),
        slides: slidesBy(design),
      }),
    ].filter((row) => row !== undefined);
    if (rows.length === 0) return undefined;
    const { words, value, slides } =
      rows.find((row) => row.slides && row.value < SLIDES) ?? rows.reduce((a, b) => (b.value < a.value ? b : a));
    const own: Limits = soft({ min: 1.5 }, slides ? { min: SLIDES } : undefined);
    const goes = slides && value < SLIDES ? `: it ${slides}` : '';
    const cure = keeps(value, inForce.of(own).pass)
      ? ''
      : slides === ABOUT_ONE
        ? '; give it a second screw'
        : '; take larger screws or washers, tighten them again after a day, or dowel the plate';
    return valued(exactly(value), `${words}${goes}${cure}`, own);
  },
};

const ABOUT_ONE = 'turns about its only screw';

/** How the plate goes once its screws to the machine let go; undefined where their shanks catch it. */
function slidesBy({ finished: { machine } }: MotorPlateDesign): string | undefined {
  if (machine.slot !== undefined) return 'slides along its slots';
  return machine.centres.length === 1 ? ABOUT_ONE : undefined;
}

/** What the screws of a pattern keep by friction after years, over what turns and shifts them; undefined where nothing clamps. */
function slipOf(
  design: MotorPlateDesign,
  { who, pattern, goesIn, slides }: Clamping & { readonly who: string; readonly slides?: string | undefined },
) {
  const { motor, material, duty } = design;
  const fresh = clampForce(pattern.hole, pattern.length, material);
  if (!fresh) return undefined;
  const { torque = 0 } = motor;
  const { along, across, pulls } = thrustOf(design, goesIn);
  const left = clampLeft(fresh, material, judgedTemperature(duty));
  const { radius, aside } = turnedAbout(pattern.centres);
  // what pulls along the shaft takes its part of what presses the faces together
  const friction = Math.max(0, pattern.centres.length * left - along) * dryFriction(material);
  const against = [`${plain(torque, 0)} N·mm`, ...pulls].join(' and ');
  return {
    slides,
    value: (friction * radius) / (torque + across * (radius + aside)),
    words: `${who} hold by ${plain(friction, 0)} N of friction at ${plain(radius, 1)} mm against ${against}`,
  };
}

/** Mean distance of screws from their own middle, about which they turn, and how far the shaft stands aside of it. */
function turnedAbout(centres: BoltedPattern['centres']): { readonly radius: number; readonly aside: number } {
  const count = centres.length;
  const mean = (axis: 0 | 1) => centres.reduce((sum, at) => sum + at[axis], 0) / count;
  const middle = [mean(0), mean(1)] as const;
  const radius = centres.reduce((sum, [x, y]) => sum + Math.hypot(x - middle[0], y - middle[1]), 0) / count;
  return { radius, aside: Math.hypot(...middle) };
}

/** Whether plate and screws stand what the motor does. */
export const HOLD_CHECKS: readonly PlateCheck[] = [
  face,
  plateBending,
  motorStall,
  plateSlope,
  floorBending,
  motorClamp,
  machineClamp,
  slip,
];
