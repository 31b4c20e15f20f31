import { threadDifferences } from '../../drive/axis-pair.js';
import { type Check, hard, notJudged, told, valued } from '../../judge/check.js';
import { SCREW_ENDS } from '../../mechanics/ends.js';
import { BORE_MATCH, OVER_CRESTS } from '../../parts/common/bore-match.js';
import { driveView } from '../../parts/common/drive-view.js';
import { type Fields, isFields } from '../../sheet/fields-map.js';
import { inInches } from '../../sheet/inches.js';
import { dotted } from '../../sheet/path.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { shown } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import type { AxisDesign, AxisPart } from '../axis-design.js';
import { PRINTED_NUTS } from '../facts.js';
import { crowds } from '../one-place.js';
import { axisDuty, motorSection } from '../sheet.js';

type AxisCheck = Check<AxisDesign>;
const about = { group: 'agrees', question: 'agrees', unit: '', source: 'derived: one screw runs through all' } as const;

/**
 * One screw runs through every part.
 *
 *     n = parts whose screw is not the axis's in form, starts, major (by over 0.1 mm), pitch (by over 0.005 mm), or in pitch or minor
 *         diameter (by over 0.05 mm beyond what both are uncertain by)
 */
const sameScrew: AxisCheck = {
  ...about,
  id: 'axis-screw',
  title: 'Parts that are made for another screw',
  limits: hard({ max: 0 }),
  moves: 'screw of the axis, screw of a part',
  grave: true,
  run: ({ parts, screw }) => {
    const own = driveView(screw);
    const others = parts.flatMap(({ role, facts }) => {
      const differs = facts.screw
        ? [...threadDifferences(own, driveView(facts.screw)), ...flankDifferences(screw, facts.screw)]
        : [];
      return differs.length === 0 ? [] : [`${role}: ${differs.join(', ')}`];
    });
    const made = parts.filter(({ facts }) => facts.screw).map(({ role }) => role);
    const found = others.length === 0 ? `${made.join(', ')} are made for one screw` : `axis and ${others.join('; ')}`;
    return valued(exactly(others.length), `${found}${others.length === 0 ? '' : '; say the screw once, above'}`);
  },
};

/** Two readings of one diameter, beyond what both are uncertain by, mm. @source common-practice */
const SAME_DIAMETER = 0.05;

/** Diameters of the flanks and roots in which two screws are not one: by them a nut is cut, whatever their crests measure. */
function flankDifferences(a: Screw, b: Screw): string[] {
  const sizes = [
    ['pitch diameter', a.pitchDiameter, b.pitchDiameter],
    ['minor diameter', a.minor, b.minor],
  ] as const;
  return sizes.flatMap(([name, one, other]) =>
    Math.max(one.least - other.most, other.least - one.most) > SAME_DIAMETER
      ? [`${name} ${plain(one.likely, 2)} and ${plain(other.likely, 2)} mm`]
      : [],
  );
}

/**
 * A nut of the other hand does not go on.
 *
 *     n = parts made for a screw of the other hand than the axis's
 */
const hand: AxisCheck = {
  ...about,
  id: 'axis-hand',
  title: 'Parts that are made for the other hand',
  limits: hard({ max: 0 }),
  moves: 'screw.hand',
  grave: true,
  run: ({ parts, screw }) => {
    if (!screw.handKnown) return notJudged('screw.hand');
    const others = parts.filter(({ facts }) => facts.screw && facts.screw.hand !== screw.hand).map(({ role }) => role);
    return valued(
      exactly(others.length),
      others.length === 0
        ? `all are ${screw.hand}-hand`
        : `the axis is ${screw.hand}-hand, ${others.join(', ')} the other; say the hand once, above`,
    );
  },
};

/**
 * Bores of what joins the shafts against both of them.
 *
 *     off = greater of |⌀motor bore − ⌀shaft| and |⌀screw bore − ⌀major of the screw|
 *     the second = 0 where the bore is smaller by up to 0.1 mm, or by anything on an end that is turned down
 */
