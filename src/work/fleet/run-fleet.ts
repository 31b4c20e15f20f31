import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { carryOver } from '../../fleet/carry-over.js';
import { csvPieces } from '../../fleet/csv/write-csv.js';
import type { FinishedPart } from '../../fleet/finished-part.js';
import { indexPage } from '../../fleet/index-page.js';
import { labelsPage } from '../../fleet/labels-page.js';
import { machineRows, type ReachedPart, unreached } from '../../fleet/machine-rows.js';
import type { PlannedMachine } from '../../fleet/machines.js';
import type { Outcome } from '../../fleet/made-part.js';
import {
  type FileRow,
  type MachineRows,
  type Manifest,
  type ManifestHead,
  machinesIn,
  manifestPieces,
  partsIn,
} from '../../fleet/manifest.js';
import { manifestTable } from '../../fleet/manifest-csv.js';
import { FOLDERS, partFolder, placements } from '../../fleet/names.js';
import { oddReadings } from '../../fleet/odd-readings.js';
import { type FleetPlan, type PlannedPart, partsByMachine } from '../../fleet/plan.js';
import type { Bed, PlateItem } from '../../fleet/plates.js';
import { printingDays, printingTable } from '../../fleet/printing.js';
import type { Status } from '../../fleet/status.js';
import type { StoredManifest } from '../../fleet/stored-manifest.js';
import { tally } from '../../fleet/tally.js';
import { hardwareTable } from '../../fleet/totals.js';
import { fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import type { Content } from '../writer/basics.js';
import { replaceFolder, type Stage } from '../writer/replace-folder.js';
import { sha256Base64 } from './digest.js';
import { entryFolder, pruneEntries, readFreshEntry } from './entry-store.js';
import { CLEARED, type Gathered, type GatherOptions, gather } from './gather.js';
import { machineZip } from './machine-zip.js';
import { PAGE_SCRIPT } from './make-entry.js';
import { earlierFiles, MANIFEST, readManifest, withWholeMachines } from './output-folder.js';
import { recalled } from './recalled.js';
import { plateItems, writePlates } from './write-plates.js';

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
  /** called with what is said of each machine */
  readonly onMachine?: (rows: MachineRows) => void;
  /** called with the manifest and how the run went, as text, piece by piece; what it tells is true once the run has ended well */
  readonly onText?: (piece: string) => void;
}

/** What a run leaves. */
export interface FleetResult {
  readonly manifest: ManifestHead;
  readonly made: number;
  readonly reused: number;
  readonly refused: number;
  /** ended before its end, by a person */
  readonly stopped: boolean;
  /** pieces larger than the bed */
  readonly tooLarge: readonly string[];
}

/** 2 GB: some four thousand parts. */
const CACHE_LIMIT = 2_000_000_000;

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
  const gathered = await gather(distinct, options);
  if (gathered.disk !== undefined)
    throw fault(options.out, '', `${gathered.disk}; what is made so far is whole, run again to go on`);
  const run: Run = { plan, chosen, gathered };
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
  const { plan, gathered } = run;
  const files = new Map<string, string>();
  const write = writerInto(stage, files);
  const { rows, items, sums, days } = await placeAll(run, stage, files, write, earlier, options);
  const { rows: plates, tooLarge } = options.bed
    ? writePlates(plan.fleet, items, options.bed, stage.path, write)
    : { rows: [], tooLarge: [] };
  if (plan.formats.includes('page')) {
    const { sharedPageScript } = await import('../../output/page/page-shell.js');
    write(PAGE_SCRIPT, await sharedPageScript());
  }
  const head: ManifestHead = { fleet: plan.fleet, formats: plan.formats, ...sums, plates };
  const manifest: Manifest = { ...head, rows };
  write('manifest.csv', csvPieces(manifestTable(partsIn(rows))));
  write('hardware.csv', csvPieces(hardwareTable(head.hardware, machinesIn(rows))));
  write('printing.csv', csvPieces(printingTable(days)));
  if (options.labels) write('labels.html', labelsPage(plan.fleet, partsIn(rows), sha256Base64));
  const status = options.status ? { status: options.status } : {};
  write('index.html', indexPage(manifest, { files, days, hashOf: sha256Base64, ...status }));
  const { made, reused, refused } = gathered;
  const ended = { made, reused, refused, stopped: options.stopped() };
  stage.write(MANIFEST, manifestPieces(manifest, filesIn(files)));
  if (options.onText)
    for (const piece of manifestPieces(manifest, filesIn(files), { run: ended })) options.onText(piece);
  return { manifest: head, ...ended, tooLarge };
}

