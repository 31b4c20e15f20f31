/** A capital is about 0.72 of the font size in the fonts that readers have. */
export const CAPITAL = 0.72;

/** About how wide a text comes out [mm]. */
export function textWidth(text: string, height: number): number {
  return (0.55 * height * Array.from(text).length) / CAPITAL;
}

/** A text in lines that fit: broken at spaces, after hyphens and underscores, and anywhere where a word is too long. */
export function wrapped(text: string, room: number, height: number): string[] {
  const lines: string[] = [];
  for (const piece of text.split(/(?<=[ _-])/).flatMap((word) => cut(word, room, height))) {
    const longer = (lines.at(-1) ?? '') + piece;
    if (lines.length > 0 && textWidth(longer.trimEnd(), height) <= room) lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines.map((line) => line.trimEnd());
}

/** A word in pieces that fit. */
function cut(word: string, room: number, height: number): string[] {
  if (textWidth(word.trimEnd(), height) <= room) return [word];
  const fit = Math.max(1, Math.floor(room / textWidth('x', height)));
  const characters = Array.from(word);
  return Array.from({ length: Math.ceil(characters.length / fit) }, (_, i) =>
    characters.slice(i * fit, (i + 1) * fit).join(''),
  );
}
