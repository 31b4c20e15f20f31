import { readdir, readFile, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { ComparedPart } from '../output/compare/compare-reports.js';
import { readReport } from '../output/compare/stored-report.js';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';

/** No report is longer. */
const LONGEST_REPORT = 50_000_000;

/** What a make writes beside its report. */
const MADE = /\.(?:stl|3mf)$|^drawing(?:-\d+)?\.svg$|^report\.html$/;

/**
 * Reads a made part back: a report.json, or the folder that holds one, with the files beside it.
 * @throws InputError the disk refuses, or it is no report of ours
 */
export async function readComparedPart(given: string, cwd: string): Promise<ComparedPart> {
  try {
    const full = resolve(cwd, given);
    const path = (await stat(full)).isDirectory() ? join(full, 'report.json') : full;
    const about = await stat(path);
    if (!about.isFile()) throw fault(given, '', 'is no file');
    if (about.size > LONGEST_REPORT) throw fault(given, `${about.size} bytes`, `must be at most ${LONGEST_REPORT}`);
    const report = readReport(await readFile(path, 'utf8'), given);
    const folder = dirname(path);
    const names = (await readdir(folder)).filter((name) => MADE.test(name)).sort();
    const files = await Promise.all(names.map(async (name) => ({ name, bytes: await readFile(join(folder, name)) })));
    return { report, files };
  } catch (error) {
    if (error instanceof Error && 'code' in error) throw fault(given, '', diskReason(error));
    throw error;
  }
}
