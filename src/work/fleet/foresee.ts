import type { DistinctPart, FleetPlan } from '../../fleet/plan.js';
import { check } from '../../pipeline/check.js';
import { design } from '../../pipeline/design.js';
import type { KnownKind } from '../../pipeline/known-kind.js';
import type { PresetTexts } from '../../presets/texts.js';
import { InputError } from '../../units/faults.js';
import { atHand } from './at-hand.js';
import type { EntryStore } from './entry-store.js';
import { placedLine } from './gather.js';

/** What a run would do with a distinct part. */
export interface Foreseen {
  readonly name: string;
  readonly address: string;
  readonly would: 'make' | 'reuse' | 'refuse';
  /** why it would be refused */
  readonly reasons: readonly string[];
  /** machine and part that want it, and how many */
  readonly wanted: readonly { readonly machine: string; readonly role: string; readonly quantity: number }[];
}

/** What a run would make, reuse and refuse; nothing is written. A solid may still show what no check foresees. */
export async function foresee(
  plan: FleetPlan,
  stores: readonly EntryStore[],
  options: { readonly kinds: readonly KnownKind[]; readonly presets: PresetTexts },
): Promise<Foreseen[]> {
  const wantedBy = (address: string) =>
    plan.parts
      .filter((part) => part.address === address)
      .map(({ machine, role, quantity }) => ({ machine, role, quantity }));
  const unread = plan.parts.flatMap(({ machine, role, quantity, wrong }): Foreseen[] =>
    wrong ? [{ name: role, address: '', would: 'refuse', reasons: wrong, wanted: [{ machine, role, quantity }] }] : [],
  );
  const parts: Foreseen[] = [];
  for await (const [part, kept] of atHand(plan.distinct, stores)) {
    const { address, sheet } = part;
    const about = { name: String(sheet.name), address, wanted: wantedBy(address) };
    const reasons = kept ? kept.made.reasons : refusals(part, options);
    if (kept && kept.made.verdict !== 'fail') parts.push({ ...about, would: 'reuse', reasons: [] });
    else parts.push({ ...about, would: reasons.length > 0 ? 'refuse' : 'make', reasons });
  }
  return [...unread, ...parts];
}

function refusals(
  { sheet, accept, find }: DistinctPart,
  options: { readonly kinds: readonly KnownKind[]; readonly presets: PresetTexts },
): readonly string[] {
  try {
    const { checks } = check(design(sheet, options), { ...options, accept });
    return checks
      .filter(({ verdict, accepted }) => verdict === 'fail' && accepted === undefined)
      .map(({ id, message }) => `${id}: ${message}`);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map((one) => placedLine(one, find));
    throw error;
  }
}
