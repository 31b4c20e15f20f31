import type { MachineRow, ManifestRow, Standing } from './manifest-rows.js';

/** How many there are of everything; terminal, index and tables tell these figures and no others. */
export interface Counts {
  readonly machines: number;
  /** machines with all their parts made, suiting each other */
  readonly complete: number;
  /** machines whose readings are not all there */
  readonly unmeasured: number;
  /** parts of machines, however many pieces each */
  readonly parts: Readonly<Record<Standing, number>> & { readonly all: number; readonly made: number };
  /** pieces to print of the parts that were made */
  readonly pieces: number;
  /** files for printers, machine by machine */
  readonly files: number;
}

/** Counts a run. */
export function countsOf(machines: readonly MachineRow[], rows: readonly ManifestRow[]): Counts {
  const parts: Record<Standing, number> = { pass: 0, caution: 0, missing: 0, unmeasured: 0, fail: 0, wrong: 0 };
  let [pieces, files] = [0, 0];
  let before: ManifestRow | undefined;
  for (const row of rows) {
    if (row.file !== null) files++;
    if (row.machine !== before?.machine || row.role !== before.role) {
      parts[row.verdict]++;
      if (isMade(row)) pieces += row.quantity + row.spare;
    }
    before = row;
  }
  const all = Object.values(parts).reduce((sum, count) => sum + count, 0);
  return {
    machines: machines.length,
    complete: machines.filter(({ complete }) => complete).length,
    unmeasured: machines.filter(({ verdict, unmeasured }) => unmeasured || verdict === 'unmeasured').length,
    parts: { all, made: parts.pass + parts.caution, ...parts },
    pieces,
    files,
  };
}

/** Whether a part's files are there. */
export function isMade({ verdict }: Pick<ManifestRow, 'verdict'>): boolean {
  return verdict === 'pass' || verdict === 'caution';
}

/** Words for how parts and machines stand. */
export const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  pass: 'pass',
  caution: 'caution',
  fail: 'fail',
  wrong: 'wrong sheet',
  missing: 'not made',
  unmeasured: 'not measured',
};

/**
 * The parts that were not made, by why.
 * @example leftWords(counts) // ['1 fail', '2 not measured']
 */
export function leftWords({ parts }: Counts): string[] {
  const kinds = ['fail', 'wrong', 'unmeasured', 'missing'] as const;
  return kinds.filter((kind) => parts[kind] > 0).map((kind) => `${parts[kind]} ${STANDING_WORDS[kind]}`);
}
