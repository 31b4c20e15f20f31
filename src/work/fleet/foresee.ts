import { checkAny, designAny } from '../../axis/any.js';
import { type RememberedPart, stoodBy, stoodByAmong } from '../../fleet/made-part.js';
import type { PairFinding } from '../../fleet/neighbours.js';
import { type PairFacts, pairFacts } from '../../fleet/pair-facts.js';
import { pairFindings } from '../../fleet/pairs.js';
import { type DistinctPart, type FleetPlan, partsByMachine } from '../../fleet/plan.js';
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
  /** what somebody stands by: failed checks that are accepted, limits of the sheet's own */
  readonly stood: readonly string[];
  /** machine and part that want it, and how many pieces, spare ones included */
  readonly wanted: readonly { readonly machine: string; readonly role: string; readonly pieces: number }[];
}

/** What a run would do with a fleet. */
export interface Foresight {
  readonly parts: readonly Foreseen[];
  /** what does not go together between the parts of a machine that would be made */
  readonly pairs: readonly (PairFinding & { readonly machine: string })[];
}

/** What a run would make, reuse and refuse; nothing is written. A solid may still show what no check foresees. */
export async function foresee(
  plan: FleetPlan,
  stores: readonly EntryStore[],
  options: JudgeOptions,
): Promise<Foresight> {
  const wanted = new Map<string, Foreseen['wanted'][number][]>();
  const unread: Foreseen[] = [];
  for (const { machine, role, quantity, spare, address, wrong, unmeasured } of plan.parts) {
    const own = { machine, role, pieces: quantity + spare };
    const reasons = wrong ?? unmeasured;
    const would = wrong ? 'refuse' : 'measure';
    if (reasons) unread.push({ name: '', address: '', would, reasons, stood: [], wanted: [own] });
    else if (!wanted.get(address)?.push(own)) wanted.set(address, [own]);
  }
  const parts: Foreseen[] = [];
  const factsAt = new Map<string, PairFacts>();
  for await (const [part, kept] of atHand(plan.distinct, stores)) {
    const { address } = part;
    const about = {
      name: kept?.made.name ?? String(part.whole().sheet.name),
      address,
      wanted: wanted.get(address) ?? [],
    };
    const { reasons, stood, facts } = kept ? recalledOf(kept.made) : judged(part, options);
    const would = reasons.length > 0 ? 'refuse' : kept ? 'reuse' : 'make';
    if (facts && would !== 'refuse') factsAt.set(address, facts);
    parts.push({ ...about, would, reasons, stood });
  }
  return { parts: [...unread, ...parts], pairs: quarrels(plan, factsAt) };
}

interface JudgeOptions {
  readonly kinds: readonly KnownKind[];
  readonly presets: PresetTexts;
}

/** What is known of a distinct part before it is made. */
interface Judged {
  /** why it is refused */
  readonly reasons: readonly string[];
  readonly stood: readonly string[];
  readonly facts?: PairFacts;
}

function recalledOf({ verdict, reasons, facts }: RememberedPart): Judged {
  return {
    reasons: verdict === 'fail' ? reasons : [],
    stood: verdict === 'fail' ? [] : stoodByAmong(reasons),
    facts,
  };
}

function judged({ accept, whole }: DistinctPart, options: JudgeOptions): Judged {
  const { sheet, find } = whole();
  try {
    const worked = designAny(sheet, options);
    const report = checkAny(worked, { ...options, accept });
    const failed = report.checks.filter(({ verdict, accepted: reason }) => verdict === 'fail' && reason === undefined);
    return {
      reasons: failed.map(({ id, message }) => `${id}: ${message}`),
      stood: stoodBy(report),
      facts: pairFacts(worked),
    };
  } catch (error) {
    if (error instanceof InputError) return { reasons: error.faults.map((one) => placedLine(one, find)), stood: [] };
    throw error;
  }
}

/** What the run would find between the parts of each machine. */
function quarrels(plan: FleetPlan, factsAt: ReadonlyMap<string, PairFacts>): Foresight['pairs'] {
  return [...partsByMachine(plan)].flatMap(({ machine: { name, motorShaft }, parts }) => {
    const neighbours = parts.flatMap(({ role, axis, quantity, address }) => {
      const facts = factsAt.get(address);
      return facts ? [{ role, axis, pieces: quantity, made: { facts } }] : [];
    });
    const found = pairFindings(neighbours, motorShaft).filter(({ verdict }) => verdict !== 'pass');
    return found.map((one) => ({ machine: name, ...one }));
  });
}
