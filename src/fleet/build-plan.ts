import { type AddressBase, addresser } from './address-text.js';
import { canonicalJson } from './canonical.js';
import type { GivenFleet, GivenPart, Layer } from './machines.js';
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
      if ('lines' in own) {
        parts.push({ ...head, address: '', wrong: own.lines });
        continue;
      }
      const { sheet, find } = putTogether(part, own, fleet.defaults, base.profiles, base.kinds);
      const address = addressOf(sheet);
      parts.push({ ...head, address });
      if (!distinct.has(address)) distinct.set(address, { address, sheet, find });
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

/** Parts that are written alike are read but once. */
function remembered(addressOf: ReturnType<typeof addresser>): ReturnType<typeof addresser> {
  const known = new Map<string, string>();
  return (sheet) => {
    const text = canonicalJson(sheet);
    const address = known.get(text) ?? addressOf(sheet);
    known.set(text, address);
    return address;
  };
}
