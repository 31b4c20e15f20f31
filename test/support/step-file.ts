/** A place in a file: a point, and the direction of the axis through it. */
export interface StepPlace {
  readonly at: readonly number[];
  readonly axis: readonly number[];
}

/** Records of a STEP file by number, each a name and its arguments as they are written. */
function recordsOf(step: string): Map<string, { readonly name: string; readonly args: string }> {
  const joined = step.replace(/\r?\n\s*/g, ' ');
  return new Map(
    [...joined.matchAll(/#(\d+)\s*=\s*([A-Z0-9_]*)\s*\((.*?)\)\s*;/g)].map(([, number, name, args]) => [
      number!,
      { name: name!, args: args! },
    ]),
  );
}

type Records = ReturnType<typeof recordsOf>;

const references = (args: string) => [...args.matchAll(/#(\d+)/g)].map(([, number]) => number!);
const numbersOf = (records: Records, number: string) =>
  /\(([^()]*)\)\s*$/.exec(records.get(number)!.args)![1]!.split(',').map(Number);

function placeOf(records: Records, number: string): StepPlace {
  const [at, axis] = references(records.get(number)!.args);
  return { at: numbersOf(records, at!), axis: axis ? numbersOf(records, axis) : [0, 0, 1] };
}

/** Radius and place of every cylinder that a face of a STEP file lies on, in the frame of its own product. */
export function cylindersIn(step: string): (StepPlace & { readonly radius: number })[] {
  const records = recordsOf(step);
  return [...records.values()]
    .filter(({ name }) => name === 'CYLINDRICAL_SURFACE')
    .map(({ args }) => ({
      ...placeOf(records, references(args)[0]!),
      radius: Number(args.slice(args.lastIndexOf(',') + 1)),
    }));
}

/** Where the parts of an assembly stand, in the order of the file. */
export function placesIn(step: string): StepPlace[] {
  const records = recordsOf(step);
  return [...records.values()]
    .filter(({ name }) => name === 'ITEM_DEFINED_TRANSFORMATION')
    .map(({ args }) => placeOf(records, references(args)[1]!));
}
