import { leftWords, STANDING_WORDS } from '../fleet/counts.js';
import { stoodByAmong } from '../fleet/made-part.js';
import type { MachineRows, Standing } from '../fleet/manifest.js';
import type { PairFinding } from '../fleet/neighbours.js';
import { WIDTH, wrapped } from '../output/terminal/layout.js';
import { howMany, plain } from '../units/format.js';
import type { Foreseen } from '../work/fleet/foresee.js';
import type { FleetResult } from '../work/fleet/run-fleet.js';

const MOST_LINES = 40;

/** A run for people, at most some forty machines and mistakes long. */
export function fleetLines(
  { manifest, made, reused, refused, tooLarge }: FleetResult,
  troubles: Shortened,
  out: string,
  width?: number,
): string[] {
  const { counts, fleet, verdict, plates, filament } = manifest;
  const grams = filament.map(({ material, mass }) => `${material} ${plain(mass, 0)} g`).join(', ');
  const lines = [
    `${loud(verdict)}  ${fleet}: ${counts.complete} of ${howMany(counts.machines, 'machine')} complete`,
    `  ${[`${counts.parts.made} of ${howMany(counts.parts.all, 'part')} made`, ...leftWords(counts)].join(', ')}`,
    `  ${howMany(counts.pieces, 'piece')} to print, ${howMany(counts.files, 'file')} for printers; of distinct parts ${made} made, ${reused} reused, ${refused} refused`,
    ...(grams === '' ? [] : [`  filament: ${grams}`]),
    ...(plates.length === 0 ? [] : [`  ${howMany(plates.length, 'plate')}`]),
    ...troubles.lines(),
    ...shortened(tooLarge.map((label) => `  ${label}: larger than the plate`)),
    `written: ${out}`,
  ];
  return lines.flatMap((line) => fitted(line, width));
}

/** One line for everything that keeps a machine from being complete, and for each failed check that is accepted. */
export function troubleLines({ machine: row, parts }: MachineRows): string[] {
  const { machine, lacks, odd, pairs } = row;
  return [
    ...odd.map(({ role, message }) => `  ${machine} ${role}: ${message}`),
    ...lacks.map((role) => `  ${lackLine({ machine, role })}`),
    ...pairs.filter(({ verdict }) => verdict !== 'pass').map((pair) => `  ${pairLine({ machine, ...pair })}`),
    ...parts
      .filter(({ role }, i) => parts.findIndex((other) => other.role === role) === i)
      .flatMap((part) => partLines(part, odd)),
  ];
}

/** Why a part is not there, and what somebody accepted of it. */
function partLines(
  { machine, role, verdict, reasons, file }: MachineRows['parts'][number],
  odd: MachineRows['machine']['odd'],
): string[] {
  const stood = stoodByAmong(reasons);
  const others = reasons.filter((one) => !stood.includes(one) && !odd.some(({ message }) => message === one));
  return [
    ...stood.map((reason) => `  ${machine} ${role}: ${reason}`),
    ...(file === null ? others.map((reason) => `  ${machine} ${role}: ${loud(verdict)} ${reason}`) : []),
  ];
}

/** What does not go together between parts of a machine. */
export function pairLine({ machine, roles, verdict, message }: PairFinding & { readonly machine: string }): string {
  return `${machine}: ${loud(verdict)} ${roles.join(' and ')}: ${message}`;
}

/** A part that a machine's kind lists and the machine has not. */
export function lackLine({ machine, role }: { readonly machine: string; readonly role: string }): string {
  return `${machine}: lacks ${role}, which its kind lists`;
}

/** What a run would do, below what is odd or lacking. */
export function foreseenLines(parts: readonly Foreseen[], minded: readonly string[] = [], width?: number): string[] {
  const count = (would: Foreseen['would']) => parts.filter((part) => part.would === would).length;
  const rows = parts.map(({ would, name, wanted, reasons, stood }) => {
    const named = wanted.slice(0, MOST_NAMED).map(({ machine, role, pieces }) => `${machine} ${role}${times(pieces)}`);
    const more = wanted.length - named.length;
    const machines = more > 0 ? [...named, `${more} more`] : named;
    return [
      `  ${would.padEnd(7)} ${name === '' ? '' : `${name}: `}${machines.join(', ')}`,
      ...[...stood, ...reasons].map((reason) => `          ${reason}`),
    ].join('\n');
  });
  const unmeasured = count('measure') > 0 ? `, ${count('measure')} not measured` : '';
  const head = `${howMany(count('make'), 'part')} to make, ${count('reuse')} to reuse, ${count('refuse')} refused${unmeasured}`;
  const lines = [head, ...shortened([...minded.map((line) => `  ${line}`), ...rows])];
  return lines.flatMap((line) => line.split('\n').flatMap((one) => fitted(one, width)));
}

/** A line that is too long goes on below, two columns further in than it begins. */
function fitted(line: string, width = WIDTH): string[] {
  if (line.length <= width) return [line];
  const indent = line.length - line.trimStart().length;
  const [first = '', ...rest] = wrapped(line, 0, width - indent - 2);
  return [' '.repeat(indent) + first, ...rest.map((one) => ' '.repeat(indent + 2) + one)];
}

/** A distinct part may be wanted by thousands of machines. */
const MOST_NAMED = 4;

function times(pieces: number): string {
  return pieces === 1 ? '' : ` ×${pieces}`;
}

function loud(standing: Standing): string {
  return STANDING_WORDS[standing].toUpperCase();
}

/** The first of many lines, and how many there are. */
export interface Shortened {
  readonly add: (lines: readonly string[]) => void;
  readonly lines: () => string[];
}

/** Lines that come one after the other, of which a screen shows the first. */
export function shortening(): Shortened {
  const first: string[] = [];
  let count = 0;
  return {
    add: (lines) => {
      first.push(...lines.slice(0, MOST_LINES - first.length));
      count += lines.length;
    },
    lines: () => (count > MOST_LINES ? [...first, `  … and ${count - MOST_LINES} more; --json lists all`] : first),
  };
}

function shortened(lines: readonly string[]): string[] {
  const some = shortening();
  some.add(lines);
  return some.lines();
}
