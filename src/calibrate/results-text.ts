import { plain } from '../units/format.js';
import { CALIPERS } from '../units/measured.js';
import type { CouponFeatures, PocketStep, ReadFeature, ThreadStep } from './feature.js';
import { type Results, readOf } from './results.js';

/** What a coupon says of itself in its results file. */
export type CouponHead = Pick<Results, 'coupon' | 'material' | 'printer' | 'applied' | 'screw'>;

const mm = (value: number) => `${plain(value, 4)} mm`;
const percent = (share: number) => `${plain(100 * share, 4)} %`;

/** What a coupon was and how it was drawn, line by line. */
function headLines({ coupon, material, printer, applied, screw }: CouponHead): string[] {
  const { nozzle, layer, line_width } = printer;
  const settings = [
    ...(nozzle === undefined ? [] : [`nozzle: ${mm(nozzle)}`]),
    ...(layer === undefined ? [] : [`layer: ${mm(layer)}`]),
    ...(line_width === undefined ? [] : [`line_width: ${mm(line_width)}`]),
  ];
  const { at_zero, per_mm } = applied.hole_offset;
  return [
    'results: coupon',
    `coupon: ${quoted(coupon)}`,
    `material: ${quoted(material)}`,
    `printer: {${settings.join(', ')}}`,
    `applied: {plane: ${percent(applied.plane)}, axial: ${percent(applied.axial)}, hole_offset: {at_zero: ${mm(at_zero)}, per_mm: ${plain(per_mm, 6)}}}`,
    ...(screw
      ? [
          `screw: {pitch_diameter: ${mm(screw.pitch_diameter)}, pitch: ${mm(screw.pitch)}, lead: ${mm(screw.lead)}, flank_angle: ${plain(screw.flank_angle, 4)} deg}`,
        ]
      : []),
  ];
}

/** A name that YAML could take for something else stands in quotes. */
function quoted(name: string): string {
  return /^[A-Za-z][\w.-]*$/.test(name) && !/^(true|false|null|yes|no|on|off)$/i.test(name)
    ? name
    : JSON.stringify(name);
}

/** A results file without a reading, to be filled in beside the print. */
export function blankResults(head: CouponHead, { reads, threads, pockets }: CouponFeatures): string {
  const name = head.coupon.toLowerCase().replace(/[^a-z0-9.-]+/g, '-');
  const width = Math.max(0, ...reads.map((one) => readRow(one).length));
  const tried = [...threads.map(threadRow), ...pockets.map(pocketRow)];
  return [
    '# What calipers read on the printed coupon. Blanks are fine; several readings of a feature are better than one.',
    '# Then: leadwright calibrate THIS-FILE',
    '',
    ...headLines(head),
    '',
    `profile: ${/^[a-z0-9]/.test(name) ? name : `c-${name}`}   # the profile to write: small letters, digits, points and hyphens`,
    'state: room            # dry (from the dryer), room (two days in room air), wet: as it was when it was read',
    'slicer_compensates:    # answer this: does the slicer correct sizes by itself? no, shrink, holes, both',
    `calipers: ${CALIPERS} mm      # what a reading may be off`,
    '',
    'readings:              # read: [55.41, 55.43]; [] where none was taken',
    ...reads.map((one) => `  ${readRow(one).padEnd(width)}   # ${one.what}`),
    ...(reads.length === 0 ? ['  {}'] : []),
    ...(tried.length > 0
      ? ['', 'tried:                 # felt: no (does not go), tight, good, loose; blank where it was not tried']
      : []),
    ...tried.map((row) => `  ${row}`),
    '',
  ].join('\n');
}

function readRow({ mark, kind, modelled }: ReadFeature): string {
  return `${mark}: {${kind}: ${mm(modelled)}, read: []}`;
}

function threadRow({ mark, diametral, axial }: ThreadStep): string {
  return `${mark}: {thread: {diametral: ${mm(diametral)}, axial: ${mm(axial)}}, felt: }`;
}

function pocketRow({ mark, kind, size, nominal }: PocketStep): string {
  return `${mark}: {${kind}: ${mm(size)}, for: ${mm(nominal)}, felt: }`;
}

/** A filled results file, line by line, without what was left blank. */
export function resultsLines(results: Results): string[] {
  const { state, slicer_compensates, calipers, readings = {}, tried = {} } = results;
  const read = Object.entries(readings).flatMap(([mark, row]) => {
    const { kind, modelled, read } = readOf(row);
    return read.length === 0
      ? []
      : [`  ${mark}: {${kind}: ${mm(modelled)}, read: [${read.map((one) => plain(one, 4)).join(', ')}]}`];
  });
  const felt = Object.entries(tried).flatMap(([mark, { thread, for: nominal, felt, ...pocket }]) => {
    if (felt === undefined) return [];
    if (thread)
      return [`  ${mark}: {thread: {diametral: ${mm(thread.diametral)}, axial: ${mm(thread.axial)}}, felt: ${felt}}`];
    const [kind, size] = Object.entries(pocket).find(([, value]) => value !== undefined) ?? [];
    return kind === undefined ? [] : [`  ${mark}: {${kind}: ${mm(size!)}, for: ${mm(nominal!)}, felt: ${felt}}`];
  });
  return [
    ...headLines(results),
    ...(state === undefined ? [] : [`state: ${state}`]),
    `slicer_compensates: ${slicer_compensates}`,
    ...(calipers === undefined ? [] : [`calipers: ${mm(calipers)}`]),
    ...(read.length === 0 ? [] : ['readings:', ...read]),
    ...(felt.length === 0 ? [] : ['tried:', ...felt]),
  ];
}
