import { dirname } from 'node:path';
import { type CompiledFiles, packCode } from './kept-code.js';
import { makeFolders, tryTo } from './writer/basics.js';
import { disk } from './writer/disk.js';
import { putFile } from './writer/files.js';

/** Keeps compiled code, whole or not at all; where that does not go, the next start compiles again. */
export function keepCode(file: string, files: CompiledFiles): void {
  tryTo(() => {
    makeFolders(dirname(file));
    putFile(file, packCode(files));
    // whatever the user's own mask is
    disk.chmod(file, 0o600);
  });
}
