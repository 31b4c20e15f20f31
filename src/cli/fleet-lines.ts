import type { Manifest, Standing } from '../fleet/manifest.js';
import { plain } from '../units/format.js';
import type { Foreseen } from '../work/fleet/foresee.js';
import type { FleetResult } from '../work/fleet/run-fleet.js';

const MOST_LINES = 40;
const WORDS: Readonly<Record<Standing, string>> = {
  pass: 'PASS',
  caution: 'CAUTION',
  fail: 'FAIL',
  wrong: 'WRONG',
  missing: 'NOT MADE',
};

/** A run for people, at most some forty machines and mistakes long. */
export function fleetLines({ manifest, made, reused, tooLarge }: FleetResult, out: string): string[] {
  const { machines, fleet, verdict, plates, filament } = manifest;
  const complete = machines.filter((machine) => machine.complete).length;
  const grams = filament.map(({ material, mass }) => `${material} ${plain(mass, 0)} g`).join(', ');
  return [
    `${WORDS[verdict]}  ${fleet}: ${complete} of ${machines.length} machines complete`,
    `  ${made} parts made, ${reused} reused, ${manifest.parts.filter(({ file }) => file !== null).length} files for printers`,
    ...(grams === '' ? [] : [`  filament: ${grams}`]),
    ...(plates.length === 0 ? [] : [`  ${plates.length} plate${plates.length === 1 ? '' : 's'}`]),
    ...shortened(troubleLines(manifest)),
    ...shortened(tooLarge.map((label) => `  ${label}: larger than the plate`)),
    `written: ${out}`,
  ];
}

/** One line for everything that keeps a machine from being complete. */
function troubleLines({ machines, parts }: Manifest): string[] {
  return machines.flatMap(({ machine, lacks, pairs }) => [
    ...lacks.map((role) => `  ${machine}: lacks ${role}, which its kind lists`),
    ...pairs
      .filter(({ verdict }) => verdict !== 'pass')
      .map(({ roles, verdict, message }) => `  ${machine}: ${WORDS[verdict]} ${roles.join(' and ')}: ${message}`),
    ...parts
      .filter((row) => row.machine === machine && row.file === null)
      .flatMap(({ role, reasons }) => reasons.map((reason) => `  ${machine} ${role}: ${reason}`)),
  ]);
}

/** What a run would do. */
export function foreseenLines(parts: readonly Foreseen[]): string[] {
  const count = (would: Foreseen['would']) => parts.filter((part) => part.would === would).length;
  const rows = parts.map(({ would, name, wanted, reasons }) => {
    const pieces = wanted.reduce((sum, { quantity }) => sum + quantity, 0);
    const machines = new Set(wanted.map(({ machine }) => machine)).size;
    const of = machines === 1 ? (wanted[0]?.machine ?? '') : `${machines} machines`;
    return [
      `  ${would.padEnd(7)} ${name}, ${pieces} for ${of}`,
      ...reasons.map((reason) => `          ${reason}`),
    ].join('\n');
  });
  return [`${count('make')} parts to make, ${count('reuse')} to reuse, ${count('refuse')} refused`, ...shortened(rows)];
}

function shortened(lines: readonly string[]): string[] {
  const more = lines.length - MOST_LINES;
  return more > 0 ? [...lines.slice(0, MOST_LINES), `  … and ${more} more; --json lists all`] : [...lines];
}