const bores: AxisCheck = {
  ...about,
  id: 'axis-bores',
  title: 'Bores off their shafts',
  unit: 'mm',
  source: 'common practice',
  limits: BORE_MATCH,
  moves: 'motor.shaft, screw.major, coupling',
  run: ({ parts, screw, sheet: { motor } }) => {
    const part = parts.find(({ facts }) => facts.joint);
    const joint = part?.facts.joint;
    if (!part || !joint) return undefined;
    const shaft = motor?.shaft?.diameter?.value;
    const missing = [
      ...(joint.motorBore === undefined || (shaft === undefined && motor?.preset === undefined) ? ['motor.shaft'] : []),
    ];
    if (missing.length > 0 || joint.motorBore === undefined) return notJudged(...missing);
    const atMotor = shaft === undefined ? 0 : Math.abs(joint.motorBore.likely - shaft);
    const over = joint.screwBore === undefined ? 0 : joint.screwBore.likely - screw.major.likely;
    const isTurned = part.sheet.turned_end !== undefined;
    const atScrew = isTurned && over < 0 ? 0 : over < -OVER_CRESTS ? Math.abs(over) : Math.max(0, over);
    const turned = isTurned ? `, its end turned down to ${plain(joint.screwBore?.likely ?? 0, 2)} mm` : '';
    const words = `${plain(joint.motorBore.likely, 2)} mm for the motor${joint.screwBore ? `, ${plain(joint.screwBore.likely, 2)} mm for the screw${turned}` : ''}`;
    return valued(exactly(Math.max(atMotor, atScrew)), words);
  },
};

/** What a part may say of its neighbours, and what belongs to the axis as a whole. */
const NEIGHBOURS = ['mounting', 'thrust_bearing', 'locating_holder', 'pair'];
const DUTY_OF_THE_AXIS = [
  'axis',
  'feed',
  'ends',
  'speed',
  'shock',
  'reversing',
  'starts',
  'moving',
  'on_time',
  'cycle',
  'grease',
  'regrease',
  'dust',
];
/** Forces that go whole through all, but for a load that nuts share, the length that is free, the air: how far a part may say less. */
const NO_LESS = { load: 1, upward: 1, span: 1.05, temperature: 1 } as const;

/**
 * What a part says of its neighbours must be what is there, and what the axis says what its parts are.
 *
 *     n = fields on neighbours, duty and motor in which a part says another value than the axis,
 *         forces, spans and warmth that a part says smaller, of nuts the load that they say together,
 *         and fields in which the axis says another value than its mounting, its collar, its holder or its feed give
 */
const oneStory: AxisCheck = {
  ...about,
  id: 'axis-told',
  title: 'Fields in which a part contradicts the axis',
  limits: hard({ max: 0 }),
  moves: 'the sections of the parts',
  run: (design) => {
    const found = [
      ...againstCollar(design),
      ...againstDuty(design),
      ...againstNuts(design),
      ...design.parts.flatMap((part) => [...contradictions(part, design), ...lighter(part, design)]),
    ];
    return valued(
      exactly(found.length),
      found.length === 0 ? 'none' : `${found.join('; ')}; leave it out, and it follows from the axis`,
    );
  },
};

/** An axis that says it has no thrust bearing, with a collar on one among its parts. */
function againstCollar({ sheet, parts }: AxisDesign): string[] {
  const collar = parts.find(({ facts }) => facts.collar);
  return collar && sheet.thrust_bearing === 'no'
    ? [`the axis says thrust_bearing: no where ${collar.role} sits on one`]
    : [];
}

