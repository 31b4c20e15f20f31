import type { ThreadForm } from '../standards/threads/form.js';
import { plain } from '../units/format.js';
import type { Candidate } from './candidates.js';
import type { Observation } from './observations.js';
import { type LengthReading, type Readings, uncertaintyOf } from './readings.js';

/** The screw as it was measured, whatever series it belongs to [mm]. */
export interface MeasuredScrew {
  readonly form: ThreadForm;
  readonly major?: number;
  readonly pitch?: number;
  readonly starts: number;
  readonly hand: 'right' | 'left';
  readonly minor?: number;
  readonly crestFlat?: number;
}

/**
 * The screw as measured: readings first; form and starts of the most likely candidate where nothing was read.
 *
 * @param readings lengths [mm]
 * @param observations the same, made comparable [mm]
 * @param best the most likely screw, and whether it fits
 * @returns sizes to 0.001                                     [mm]
 * @source derived: starts are the whole number nearest lead over pitch
 */
export function measuredScrew(
  readings: Readings,
  observations: readonly Observation[],
  { best, fits }: { readonly best: Candidate; readonly fits: boolean },
): MeasuredScrew {
  const value = (what: Observation['what']) => observations.find((one) => one.what === what)?.value;
  const [major, lead] = [value('major'), value('lead')];
  const counted = startsOf(readings, value('pitch'), lead, best);
  // the starts of the nearest screw tell the pitch of that screw alone
  const sure = fits || readings.starts !== undefined;
  const pitch = value('pitch') ?? (lead === undefined || !sure ? undefined : lead / counted);
  const { minor, crestFlat } = readings;
  return {
    form: formOf(readings, best),
    ...(major === undefined ? {} : { major: thousandth(major) }),
    ...(pitch === undefined ? {} : { pitch: thousandth(pitch) }),
    starts: counted,
    hand: readings.hand ?? 'right',
    ...(minor === undefined ? {} : { minor }),
    ...(crestFlat === undefined ? {} : { crestFlat }),
  };
}

function startsOf(readings: Readings, pitch: number | undefined, lead: number | undefined, best: Candidate): number {
  if (pitch !== undefined && lead !== undefined) return Math.min(12, Math.max(1, Math.round(lead / pitch)));
  return readings.starts ?? best.row.starts;
}

function formOf(readings: Readings, best: Candidate): ThreadForm {
  if (readings.crest === 'sharp') return 'metric-v';
  if (readings.crest === 'flat' && best.form === 'metric-v') return 'trapezoidal';
  return best.form;
}

function short(value: number): string {
  return plain(value, 4);
}

/** What begins with # would be a comment in a sheet. */
function quoted(designation: string): string {
  return designation.startsWith('#') ? `'${designation}'` : designation;
}

function thousandth(value: number): number {
  return Number(value.toFixed(3));
}

/**
 * A `screw:` block to paste into a part sheet.
 *
 * @param screw the screw as measured [mm]
 * @param readings for the crests, the travel and the uncertainty, lengths [mm]
 * @param fitting the series screw, where one fits; starts that were counted otherwise are written beside it
 * @returns YAML, ending in a line break
 * @source derived: fields of the part sheet
 */
export function screwBlock(
  screw: MeasuredScrew,
  readings: Readings,
  fitting?: { readonly designation: string; readonly starts: number },
): string {
  const around = (what: LengthReading, value: number) => `${short(value)} ± ${short(uncertaintyOf(readings, what))} mm`;
  const { crests, travel } = readings;
  const lines = ['screw:'];
  const designation = fitting?.designation;
  if (designation !== undefined) lines.push(`designation: ${quoted(designation)}`);
  if (fitting && readings.starts !== undefined && readings.starts !== fitting.starts)
    lines.push(`starts: ${readings.starts}`);
  if (designation === undefined)
    lines.push(`form: ${screw.form}${readings.crest === undefined ? '  # nearest series: look at the crests' : ''}`);
  if (screw.major !== undefined) lines.push(`major: ${around('major', screw.major)}`);
  else if (designation === undefined) lines.push('# major: measure it over the crests');
  // A named screw's pitch is better known from its name than from calipers.
  if (designation === undefined) {
    if (crests !== undefined)
      lines.push(`crests: {count: ${crests.count}, length: ${around('crests', crests.length)}}`);
    else lines.push(screw.pitch === undefined ? '# pitch: measure it over 10 pitches' : `pitch: ${screw.pitch} mm`);
    if (travel === undefined)
      lines.push(
        `starts: ${screw.starts}${readings.starts === undefined ? '  # assumed: count the grooves at its end' : ''}`,
      );
    else lines.push(`travel: {turns: ${travel.turns}, length: ${around('travel', travel.length)}}`);
    lines.push(readings.hand === undefined ? '# hand: right or left, look at the screw' : `hand: ${readings.hand}`);
  }
  if (screw.minor !== undefined) lines.push(`minor: ${around('minor', screw.minor)}`);
  if (screw.crestFlat !== undefined) lines.push(`crest_flat: ${around('crestFlat', screw.crestFlat)}`);
  const wires = readings.wires;
  if (wires !== undefined) lines.push(`wires: {wire: ${short(wires.wire)} mm, over: ${around('wires', wires.over)}}`);
  return `${lines[0]}\n${lines
    .slice(1)
    .map((line) => `  ${line}\n`)
    .join('')}`;
}
