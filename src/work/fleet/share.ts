import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RememberedPart } from '../../fleet/made-part.js';
import type { FleetPlan } from '../../fleet/plan.js';
import { inShard, type Shard } from '../../fleet/shard.js';
import { jsonText } from '../../output/report-json.js';
import { fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import { makeFolders } from '../writer/basics.js';
import { replaceFile } from '../writer/files.js';
import { clearLeftovers } from '../writer/leftovers.js';
import { settleAll } from '../writer/settle.js';
import { type EntryStore, entryFolder, readEntry, writeEntry } from './entry-store.js';
import { type Gathered, type GatherOptions, gather } from './gather.js';

/** What a share of a run leaves. */
export interface ShareResult {
  readonly parts: number;
  readonly made: number;
  readonly reused: number;
  readonly failed: number;
  readonly lines: readonly string[];
  readonly stopped: boolean;
}

/**
 * Makes one share of a run's distinct parts into a folder that `mergeShares` reads. Which part belongs to which share
 * is decided by its address alone.
 * @throws InputError the disk cannot be written
 */
export async function runShare(
  plan: FleetPlan,
  shard: Shard,
  options: Omit<GatherOptions, 'onPart'> & { readonly out: string },
): Promise<ShareResult> {
  const own = plan.distinct.filter(({ address }) => inShard(address, shard));
  const share: EntryStore = { folder: options.out };
  for (const { folder } of [options.stores[0], share]) clearLeftovers(folder, 1);
  settleAll(options.out);
  const refused: string[] = [];
  const onPart = async (made: RememberedPart) => {
    await copyEntry(options.stores, share, made.address);
    if (made.verdict === 'fail') refused.push(`${made.name}: ${made.reasons.join(' | ')}`);
  };
  const gathered = await gather(own, { ...options, onPart });
  if (gathered.disk !== undefined) throw fault(options.out, '', gathered.disk);
  const told = {
    fleet: plan.fleet,
    shard: `${shard.index}/${shard.count}`,
    addresses: own.map(({ address }) => address).sort(),
  };
  const list = `share-${shard.index}-of-${shard.count}.json`;
  await makeShare(options.out);
  await replaceFile('', join(options.out, list), jsonText(told), '.');
  return {
    parts: own.length,
    made: gathered.made,
    reused: gathered.reused,
    ...failures(gathered, refused),
    stopped: options.stopped(),
  };
}

/** A share without parts is a folder too. */
async function makeShare(folder: string): Promise<void> {
  try {
    makeFolders(folder);
  } catch (error) {
    throw fault(folder, '', diskReason(error));
  }
}

async function copyEntry(from: readonly EntryStore[], to: EntryStore, address: string): Promise<void> {
  if (from.some(({ folder }) => folder === to.folder) || (await readEntry(to, address))) return;
  for (const store of from) {
    const made = await readEntry(store, address);
    if (!made) continue;
    const folder = entryFolder(store, address);
    await writeEntry(
      to,
      made,
      made.files.map(({ name }) => ({ name, bytes: readFileSync(join(folder, name)) })),
    );
    return;
  }
}

function failures({ outcomes }: Gathered, refused: readonly string[]): { failed: number; lines: string[] } {
  const others = [...outcomes.values()].filter(({ state }) => state !== 'stored');
  const lines = others.flatMap((outcome) => {
    if (outcome.state === 'wrong') return outcome.lines;
    return outcome.state === 'broken' ? [`internal error: ${outcome.message}`] : [];
  });
  return { failed: others.length + refused.length, lines: [...refused, ...lines] };
}
