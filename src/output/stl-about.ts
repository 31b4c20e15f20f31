import type { PlannedBody } from '../parts/part-kind.js';

/** What stands in the header of an STL besides the program: long names give way, so that all else is kept. */
const NAME = 24;

/**
 * What an STL holds, in one short line: kind of part, body, unit, and who puts shrink and hole offset into the sizes.
 *
 * @example stlAbout({ part: 'nut', file: 'z-left.stl', printer }) // 'nut z-left mm, shrink: file, holes: file'
 */
export function stlAbout(body: {
  readonly part: string;
  readonly file: string;
  readonly printer: PlannedBody['printer'];
}): string {
  const { shrink, holes } = body.printer.compensation;
  const name = body.file.replace(/\.stl$/, '');
  const short = name.length > NAME ? `${name.slice(0, NAME - 1)}~` : name;
  return `${body.part} ${short} mm, shrink: ${shrink}, holes: ${holes}`;
}
