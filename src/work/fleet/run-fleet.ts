import { join } from 'node:path';
import { carryOver } from '../../fleet/carry-over.js';
import { csvText } from '../../fleet/csv/write-csv.js';
import { indexPage } from '../../fleet/index-page.js';
import type { MadePart, Outcome } from '../../fleet/made-part.js';
import { type FileRow, type Manifest, manifestOf } from '../../fleet/manifest.js';
import { manifestTable } from '../../fleet/manifest-csv.js';
import { partFolder, placements } from '../../fleet/names.js';
import type { FleetPlan, PlannedPart } from '../../fleet/plan.js';
import type { Bed } from '../../fleet/plates.js';
import { hardwareTable } from '../../fleet/totals.js';
import { fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import { sha256, sha256Base64 } from './digest.js';
import { pruneEntries } from './entry-store.js';
import { type Gathered, type GatherOptions, gather } from './gather.js';
import { clearLeftovers } from './leftovers.js';
import { PAGE_SCRIPT } from './make-entry.js';
import { type OutputFolder, openOutput } from './output-folder.js';
import { writePlates } from './write-plates.js';
import { writeZips } from './write-zips.js';

/** How a fleet is run. */
export interface RunOptions extends Omit<GatherOptions, 'onPart'> {
  readonly out: string;
  /** names of the machines to run; all unless given */
  readonly only?: readonly string[];
  readonly bed?: Bed;
  readonly zip?: boolean;
  /** bytes that the first store may keep */
  readonly cacheLimit?: number;
}

/** What a run leaves. */
export interface FleetResult {
  readonly manifest: Manifest;
  readonly made: number;
  readonly reused: number;
  readonly refused: number;
  /** ended before its end, by a person */
  readonly stopped: boolean;
  /** pieces larger than the bed */
  readonly tooLarge: readonly string[];
}

/** 2 GB: some four thousand parts. */
export const CACHE_LIMIT = 2_000_000_000;

/**
 * Runs a fleet: brings every distinct part to hand, gives every machine its files, and sums up.
 * @throws InputError the folder belongs to another fleet, or the disk cannot be written
 */
export async function runFleet(plan: FleetPlan, options: RunOptions): Promise<FleetResult> {
  const out = openOutput(options.out);
  requireSameFleet(out, plan);
  const chosen = new Set(options.only ?? plan.machines.map(({ name }) => name));
  const parts = plan.parts.filter(({ machine }) => chosen.has(machine));
  const wanted = new Map<string, PlannedPart[]>();
  for (const part of parts) wanted.set(part.address, [...(wanted.get(part.address) ?? []), part]);
  const distinct = plan.distinct.filter(({ address }) => wanted.has(address));
  const onPart = (made: MadePart, folder: string) => placePart(out, made, folder, wanted.get(made.address) ?? []);
  const gathered = await gather(distinct, { ...options, onPart });
  if (gathered.disk !== undefined)
    throw fault(options.out, '', `${gathered.disk}; what is written so far is whole, run again to go on`);
  try {
    return await sumUp(plan, chosen, gathered, out, options);
  } catch (error) {
    throw fault(options.out, '', diskReason(error));
  }
}

function requireSameFleet({ path, earlier }: OutputFolder, { fleet }: FleetPlan): void {
  if (earlier === undefined || earlier.fleet === fleet) return;
  throw fault(path, '', `holds the fleet ${earlier.fleet}; give ${fleet} another folder with --out`);
}

function placePart(out: OutputFolder, made: MadePart, folder: string, parts: readonly PlannedPart[]): void {
  for (const { name } of made.files) out.link(join(folder, name), `${partFolder(made)}/${name}`);
  for (const { machine, role } of parts) {
    for (const { name, to } of placements(made, machine, role)) out.link(join(folder, name), to);
  }
}

async function sumUp(
  plan: FleetPlan,
  chosen: ReadonlySet<string>,
  { outcomes, made, reused, refused }: Gathered,
  out: OutputFolder,
  options: RunOptions,
): Promise<FleetResult> {
  const files: FileRow[] = [];
  const write = (file: string, content: string | Uint8Array) => {
    out.write(file, content);
    files.push({ file, digest: sha256(content) });
  };
  const carried = carryOver(manifestOf(plan, chosenOnly(plan, chosen, outcomes)), chosen, out.earlier);
  const { manifest } = carried;
  const placed = placedFiles(plan, chosen, outcomes);
  const source = { plan, chosen, outcomes, out: options.out };
  const { rows: plates, tooLarge } = options.bed ? writePlates(source, options.bed, write) : { rows: [], tooLarge: [] };
  if (options.zip) await writeZips(source, write);
  if (plan.formats.includes('page')) write(PAGE_SCRIPT, (await import('../../output/page/assets.js')).SCRIPT);
  const whole: Manifest = { ...manifest, plates, files: [] };
  write('manifest.csv', csvText(manifestTable(whole)));
  write(
    'hardware.csv',
    csvText(hardwareTable(manifest.hardware, new Map(manifest.machines.map((row) => [row.machine, row.hardware])))),
  );
  const before = new Map([...carried.files, ...placed, ...files].map((row) => [row.file, row]));
  write('index.html', indexPage(whole, { files: new Set(before.keys()), hashOf: sha256Base64 }));
  const all = new Map([...before, ...files.map((row) => [row.file, row] as const)]);
  const done: Manifest = { ...whole, files: [...all.values()].sort((a, b) => (a.file < b.file ? -1 : 1)) };
  out.finish(done);
  clearLeftovers(options.out, 2);
  pruneEntries(options.stores[0], options.cacheLimit ?? CACHE_LIMIT);
  return { manifest: done, made, reused, refused, stopped: options.stopped(), tooLarge };
}

/** Parts of machines that were not chosen count as not made, even where another machine has them. */
function chosenOnly(
  plan: FleetPlan,
  chosen: ReadonlySet<string>,
  outcomes: ReadonlyMap<string, Outcome>,
): ReadonlyMap<string, Outcome> {
  if (chosen.size === plan.machines.length) return outcomes;
  const left: Outcome = { state: 'missing', reason: 'left out by --only' };
  const others = plan.parts.filter(({ machine, address }) => !chosen.has(machine) && !outcomes.has(address));
  return new Map([...others.map(({ address }) => [address, left] as const), ...outcomes]);
}

function placedFiles(plan: FleetPlan, chosen: ReadonlySet<string>, outcomes: ReadonlyMap<string, Outcome>): FileRow[] {
  const rows = new Map<string, FileRow>();
  for (const { machine, role, address } of plan.parts) {
    const outcome = outcomes.get(address);
    if (!chosen.has(machine) || outcome?.state !== 'made') continue;
    const { made } = outcome;
    const folder = partFolder(made);
    const digests = new Map(made.files.map(({ name, digest }) => [name, digest]));
    for (const [name, digest] of digests) rows.set(`${folder}/${name}`, { file: `${folder}/${name}`, digest });
    for (const { name, to } of placements(made, machine, role)) rows.set(to, { file: to, digest: digests.get(name)! });
  }
  return [...rows.values()];
}
