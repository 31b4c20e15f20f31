import type { DesignBase } from '../part-kind.js';

/**
 * The end of a message that tells what cures it: ways that were tried and lead there.
 * @param none what to do where none of them does
 */
export function remedyWords({ remedies }: Pick<DesignBase, 'remedies'>, check: string, none: string): string {
  if (remedies === undefined) return '';
  const words = remedies.filter((one) => one.check === check).map((one) => one.words);
  return `; ${words.length > 0 ? words.join(', or ') : none}`;
}
