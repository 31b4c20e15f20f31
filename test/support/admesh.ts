import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Figures of its answer that are 0 where there is nothing to mend. */
const MENDED =
  /^(Total disconnected facets|Degenerate facets|Edges fixed|Facets removed|Facets added|Facets reversed|Backwards edges|Normals fixed) *: *(\d+)/gm;

/**
 * What admesh (Debian: `apt-get install admesh`) finds to mend in an STL file, by name; nothing in a sound one.
 * @throws Error the program is not installed, or its answer is not what it used to be
 */
export function mendedByAdmesh(bytes: Uint8Array): Record<string, number> {
  const folder = mkdtempSync(join(tmpdir(), 'admesh-'));
  try {
    const file = join(folder, 'body.stl');
    writeFileSync(file, bytes);
    const answer = execFileSync('admesh', [file], { encoding: 'utf8' });
    const figures = [...answer.matchAll(MENDED)].map(([, name, count]) => [name!, Number(count)] as const);
    if (figures.length < 8) throw new Error(`admesh answers otherwise than it used to:\n${answer}`);
    return Object.fromEntries(figures.filter(([, count]) => count !== 0));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