/** A duty of which mounting, holder and feed tell otherwise: where it goes, how stiffly its ends are held, how fast it turns. */
function againstDuty(design: AxisDesign): string[] {
  const { sheet, parts, follows } = design;
  const { axis, ends, speed } = sheet.duty ?? {};
  const runs = runsAs(design);
  const holders = parts.filter(({ facts }) => facts.holder);
  const leads = holders.find(({ facts }) => facts.holder?.role !== 'free');
  const holder = leads ?? holders[0];
  const stiffest = leads ? 'fixed-supported' : 'fixed-free';
  const turns = isFields(follows.duty) ? follows.duty.speed : undefined;
  return [
    ...(axis && runs && axis !== runs
      ? [`the axis says duty.axis: ${axis} where mounting: ${sheet.mounting} is ${runs}`]
      : []),
    ...(ends && holder && SCREW_ENDS.indexOf(ends) > SCREW_ENDS.indexOf(stiffest)
      ? [`the axis says duty.ends: ${ends} where ${holder.role} leaves ${stiffest} at best`]
      : []),
    ...(speed !== undefined && typeof turns === 'number' && speed < turns / ROUNDED
      ? [`the axis says duty.speed: ${plain(speed, 0)} where its feed gives ${plain(turns, 0)}`]
      : []),
  ];
}

/** How far a speed or a length that was rounded by hand may fall short. */
const ROUNDED = 1.05;

function runsAs({ sheet: { mounting } }: AxisDesign): 'horizontal' | 'vertical' | undefined {
  return mounting && (mounting === 'horizontal' ? 'horizontal' : 'vertical');
}

/** Forces, length and warmth of the axis that a part is judged by less of. */
function lighter({ role, own, facts }: AxisPart, { sheet, follows, units }: AxisDesign): string[] {
  const names = Object.keys(NO_LESS) as (keyof typeof NO_LESS)[];
  const said = dutyOf(own.duty, names, units);
  const whole = { ...dutyOf(follows.duty, names, undefined), ...sheet.duty };
  return names.flatMap((name) => {
    if (name === 'load' && facts.nut) return [];
    const [value, ofAxis] = [said[name], whole[name]];
    return typeof value === 'number' && typeof ofAxis === 'number' && value < ofAxis / NO_LESS[name] - 1e-9
      ? [`${role} says duty.${name}: ${shown(value)} where it is ${shown(ofAxis)}`]
      : [];
  });
}

/** Nuts that together are judged by less than the load of the axis; one that is told nothing bears the whole. */
function againstNuts({ sheet: { duty = {} }, units, parts }: AxisDesign): string[] {
  const { load: whole } = duty;
  const nuts = parts.filter(({ facts }) => facts.nut);
  if (whole === undefined || nuts.length === 0) return [];
  const shares = nuts.map(({ own }) => dutyOf(own.duty, ['load'], units).load ?? whole).map(Number);
  const borne = shares.reduce((sum, one) => sum + one, 0);
  const say = nuts.length === 1 ? 'says' : 'together say';
  return borne < whole - 1e-9
    ? [`${nuts.map(({ role }) => role).join(', ')} ${say} duty.load: ${shown(borne)} where it is ${shown(whole)}`]
    : [];
}

function contradictions({ role, own, kind }: AxisPart, design: AxisDesign): string[] {
  const { follows, sheet, units } = design;
  const read = (motor: unknown) => motorOf(motor, design);
  const motor = { ...read(isFields(own.duty) ? own.duty.motor : undefined), ...read(own.motor) };
  // only a holder speaks of the coupling and the nut beside it; other kinds have fields of these names for themselves
  const neighbours = kind.kind === 'end-holder' ? [...NEIGHBOURS, 'coupling', 'nut'] : NEIGHBOURS;
  const said = {
    ...pick(own, neighbours),
    ...(PRINTED_NUTS.includes(kind.kind) ? { mounting: undefined } : {}),
    duty: dutyOf(own.duty, DUTY_OF_THE_AXIS, units),
    motor,
  };
  const runs = runsAs(design);
  const axis = {
    ...follows,
    ...(sheet.mounting === undefined ? {} : { mounting: sheet.mounting }),
    duty: {
      ...pick(isFields(follows.duty) ? follows.duty : {}, DUTY_OF_THE_AXIS),
      ...pick(sheet.duty ?? {}, DUTY_OF_THE_AXIS),
      ...(runs === undefined ? {} : { axis: runs }),
    },
    motor: plainly(sheet.motor),
  };
  return leaves(said).flatMap(([path, value]) => {
    const other = at(axis, path);
    const differs = value !== undefined && other !== undefined && String(other) !== String(value);
    const sign = path.at(-1) === 'half' ? '± ' : '';
    return differs
      ? [`${role} says ${dotted(withoutParsed(path))}: ${sign}${shown(value)} where it is ${sign}${shown(other)}`]
      : [];
  });
}

