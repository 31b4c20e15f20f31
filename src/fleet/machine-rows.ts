import type { PlannedMachine } from './machines.js';
import type { Outcome, RememberedPart } from './made-part.js';
import type { MachineRow, MachineRows, ManifestRow, Standing } from './manifest-rows.js';
import { partFolder, placements } from './names.js';
import type { Neighbour } from './neighbours.js';
import type { OddReading } from './odd-readings.js';
import { pairFindings } from './pairs.js';
import type { PlannedPart } from './plan.js';
import { worstOf } from './tally.js';
import { filamentOf, hardwareOf } from './totals.js';

/** A part of a machine, and what became of it. */
export interface ReachedPart {
  readonly part: PlannedPart;
  readonly outcome: Outcome;
}

/**
 * What a run says of one machine: a row of its own, and a row a printable file. It says nothing of how the run went, so that the
 * same fleet gives the same rows afresh, from a cache or from shares.
 *
 * @param machine the machine
 * @param reached its parts
 * @param oddOf what was found odd in a part's readings
 */
export function machineRows(
  machine: PlannedMachine,
  reached: readonly ReachedPart[],
  oddOf: (part: PlannedPart) => readonly OddReading[],
): MachineRows {
  const odd = reached.flatMap(({ part }) => oddOf(part));
  const parts = reached.flatMap(({ part, outcome }) => rowsOf(part, outcome, oddOf(part)));
  return { machine: machineRow(machine, reached, odd), parts };
}

/** What keeps a part from being made at all: its sheet, or readings that are not there. */
export function unreached({ wrong, unmeasured }: PlannedPart): Outcome | undefined {
  if (wrong) return { state: 'wrong', lines: wrong };
  return unmeasured && { state: 'unmeasured', lines: unmeasured };
}

function machineRow(machine: PlannedMachine, parts: readonly ReachedPart[], odd: readonly OddReading[]): MachineRow {
  const made = parts.flatMap(({ part, outcome }): (Neighbour & { quantity: number; made: RememberedPart })[] => {
    if (outcome.state !== 'made' || outcome.made.verdict === 'fail') return [];
    const { role, axis, quantity, spare } = part;
    return [{ role, axis, pieces: quantity, quantity: quantity + spare, made: outcome.made }];
  });
  const pairs = pairFindings(made, machine.motorShaft);
  const lacks = lackedRoles(
    machine,
    parts.map(({ part }) => part),
  );
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

/** Roles that a machine's kind lists and none of its parts has. */
export function lackedRoles({ needs }: PlannedMachine, parts: readonly PlannedPart[]): string[] {
  return needs.filter((name) => !parts.some(({ role }) => role === name));
}

function standing(outcome: Outcome): Standing {
  if (outcome.state === 'made') return outcome.made.verdict;
  return outcome.state === 'missing' || outcome.state === 'unmeasured' ? outcome.state : 'wrong';
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
function bodyOf({ bodies }: RememberedPart, name: string): Pick<ManifestRow, 'material' | 'mass' | 'bounds'> {
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
