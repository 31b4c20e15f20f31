/** A rectangle of paper [mm, y downwards]. */
export interface PaperBox {
  readonly text: string;
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
}

/** Width and height of the sheet [mm]. */
export function paperSize(svg: string): readonly [number, number] {
  const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg)!;
  return [Number(width), Number(height)];
}

/** Points of every line of a drawing. */
export function linePoints(svg: string): (readonly [number, number])[] {
  const paths = [...svg.matchAll(/ d="([^"]+)"/g)].flatMap(([, data]) =>
    [...data!.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const),
  );
  const circles = [...svg.matchAll(/<circle [^>]*cx="(-?[\d.]+)" cy="(-?[\d.]+)" r="([\d.]+)"/g)].flatMap((m) => {
    const [x, y, r] = [Number(m[1]), Number(m[2]), Number(m[3])];
    return [[x - r, y - r] as const, [x + r, y + r] as const];
  });
  return [...paths, ...circles];
}

/** About where each text of a drawing stands, by its font size: a letter is 0.55 of it wide and 0.72 of it high. */
export function textBoxes(svg: string): PaperBox[] {
  return [...svg.matchAll(/<text x="(-?[\d.]+)" y="(-?[\d.]+)" font-size="([\d.]+)"([^>]*)>([^<]*)</g)].map((m) => {
    const [x, y, size] = [Number(m[1]), Number(m[2]), Number(m[3])];
    const [more, text] = [m[4]!, m[5]!.replaceAll(/&#?\w+;/g, '&')];
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

/** Texts that a line runs through, arrows aside, each as often as lines do. */
export function linesThroughTexts(svg: string): string[] {
  const boxes = textBoxes(svg);
  const sides = [...svg.matchAll(/<path class="[othcm]"[^>]* d="([^"]+)"/g)].flatMap(([, data]) =>
    [...data!.matchAll(/M([^MAZ]+)(Z?)/g)].flatMap(([, path, closed]) => {
      const points = path!.split('L').map((point) => point.trim().split(' ').map(Number) as [number, number]);
      const ends = closed ? [...points, points[0]!] : points;
      return ends.slice(1).map((to, i) => [ends[i]!, to] as const);
    }),
  );
  return boxes.flatMap(({ text, min, max }) => sides.filter(([a, b]) => crosses(a, b, min, max)).map(() => text));
}

type Place = readonly [number, number];

/** Whether a straight line passes a box, its outermost twentieth of a millimetre aside. */
function crosses(a: Place, b: Place, min: Place, max: Place): boolean {
  let [start, end] = [0, 1];
  for (const axis of [0, 1] as const) {
    const [low, high] = [min[axis] + 0.05 - a[axis], max[axis] - 0.05 - a[axis]];
    const run = b[axis] - a[axis];
    if (run === 0) {
      if (low >= 0 || high <= 0) return false;
      continue;
    }
    start = Math.max(start, Math.min(low / run, high / run));
    end = Math.min(end, Math.max(low / run, high / run));
  }
  return start < end;
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
