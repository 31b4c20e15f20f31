// Builds dist/ at every install of a clone, as far as what builds it is there.
import { createRequire } from 'node:module';

const missing = ['esbuild', 'typescript'].filter((name) => !isThere(name));
if (missing.length === 0) await import('./build.mjs');
else {
  const what = missing.join(' and ');
  console.error(
    `leadwright: dist/ is not built, for want of ${what}: run npm ci with development packages, or install a packed tarball`,
  );
}

function isThere(name) {
  try {
    createRequire(import.meta.url).resolve(`${name}/package.json`);
    return true;
  } catch {
    return false;
  }
}
