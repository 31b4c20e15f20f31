import { type Acceptance, accept } from '../judge/accept.js';
import type { Finding } from '../judge/check.js';
import { runChecks, worst } from '../judge/run-checks.js';
import { type Answer, urgency } from '../output/answers/answer.js';
import { answerQuestions } from '../output/answers/answer-questions.js';
import { figureLine } from '../output/answers/figure-line.js';
import { firstThings } from '../output/answers/first-things.js';
import { sentence } from '../output/answers/sentence.js';
import { reportBesideInches } from '../output/inches.js';
import type { BodyRow, Report } from '../output/report.js';
import { DRIVE_CAUTIONS } from '../parts/common/cautions.js';
import type { HardwareRow, Sizes } from '../parts/part-kind.js';
import { check, checkMated } from '../pipeline/check.js';
import { knownKeys } from '../sheet/schema-keys.js';
import type { Kernel } from '../solid/kernel.js';
import { rounded } from '../units/format.js';
import { shareOut } from './accept.js';
import type { AxisDesign } from './axis-design.js';
import { AXIS_CHECKS, AXIS_QUESTIONS } from './checks/index.js';
import { figureOf, type Known } from './known.js';
import { limitsOf } from './limits.js';
import { type AxisReport, ofPart, type PartReport } from './report.js';
import { axisSchema } from './sheet.js';

/** How an axis is judged. */
export interface AxisCheckOptions {
  /** failed checks that are accepted: of the axis by id, of a part as ROLE/CHECK */
  readonly accept?: readonly Acceptance[];
  /** holds the screw in each part as printed, as solids */
  readonly mate?: Kernel;
}

/**
 * Judges an axis: what goes across its parts, and every part.
 *
 * @param axis what `designAxis` gave
 * @param options accepted checks
 * @returns the report, its `bodies` empty
 * @throws InputError a check that cannot be accepted, or is not known
 */
export function checkAxis(axis: AxisDesign, { accept: accepted = [], mate }: AxisCheckOptions = {}): AxisReport {
  const { ofPart: acceptedOf } = shareOut(accepted, axis);
  const parts = axis.parts.map(({ role, design, kind }): PartReport => {
    const options = { accept: acceptedOf(role), kinds: [kind] };
    return { role, folder: role, report: mate ? checkMated(design, mate, options) : check(design, options) };
  });
  return axisReport(axis, parts, accepted);
}

/** Puts what was found of an axis and of its parts together. */
export function axisReport(
  axis: AxisDesign,
  parts: readonly PartReport[],
  accepted: readonly Acceptance[] = [],
): AxisReport {
  const own = ownFindings(axis, accepted);
  const ofParts = parts.map(({ role, report }) => report.checks.map(ofPart(role, isShared)));
  const checks = [...own, ...ofParts.flat()];
  const { name, revision, units, drive, assumptions } = axis;
  const report: AxisReport = {
    leadwright: 1,
    part: 'axis',
    name,
    ...(revision === undefined ? {} : { revision }),
    verdict: worst(checks),
    sentence: sentence(checks, 'It goes together'),
    questions: [...answerQuestions(AXIS_QUESTIONS, own), ...parts.map((part, i) => partAnswer(part, ofParts[i]!))],
    first: firstThings(checks),
    accepted: checks.flatMap(({ id, accepted: reason }) => (reason === undefined ? [] : [{ check: id, reason }])),
    checks,
    dimensions: { finished: placesOf(axis), printed: {} },
    drive,
    applied: appliedTo(parts),
    bodies: parts.flatMap(({ folder, report: { bodies } }) => bodies.map((body) => inFolder(folder, body))),
    hardware: hardwareOf(parts),
    assumptions: [
      ...assumptions,
      ...parts.flatMap(({ role, report: { assumptions: list } }) =>
        list.map((one) => ({ ...one, field: `parts.${role}.${one.field}` })),
      ),
    ],
    cautions: [...new Set([...DRIVE_CAUTIONS, ...parts.flatMap(({ report: { cautions } }) => cautions)])],
    parts,
  };
  return units === 'inch' ? { ...reportBesideInches(report), part: 'axis', parts } : report;
}

/** What is compensated in the files: once, where it is the same for all parts, else with the parts that it holds for. */
function appliedTo(parts: readonly PartReport[]): string {
  const roles = new Map<string, string[]>();
  for (const { role, report } of parts) roles.set(report.applied, [...(roles.get(report.applied) ?? []), role]);
  if (roles.size === 1) return parts[0]!.report.applied;
  return [...roles].map(([applied, of]) => `${of.join(', ')}: ${applied}`).join(' · ');
}

function ownFindings(axis: AxisDesign, accepted: readonly Acceptance[]): Finding[] {
  const findings = runChecks(AXIS_CHECKS, axis, limitsOf(axis));
  return accept(findings, shareOut(accepted, axis).own, AXIS_CHECKS);
}

/** A field that the axis says for all. */
function isShared(field: string): boolean {
  const keys = field.split('.');
  return knownKeys(axisSchema, keys.slice(0, -1)).includes(keys.at(-1)!);
}

/** One line a part: the word of its worst check, and that check. */
function partAnswer({ role, report }: PartReport, findings: readonly Finding[]): Answer {
  const worstOf = findings.reduce<Finding | undefined>(
    (a, b) => (a === undefined || urgency(b) > urgency(a) ? b : a),
    undefined,
  );
  const lead = worstOf && urgency(worstOf) > 0 ? worstOf : undefined;
  return {
    question: role,
    title: role,
    word: lead?.word ?? 'yes',
    check: lead?.id ?? '',
    text: lead ? figureLine({ ...lead, title: raised(lead.title.slice(`${role}: `.length)) }) : report.sentence,
    ...(lead?.accepted === undefined ? {} : { accepted: true as const }),
  };
}

/** A title at the beginning of a line. */
function raised(title: string): string {
  return title.charAt(0).toUpperCase() + title.slice(1);
}

/** Places along the screw from the face that the motor's shaft stands out of. */
function placesOf({ along, duty }: AxisDesign): Sizes {
  const { screwStart, jointEnd, near, far, holderEnd, screwEnd } = along;
  const named: readonly (readonly [string, Known])[] = [
    ['screw_start', screwStart],
    ['coupling_end', jointEnd],
    ['nut_from', near],
    ['nut_to', far],
    ['holder_end', holderEnd],
    ['screw_end', screwEnd],
  ];
  const places = named.flatMap(([name, known]) => {
    const value = figureOf(known);
    return value ? [[name, rounded(value.likely)]] : [];
  });
  return { ...Object.fromEntries(places), ...(duty.span === undefined ? {} : { free_length: rounded(duty.span) }) };
}

function inFolder(folder: string, body: BodyRow): BodyRow {
  return folder === '' ? body : { ...body, file: `${folder}/${body.file}` };
}

/** What is bought for all parts together. */
function hardwareOf(parts: readonly { readonly report: Pick<Report, 'hardware'> }[]): HardwareRow[] {
  const rows = new Map<string, HardwareRow>();
  for (const row of parts.flatMap(({ report: { hardware } }) => hardware)) {
    const key = `${row.item} ${row.size}`;
    rows.set(key, { ...row, count: row.count + (rows.get(key)?.count ?? 0) });
  }
  return [...rows.values()];
}
