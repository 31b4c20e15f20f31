import type { HashOf } from './page-frame.js';
import type { PrintingDay } from './printing.js';
import type { Status } from './status.js';

/** What the index shows beside the manifest. */
export interface IndexLinks {
  /** paths of every file in the output folder */
  readonly files: Pick<ReadonlySet<string>, 'has'>;
  readonly hashOf: HashOf;
  readonly days: readonly PrintingDay[];
  /** what people noted of the parts */
  readonly status?: Status;
}
