import { requireAcceptableOfAny } from '../axis/accept-call.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import type { Fields } from '../sheet/fields-map.js';
import { InputError } from '../units/faults.js';
import { type AddressBase, addresser, type Digest } from './address-text.js';
import { canonicalJson } from './canonical.js';
import {
  fileFaultLine,
  type GivenFields,
  type GivenFleet,
  type GivenMachine,
  type GivenPart,
  type PlannedMachine,
} from './machines.js';
import type { DistinctPart, FleetPlan, PlannedPart } from './plan.js';
import { printerWords } from './printer-words.js';
import { putTogether } from './put-together.js';
import { readingsOf, unmeasured } from './readings.js';
import type { FleetSheet } from './sheet.js';

/** What a plan is built with. */
export interface PlanBase extends AddressBase {
  readonly profiles: NonNullable<FleetSheet['profiles']>;
  /** a part's own sheet, or why it cannot be used, a line a mistake */
  readonly openSheet: (part: GivenPart) => GivenFields | { readonly lines: readonly string[] };
}

/**
 * Works out what a run makes: every part of every machine with its whole sheet, and each distinct part once.
 *
 * @param fleet the fleet, found whole
 * @param base part sheets, profiles, presets and kinds
 * @returns parts in the order of the fleet; a quantity of 0 leaves a part out
 */
export function buildPlan(fleet: GivenFleet, base: PlanBase): FleetPlan {
  const addressOf = remembered(addresser(base), base.digest);
  const alike = interned();
  const parts: PlannedPart[] = [];
  const distinct = new Map<string, DistinctPart>();
  for (const machine of fleet.machines) {
    const given = machine.parts
      .filter(({ quantity, spare }) => quantity + spare > 0)
      .map((part) => readPart(machine, part, fleet.defaults, base, alike));
    const blank = given.filter(({ lacks }) => lacks.length > 0);
    for (const { planned, sheet, part, own, lacks } of given) {
      if (!own) parts.push(planned);
      else if (blank.length > 0) parts.push({ ...planned, unmeasured: lacks.length > 0 ? lacks : [waitsFor(blank)] });
      else {
        const { accept } = part;
        const address = addressOf(sheet, accept);
        parts.push({ ...planned, address });
        if (!distinct.has(address))
          distinct.set(address, { address, accept, whole: later(part, own, fleet.defaults, base) });
      }
    }
  }
  return {
    fleet: fleet.name,
    formats: base.formats,
    machines: fleet.machines.map(withoutParts),
    parts,
    distinct: [...distinct.values()],
  };
}

/** A part as it is planned, its address aside. */
interface ReadPart {
  readonly planned: PlannedPart;
  readonly part: GivenPart;
  readonly sheet: Fields;
  /** none where its sheet cannot be used */
  readonly own?: GivenFields;
  /** what must be measured and is not, a line a field */
  readonly lacks: readonly string[];
}

function readPart(
  machine: GivenMachine,
  part: GivenPart,
  defaults: GivenFields | undefined,
  base: PlanBase,
  alike: (text: string) => string,
): ReadPart {
  const { role, quantity, spare, axis } = part;
  const own = base.openSheet(part);
  const head = { machine: machine.name, role, quantity, spare, axis, address: '' };
  const wrong = 'lines' in own ? own.lines : notAcceptable(part, base.kinds);
  if ('lines' in own || wrong.length > 0) return { planned: { ...head, wrong }, part, sheet: {}, lacks: [] };
  const { sheet, kind } = putTogether(part, own, defaults, base.profiles, base.kinds);
  const readings = readingsOf(part, templateOf(part, machine), sheet, kind).map((one) => ({
    ...one,
    fellows: alike(one.fellows),
  }));
  const planned = { ...head, printer: alike(printerWords(sheet)), ...(readings.length > 0 ? { readings } : {}) };
  return { planned, part, sheet, own, lacks: unmeasured(part, kind) };
}

/** Puts a part's sheet together when it is asked for: a plan holds what was given, not every sheet that comes of it. */
function later(part: GivenPart, own: GivenFields, defaults: GivenFields | undefined, { profiles, kinds }: PlanBase) {
  return () => putTogether(part, own, defaults, profiles, kinds);
}

function withoutParts({ parts: _parts, ...machine }: GivenMachine): PlannedMachine {
  return machine;
}

/** One and the same text for equal ones, so that thousands of parts hold it once. */
function interned(): (text: string) => string {
  const known = new Map<string, string>();
  return (text) => {
    const held = known.get(text);
    if (held === undefined) known.set(text, text);
    return held ?? text;
  };
}

/** What parts that are held against each other have in common: the kind of machine, and the sheet or the part's name. */
function templateOf({ sheet, role }: GivenPart, { kind = '' }: GivenMachine): string {
  return `${kind}/${sheet ?? role}`;
}

function waitsFor(blank: readonly ReadPart[]): string {
  const roles = blank.map(({ planned }) => planned.role);
  return `waits for the readings of ${roles.join(', ')}`;
}

/** What is wrong with the checks that a part accepts, a line a mistake. */
function notAcceptable({ accept, find }: GivenPart, kinds: readonly KnownKind[]): string[] {
  return accept.flatMap((one) => {
    try {
      requireAcceptableOfAny([one], kinds, 'accept');
      return [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.faults.map((fault) => fileFaultLine({ ...fault, ...find(['accept', one.check]) }));
    }
  });
}

/** Parts that are written alike are read but once. */
function remembered(addressOf: ReturnType<typeof addresser>, digest: Digest): ReturnType<typeof addresser> {
  const known = new Map<string, string>();
  return (sheet, accept) => {
    const text = digest(canonicalJson([sheet, accept]));
    const address = known.get(text) ?? addressOf(sheet, accept);
    known.set(text, address);
    return address;
  };
}
