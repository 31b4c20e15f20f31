import { checkAny, designAny } from '../../axis/any.js';
import type { DistinctPart, FleetPlan } from '../../fleet/plan.js';
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
  /** `measure`: readings of its machine are not there */
  readonly would: 'make' | 'reuse' | 'refuse' | 'measure';
  /** why it would be refused, or what must be measured */
  readonly reasons: readonly string[];
  /** machine and part that want it, and how many pieces, spare ones included */
  readonly wanted: readonly { readonly machine: string; readonly role: string; readonly pieces: number }[];
}

/** What a run would make, reuse and refuse; nothing is written. A solid may still show what no check foresees. */
export async function foresee(
  plan: FleetPlan,
  stores: readonly EntryStore[],
  options: { readonly kinds: readonly KnownKind[]; readonly presets: PresetTexts },
): Promise<Foreseen[]> {
  const wanted = new Map<string, Foreseen['wanted'][number][]>();
  const unread: Foreseen[] = [];
  for (const { machine, role, quantity, spare, address, wrong, unmeasured } of plan.parts) {
    const own = { machine, role, pieces: quantity + spare };
    const reasons = wrong ?? unmeasured;
    const would = wrong ? 'refuse' : 'measure';
    if (reasons) unread.push({ name: '', address: '', would, reasons, wanted: [own] });
    else if (!wanted.get(address)?.push(own)) wanted.set(address, [own]);
  }
  const parts: Foreseen[] = [];
  for await (const [part, kept] of atHand(plan.distinct, stores)) {
    const { address } = part;
    const about = {
      name: kept?.made.name ?? String(part.whole().sheet.name),
      address,
      wanted: wanted.get(address) ?? [],
    };
    const reasons = kept ? kept.made.reasons : refusals(part, options);
    if (kept && kept.made.verdict !== 'fail') parts.push({ ...about, would: 'reuse', reasons: [] });
    else parts.push({ ...about, would: reasons.length > 0 ? 'refuse' : 'make', reasons });
  }
  return [...unread, ...parts];
}

function refusals(
  { accept, whole }: DistinctPart,
  options: { readonly kinds: readonly KnownKind[]; readonly presets: PresetTexts },
): readonly string[] {
  const { sheet, find } = whole();
  try {
    const { checks } = checkAny(designAny(sheet, options), { ...options, accept });
    return checks
      .filter(({ verdict, accepted }) => verdict === 'fail' && accepted === undefined)
      .map(({ id, message }) => `${id}: ${message}`);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map((one) => placedLine(one, find));
    throw error;
  }
}
