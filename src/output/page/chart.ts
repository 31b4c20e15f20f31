import { xmlText } from '../xml-text.js';

/** A number inside a chart. */
export function px(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Round steps that divide a span into about so many parts. */
export function ticksOf(low: number, high: number, about: number): number[] {
  const rough = (high - low) / about;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((one) => one >= rough) ?? rough;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** A chart as an image with a text for those who do not see it. */
export function chart(width: number, height: number, words: string, content: readonly string[]): string {
  return `<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label="${xmlText(words)}">${content.join('')}</svg>`;
}

/** A line of text in a chart. */
export function label(x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): string {
  return `<text x="${px(x)}" y="${px(y)}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}>${xmlText(text)}</text>`;
}
