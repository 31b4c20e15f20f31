import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { design, InputError } from '../../src/index.js';
import { nutSheet } from '../support/nut-sheets.js';

/** Things that people and broken programs put where a value belongs. */
const rubbish = fc.oneof(
  fc.constantFrom(
    null,
    true,
    '',
    ' ',
    '-',
    '..',
    '/etc',
    '12',
    '12 parsecs',
    '-3 mm',
    '0 mm',
    '1e999 mm',
    '5/0 in',
    '7,95 mm',
    '± mm',
    '\u0001',
    'mm 12',
  ),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 1e300, -0, 0.3125),
  fc.constantFrom([], {}, [1, 2, 3], { value: 3 }, [[[]]]),
  fc.string({ maxLength: 20 }),
  fc.double(),
  fc.object({ maxDepth: 2, maxKeys: 3 }),
);

/** Every path of a plain sheet, inner ones too. */
function paths(value: unknown, prefix: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [[...prefix]];
  const own = Object.entries(value).flatMap(([key, child]) => paths(child, [...prefix, key]));
  return prefix.length === 0 ? own : [[...prefix], ...own];
}

function placed(sheet: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const map = typeof sheet === 'object' && sheet !== null ? sheet : {};
  return { ...map, [key]: placed((map as Record<string, unknown>)[key], rest, value) };
}

/** Either a design, or input errors that can each stand on one line. */
function survives(input: string | object): void {
  try {
    design(input);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    if (!(error instanceof InputError)) return;
    expect(error.faults.length).toBeGreaterThan(0);
    for (const line of error.message.split('\n')) expect(line.length).toBeLessThan(400);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what must not be there
    expect(error.message).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  }
}

describe('broken sheets', () => {
  const sheet = nutSheet({ carriage: { bore: 17.6, thickness: 6, holes: { count: 4, circle: 27, diameter: 3.6 } } });

  it('with rubbish in any field are refused in lines, never with another error', () => {
    fc.assert(
      fc.property(fc.constantFrom(...paths(sheet)), rubbish, (path, value) => {
        survives(placed(sheet, path, value) as object);
      }),
      { numRuns: 600 },
    );
  });

  it('with fields left out, or added, are refused in lines', () => {
    fc.assert(
      fc.property(
        fc.subarray(paths(sheet), { minLength: 1, maxLength: 4 }),
        fc.string({ maxLength: 12 }),
        (gone, added) => {
          const less = gone.reduce<unknown>((rest, path) => placed(rest, path, undefined), sheet);
          survives(less as object);
          survives({ ...(less as object), [added]: 1 });
        },
      ),
      { numRuns: 200 },
    );
  });

  it('that are any text at all are refused in lines, each with its place', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary', maxLength: 200 }), fc.json()), (text) => {
        survives(text);
      }),
      { numRuns: 300 },
    );
  });

  it('as YAML with one value broken name the line of it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('-2 mm', '.nan', '12 parsecs', '[]', 'yes', '1e300'),
        fc.constantFrom('thickness', 'diameter'),
        (value, field) => {
          const text = `part: nut\nname: a\nscrew: Tr8x2\nbody: {diameter: 14 mm, length: 15 mm}\nflange:\n  shape: round\n  ${field === 'thickness' ? 'diameter: 32 mm' : 'thickness: 4 mm'}\n  ${field}: ${value}\n`;
          try {
            design(text);
            expect.unreachable('a broken flange was taken');
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
            if (error instanceof InputError)
              expect(error.faults[0]).toMatchObject({ path: `flange.${field}`, at: { line: 8 } });
          }
        },
      ),
    );
  });
});
