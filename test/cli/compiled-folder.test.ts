import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compiledFolder } from '../../src/cli/compiled-folder.js';

describe('where compiled code is kept', () => {
  it.each([
    ['linux', { HOME: '/home/a' }, ['/home/a', '.cache']],
    ['linux', { HOME: '/home/a', XDG_CACHE_HOME: '/big/cache' }, ['/big/cache']],
    ['linux', { HOME: '/home/a', XDG_CACHE_HOME: 'cache' }, ['/home/a', '.cache']],
    ['darwin', { HOME: '/Users/a' }, ['/Users/a', 'Library', 'Caches']],
    ['win32', { HOME: 'c:/a', LOCALAPPDATA: 'c:/a/Local' }, ['c:/a/Local']],
  ] as const)('%s, %j', (platform, env, folder) => {
    expect(compiledFolder(env, platform)).toBe(join(...folder, 'leadwright', 'compiled'));
  });

  it('is nowhere for somebody without a home: no place that others write to', () => {
    expect(compiledFolder({}, 'linux')).toBeUndefined();
    expect(compiledFolder({ HOME: '' }, 'darwin')).toBeUndefined();
    expect(compiledFolder({}, 'win32')).toBeUndefined();
  });

  it('is nowhere for who turns it off, by the word that the engine has for it', () => {
    expect(compiledFolder({ HOME: '/home/a', NODE_DISABLE_COMPILE_CACHE: '1' }, 'linux')).toBeUndefined();
  });
});
