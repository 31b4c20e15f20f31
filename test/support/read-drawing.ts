/** A rectangle of paper [mm, y downwards]. */
export interface PaperBox {
  readonly text: string;
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
}

/** Points of every line of a drawing, its hatching pattern aside. */
export function linePoints(svg: string): (readonly [number, number])[] {
  const paths = [...svg.matchAll(/ d="([^"]+)"/g)].flatMap(([, data]) =>
    [...data!.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const),
  );
  const circles = [...svg.matchAll(/<circle [^>]*cx="(-?[\d.]+)" cy="(-?[\d.]+)" r="([\d.]+)"/g)].flatMap((m) => {
    const [x, y, r] = [Number(m[1]), Number(m[2]), Number(m[3])];
    return [[x - r, y - r] as const, [x + r, y + r] as const];
  });
  return [...paths, ...circles].filter(([x, y]) => !(x === 0 && y === 0));
}

/** About where each text of a drawing stands, by its font size: a letter is 0.55 of it wide and 0.72 of it high. */
export function textBoxes(svg: string): PaperBox[] {
  return [...svg.matchAll(/<text x="(-?[\d.]+)" y="(-?[\d.]+)" font-size="([\d.]+)"([^>]*)>([^<]*)</g)].map((m) => {
    const [x, y, size] = [Number(m[1]), Number(m[2]), Number(m[3])];
    const [more, text] = [m[4]!, m[5]!.replaceAll(/&\w+;/g, '&')];
    const width = 0.55 * size * [...text].length;
    const height = 0.72 * size;
    const start = more.includes('"middle"') ? -width / 2 : more.includes('"end"') ? -width : 0;
    if (more.includes('rotate(-90'))
      return { text, min: [x - height, y - start - width] as const, max: [x, y - start] as const };
    return { text, min: [x + start, y - height] as const, max: [x + start + width, y] as const };
  });
}

/** Pairs of texts that lie over one another. */
export function textsInTheWay(svg: string): string[] {
  const boxes = textBoxes(svg);
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => ([0, 1] as const).every((k) => a.min[k] < b.max[k] && b.min[k] < a.max[k]))
      .map((b) => `${a.text} | ${b.text}`),
  );
}

/** Name and text of every size that a drawing states. */
export function statedSizes(svg: string): { readonly name: string; readonly text: string; readonly value: number }[] {
  return [...svg.matchAll(/data-size="([^"]+)"[^>]*>([^<]+)</g)].map(([, name, text]) => ({
    name: name!,
    text: text!,
    // the figure is the last number that is not a spread
    value: Number(/(-?\d+\.\d+)(?: ±[\d.]+)?(?: [a-z⌀ ]+)?$/.exec(text!)?.[1] ?? Number.NaN),
  }));
}
