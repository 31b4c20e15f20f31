import type { Finding } from '../judge/check.js';
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

/** Whether something was let through that a check would have stopped: the solid may then fail by no fault of ours. */
export function isRelaxed(findings: readonly Finding[]): boolean {
  return findings.some(({ accepted, replaced_limit }) => accepted !== undefined || replaced_limit !== undefined);
}
