/** What `test/mutants-left` says of mutants that live: places by group, each with its reason. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';

const LISTS = 'test/mutants-left';

/** The list of a group, bullet by bullet; empty where nothing is listed. */
export function listed(group, folder = LISTS) {
  const pages = readdirSync(folder).map((file) => readFileSync(join(folder, file), 'utf8'));
  const section = pages
    .flatMap((page) => page.split(/^## /m).slice(1))
    .find((one) => one.slice(0, one.indexOf('\n')) === group);
  if (section === undefined) return [];
  return section
    .split(/^- /m)
    .slice(1)
    .map((bullet) => bullet.replaceAll(/\s+/g, ' '));
}

/** The places `file:line` that bullets name; numbers without a file before them belong to the group's own file. */
export function places(group, bullets) {
  const found = new Set();
  for (const bullet of bullets) {
    let file = basename(group);
    for (const [, named, code, number] of bullet.matchAll(/`([\w-]+\.ts)?([^`]*)`|(?<![\d.])(\d+)(?![\d.]*\d)/g)) {
      file = named ?? file;
      const line = number ?? /^:(\d+)$/.exec(code ?? '')?.[1];
      if (line !== undefined) found.add(`${file}:${line}`);
    }
  }
  return found;
}

/** Those survivors that no bullet of their group names. */
export function withoutReason(group, survivors, folder) {
  const named = places(group, listed(group, folder));
  return survivors.filter(({ file, location }) => !named.has(`${basename(file)}:${location.start.line}`));
}
