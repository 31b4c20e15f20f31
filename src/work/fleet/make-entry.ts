import { designAny, isAxis } from '../../axis/any.js';
import { makeAxis } from '../../axis/make.js';
import { type RememberedPart, rememberedPart } from '../../fleet/made-part.js';
import { pairFacts } from '../../fleet/pair-facts.js';
import type { Acceptance } from '../../judge/accept.js';
import type { Format } from '../../output/formats.js';
import type { KnownKind } from '../../pipeline/known-kind.js';
import { makeDesign } from '../../pipeline/make.js';
import type { PresetTexts } from '../../presets/texts.js';
import type { Fields } from '../../sheet/fields-map.js';
import type { Kernel } from '../../solid/kernel.js';
import { type Fault, InputError } from '../../units/faults.js';
import { asError } from '../as-error.js';
import { diskReason } from '../disk-reason.js';
import { sha256 } from './digest.js';
import { type PartFile, writeEntry } from './entry-store.js';

/** A part to be made; plain data, so that it can go to a worker. */
export interface Job {
  readonly address: string;
  readonly sheet: Fields;
  readonly accept: readonly Acceptance[];
  readonly formats: readonly Format[];
  /** folder of the store that it goes to */
  readonly store: string;
  /** in place of those that ship */
  readonly presets?: PresetTexts;
}

/** How a job ended. What was made lies in the store. */
export type JobResult =
  | { readonly state: 'stored' }
  | { readonly state: 'wrong'; readonly faults: readonly Fault[] }
  | { readonly state: 'broken'; readonly message: string }
  /** it was not to be made here */
  | { readonly state: 'absent'; readonly reason: string }
  /** the store cannot be written: no further part can either */
  | { readonly state: 'disk'; readonly reason: string };

/** What jobs are done with. */
export interface Bench {
  readonly kernel: Promise<Kernel>;
  /** in place of those that ship */
  readonly kinds?: readonly KnownKind[];
}

/** The script that the pages of a fleet share, in the output folder. */
export const PAGE_SCRIPT = 'page.js';
export const PAGE = { pageScript: { src: `../../${PAGE_SCRIPT}` }, picture: 'still' } as const;

/** Makes one part and stores it; a refused one too, since it will be refused again. */
export async function makeEntry(job: Job, { kernel, kinds }: Bench): Promise<JobResult> {
  const made = await attempt(job, kernel, kinds);
  if (!('part' in made)) return made;
  try {
    await writeEntry({ folder: job.store }, made.part, made.files);
    return { state: 'stored' };
  } catch (error) {
    try {
      return { state: 'disk', reason: diskReason(error) };
    } catch (own) {
      return { state: 'broken', message: asError(own).message };
    }
  }
}

type Made = { readonly part: RememberedPart; readonly files: readonly PartFile[] };

async function attempt(
  { address, sheet, accept, formats, presets }: Job,
  kernel: Promise<Kernel>,
  kinds: readonly KnownKind[] | undefined,
): Promise<Made | Exclude<JobResult, { state: 'stored' }>> {
  const options = { ...(kinds ? { kinds } : {}), ...(presets ? { presets } : {}) };
  try {
    const worked = designAny(sheet, options);
    const made = isAxis(worked)
      ? await makeAxis(worked, { accept, kernel, formats, flat: true })
      : await makeDesign(worked, { ...options, ...PAGE, accept, kernel, formats });
    const { report, files } = made;
    const picture = 'picture' in made ? made.picture : undefined;
    const all: PartFile[] =
      picture && files.length > 0 ? [...files, { name: 'picture.png', bytes: picture }] : [...files];
    const digested = all.map(({ name, bytes }) => ({ name, size: bytes.length, digest: sha256(bytes) }));
    return { part: rememberedPart(address, report, pairFacts(worked), digested), files: all };
  } catch (error) {
    if (error instanceof InputError) return { state: 'wrong', faults: error.faults };
    return { state: 'broken', message: asError(error).message };
  }
}
