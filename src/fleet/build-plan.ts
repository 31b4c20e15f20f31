import type { KnownKind } from '../pipeline/known-kind.js';
import { requireAcceptable } from '../pipeline/require-acceptable.js';
import { InputError } from '../units/faults.js';
import { type AddressBase, addresser } from './address-text.js';
import { canonicalJson } from './canonical.js';
import { fileFaultLine, type GivenFleet, type GivenPart, type Layer } from './machines.js';
import type { DistinctPart, FleetPlan, PlannedPart } from './plan.js';
import { putTogether } from './put-together.js';
import type { FleetSheet } from './sheet.js';

/** What a plan is built with. */
export interface PlanBase extends AddressBase {
  readonly profiles: NonNullable<FleetSheet['profiles']>;
  /** a part's own sheet, or why it cannot be used, a line a mistake */
  readonly openSheet: (part: GivenPart) => Layer | { readonly lines: readonly string[] };
}

/**
 * Works out what a run makes: every part of every machine with its whole sheet, and each distinct part once.
 *
 * @param fleet the fleet, found whole
 * @param base part sheets, profiles, presets and kinds
 * @returns parts in the order of the fleet; a quantity of 0 leaves a part out
 */
export function buildPlan(fleet: GivenFleet, base: PlanBase): FleetPlan {
  const addressOf = remembered(addresser(base));
  const parts: PlannedPart[] = [];
  const distinct = new Map<string, DistinctPart>();
  for (const machine of fleet.machines) {
    for (const part of machine.parts) {
      if (part.quantity === 0) continue;
      const { role, quantity, axis } = part;
      const own = base.openSheet(part);
      const head = { machine: machine.name, role, quantity, axis };
      const wrong = 'lines' in own ? own.lines : notAcceptable(part, base.kinds);
      if ('lines' in own || wrong.length > 0) {
        parts.push({ ...head, address: '', wrong });
        continue;
      }
      const { sheet, find } = putTogether(part, own, fleet.defaults, base.profiles, base.kinds);
      const address = addressOf(sheet, part.accept);
      parts.push({ ...head, address });
      if (!distinct.has(address)) distinct.set(address, { address, sheet, accept: part.accept, find });
    }
  }
  return {
    fleet: fleet.name,
    formats: base.formats,
    machines: fleet.machines,
    parts,
    distinct: [...distinct.values()],
  };
}

/** What is wrong with the checks that a part accepts, a line a mistake. */
function notAcceptable({ accept, find }: GivenPart, kinds: readonly KnownKind[]): string[] {
  return accept.flatMap((one) => {
    try {
      requireAcceptable([one], kinds, 'accept');
      return [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.faults.map((fault) => fileFaultLine({ ...fault, ...find(['accept', one.check]) }));
    }
  });
}

/** Parts that are written alike are read but once. */
function remembered(addressOf: ReturnType<typeof addresser>): ReturnType<typeof addresser> {
  const known = new Map<string, string>();
  return (sheet, accept) => {
    const text = canonicalJson([sheet, accept]);
    const address = known.get(text) ?? addressOf(sheet, accept);
    known.set(text, address);
    return address;
  };
}
