import { describe, expect, it } from 'vitest';
import { Invoker } from '../../../page/live/engine/invoker.js';

/** The same texts, run by the language and by what stands in for it. */
const both = (names: string[], text: string) => [new Function(...names, text), Invoker(names, text)];

const BASE = 'humanName throwBindingError invoker fn runDestructors fromRetWire toClassParamWire'.split(' ');

describe('functions between script and kernel, without texts', () => {
  it.each([
    [
      'a method that returns',
      'return function (arg0,arg1) {\nvar thisWired = toClassParamWire(null, this);\nvar arg0Wired = toArg0Wire(null, arg0);\nvar arg1Wired = toArg1Wire(null, arg1);\nvar rv = invoker(fn,thisWired,arg0Wired,arg1Wired);\narg1Wired_dtor(arg1Wired);\nvar ret = fromRetWire(rv);\nreturn ret;\n}\n',
      ['toArg0Wire', 'toArg1Wire', 'arg1Wired_dtor'],
    ],
    [
      'a function that lends',
      'return function (arg0) {\nvar destructors = [];\nvar arg0Wired = toArg0Wire(destructors, arg0);\ninvoker(fn,arg0Wired);\nrunDestructors(destructors);\n}\n',
      ['toArg0Wire'],
    ],
  ])('call the kernel as a text does: %s', (_, text, more) => {
    const [byText, byName] = both([...BASE, ...more], text).map((build) => {
      const seen: unknown[] = [];
      const told =
        (name: string, value: (...given: unknown[]) => unknown) =>
        (...given: unknown[]) => {
          seen.push([name, ...given.map((one) => (Array.isArray(one) ? [...one] : one))]);
          return value(...given);
        };
      const lend = (list: unknown, value: unknown) => {
        if (Array.isArray(list)) list.push('lent', value);
        return `wired ${value}`;
      };
      const parts = [
        'name',
        () => undefined,
        told('invoker', (...given) => given.length),
        'fn',
        told('runDestructors', () => undefined),
        told('fromRetWire', (value) => `value ${value}`),
        told('this', (_list, own) => (own as { at: number }).at),
        ...more.map((name) => told(name, name.endsWith('_dtor') ? () => undefined : lend)),
      ];
      const made = build!(...parts) as (this: unknown, ...given: unknown[]) => unknown;
      return { found: made.call({ at: 7 }, 'a', 'b'), seen };
    });
    expect(byName).toEqual(byText);
    expect(byName!.seen.length).toBeGreaterThan(2);
  });

  it.each([
    ['calls', 'toValue(handle)(argFromPtr0(args),argFromPtr1(args+8))', []],
    ['makes', 'new (toValue(handle))(argFromPtr0(args),argFromPtr1(args+8))', []],
    ['casts', '(argFromPtr0(args),argFromPtr1(args+8))', []],
    [
      'calls by name',
      'toValue(handle)[getStringOrSymbol(methodName)](argFromPtr0(args),argFromPtr1(args+8))',
      ['getStringOrSymbol'],
    ],
  ])('call the script as a text does: %s', (_, call, more) => {
    const names = ['toValue', 'argFromPtr0', 'argFromPtr1', ...more, 'toReturnWire', 'emval_returnValue'];
    const text = `return function (handle, methodName, destructorsRef, args) {\nreturn emval_returnValue(toReturnWire, destructorsRef, ${call})\n}`;
    class Target {
      constructor(
        readonly a: unknown,
        readonly b: unknown,
      ) {}
    }
    const target = call.startsWith('new')
      ? Target
      : Object.assign((a: unknown, b: unknown) => [a, b], { own: (a: unknown) => ['own', a] });
    const found = both(names, text).map((build) => {
      const read = (at: unknown) => `at ${at}`;
      const parts = [() => target, read, read, ...more.map(() => () => 'own'), 'wire', (...given: unknown[]) => given];
      return (build!(...parts) as (...given: number[]) => unknown)(1, 2, 3, 40);
    });
    expect(found[1]).toEqual(found[0]);
  });

  it('are not made of a text of another form', () => {
    expect(() => Invoker(['a'], 'return a + 1')).toThrow('unknown form');
  });
});
