// What the code says above each check, so that the reference says it in the same words.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The comment above each check below a folder, by the check's id; its own before those that kinds of parts share. */
export function reasonsOf(root: string, folder: string): Map<string, string> {
  return new Map(['parts/common', folder].flatMap((one) => reasonsBelow(join(root, 'src', one))));
}

function reasonsBelow(folder: string): [string, string][] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .flatMap((file) => reasonsIn(readFileSync(join(folder, file), 'utf8')));
}

/** The last comment before an id, where no other check lies between. */
function reasonsIn(text: string): [string, string][] {
  const [first = '', ...rest] = text.split(/\bid: '(?=[\w-]+')/);
  return rest.flatMap((after, i) => {
    const comment = [...(i === 0 ? first : rest[i - 1]!).matchAll(/\/\*\*([\s\S]*?)\*\//g)].at(-1)?.[1];
    return comment === undefined ? [] : [[/^[\w-]+/.exec(after)![0], words(comment)]];
  });
}

/** A comment without its stars and tags. */
function words(comment: string): string {
  const plain = comment.replace(/^\s*\* ?/gm, '').trim();
  return plain.split(/^@/m)[0]!.replace(/\s+/g, ' ').trim();
}
