import * as z from 'zod';
import { fault } from '../units/faults.js';
import { PAIR_IDS } from './neighbours.js';

const count = z.number();
const text = z.string();
const standing = z.enum(['pass', 'caution', 'missing', 'unmeasured', 'fail', 'wrong']);
const hardware = z.array(z.object({ item: text, size: text, count }));
const filament = z.array(z.object({ material: text, mass: count }));
const point = z.array(count).length(3);

const machineRow = z.object({
  machine: text,
  kind: text.nullable(),
  group: text.nullable(),
  verdict: standing,
  complete: z.boolean(),
  lacks: z.array(text),
  // what earlier versions did not say
  unmeasured: z.boolean().default(false),
  odd: z
    .array(z.object({ role: text, field: text, value: count, fellows: count, meant: count.nullable(), message: text }))
    .default([]),
  pairs: z.array(
    z.object({
      id: z.enum(PAIR_IDS),
      verdict: z.enum(['pass', 'caution', 'fail']),
      roles: z.array(text),
      message: text,
    }),
  ),
  hardware,
  filament,
});

const partRow = z.object({
  machine: text,
  role: text,
  part: text,
  name: text,
  quantity: count,
  spare: count.default(0),
  printer: text.nullable().default(null),
  axis: text.nullable(),
  verdict: standing,
  reasons: z.array(text),
  file: text.nullable(),
  digest: text.nullable(),
  material: text.nullable(),
  mass: count.nullable(),
  bounds: z.tuple([point, point]).nullable(),
  address: text,
  folder: text.nullable(),
});

/** What every later run reads of a manifest: whose it is, and the files that are ours. */
const head = z.object({
  leadwright: z.literal(1),
  fleet: text,
  files: z.array(z.object({ file: text, digest: text })),
});

/** What a run of some machines alone takes over besides. */
const storedManifest = head.extend({ machines: z.array(machineRow), parts: z.array(partRow) });

/** A manifest as it was stored. */
export type StoredManifest = z.output<typeof storedManifest>;

/**
 * Reads a manifest.json.
 * @param json the file's text
 * @param from the file, for the message
 * @param withRows whether the rows of machines and parts are wanted; none are read otherwise
 * @throws InputError it is damaged, or none of ours
 */
export function readManifestText(json: string, from: string, withRows: boolean): StoredManifest {
  const value = parsed(json);
  const read = withRows ? storedManifest.safeParse(value) : head.safeParse(value);
  if (read.success) return { machines: [], parts: [], ...read.data };
  const at = read.error.issues[0]?.path.join('.') ?? '';
  const where = at === '' ? 'it is no manifest of a fleet' : `${at} is not as it should be`;
  throw fault(from, '', `is damaged, ${where}; remove it, or give another folder with --out`);
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}
