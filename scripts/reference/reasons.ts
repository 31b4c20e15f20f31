// What the code says above each check, so that the reference says it in the same words.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What the code says of a check: why it is there, and what it is worked out by. */
export interface Reason {
  readonly why: string;
  /** equations, set in as laws set theirs */
  readonly formula: readonly string[];
}

/** The comment above each check below a folder, by the check's id; its own before those that kinds of parts share. */
export function reasonsOf(root: string, folder: string): Map<string, Reason> {
  return new Map(['parts/common', folder].flatMap((one) => reasonsBelow(join(root, 'src', one))));
}

function reasonsBelow(folder: string): [string, Reason][] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .flatMap((file) => reasonsIn(readFileSync(join(folder, file), 'utf8')));
}

/** The last comment before an id, where no other check lies between. */
function reasonsIn(text: string): [string, Reason][] {
  const [first = '', ...rest] = text.split(/\bid: '(?=[\w-]+')/);
  return rest.flatMap((after, i) => {
    const comment = [...(i === 0 ? first : rest[i - 1]!).matchAll(/\/\*\*([\s\S]*?)\*\//g)].at(-1)?.[1];
    return comment === undefined ? [] : [[/^[\w-]+/.exec(after)![0], parted(comment)]];
  });
}

/** A comment without its stars and tags, its equations apart. */
function parted(comment: string): Reason {
  const lines = comment
    .replace(/^\s*\* ?/gm, '')
    .trim()
    .split(/^@/m)[0]!
    .split('\n');
  const isFormula = (line: string) => /^ {3,}\S.*=/.test(line);
  return {
    why: lines
      .filter((line) => !isFormula(line))
      .join(' ')
      .replace(/\s+/g, ' ')
      .trim(),
    formula: lines.filter(isFormula).map((line) => line.trim()),
  };
}
