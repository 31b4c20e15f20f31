import type { HardwareRow } from '../parts/part-kind.js';
import { type Counts, countsOf } from './counts.js';
import type { GivenMachine } from './machines.js';
import type { MadePart, Outcome } from './made-part.js';
import type { MachineRow, ManifestRow, Standing } from './manifest-rows.js';
import { partFolder, placements } from './names.js';
import { type OddReading, oddReadings } from './odd-readings.js';
import { type Neighbour, pairFindings } from './pairs.js';
import type { FleetPlan, PlannedPart } from './plan.js';
import type { PlateRow } from './plates.js';
import { filamentOf, filamentSum, hardwareOf, hardwareSum, type MaterialMass } from './totals.js';

export type { MachineRow, ManifestRow, Standing } from './manifest-rows.js';

const STANDINGS: readonly Standing[] = ['pass', 'caution', 'missing', 'unmeasured', 'fail', 'wrong'];

/** A file of the output folder. */
export interface FileRow {
  readonly file: string;
  readonly digest: string;
}

/** What a fleet run leaves, as in manifest.json. */
export interface Manifest {
  readonly leadwright: 1;
  readonly fleet: string;
  readonly verdict: Standing;
  readonly formats: readonly string[];
  readonly counts: Counts;
  readonly machines: readonly MachineRow[];
  readonly parts: readonly ManifestRow[];
  readonly hardware: readonly HardwareRow[];
  /** g by material, supports and waste aside */
  readonly filament: readonly MaterialMass[];
  readonly plates: readonly PlateRow[];
  /** every file in the folder but the manifest itself */
  readonly files: readonly FileRow[];
}

/** What a manifest says of its parts, before plates and files are known. */
export type PartsOfManifest = Omit<Manifest, 'plates' | 'files'>;

/**
 * Sums a run up: a row a printable file, a row a machine, what to buy and how much filament it takes. It says nothing
 * of how the run went, so that the same fleet gives the same manifest afresh, from a cache or from shares.
 *
 * @param plan what was to be made
 * @param outcomes what became of each distinct part, by address
 */
export function manifestOf(plan: FleetPlan, outcomes: ReadonlyMap<string, Outcome>): PartsOfManifest {
  const outcomeOf = (part: PlannedPart): Outcome => unreachedOf(part) ?? outcomes.get(part.address) ?? NOT_REACHED;
  const odd = oddReadings(plan.parts);
  const byMachine = grouped(plan.parts);
  const machines = plan.machines.map((machine) => {
    const parts = (byMachine.get(machine.name) ?? []).map((part) => ({ part, outcome: outcomeOf(part) }));
    return machineRow(
      machine,
      parts,
      parts.flatMap(({ part }) => odd.get(part) ?? []),
    );
  });
  const parts = plan.parts.flatMap((part) => rowsOf(part, outcomeOf(part), odd.get(part) ?? []));
  return summed({ fleet: plan.fleet, formats: plan.formats, machines, parts });
}

/** Machines and parts with their totals. */
export function summed(rows: Pick<Manifest, 'fleet' | 'formats' | 'machines' | 'parts'>): PartsOfManifest {
  const { fleet, formats, machines, parts } = rows;
  const verdict = worstOf(machines.map((machine) => machine.verdict));
  const hardware = hardwareSum(machines.map((machine) => machine.hardware));
  const filament = filamentSum(machines.map((machine) => machine.filament));
  const counts = countsOf(machines, parts);
  return { leadwright: 1, fleet, verdict, formats, counts, machines, parts, hardware, filament };
}

