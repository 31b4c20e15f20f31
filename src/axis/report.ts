import type { Finding } from '../judge/check.js';
import { lowered } from '../output/answers/figure-line.js';
import type { Report } from '../output/report.js';

/** One part of an axis as its report tells it. */
export interface PartReport {
  readonly role: string;
  /** the folder of its files, inside that of the axis; empty where all lie in one */
  readonly folder: string;
  readonly report: Report;
}

/** The report of an axis: its own questions first, then a line a part; `checks` are its own, then those of its parts as ROLE/CHECK. */
export interface AxisReport extends Report {
  readonly part: 'axis';
  readonly parts: readonly PartReport[];
}

/** A finding of a part as the report of its axis names it. */
export function ofPart(role: string, shared: (field: string) => boolean) {
  return (finding: Finding): Finding => ({
    ...finding,
    id: `${role}/${finding.id}`,
    title: `${role}: ${lowered(finding.title)}`,
    ...(finding.missing
      ? { missing: finding.missing.map((field) => (shared(field) ? field : `parts.${role}.${field}`)) }
      : {}),
  });
}
