import type { Paint } from './paint.js';

/** A heading, empty where there is none, and the lines below it. */
export type Section = readonly [string, readonly string[]];

/** Sections with something in them, a blank line between, a line break at the end. */
export function sectionsText(sections: readonly Section[], { bold }: Paint): string {
  return sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title === '' ? '' : `${bold(title)}\n`}${lines.join('\n')}\n`)
    .join('\n');
}
