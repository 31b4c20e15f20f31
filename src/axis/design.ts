import { driveNumbers } from '../drive/drive-numbers.js';
import { driveDuty, driveView } from '../parts/common/drive-view.js';
import type { DesignBase } from '../parts/part-kind.js';
import { triedRemedies } from '../pipeline/advice/tried-remedies.js';
import { KINDS } from '../pipeline/kinds.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import { keysOf, type Locate, locating } from '../pipeline/locate-faults.js';
import { screwDesignation } from '../pipeline/named-fields.js';
import { judgedBy, resolveLimits } from '../pipeline/resolve-limits.js';
import { SHIPPED } from '../presets/shipped.js';
import type { PresetTexts } from '../presets/texts.js';
import { Assumptions } from '../sheet/assumptions.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { inInches } from '../sheet/inches.js';
import { dotted } from '../sheet/path.js';
import { readYaml } from '../sheet/read-yaml.js';
import { resolveScrew, type Screw } from '../sheet/resolve-screw.js';
import type { CarriedDuty } from '../sheet/sections/duty.js';
import { validate } from '../sheet/validate.js';
import { withoutField } from '../sheet/without-field.js';
import { type Fault, InputError } from '../units/faults.js';
import { plain } from '../units/format.js';
import { CALIPERS } from '../units/measured.js';
import type { AxisDesign, AxisPart } from './axis-design.js';
import { partFacts } from './facts.js';
import { followsFrom } from './follows.js';
import { figureOf } from './known.js';
import { type Along, alongScrew } from './lengths.js';
import { limitsOf } from './limits.js';
import { withMotorShaft } from './motor-preset.js';
import { type Role, type RoleSheet, roleSheet, rolesOf } from './roles.js';
import { type AxisSheet, axisSchema } from './sheet.js';

/** What the sheet of an axis is read with. */
export interface AxisOptions {
  readonly presets?: PresetTexts;
  readonly kinds?: readonly KnownKind[];
}

