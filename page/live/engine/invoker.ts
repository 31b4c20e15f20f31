/** What a function is made of, by the names that its text uses. */
type Parts = Readonly<Record<string, (...given: unknown[]) => unknown>>;

/**
 * Stands for `Function` in the exact kernel's script, which builds the functions between it and the kernel from texts; the
 * page's policy forbids that. The texts have two forms, and what these do is done here by their names.
 *
 * @param names  of what the text uses
 * @param text   the body of the function that returns the one that is built
 * @returns a function of the parts, in the order of their names, that returns it
 * @throws TypeError the text has neither form
 */
export function Invoker(names: readonly string[], text: string): (...parts: unknown[]) => unknown {
  const build = text.includes('invoker(fn')
    ? intoKernel
    : text.startsWith('return function (handle, methodName, destructorsRef, args)')
      ? outOfKernel
      : undefined;
  if (!build) throw new TypeError('the kernel’s script builds a function of an unknown form');
  return (...given) => build(Object.fromEntries(names.map((name, i) => [name, given[i]])) as Parts, text);
}

/** Turns arguments into what the kernel takes, calls it, gives back what was lent, and turns the result into a value. */
function intoKernel(parts: Parts, text: string) {
  const count = countOf(parts, /^toArg\d+Wire$/);
  const isMethod = text.includes('var thisWired');
  const keepsList = text.includes('var destructors');
  const returns = text.includes('var ret ');
  return function (this: unknown, ...values: unknown[]) {
    const lent: unknown[] | null = keepsList ? [] : null;
    const all: [name: string, value: unknown][] = isMethod ? [['thisWired', parts.toClassParamWire!(lent, this)]] : [];
    for (let i = 0; i < count; i++) all.push([`arg${i}Wired`, parts[`toArg${i}Wire`]!(lent, values[i])]);
    const value = parts.invoker!(parts.fn, ...all.map(([, one]) => one));
    if (lent) parts.runDestructors!(lent);
    else for (const [name, one] of all) parts[`${name}_dtor`]?.(one);
    return returns ? parts.fromRetWire!(value) : undefined;
  };
}

/** Reads arguments, eight bytes each, and calls, makes or casts a value with them. */
function outOfKernel(parts: Parts, text: string) {
  const count = countOf(parts, /^argFromPtr\d+$/);
  const makes = text.includes('new (toValue(handle))');
  const casts = !text.includes('toValue(handle)');
  return (handle: number, method: number, destructors: number, args: number) => {
    const given = Array.from({ length: count }, (_, i) => parts[`argFromPtr${i}`]!(args + 8 * i));
    const value = () => {
      if (casts) return given.at(-1);
      // biome-ignore lint/suspicious/noExplicitAny: whatever the kernel names
      const target = parts.toValue!(handle) as any;
      if (makes) return new target(...given);
      return parts.getStringOrSymbol ? target[parts.getStringOrSymbol(method) as string](...given) : target(...given);
    };
    const found = value();
    return parts.emval_returnValue?.(parts.toReturnWire, destructors, found);
  };
}

function countOf(parts: Parts, form: RegExp): number {
  return Object.keys(parts).filter((name) => form.test(name)).length;
}
