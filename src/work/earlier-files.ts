import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';

/** A report is never longer; anything else of that name is not ours. */
const LONGEST_REPORT = 4_000_000;

/** What a make writes besides its report. */
const OURS = /\.(?:stl|3mf)$|^drawing(?:-\d+)?\.svg$|^report\.html$/;

/** A file of one part of an axis, in the folder of that part. */
const OF_A_PART = /^([A-Za-z0-9_-]{1,64})\/([^/\\]+)$/;

/**
 * Files in a part's folder that an earlier make put there, by what its report.json says. A folder without one that can
 * be read holds none.
 */
export async function earlierFiles(folder: string): Promise<string[]> {
  const there = await readdir(folder).catch((): string[] => []);
  const report = await reportIn(folder);
  const named = ['report.json', ...filesOf(report)];
  const found = await Promise.all(
    [...new Set(named)].map(async (name) => ((await isThere(folder, name)) ? [name] : [])),
  );
  return there.includes('report.json') ? found.flat() : [];
}

async function isThere(folder: string, name: string): Promise<boolean> {
  return stat(join(folder, name)).then(
    () => true,
    () => false,
  );
}

async function reportIn(folder: string): Promise<unknown> {
  try {
    const path = join(folder, 'report.json');
    const about = await stat(path);
    if (!about.isFile() || about.size > LONGEST_REPORT) return undefined;
    return JSON.parse(await readFile(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Names that the report gives, as far as they can be ours. */
function filesOf(report: unknown): string[] {
  if (!isRecord(report) || report.leadwright !== 1) return [];
  const bodies = Array.isArray(report.bodies) ? report.bodies : [];
  const others: unknown[] = Array.isArray(report.files) ? report.files : [];
  const named = [...bodies.map((body: unknown) => (isRecord(body) ? body.file : undefined)), ...others];
  return named.filter((file): file is string => typeof file === 'string' && isOurs(file));
}

function isOurs(file: string): boolean {
  if (file === basename(file)) return OURS.test(file);
  const [, , name = ''] = OF_A_PART.exec(file) ?? [];
  return name === 'report.json' || OURS.test(name);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