/** What a part says of the duty by these names, as numbers and words. */
function dutyOf(duty: unknown, names: readonly string[], units: AxisDesign['units']): Fields {
  if (!isFields(duty)) return {};
  const own = pick(duty, names);
  return axisDuty.safeParse(units === 'inch' ? inInches(axisDuty, own) : own).data ?? {};
}

/** A parsed reading is a map of its value and its ±; its field is the one above. */
function withoutParsed(path: readonly string[]): readonly string[] {
  return path.at(-1) === 'value' || path.at(-1) === 'half' ? path.slice(0, -1) : path;
}

/** What a part says of the motor, as far as the axis has words for it; of a shaft it may say less than a whole one. */
function motorOf(motor: unknown, { sheet, units }: Pick<AxisDesign, 'sheet' | 'units'>): Fields {
  if (motor === undefined) return {};
  const diameter = sheet.motor?.shaft?.diameter?.value;
  const whole =
    isFields(motor) && isFields(motor.shaft) && diameter !== undefined
      ? { ...motor, shaft: { diameter: `${diameter} mm`, ...motor.shaft } }
      : motor;
  return plainly(motorSection.safeParse(units === 'inch' ? inInches(motorSection, whole) : whole).data);
}

/** Parsed fields as plain ones. */
function plainly(motor: AxisDesign['sheet']['motor']): Fields {
  return motor === undefined ? {} : JSON.parse(JSON.stringify(motor));
}

function pick(fields: Fields, keys: readonly string[]): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([key]) => keys.includes(key)));
}

function leaves(fields: Fields, above: readonly string[] = []): [readonly string[], unknown][] {
  return Object.entries(fields).flatMap(([key, value]): [readonly string[], unknown][] =>
    isFields(value) ? leaves(value, [...above, key]) : [[[...above, key], value]],
  );
}

function at(fields: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (isFields(value) ? value[key] : undefined), fields);
}

/** An axis without something that it needs is told so, and one with two parts where one has room fails. */
const complete: AxisCheck = {
  ...about,
  id: 'axis-parts',
  title: 'Parts that the axis has',
  source: 'common practice',
  moves: 'parts',
  run: ({ parts }) => {
    const crowded = crowds(parts).map(
      ({ place, roles }) => `${roles.join(' and ')} stand ${place}, where one has room`,
    );
    if (crowded.length > 0) return told('fail', `${crowded.join('; ')}; leave out all but one, or make them two axes`);
    const has = (key: 'nut' | 'joint') => parts.some(({ facts }) => facts[key]);
    const lacks = [
      ...(has('nut') ? [] : ['a nut (part: nut or twin-nut, or part: adapter with a bought one)']),
      ...(has('joint') ? [] : ['a coupling (part: coupling or sleeve)']),
    ];
    if (lacks.length === 0) return told('pass', parts.map(({ role }) => role).join(', '));
    return told('caution', `without ${lacks.join(' and ')} nobody looks at how they go together`);
  },
};

/** Whether its parts are made for each other. */
export const AGREE_CHECKS: readonly AxisCheck[] = [sameScrew, hand, bores, oneStory, complete];
