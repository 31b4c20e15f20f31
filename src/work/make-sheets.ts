import { isAbsolute, join, relative, resolve } from 'node:path';
import { ofAnAxis, ofSinglePart, requireAcceptableOfAny } from '../axis/accept-call.js';
import type { AxisDesign } from '../axis/axis-design.js';
import { makeAxis } from '../axis/make.js';
import type { Acceptance } from '../judge/accept.js';
import type { PaperName } from '../output/drawing/paper.js';
import type { Projection } from '../output/drawing/sheet-layout.js';
import type { Format } from '../output/formats.js';
import type { PageScript } from '../output/page/page-shell.js';
import type { PictureOptions } from '../output/picture/picture.js';
import type { Report } from '../output/report.js';
import type { SizeChoice } from '../parts/part-views.js';
import type { Design, DesignOptions } from '../pipeline/design.js';
import { type MadeFile, type MakeOptions, makeDesign } from '../pipeline/make.js';
import type { Kernel } from '../solid/kernel.js';
import { fault } from '../units/faults.js';
import { asError } from './as-error.js';
import { diskReason } from './disk-reason.js';
import { earlierFiles } from './earlier-files.js';
import { nameOf, openSheets } from './open-sheets.js';
import type { InputPlace } from './read-input.js';
import { replaceFile } from './writer/files.js';
import { replaceFolder } from './writer/replace-folder.js';
import { settleAll } from './writer/settle.js';

/** What became of one sheet. */
export type SheetResult =
  | { readonly file: string; readonly report: Report; readonly written: readonly string[]; readonly earlier?: string }
  /** an InputError where the sheet or the folder is to blame, any other error where we are */
  | { readonly file: string; readonly error: Error; readonly earlier?: string };

/** What sheets are made with. */
export interface MakeSheetsOptions extends DesignOptions {
  /** the folder in which each part gets its own, named as it is */
  readonly out: string;
  readonly accept?: readonly Acceptance[];
  /** waited for only where a part passes its checks */
  readonly kernel: Promise<Kernel>;
  readonly formats?: readonly Format[];
  readonly drawing?: SizeChoice;
  readonly projection?: Projection;
  readonly paper?: PaperName;
  readonly pageScript?: PageScript;
  readonly step?: NonNullable<MakeOptions['step']>;
  /** a picture of the part besides, and the file it goes to */
  readonly picture?: { readonly file: string; readonly options: PictureOptions };
  /** told before each step that may take long */
  readonly onStep?: (what: string) => void;
}

/**
 * Makes each sheet on its own; `earlier` names a folder that still holds files of an earlier make.
 * @throws InputError a check that cannot be accepted, before any sheet is read
 */
export async function makeSheets(
  files: readonly string[],
  place: InputPlace,
  options: MakeSheetsOptions,
): Promise<SheetResult[]> {
  const { accept = [] } = options;
  requireAcceptableOfAny(accept, options.kinds);
  settleAll(resolve(place.cwd, options.out));
  const results: SheetResult[] = [];
  const sheets = await openSheets(files, place, options);
  const alone = sheets.every((sheet) => !('design' in sheet));
  // a design is let go of once it is made, and all that was worked out of it: a long run keeps reports alone
  for (let sheet = sheets.shift(); sheet; sheet = sheets.shift()) {
    const { file } = sheet;
    const name = nameOf(sheet);
    const folder = name === undefined ? undefined : partFolder(name, place, options);
    try {
      if ('error' in sheet) throw sheet.error;
      const { report, written } =
        'axis' in sheet
          ? await makeWhole(sheet.axis, place, { ...options, accept: ofAnAxis(accept, alone) })
          : await makeOne(sheet.design, place, { ...options, accept: ofSinglePart(accept) });
      const stale = written.length === 0 && folder ? await leftovers(folder, place) : {};
      results.push({ file, report, written: written.map((path) => shownPath(path, place)), ...stale });
    } catch (error) {
      results.push({ file, error: asError(error), ...(folder ? await leftovers(folder, place) : {}) });
    }
  }
  return results;
}

async function makeOne(design: Design, place: InputPlace, options: MakeSheetsOptions) {
  const folder = partFolder(design.name, place, options);
  const { picture: wanted, onStep, ...rest } = options;
  const made = await makeDesign(design, {
    ...rest,
    ...(wanted ? { picture: wanted.options } : {}),
    ...(onStep ? { onStep: (what) => onStep(`${design.name}: ${what}`) } : {}),
  });
  const { report, files, picture } = made;
  if (files.length === 0) return { report, written: [] };
  await writePart(folder, files);
  const written = files.map(({ name }) => join(folder, name));
  if (!wanted || !picture) return { report, written };
  await replaceFile('--picture', wanted.file, picture, place.cwd);
  return { report, written: [...written, resolve(place.cwd, wanted.file)] };
}

/** Makes all parts of an axis, or nothing. */
async function makeWhole(axis: AxisDesign, place: InputPlace, options: MakeSheetsOptions) {
  const { picture, onStep, ...rest } = options;
  if (picture) throw fault('--picture', picture.file, 'shows one part: an axis has a picture of each on its page');
  const tell = onStep ? { onStep: (what: string) => onStep(`${axis.name}: ${what}`) } : {};
  const { report, files } = await makeAxis(axis, { ...rest, ...tell });
  if (files.length === 0) return { report, written: [] };
  const folder = partFolder(axis.name, place, options);
  await writePart(folder, files);
  return { report, written: files.map(({ name }) => join(folder, name)) };
}

/** The part's folder becomes what this make says; files of others in it stay. */
async function writePart(folder: string, files: readonly MadeFile[]): Promise<void> {
  try {
    await replaceFolder(folder, {
      earlier: earlierFiles,
      fill: ({ write }) => {
        for (const { name, bytes } of files) write(name, bytes);
      },
    });
  } catch (error) {
    throw fault(folder, '', diskReason(error));
  }
}

async function leftovers(folder: string, place: InputPlace): Promise<{ earlier?: string }> {
  return (await earlierFiles(folder)).length > 0 ? { earlier: shownPath(folder, place) } : {};
}

function partFolder(name: string, { cwd }: InputPlace, { out }: MakeSheetsOptions): string {
  return resolve(cwd, out, name);
}

/** A path as seen from where the command was typed, unless that climbs out. */
function shownPath(path: string, { cwd }: InputPlace): string {
  const near = relative(cwd, path);
  return near.startsWith('..') || isAbsolute(near) ? path : near;
}
