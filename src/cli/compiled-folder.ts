import { join } from 'node:path';

type Env = Readonly<Record<string, string | undefined>>;

/**
 * Where this user's caches are kept, and in it the compiled code of the program; never a place that others may write to.
 *
 * @param env the process's environment
 * @param platform as the engine names it
 * @returns undefined where the environment names no home, or turns such caches off as it does those of the engine
 */
export function compiledFolder(env: Env, platform: string): string | undefined {
  if (env.NODE_DISABLE_COMPILE_CACHE) return undefined;
  const caches = cachesOf(env, platform);
  return caches === undefined ? undefined : join(caches, 'leadwright', 'compiled');
}

function cachesOf({ XDG_CACHE_HOME, HOME, LOCALAPPDATA }: Env, platform: string): string | undefined {
  if (platform === 'win32') return LOCALAPPDATA || undefined;
  // a relative one is not to be used, says its own rule
  if (XDG_CACHE_HOME?.startsWith('/')) return XDG_CACHE_HOME;
  if (!HOME) return undefined;
  return platform === 'darwin' ? join(HOME, 'Library', 'Caches') : join(HOME, '.cache');
}