function machineRow(
  machine: GivenMachine,
  parts: readonly { readonly part: PlannedPart; readonly outcome: Outcome }[],
  odd: readonly OddReading[],
): MachineRow {
  const made = parts.flatMap(({ part, outcome }): (Neighbour & { quantity: number })[] => {
    if (outcome.state !== 'made' || outcome.made.verdict === 'fail') return [];
    const { role, axis, quantity, spare } = part;
    return [{ role, axis, quantity: quantity + spare, made: outcome.made }];
  });
  const pairs = pairFindings(made, machine.motorShaft);
  const lacks = machine.needs.filter((role) => !parts.some(({ part }) => part.role === role));
  const standings: Standing[] = [
    ...parts.map(({ outcome }) => standing(outcome)),
    ...pairs.map(({ verdict }) => verdict),
    ...odd.map(() => 'caution' as const),
  ];
  const verdict = worstOf(lacks.length > 0 ? [...standings, 'missing'] : standings);
  const complete = made.length === parts.length && lacks.length === 0 && verdict !== 'fail';
  const { name, kind = null, group = null } = machine;
  const totals = { hardware: hardwareOf(made), filament: filamentOf(made) };
  const unmeasured = parts.some(({ outcome }) => outcome.state === 'unmeasured');
  return { machine: name, kind, group, verdict, complete, lacks, unmeasured, odd, pairs, ...totals };
}

function grouped(parts: readonly PlannedPart[]): Map<string, PlannedPart[]> {
  const groups = new Map<string, PlannedPart[]>();
  for (const part of parts) {
    const group = groups.get(part.machine);
    if (group) group.push(part);
    else groups.set(part.machine, [part]);
  }
  return groups;
}

const NOT_REACHED: Outcome = { state: 'missing', reason: 'not made yet' };

function standing(outcome: Outcome): Standing {
  if (outcome.state === 'made') return outcome.made.verdict;
  return outcome.state === 'missing' || outcome.state === 'unmeasured' ? outcome.state : 'wrong';
}

/** A part whose sheet or readings keep it from being made at all. */
function unreachedOf({ wrong, unmeasured }: PlannedPart): Outcome | undefined {
  if (wrong) return { state: 'wrong', lines: wrong };
  return unmeasured && { state: 'unmeasured', lines: unmeasured };
}

/** The worst of several; pass for none. */
export function worstOf(standings: readonly Standing[]): Standing {
  return standings.reduce((worst, one) => (STANDINGS.indexOf(one) > STANDINGS.indexOf(worst) ? one : worst), 'pass');
}

function rowsOf(planned: PlannedPart, outcome: Outcome, odd: readonly OddReading[]): ManifestRow[] {
  const { machine, role, quantity, spare, axis = null, printer = null, address } = planned;
  const head = { machine, role, quantity, spare, printer, axis, address };
  const heard = odd.map(({ message }) => message);
  const empty = { file: null, digest: null, material: null, mass: null, bounds: null, folder: null };
  const verdict = standing(outcome);
  if (outcome.state !== 'made') {
    return [{ ...head, part: '', name: '', verdict, reasons: [...heard, ...reasonsOf(outcome)], ...empty }];
  }
  const { made } = outcome;
  const about = { ...head, part: made.part, name: made.name, verdict, reasons: [...heard, ...made.reasons] };
  if (made.files.length === 0) return [{ ...about, ...empty }];
  const folder = partFolder(made);
  return placements(made, machine, role).map(({ name, to }) => {
    const body = bodyOf(made, name);
    const digest = made.files.find((file) => file.name === name)?.digest ?? null;
    return { ...about, file: to, digest, ...body, folder };
  });
}

function reasonsOf(outcome: Exclude<Outcome, { state: 'made' }>): readonly string[] {
  if (outcome.state === 'wrong' || outcome.state === 'unmeasured') return outcome.lines;
  return [outcome.state === 'broken' ? `internal error: ${outcome.message}` : outcome.reason];
}

/** A body's own figures; of a file that holds several, their sum and what is around them all. */
function bodyOf({ bodies }: MadePart, name: string): Pick<ManifestRow, 'material' | 'mass' | 'bounds'> {
  const own = bodies.filter(({ file }) => file === name);
  const held = own.length > 0 ? own : bodies;
  const side = (end: 0 | 1, pick: (...values: number[]) => number) =>
    [0, 1, 2].map((axis) => pick(...held.map(({ bounds }) => bounds[end][axis] ?? 0)));
  return {
    material: [...new Set(held.map(({ material }) => material))].join(' + '),
    mass: held.reduce((sum, { mass }) => sum + mass, 0),
    bounds: [side(0, Math.min), side(1, Math.max)],
  };
}
