// Bundles the library for pages and their workers: one file that imports nothing, the kernel's script in it. Bundlers that know
// the condition `browser` of package.json take it by themselves.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { SHARED } from './bundle-command.mjs';

/** The kernel's script asks for a module of Node's where it runs there; bundlers stop at its name. */
const withoutNode = {
  name: 'without-node',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^module$/ }, () => ({ path: 'module', namespace: 'without-node' }));
    onLoad({ filter: /.*/, namespace: 'without-node' }, () => ({ contents: 'export {};' }));
  },
};

/**
 * The kernel's script builds the functions that call into it from texts, which a strict policy of a page forbids. The two
 * places get functions that do the same by what is in scope there.
 */
const WITHOUT_TEXTS = [
  [
    'newFunc(Function,args)(...closureArgs)',
    `(function(...given) {
      if (given.length !== argCount - 2)
        throwBindingError('function ' + humanName + ' called with ' + given.length + ' arguments, expected ' + (argCount - 2));
      const destructors = needsDestructorStack ? [] : null;
      const own = isClassMethodFunc ? [argTypes[1].toWireType(destructors, this)] : [];
      const wired = [...own, ...given.map((one, i) => argTypes[i + 2].toWireType(destructors, one))];
      const value = cppInvokerFunc(cppTargetFunc, ...wired);
      if (needsDestructorStack) runDestructors(destructors);
      else argTypes.slice(isClassMethodFunc ? 1 : 2).forEach((type, i) => {
        if (type.destructorFunction !== null) type.destructorFunction(wired[i]);
      });
      if (returns) return argTypes[0].fromWireType(value);
    })`,
  ],
  [
    'newFunc(Function,params)(...args)',
    `(function(obj, func, destructorsRef, packed) {
      let at = packed;
      const given = types.map((type) => {
        const one = type.readValueFromPointer(at);
        at += type.argPackAdvance;
        return one;
      });
      const value = kind === 1 ? new func(...given) : kind === 0 ? func.call(obj, ...given) : func.call(...given);
      if (!retType.isVoid) return emval_returnValue(retType, destructorsRef, value);
    })`,
  ],
];

/** Schemas try whether functions may be built from texts; a strict policy reports the try. They get settings of their own. */
const WITHOUT_TRYING = [
  ['export const globalConfig = globalThis.__zod_globalConfig;', 'export const globalConfig = { jitless: true };'],
];

/** The text of a file with each piece put in another's place; stops where it is not what it was. */
function changed(path, pieces) {
  return pieces.reduce(
    (text, [from, to]) => {
      if (text.split(from).length !== 2) throw new Error(`${path} is not what it was: ${from}`);
      return text.replace(from, () => to);
    },
    readFileSync(path, 'utf8'),
  );
}

const withoutTexts = {
  name: 'without-texts',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]manifold-3d[\\/]manifold\.js$/ }, ({ path }) => ({
      contents: changed(path, WITHOUT_TEXTS),
    }));
    onLoad({ filter: /[\\/]zod[\\/]v4[\\/]core[\\/]core\.js$/ }, ({ path }) => ({
      contents: changed(path, WITHOUT_TRYING),
    }));
  },
};

/** What the kernel needs in a page. */
export const FOR_PAGES = [withoutNode, withoutTexts];

export async function bundleForPages(outdir) {
  return build({
    ...SHARED,
    outdir,
    platform: 'browser',
    splitting: false,
    external: [],
    minify: true,
    plugins: [...SHARED.plugins, ...FOR_PAGES],
    entryPoints: { index: 'src/index.ts' },
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleForPages(process.argv[2] ?? 'dist/browser');
