import { type FileFault, type Find, fileFaultLine } from '../../fleet/machines.js';
import type { Outcome, RememberedPart } from '../../fleet/made-part.js';
import type { DistinctPart } from '../../fleet/plan.js';
import type { Format } from '../../output/formats.js';
import { keysOf } from '../../pipeline/locate-faults.js';
import type { PresetTexts } from '../../presets/texts.js';
import type { Fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import { atHand } from './at-hand.js';
import { type EntryStore, readFreshEntry } from './entry-store.js';
import type { Maker } from './makers.js';

/** How far a run is. */
export interface Progress {
  readonly done: number;
  readonly total: number;
  readonly made: number;
  readonly reused: number;
  /** parts whose sheet is wrong, or that a check refused, now or earlier */
  readonly refused: number;
  /** names of the parts in hand */
  readonly current: readonly string[];
}

/** What parts are gathered with. */
export interface GatherOptions {
  /** where parts are looked for, and put into the first */
  readonly stores: readonly [EntryStore, ...EntryStore[]];
  /** started only where something must be made, for so many parts */
  readonly maker: (parts: number) => Maker;
  readonly formats: readonly Format[];
  readonly presets?: PresetTexts;
  /** called for every part that is at hand */
  readonly onPart?: (made: RememberedPart) => void | Promise<void>;
  readonly onProgress: (progress: Progress) => void;
  /** whether the run shall end after what is in hand */
  readonly stopped: () => boolean;
}

/** What became of a distinct part; of one that is at hand, where it lies, since a run need not hold all at once. */
export type Reached = Exclude<Outcome, { state: 'made' }> | { readonly state: 'stored'; readonly store: EntryStore };

/** What became of the parts. */
export interface Gathered {
  readonly outcomes: ReadonlyMap<string, Reached>;
  readonly made: number;
  readonly reused: number;
  readonly refused: number;
  /** why the run ended before its end; nothing more can be written */
  readonly disk?: string;
}

/** A part that another run has cleared from the cache in the meantime counts as not made. */
export const CLEARED = { state: 'missing', reason: 'another run cleared it from the cache; run again' } as const;

/**
 * Brings every distinct part to hand: out of the stores where it lies there whole, made otherwise. One that cannot be
 * made does not hinder the others; a disk that cannot be written ends the run.
 */
export async function gather(distinct: readonly DistinctPart[], options: GatherOptions): Promise<Gathered> {
  const outcomes = new Map<string, Reached>();
  const current = new Set<string>();
  const count = { made: 0, reused: 0, refused: 0 };
  let disk: string | undefined;
  const tell = () =>
    options.onProgress({ done: outcomes.size, total: distinct.length, ...count, current: [...current] });
  const take = async (store: EntryStore, made: RememberedPart): Promise<void> => {
    try {
      await options.onPart?.(made);
      outcomes.set(made.address, { state: 'stored', store });
    } catch (error) {
      disk ??= diskReason(error);
    }
  };
  const toMake: DistinctPart[] = [];
  for await (const [part, kept] of atHand(distinct, options.stores)) {
    if (disk !== undefined || options.stopped()) break;
    if (kept) {
      count[kept.made.verdict === 'fail' ? 'refused' : 'reused']++;
      await take(kept.store, kept.made);
    } else toMake.push(part);
    tell();
  }
  if (toMake.length > 0 && disk === undefined && !options.stopped()) await makeAll();
  return { outcomes, ...count, ...(disk === undefined ? {} : { disk }) };

  async function makeAll(): Promise<void> {
    const maker = options.maker(toMake.length);
    const [store] = options.stores;
    const { formats, presets } = options;
    const queue = toMake[Symbol.iterator]();
    const hand = async () => {
      for (const { address, accept, whole } of queue) {
        if (disk !== undefined || options.stopped()) return;
        const { sheet, find } = whole();
        const name = String(sheet.name);
        current.add(name);
        tell();
        const result = await maker.make({
          address,
          sheet,
          accept,
          formats,
          store: store.folder,
          ...(presets ? { presets } : {}),
        });
        current.delete(name);
        if (result.state === 'disk') disk ??= result.reason;
        else if (result.state === 'wrong') {
          count.refused++;
          outcomes.set(address, { state: 'wrong', lines: result.faults.map((one) => placedLine(one, find)) });
        } else if (result.state === 'broken') outcomes.set(address, result);
        else if (result.state === 'absent') outcomes.set(address, { state: 'missing', reason: result.reason });
        else {
          const made = readFreshEntry(store, address);
          if (made) {
            count[made.verdict === 'fail' ? 'refused' : 'made']++;
            await take(store, made);
          } else outcomes.set(address, CLEARED);
        }
        tell();
      }
    };
    try {
      // one more than there are threads keeps each of them busy
      await Promise.all(Array.from({ length: maker.width + 1 }, hand));
    } finally {
      await maker.close();
    }
  }
}

/** A mistake of a sheet that was put together, at the place where its field was written. */
export function placedLine({ path, value, allowed }: Fault, find: Find): string {
  const fault: FileFault = { ...find(keysOf(path)), path, value, allowed };
  return fileFaultLine(fault);
}
