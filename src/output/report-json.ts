import { significant } from '../units/format.js';
import type { Report } from './report.js';

/**
 * A report as text: keys in the order of the report, numbers to nine significant digits, two blanks of indent.
 * @returns the text, a line break at its end
 */
export function reportJson(report: Report): string {
  return jsonText(report);
}

/** Any plain answer in the same form. Numbers that are not finite become null. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, (_, part: unknown) => (typeof part === 'number' ? significant(part) : part), 2)}\n`;
}
