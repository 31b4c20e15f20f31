import { existsSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { performance } from 'node:perf_hooks';
import { requireAcceptableOfAny } from '../axis/accept-call.js';
import { AXIS_KIND } from '../axis/axis-kind.js';
import { parsePartAccept } from '../fleet/accept-parts.js';
import { lackedRoles } from '../fleet/machine-rows.js';
import { fileFaultLine } from '../fleet/machines.js';
import type { MachineRows } from '../fleet/manifest.js';
import { oddReadings } from '../fleet/odd-readings.js';
import { type FleetPlan, partsByMachine } from '../fleet/plan.js';
import { parseBed } from '../fleet/plates.js';
import { LONGEST_FLEET } from '../fleet/read-sheet.js';
import { parseShard } from '../fleet/shard.js';
import { emptyStatus, readStatus, type Status, strayLines } from '../fleet/status.js';
import { FORMATS, type Format } from '../output/formats.js';
import { jsonText } from '../output/report-json.js';
import { KINDS as PART_KINDS } from '../pipeline/kinds.js';
import { SHIPPED } from '../presets/shipped.js';
import { nearest } from '../sheet/nearest.js';
import { fault, InputError } from '../units/faults.js';
import { howMany } from '../units/format.js';
import { foresee } from '../work/fleet/foresee.js';
import type { Maker } from '../work/fleet/makers.js';
import { noMaker } from '../work/fleet/no-maker.js';
import { openFleet } from '../work/fleet/open-fleet.js';
import { type FleetResult, runFleet } from '../work/fleet/run-fleet.js';
import { runShare } from '../work/fleet/share.js';
import { startMaker } from '../work/fleet/start-maker.js';
import { readTable } from '../work/read-input.js';
import { writeNewFile } from '../work/writer/files.js';
import { EXIT } from './exit-codes.js';
import { fleetLines, foreseenLines, lackLine, pairLine, shortening, troubleLines } from './fleet-lines.js';
import { progressLines } from './fleet-progress.js';
import { type Io, widthOf } from './io.js';
import { requireFormats } from './require-formats.js';

/** What was typed. */
export interface FleetArgs {
  readonly file: string;
  readonly out?: string | undefined;
  readonly cache?: string | undefined;
  readonly jobs?: string | undefined;
  readonly formats: string;
  readonly only?: readonly string[] | undefined;
  readonly plates?: string | undefined;
  readonly shard?: string | undefined;
  readonly zip?: boolean | undefined;
  readonly labels?: boolean | undefined;
  readonly status?: boolean | undefined;
  readonly accept?: readonly string[] | undefined;
  readonly json?: boolean | undefined;
  readonly 'keep-going'?: boolean | undefined;
  readonly 'dry-run'?: boolean | undefined;
  /** folders of shares to put together; nothing is made then */
  readonly shares?: readonly string[];
}

/** An axis may stand where a part does. */
const KINDS = [...PART_KINDS, AXIS_KIND];

const MOST_JOBS = 64;
const ZIPPED: readonly Format[] = ['drawing', 'page'];

/** Runs a fleet as typed. */
export async function fleetCall(args: FleetArgs, io: Io): Promise<number> {
  const chosen = requireFormats(args.formats);
  if (chosen.includes('step')) throw fault('--formats', 'step', 'is written by make, one part after the other');
  // a zip is read by people who have nothing else
  const formats = FORMATS.filter((one) => chosen.includes(one) || (args.zip === true && ZIPPED.includes(one)));
  if (!formats.includes('stl')) throw fault('--formats', args.formats, 'must hold stl: plates and masses come from it');
  const jobs = parseJobs(args.jobs);
  const shard = args.shard === undefined ? undefined : parseShard(args.shard);
  const bed = args.plates === undefined ? undefined : parseBed(args.plates);
  const keepGoing = args['keep-going'] === true;
  const accept = (args.accept ?? []).map(parsePartAccept);
  requireAcceptableOfAny(accept, KINDS);
  const opened = await openFleet(args.file, io, { kinds: KINDS, presets: SHIPPED, formats, keepGoing, accept });
  for (const one of opened.faults) io.stderr.write(`${fileFaultLine(one)}\n`);
  const { plan, presets } = opened;
  if (!plan) return EXIT.wrong;
  const least = opened.faults.length > 0 ? EXIT.wrong : EXIT.done;
  const only = args.only && requireMachines(args.only, plan);
  const status = await statusOf(args, plan, io);
  const own = shard ? `${plan.fleet}-share-${shard.index}-of-${shard.count}` : plan.fleet;
  const out = resolve(io.cwd, args.out ?? join('out', own));
  const cache = {
    folder: args.cache === undefined ? join(dirname(out), '.leadwright-cache') : resolve(io.cwd, args.cache),
  };
  const shares = (args.shares ?? []).map((folder) => ({ folder: requireFolder(folder, io.cwd) }));
  if (args['dry-run'])
    return showForeseen(chosenOf(plan, only), [cache, ...shares], { presets, json: args.json === true }, io, least);
  const maker = (parts: number): Maker => (args.shares ? noMaker() : startMaker(Math.min(jobs, parts)));
  const run = startRun(io, maker, formats);
  const shared = { ...run.options, stores: [cache, ...shares] as const, ...(presets === SHIPPED ? {} : { presets }) };
  try {
    if (shard) return await shareCall(chosenOf(plan, only), { ...shared, out, shard }, io, args.json === true);
    const watch = watched(only);
    const text: string[] = [];
    const result = await runFleet(plan, {
      ...shared,
      out,
      onMachine: watch.see,
      ...(args.json ? { onText: (piece: string) => void text.push(piece) } : {}),
      ...(only ? { only } : {}),
      ...(bed ? { bed } : {}),
      zip: args.zip === true,
      labels: args.labels === true,
      ...(status ? { status } : {}),
    });
    run.end();
    if (args.json) for (const piece of text) io.stdout.write(piece);
    else io.stdout.write(`${fleetLines(result, watch.troubles, out, widthOf(io)).join('\n')}\n`);
    if (result.stopped) io.stderr.write('stopped before the end; the same command goes on from here\n');
    return Math.max(least, watch.code(result));
  } finally {
    run.end();
  }
}

/** What people noted, from FLEET-status.csv beside the fleet file; `--status` begins one where there is none. */
async function statusOf({ file, status }: FleetArgs, plan: FleetPlan, io: Io): Promise<Status | undefined> {
  const path = join(file === '-' ? '.' : dirname(file), `${plan.fleet}-status.csv`);
  const isThere = existsSync(resolve(io.cwd, path));
  if (!isThere && status !== true) return undefined;
  if (!isThere) {
    await writeNewFile(path, emptyStatus(plan), io.cwd);
    io.stderr.write(`${path}: written; note there what is printed, mounted, measured\n`);
  }
  try {
    const read = readStatus(await readTable(path, io, LONGEST_FLEET));
    for (const line of strayLines(read, plan)) io.stderr.write(`${path}: ${line}\n`);
    return read;
  } catch (error) {
    if (error instanceof InputError)
      throw new InputError(
        error.faults.map((one) => ({
          ...one,
          path: path + (one.at ? `:${one.at.line}:${one.at.column}` : '') + (one.path === '' ? '' : ` ${one.path}`),
        })),
      );
    throw error;
  }
}

type SharedOptions = Omit<Parameters<typeof runShare>[2], 'out'>;

/** Progress and interruption of a run. */
function startRun(io: Io, maker: (parts: number) => Maker, formats: readonly Format[]) {
  const lines = progressLines(io, () => performance.now());
  let stopped = false;
  const release = io.onInterrupt?.(() => {
    stopped = true;
    io.stderr.write('\nstopping after the parts in hand; again to stop at once\n');
  });
  return {
    options: { maker, formats, onProgress: lines.tell, stopped: () => stopped },
    end: () => {
      lines.end();
      release?.();
    },
  };
}

async function shareCall(
  plan: FleetPlan,
  options: SharedOptions & { readonly out: string; readonly shard: ReturnType<typeof parseShard> },
  io: Io,
  json: boolean,
): Promise<number> {
  const { shard, out } = options;
  const result = await runShare(plan, shard, options);
  const { lines, ...counts } = result;
  for (const line of lines) io.stderr.write(`${line}\n`);
  const told = `share ${shard.index}/${shard.count} of ${plan.fleet}: ${howMany(counts.parts, 'part')}, ${counts.made} made, ${counts.reused} reused, ${counts.failed} refused\nwritten: ${out}\n`;
  io.stdout.write(json ? jsonText({ fleet: plan.fleet, ...counts, lines }) : told);
  return counts.failed > 0 || counts.stopped ? EXIT.failed : EXIT.done;
}

/** A share that was named wrongly would else look like one without parts. */
function requireFolder(folder: string, cwd: string): string {
  const path = resolve(cwd, folder);
  if (!statSync(path, { throwIfNoEntry: false })?.isDirectory()) throw fault(folder, '', 'no such folder');
  return path;
}

async function showForeseen(
  plan: FleetPlan,
  stores: Parameters<typeof foresee>[1],
  { presets, json }: { readonly presets: FleetPresets; readonly json: boolean },
  io: Io,
  least: number,
): Promise<number> {
  const { parts, pairs } = await foresee(plan, stores, { kinds: KINDS, presets });
  const odd = [...oddReadings(plan.parts)].flatMap(([{ machine }, found]) => found.map((one) => ({ machine, ...one })));
  const lacks = [...partsByMachine(plan)].flatMap((one) =>
    lackedRoles(one.machine, one.parts).map((role) => ({ machine: one.machine.name, role })),
  );
  const lines = [
    ...odd.map(({ machine, role, message }) => `${machine} ${role}: ${message}`),
    ...lacks.map(lackLine),
    ...pairs.map(pairLine),
  ];
  io.stdout.write(
    json
      ? jsonText({ fleet: plan.fleet, parts, odd, lacks, pairs })
      : `${foreseenLines(parts, lines, widthOf(io)).join('\n')}\n`,
  );
  const isWhole =
    lacks.length === 0 &&
    parts.every(({ would }) => would === 'make' || would === 'reuse') &&
    pairs.every(({ verdict }) => verdict !== 'fail');
  return Math.max(least, isWhole ? EXIT.done : EXIT.failed);
}

type FleetPresets = Parameters<typeof foresee>[2]['presets'];

/** What of every machine decides what is told and how the call ends. */
function watched(only: readonly string[] | undefined) {
  const wanted = only && new Set(only);
  const troubles = shortening();
  let [isBroken, isWhole] = [false, true];
  return {
    troubles,
    see: (rows: MachineRows) => {
      const { machine, parts } = rows;
      troubles.add(troubleLines(rows));
      isBroken ||= parts.some(({ reasons }) => reasons.some((reason) => reason.startsWith('internal error: ')));
      if (wanted === undefined || wanted.has(machine.machine)) isWhole &&= machine.complete;
    },
    code: ({ stopped, tooLarge }: FleetResult) => {
      if (isBroken) return EXIT.internal;
      return isWhole && !stopped && tooLarge.length === 0 ? EXIT.done : EXIT.failed;
    },
  };
}

function parseJobs(text: string | undefined): number {
  if (text === undefined) return Math.min(MOST_JOBS, availableParallelism());
  const jobs = Number(text);
  if (Number.isInteger(jobs) && jobs >= 1 && jobs <= MOST_JOBS) return jobs;
  throw fault('--jobs', text, `must be a whole number from 1 to ${MOST_JOBS}`);
}

function requireMachines(names: readonly string[], { machines }: FleetPlan): readonly string[] {
  const known = machines.map(({ name }) => name);
  const wanted = names.flatMap((name) => name.split(',')).map((name) => name.trim());
  for (const name of wanted) {
    if (known.includes(name)) continue;
    const near = nearest(name, known);
    throw fault('--only', name, near ? `no machine of this name; did you mean ${near}?` : 'no machine of this name');
  }
  return wanted;
}

function chosenOf(plan: FleetPlan, only: readonly string[] | undefined): FleetPlan {
  if (!only) return plan;
  const machines = plan.machines.filter(({ name }) => only.includes(name));
  const parts = plan.parts.filter(({ machine }) => only.includes(machine));
  const used = new Set(parts.map(({ address }) => address));
  return { ...plan, machines, parts, distinct: plan.distinct.filter(({ address }) => used.has(address)) };
}
