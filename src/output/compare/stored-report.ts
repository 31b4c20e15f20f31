import * as z from 'zod';
import { type Verdict, WORDS, type Word } from '../../judge/check.js';
import type { Sizes } from '../../parts/part-kind.js';
import { fault } from '../../units/faults.js';

const sizes: z.ZodType<Sizes> = z.lazy(() => z.record(z.string(), z.union([z.number(), sizes])));
const verdict = z.enum(['pass', 'caution', 'fail']);
const bounds = z.object({ min: z.number().optional(), max: z.number().optional() }).nullable();

/** What a comparison reads of a report.json; further fields are left aside. */
const storedReport = z.object({
  leadwright: z.literal(1),
  part: z.string(),
  name: z.string(),
  verdict,
  checks: z.array(
    z.object({
      id: z.string(),
      verdict,
      word: z.enum(WORDS).optional(),
      title: z.string().optional(),
      value: z.number().nullable(),
      limit: bounds,
      unit: z.string(),
      message: z.string(),
    }),
  ),
  dimensions: z.object({ finished: sizes, printed: sizes }),
  applied: z.string(),
  bodies: z.array(
    z.object({ file: z.string(), material: z.string(), facets: z.number(), volume: z.number(), mass: z.number() }),
  ),
});
export type StoredReport = z.output<typeof storedReport>;

/** The word of a stored check; reports of old had verdicts alone. */
export function wordOf({ verdict, word }: { readonly verdict: Verdict; readonly word?: Word | undefined }): Word {
  return word ?? ({ pass: 'yes', caution: 'but', fail: 'no' } as const)[verdict];
}

/**
 * Reads a report.json.
 * @param text the file's text
 * @param from how the reader named the file
 * @throws InputError it is no report of ours
 */
export function readReport(text: string, from: string): StoredReport {
  const read = storedReport.safeParse(parsed(text));
  if (read.success) return read.data;
  const at = read.error.issues[0]?.path.join('.') ?? '';
  throw fault(from, '', `must be a report.json that make wrote${at === '' ? '' : `; ${at} is not as it should be`}`);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
