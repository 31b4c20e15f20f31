import type { MachineRows, ManifestRow, Standing } from './manifest-rows.js';

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

/** Counts a run, machine by machine. */
export function counter(): { readonly add: (rows: MachineRows) => void; readonly counts: () => Counts } {
  const parts: Record<Standing, number> = { pass: 0, caution: 0, missing: 0, unmeasured: 0, fail: 0, wrong: 0 };
  let [machines, complete, unmeasured, pieces, files] = [0, 0, 0, 0, 0];
  const add = ({ machine, parts: rows }: MachineRows) => {
    machines++;
    if (machine.complete) complete++;
    if (machine.unmeasured || machine.verdict === 'unmeasured') unmeasured++;
    for (const [i, row] of rows.entries()) {
      if (row.file !== null) files++;
      if (row.role === rows[i - 1]?.role) continue;
      parts[row.verdict]++;
      if (isMade(row)) pieces += row.quantity + row.spare;
    }
  };
  const counts = () => {
    const all = Object.values(parts).reduce((sum, count) => sum + count, 0);
    return {
      machines,
      complete,
      unmeasured,
      parts: { all, made: parts.pass + parts.caution, ...parts },
      pieces,
      files,
    };
  };
  return { add, counts };
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
