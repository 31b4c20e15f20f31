import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { carryOver } from '../../fleet/carry-over.js';
import { csvText } from '../../fleet/csv/write-csv.js';
import { indexPage } from '../../fleet/index-page.js';
import { labelsPage } from '../../fleet/labels-page.js';
import type { MadePart, Outcome } from '../../fleet/made-part.js';
import { type FileRow, type Manifest, manifestOf } from '../../fleet/manifest.js';
import { manifestTable } from '../../fleet/manifest-csv.js';
import { partFolder, placements } from '../../fleet/names.js';
import type { FleetPlan } from '../../fleet/plan.js';
import type { Bed } from '../../fleet/plates.js';
import { printingTable } from '../../fleet/printing.js';
import type { Status } from '../../fleet/status.js';
import type { StoredManifest } from '../../fleet/stored-manifest.js';
import { hardwareTable } from '../../fleet/totals.js';
import { jsonText } from '../../output/report-json.js';
import { fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import { replaceFolder, type Stage } from '../writer/replace-folder.js';
import { sha256, sha256Base64 } from './digest.js';
import { pruneEntries } from './entry-store.js';
import { type Gathered, type GatherOptions, gather } from './gather.js';
import { PAGE_SCRIPT } from './make-entry.js';
import { earlierFiles, MANIFEST, readManifest, withWholeMachines } from './output-folder.js';
import { writePlates } from './write-plates.js';
import { writeZips } from './write-zips.js';

/** How a fleet is run. */
export interface RunOptions extends Omit<GatherOptions, 'onPart'> {
  readonly out: string;
  /** names of the machines to run; all unless given */
  readonly only?: readonly string[];
  readonly bed?: Bed;
  readonly zip?: boolean;
  /** a sheet of labels for bags */
  readonly labels?: boolean;
  /** what people noted of the parts */
  readonly status?: Status;
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
 * Runs a fleet: brings every distinct part to hand, then builds the output folder anew beside the old one, gives every
 * machine its files there, sums up, and puts it in the old one's place.
 * @throws InputError the folder belongs to another fleet or its manifest is damaged, or the disk cannot be written
 */
export async function runFleet(plan: FleetPlan, options: RunOptions): Promise<FleetResult> {
  const chosen = new Set(options.only ?? plan.machines.map(({ name }) => name));
  const isPart = chosen.size < plan.machines.length;
  openEarlier(options.out, plan, isPart);
  const wanted = new Set(plan.parts.filter(({ machine }) => chosen.has(machine)).map(({ address }) => address));
  const distinct = plan.distinct.filter(({ address }) => wanted.has(address));
  const folders = new Map<string, string>();
  const onPart = ({ address }: MadePart, folder: string) => void folders.set(address, folder);
  const gathered = await gather(distinct, { ...options, onPart });
  if (gathered.disk !== undefined)
    throw fault(options.out, '', `${gathered.disk}; what is made so far is whole, run again to go on`);
  const run: Run = { plan, chosen, gathered, folders };
  let earlier: StoredManifest | undefined;
  try {
    return await replaceFolder(options.out, {
      earlier: (path) => {
        earlier = openEarlier(path, plan, isPart);
        return earlierFiles(path, earlier);
      },
      fill: (stage, path) => sumUp(run, stage, earlier && withWholeMachines(path, earlier), options),
    });
  } catch (error) {
    throw fault(options.out, '', diskReason(error));
  } finally {
    pruneEntries(options.stores[0], options.cacheLimit ?? CACHE_LIMIT);
  }
}

/** What is at hand when the folder is built. */
interface Run {
  readonly plan: FleetPlan;
  readonly chosen: ReadonlySet<string>;
  readonly gathered: Gathered;
  /** where the files of each part lie, by address */
  readonly folders: ReadonlyMap<string, string>;
}

function openEarlier(path: string, { fleet }: FleetPlan, withRows: boolean): StoredManifest | undefined {
  const earlier = readManifest(path, withRows);
  if (earlier === undefined || earlier.fleet === fleet) return earlier;
  throw fault(path, '', `holds the fleet ${earlier.fleet}; give ${fleet} another folder with --out`);
}

async function sumUp(
  run: Run,
  stage: Stage,
  earlier: StoredManifest | undefined,
  options: RunOptions,
): Promise<FleetResult> {
  const { plan, chosen, gathered } = run;
  const files = new Map<string, FileRow>();
  const outcomes = await placeParts(run, stage, files);
  const write = (file: string, content: string | Uint8Array) => {
    stage.write(file, content);
    files.set(file, { file, digest: sha256(content) });
  };
  const carried = carryOver(manifestOf(plan, chosenOnly(plan, chosen, outcomes)), chosen, earlier);
  for (const row of carried.files) if (!files.has(row.file) && stage.keep(row.file)) files.set(row.file, row);
  const { manifest } = carried;
  const source = { plan, chosen, outcomes, out: stage.path };
  const { rows: plates, tooLarge } = options.bed ? writePlates(source, options.bed, write) : { rows: [], tooLarge: [] };
  if (options.zip) await writeZips(source, write);
  if (plan.formats.includes('page')) write(PAGE_SCRIPT, (await import('../../output/page/assets.js')).SCRIPT);
  const whole: Manifest = { ...manifest, plates, files: [] };
  write('manifest.csv', csvText(manifestTable(whole)));
  write(
    'hardware.csv',
    csvText(hardwareTable(manifest.hardware, new Map(manifest.machines.map((row) => [row.machine, row.hardware])))),
  );
  write('printing.csv', csvText(printingTable(whole)));
  if (options.labels) write('labels.html', labelsPage(whole, sha256Base64));
  write(
    'index.html',
    indexPage(whole, {
      ...(options.status ? { status: options.status } : {}),
      files: new Set(files.keys()),
      hashOf: sha256Base64,
    }),
  );
  const done: Manifest = { ...whole, files: [...files.values()].sort((a, b) => (a.file < b.file ? -1 : 1)) };
  stage.write(MANIFEST, jsonText(done));
  const { made, reused, refused } = gathered;
  return { manifest: done, made, reused, refused, stopped: options.stopped(), tooLarge };
}

/** After so many parts others get their turn. */
const BREATH = 100;

/** Gives every machine its files. A part that another run has cleared from the cache in the meantime counts as not made. */
async function placeParts(
  { plan, chosen, gathered, folders }: Run,
  stage: Stage,
  files: Map<string, FileRow>,
): Promise<ReadonlyMap<string, Outcome>> {
  const outcomes = new Map(gathered.outcomes);
  const placed = new Set<string>();
  for (const [i, { machine, role, address }] of plan.parts.entries()) {
    if (i % BREATH === 0) await new Promise((resolve) => setImmediate(resolve));
    const outcome = outcomes.get(address);
    if (!chosen.has(machine) || outcome?.state !== 'made') continue;
    const { made } = outcome;
    const from = folders.get(address) ?? '';
    const put = (name: string, file: string) => {
      stage.link(join(from, name), file);
      files.set(file, { file, digest: made.files.find((one) => one.name === name)!.digest });
    };
    if (!placed.has(address)) {
      if (!made.files.every(({ name }) => existsSync(join(from, name)))) {
        outcomes.set(address, { state: 'missing', reason: 'another run cleared it from the cache; run again' });
        continue;
      }
      for (const { name } of made.files) put(name, `${partFolder(made)}/${name}`);
      placed.add(address);
    }
    for (const { name, to } of placements(made, machine, role)) put(name, to);
  }
  return outcomes;
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
