/** A capital is about 0.72 of the font size in the fonts that readers have. */
export const CAPITAL = 0.72;

/** About how wide a text comes out [mm]. */
export function textWidth(text: string, height: number): number {
  return (0.55 * height * Array.from(text).length) / CAPITAL;
}

/** A text as so many lines at most; what does not fit into the last ends in dots. */
export function wrapped(text: string, room: number, height: number, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length === 0 || (lines.length < most && textWidth(longer, height) > room)) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines.map((line) => shortened(line, room, height));
}

/** A text cut so that it fits, with dots. */
export function shortened(text: string, room: number, height: number): string {
  if (textWidth(text, height) <= room) return text;
  const characters = Array.from(text);
  const fit = Math.floor((room / textWidth(text, height)) * characters.length) - 1;
  return `${characters.slice(0, fit).join('').trimEnd()}…`;
}
