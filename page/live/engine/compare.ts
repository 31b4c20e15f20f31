import { type ComparedRow, comparedRows, tableLegend } from '../../../src/output/drive/compared-rows.js';
import {
  comparisonFoot,
  comparisonHead,
  comparisonTold,
  type ToldSection,
} from '../../../src/output/drive/comparison-told.js';
import { compareNamed, type NamedScrews } from '../../../src/pipeline/compare-named.js';

/** Screws side by side, as a page shows them. */
export interface SideBySide {
  readonly head: string;
  readonly screws: readonly string[];
  readonly rows: readonly ComparedRow[];
  readonly legend: readonly string[];
  readonly sections: readonly ToldSection[];
  readonly foot: readonly string[];
}

/**
 * What the command says of screws side by side, in its words.
 * @throws InputError mistakes in what was asked
 */
export function sideBySide(asked: NamedScrews): SideBySide {
  const { comparison, duty } = compareNamed(asked);
  const rows = comparedRows(comparison, duty);
  return {
    head: comparisonHead(comparison, duty),
    screws: comparison.screws.map(({ designation }) => designation),
    rows,
    legend: tableLegend(comparison, rows),
    sections: comparisonTold(comparison, duty),
    foot: comparisonFoot(comparison, duty),
  };
}
