import type { PictureOptions } from '../output/picture/picture.js';
import { fault } from '../units/faults.js';

/** Pixels of a picture for a README or a chat. */
const SIZE = { width: 1200, height: 900 };

/** A picture that was asked for: what it shows, and the file it goes to. */
export interface PictureCall {
  readonly file: string;
  readonly options: PictureOptions;
}

/**
 * What `--picture` and `--show` mean together.
 * @throws InputError another ending than .png, several sheets for one file, or `--show` without a picture
 */
export function pictureCall(
  file: string | undefined,
  show: 'whole' | 'section' | 'apart' | undefined,
  sheets: readonly string[],
): PictureCall | undefined {
  if (file === undefined) {
    if (show !== undefined) throw fault('--show', show, 'says what --picture shows; name a file with --picture');
    return undefined;
  }
  if (!/\.png$/i.test(file)) throw fault('--picture', file, 'must end in .png');
  if (sheets.length > 1) throw fault('--picture', file, 'takes one sheet, since it names one file');
  return { file, options: { ...SIZE, show: show ?? 'whole' } };
}
