import { type Acceptance, accept } from '../judge/accept.js';
import type { Finding } from '../judge/check.js';
import { worst } from '../judge/run-checks.js';
import { answerQuestions } from '../output/answers/answer-questions.js';
import { firstThings } from '../output/answers/first-things.js';
import { sentence } from '../output/answers/sentence.js';
import { reportBesideInches } from '../output/inches.js';
import type { BodyRow, Report } from '../output/report.js';
import { figuresWords } from '../parts/common/profile-words.js';
import type { Kernel } from '../solid/kernel.js';
import type { Design } from './design.js';
import { kindOfDesign } from './find-kind.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';
import { knownChecks, requireAcceptable } from './require-acceptable.js';
import { judgedBy, resolveLimits } from './resolve-limits.js';

/** How a design is judged. */
export interface CheckOptions {
  /** failed checks that are accepted, each with its reason */
  readonly accept?: readonly Acceptance[];
  /** part kinds, in place of those that ship */
  readonly kinds?: readonly KnownKind[];
}

/**
 * Judges a design by all checks that need no solid.
 *
 * @param design what `design` gave
 * @param options accepted checks
 * @returns the report, its `bodies` empty
 * @throws InputError a check that cannot be accepted, or is not known
 */
export function check(design: Design, { accept: accepted = [], kinds = KINDS }: CheckOptions = {}): Report {
  const kind = kindOfDesign(kinds, design);
  requireAcceptable(accepted, kinds);
  const findings = kind.runChecks(design, resolveLimits(design.limits, judgedBy(kind, design)));
  const known = accepted.length > 0 ? knownChecks(kinds) : [];
  return assembleReport(design, kind, accept(findings, accepted, known), []);
}

/**
 * The same, with the screw held in the part as printed: solids against arithmetic.
 *
 * @param design what `design` gave
 * @param kernel the boolean kernel
 * @param options accepted checks
 * @returns the report, its `bodies` empty
 * @throws InputError a check that cannot be accepted, or is not known
 */
export function checkMated(design: Design, kernel: Kernel, options: CheckOptions = {}): Report {
  const report = check(design, options);
  const kind = kindOfDesign(options.kinds ?? KINDS, design);
  return assembleReport(design, kind, [...report.checks, ...kind.virtualMate(design, kernel)], []);
}

/** Puts findings and bodies together with what the kind says of the design. */
export function assembleReport(
  design: Design,
  kind: KnownKind,
  findings: readonly Finding[],
  bodies: readonly BodyRow[],
): Report {
  const { hardware, mounting, cautions, applied, print, fit, drive } = kind.particulars(design);
  const report: Report = {
    leadwright: 1,
    part: design.part,
    name: design.name,
    ...(design.revision === undefined ? {} : { revision: design.revision }),
    verdict: worst(findings),
    sentence: sentence(findings, kind.promise),
    questions: answerQuestions(kind.questions, findings),
    first: firstThings(findings),
    accepted: acceptedRows(findings),
    checks: findings,
    dimensions: design.dimensions,
    ...(fit ? { fit } : {}),
    ...(drive ? { drive } : {}),
    ...(print ? { print } : {}),
    applied,
    figures: figuresWords(design.profile),
    ...(design.profile ? { profile: design.profile } : {}),
    bodies,
    hardware,
    ...(mounting ? { mounting } : {}),
    assumptions: design.assumptions,
    cautions,
  };
  return design.units === 'inch' ? reportBesideInches(report) : report;
}

function acceptedRows(findings: readonly Finding[]): Report['accepted'] {
  const isAccepted = ({ accepted }: Finding) => accepted !== undefined;
  const ordered = [...findings.filter(({ grave }) => grave), ...findings.filter(({ grave }) => !grave)];
  return ordered.filter(isAccepted).map(({ id, accepted = '' }) => ({ check: id, reason: accepted }));
}