type Write = (file: string, content: Content) => void;

/** Writes files and remembers their digests. */
function writerInto(stage: Stage, files: Map<string, string>): Write {
  return (file, content) => {
    const digest = createHash('sha256');
    const isWhole = typeof content === 'string' || content instanceof Uint8Array;
    if (isWhole) digest.update(content);
    stage.write(file, isWhole ? content : digested(content, digest));
    files.set(file, digest.digest('hex'));
  };
}

function* digested(pieces: Iterable<string>, digest: ReturnType<typeof createHash>): Iterable<string> {
  for (const piece of pieces) {
    digest.update(piece);
    yield piece;
  }
}

function* filesIn(files: ReadonlyMap<string, string>): Iterable<FileRow> {
  for (const file of [...files.keys()].sort()) yield { file, digest: files.get(file)! };
}

/** After so many machines others get their turn. */
const BREATH = 100;

/**
 * Gives every machine its files, and notes what is said of it. What is noted is not asked for again, since another run may clear
 * the cache in the meantime.
 */
async function placeAll(
  run: Run,
  stage: Stage,
  files: Map<string, string>,
  write: Write,
  earlier: StoredManifest | undefined,
  options: RunOptions,
) {
  const { plan, chosen } = run;
  const reach = reacher(run, stage, files);
  const odd = oddReadings(plan.parts);
  const left = new Set(plan.machines.map(({ name }) => name).filter((name) => !chosen.has(name)));
  const carried = carryOver(left, earlier);
  const rows = stage.spool<MachineRows>();
  const items: PlateItem[] = [];
  const sum = tally();
  const printing = printingDays(stage.spool);
  let count = 0;
  for (const { machine, parts } of partsByMachine(plan)) {
    if (count++ % BREATH === 0) await new Promise((resolve) => setImmediate(resolve));
    const reached = parts.map((part) => ({ part, outcome: reach(part) }));
    const own = carried.rowsOf(machine.name) ?? machineRows(machine, reached, (part) => odd.get(part) ?? []);
    rows.push(own);
    sum.add(own);
    printing.add(own.parts);
    options.onMachine?.(own);
    const finished = finishedIn(reached);
    if (options.bed) items.push(...finished.flatMap(plateItems));
    if (options.zip && finished.length > 0)
      write(zipOf(machine), await machineZip(plan.fleet, machine.name, finished, stage.path));
  }
  for (const { file, digest } of carried.files) if (!files.has(file) && stage.keep(file)) files.set(file, digest);
  return { rows, items, sums: sum.sums(), days: printing.days() };
}

function zipOf({ name }: PlannedMachine): string {
  return `${FOLDERS.zips}/${name}.zip`;
}

function finishedIn(reached: readonly ReachedPart[]): FinishedPart[] {
  return reached.flatMap(({ part, outcome }) =>
    outcome.state === 'made' && outcome.made.files.length > 0 ? [{ ...part, made: outcome.made }] : [],
  );
}

const LEFT_OUT: Outcome = { state: 'missing', reason: 'left out by --only' };
const NOT_REACHED: Outcome = { state: 'missing', reason: 'not made yet' };

/** Gives a part of a machine its files, and tells what became of it. */
function reacher({ chosen, gathered }: Run, stage: Stage, files: Map<string, string>): (part: PlannedPart) => Outcome {
  const placed = new Set<string>();
  const outcomeOf = recalled((address): Outcome => {
    const outcome = gathered.outcomes.get(address);
    if (outcome?.state !== 'stored') return outcome ?? NOT_REACHED;
    const made = readFreshEntry(outcome.store, address);
    if (!made) return CLEARED;
    const folder = entryFolder(outcome.store, address);
    if (!placed.has(address)) {
      if (!made.files.every(({ name }) => existsSync(join(folder, name)))) return CLEARED;
      for (const { name, digest } of made.files) put(join(folder, name), `${partFolder(made)}/${name}`, digest);
      placed.add(address);
    }
    return { state: 'made', made };
  });
  const put = (from: string, file: string, digest: string) => {
    stage.link(from, file);
    files.set(file, digest);
  };
  return (part) => {
    const stands = unreached(part) ?? (chosen.has(part.machine) ? outcomeOf(part.address) : LEFT_OUT);
    if (stands.state !== 'made') return stands;
    const { made } = stands;
    const digests = new Map(made.files.map(({ name, digest }) => [name, digest]));
    for (const { name, from, to } of placements(made, part.machine, part.role))
      put(join(stage.path, from), to, digests.get(name)!);
    return stands;
  };
}