/** Whether a sheet is that of an axis; one that cannot be read is not. */
export function isAxisSheet(sheet: string | object): boolean {
  if (typeof sheet === 'string' && !sheet.includes('axis')) return false;
  try {
    const value = typeof sheet === 'string' ? readYaml(sheet).value : sheet;
    return isFields(value) && value.part === 'axis';
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/**
 * Works out an axis from its sheet: every part with what it shares with the others, and what lies along the screw.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets and part kinds, where not those that ship
 * @returns the axis, plain data but for the kinds of its parts
 * @throws InputError every mistake at once, each where it was written
 */
export function designAxis(sheet: string | object, options: AxisOptions = {}): AxisDesign {
  const { value, locate } = typeof sheet === 'string' ? readYaml(sheet) : { value: sheet, locate: () => undefined };
  return locating(locate, () => worked(value, locate, options));
}

function worked(written: unknown, locate: Locate, { presets = SHIPPED, kinds = KINDS }: AxisOptions): AxisDesign {
  const typed = isFields(written) ? withMotorShaft(written, presets) : written;
  const faults: Fault[] = [];
  const tried = <T>(work: () => T): T | undefined => noting(faults, work);
  const isInch = isFields(typed) && typed.units === 'inch';
  const sheet = tried(() => validate(axisSchema, isInch ? inInches(axisSchema, typed) : typed, locate));
  if (!isFields(typed)) throw new InputError(faults);
  const { roles, faults: wrong } = rolesOf(
    typed,
    kinds.filter(({ kind }) => kind !== 'axis'),
  );
  faults.push(...wrong);
  const first = tried(() => designsOf(typed, roles, { fields: {}, ofKind: {} }, presets));
  if (!sheet || !first || faults.length > 0) throw new InputError(distinct(faults));
  const assumptions = new Assumptions();
  const calipers = sheet.calipers ?? CALIPERS;
  const screw = resolved(sheet.screw, 'screw', { calipers, presets, assumptions });
  const old =
    sheet.old?.screw && resolved(sheet.old.screw, 'old.screw', { calipers, presets, assumptions: new Assumptions() });
  const before = followsOf(sheet, first, screw, calipers);
  // who joins and who holds is known now; what a holder wants of its neighbours moves the lengths once more
  const second = designsOf(bySpan(typed, sheet, before.along), roles, before.follows, presets);
  const { along, follows } = followsOf(sheet, second, screw, calipers);
  const parts = designsOf(bySpan(typed, sheet, along), roles, follows, presets);
  const duty = dutyOf(sheet, follows, along, assumptions);
  noteNeighbours(sheet, along, follows.thrustBearing, assumptions);
  const made: AxisDesign = {
    part: 'axis',
    name: sheet.name,
    ...(sheet.revision === undefined ? {} : { revision: sheet.revision }),
    ...(isInch ? { units: 'inch' as const } : {}),
    sheet,
    screw,
    ...(sheet.old
      ? {
          old: {
            ...(old ? { screw: old } : {}),
            ...(sheet.old.steps_per_mm === undefined ? {} : { stepsPerMm: sheet.old.steps_per_mm }),
          },
        }
      : {}),
    duty,
    drive: driveNumbers(driveView(screw), driveDuty(duty)),
    thrustBearing: follows.thrustBearing,
    along,
    parts,
    follows: follows.fields,
    limits: sheet.limits ?? {},
    assumptions: assumptions.list,
  };
  limitsOf(made);
  return made;
}

function followsOf(sheet: AxisSheet, parts: readonly AxisPart[], screw: Screw, calipers: number) {
  const along = alongScrew(sheet, parts, { calipers, pitch: screw.pitch.likely });
  return { along, follows: followsFrom({ sheet, parts, along, lead: screw.lead }) };
}

/** What parts read of the axis: a free length that is told shorter than its lengths give is left out, and follows from these. */
function bySpan(typed: Fields, { duty }: AxisSheet, { span }: Along): Fields {
  return (figureOf(span)?.most ?? 0) > (duty?.span ?? Infinity) ? withoutField(typed, ['duty', 'span']) : typed;
}

/** What is taken to stand at the motor end, where nobody says more than which parts the axis has. */
function noteNeighbours(
  { thrust_bearing: told, lengths = {} }: AxisSheet,
  { near, jointEnd }: Along,
  thrustBearing: boolean,
  assumptions: Assumptions,
): void {
  if (told === undefined && !thrustBearing)
    assumptions.note('thrust_bearing', 'no', 'its parts hold no collar; one that stands there all the same: yes');
  const start = figureOf(near);
  if (lengths.start === undefined && start && near === jointEnd)
    assumptions.note(
      'lengths.start',
      plain(start.likely, 2),
      'mm, where the coupling ends: nothing else is taken to be in the way',
    );
}

/** What the axis says of its work, with its free length and its ends where nobody says them. */
function dutyOf(
  { duty = {}, motor, mounting }: AxisSheet,
  { ends }: ReturnType<typeof followsFrom>,
  along: Along,
  assumptions: Assumptions,
): CarriedDuty {
  const { reversing: _r, starts: _s, shock: _h, speed: _v, ...drive } = duty;
  const { preset: _p, shaft: _f, axial_limit: _l, temperature: _t, ...driven } = motor ?? {};
  const span = figureOf(along.span);
  const why = 'by what holds it at motor and far end';
  return {
    ...drive,
    ...(mounting === undefined ? {} : { axis: mounting === 'horizontal' ? 'horizontal' : 'vertical' }),
    ...(span && span.most > (duty.span ?? 0) ? { span: span.most } : {}),
    ends: assumptions.or(duty.ends, 'duty.ends', ends, why),
    motor: driven,
  };
}

function resolved(
  given: AxisSheet['screw'],
  path: string,
  { calipers, presets, assumptions }: { calipers: number; presets: PresetTexts; assumptions: Assumptions },
): Screw {
  const { designation, ...read } = given;
  const named = designation === undefined ? {} : { designation: screwDesignation(designation, presets) };
  try {
    return resolveScrew({ ...read, ...named }, calipers, assumptions);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((one) => ({ ...one, path: one.path.replace(/^screw\b/, path) })));
  }
}

/** The parts with their whole sheets. @throws InputError every mistake in any of them, where it was written */
function designsOf(
  typed: Fields,
  roles: readonly Role[],
  follows: Parameters<typeof roleSheet>[2],
  presets: PresetTexts,
): AxisPart[] {
  const faults: Fault[] = [];
  const parts = roles.flatMap((role): AxisPart[] => {
    const whole = roleSheet(typed, role, follows);
    const design = noting(faults, () => designOf(role, whole, presets));
    return design ? [{ ...role, sheet: whole.sheet, design, facts: partFacts(design) }] : [];
  });
  faults.push(...sharedNames(parts));
  if (faults.length > 0) throw new InputError(distinct(faults));
  return parts;
}

function designOf({ kind }: Role, { sheet, from }: RoleSheet, presets: PresetTexts): DesignBase {
  try {
    const made = kind.read(sheet, () => undefined).design(presets);
    resolveLimits(made.limits, judgedBy(kind, made));
    return { ...made, ...triedRemedies(made, kind, sheet, { presets }) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((one) => ({ ...one, path: dotted(from(keysOf(one.path))) })));
  }
}

/** Files of parts may come to lie in one folder, and on one print server. */
function sharedNames(parts: readonly AxisPart[]): Fault[] {
  return parts.flatMap(({ role, design: { name } }, i) => {
    const twin = parts.slice(0, i).find(({ design }) => design.name.toLowerCase() === name.toLowerCase());
    return twin
      ? [
          {
            path: `parts.${role}.name`,
            value: name,
            allowed: `must differ from that of ${twin.role}, letters' case aside`,
          },
        ]
      : [];
  });
}

/** Does a step; its mistakes go to the others. */
function noting<T>(faults: Fault[], work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    faults.push(...error.faults);
    return undefined;
  }
}

/** What is wrong in a field that parts share is wrong in each of them, and told once. */
function distinct(faults: readonly Fault[]): Fault[] {
  const byPath = new Map<string, Fault>();
  for (const one of faults)
    if (one.path === '' || !byPath.has(one.path)) byPath.set(one.path === '' ? one.allowed : one.path, one);
  return [...byPath.values()];
}
