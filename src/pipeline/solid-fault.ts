import type { Finding } from '../judge/check.js';
import { keeps } from '../judge/judge.js';
import { VERSION } from '../output/version.js';

/** A solid that is not what its sheet was promised: our own fault, never the sheet's. */
export class SolidFault extends Error {
  /** @param name of the part  @param failed the findings that failed on its solid */
  constructor(
    name: string,
    readonly failed: readonly Finding[],
  ) {
    const found = failed.map(
      ({ id, value, unit, message }) => `${id} is ${value}${unit ? ` ${unit}` : ''} (${message})`,
    );
    super(
      `the solid of ${name} is not what its sheet asks for: ${found.join('; ')}; send the sheet and this line, leadwright ${VERSION}`,
    );
    this.name = 'SolidFault';
  }
}

/** Groups of checks that judge loads and wear: what is accepted there shapes no solid. */
const SHAPELESS: readonly string[] = ['drive', 'wear', 'strength', 'grip', 'axis'];

/** Whether something was let through that shapes the part: the solid may then fail by no fault of ours. */
export function isRelaxed(findings: readonly Finding[]): boolean {
  return findings.some((one) => !SHAPELESS.includes(one.group) && (one.accepted !== undefined || isLetThrough(one)));
}

/** Whether a value keeps the limit of the sheet, and not the check's own that it replaced. */
function isLetThrough({ replaced_limit, least, most }: Finding): boolean {
  if (replaced_limit === undefined) return false;
  return least === undefined || most === undefined || !keeps(least, replaced_limit) || !keeps(most, replaced_limit);
}
