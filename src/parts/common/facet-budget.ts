import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { threadColumns } from './thread-shape.js';

/** Facets that a part's threads may have; a kernel takes about 1 kB for each while it works. */
const MOST_FACETS = 2_000_000;
/** Columns that a sweep takes. */
const MOST_COLUMNS = 10_000;
/** Chord errors that are offered in place of one that is too fine, mm. */
const COARSER = [0.002, 0.003, 0.005, 0.01, 0.02, 0.03, 0.05, 0.1];

/** The threads of a part, as far as the number of their facets hangs on it. */
export interface ThreadedLength {
  readonly thread: Parameters<typeof threadColumns>[0] & { readonly pitch: number };
  readonly lead: number;
  /** over all bodies, mm */
  readonly length: number;
  readonly chordError: number;
}

/**
 * Facets of a thread before it is built: two to each corner of the ridge in each column, pitch by pitch.
 *
 *     N = 2 · 4 · n · L / P,  n columns, L length, P pitch
 */
export function threadFacets({ thread, lead, length, chordError }: ThreadedLength): number {
  return (8 * threadColumns(thread, lead, chordError) * length) / thread.pitch;
}

/**
 * Refuses a part whose threads have more facets than can be built.
 * @throws InputError with the figure, and with a chord error that is coarse enough
 */
export function requireFacetBudget(threads: ThreadedLength): void {
  const { thread, lead, chordError } = threads;
  const fits = (error: number) =>
    threadFacets({ ...threads, chordError: error }) <= MOST_FACETS &&
    threadColumns(thread, lead, error) <= MOST_COLUMNS;
  if (fits(chordError)) return;
  const coarser = COARSER.find((error) => error > chordError && fits(error));
  const cure = coarser === undefined ? 'make the part shorter' : `use ${plain(coarser)} mm or a shorter part`;
  throw fault(
    'printer.chord_error',
    `${plain(chordError)} mm`,
    `gives the thread about ${plain(threadFacets(threads) / 1e6, 1)} million facets, of at most ${plain(MOST_FACETS / 1e6)} million: ${cure}`,
  );
}
