import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import {
  afterADay,
  type CardStep,
  chase,
  type DrawnOnes,
  everyMonth,
  firstMoves,
  isTestPiece,
  level,
  makeSafe,
  measure,
  mount,
  printStep,
  tellController,
  tryOut,
  turnByHand,
} from './card-steps.js';
import { acceptedBoxes } from './verdict-section.js';

/** The card that goes to the bench: the refit step by step, with this part's figures. */
export function workshopCard(report: Report, finished: DrawnOnes): string {
  const made = [printStep(report), measure(report, finished)];
  const mounted = [
    makeSafe(report),
    ...made,
    chase(report),
    mount(report),
    turnByHand(report),
    level(report),
    tellController(report),
    firstMoves(report),
    afterADay(report),
    everyMonth(report),
  ];
  const steps = isTestPiece(report.part) ? [...made, tryOut(report)] : mounted;
  return [
    cardOf(
      report,
      steps.flatMap((step) => (step ? [step] : [])),
    ),
    '<p class="no-print"><button type="button" id="print-card">Print this card alone</button></p>',
  ].join('\n');
}

/** A card of steps, to be ticked. */
export function cardOf(report: Pick<Report, 'name' | 'part' | 'accepted'>, steps: readonly CardStep[]): string {
  const items = steps.map(({ title, lines, more = '' }, i) => {
    const id = `step-${i + 1}`;
    const texts = lines.map((line) => `<p>${xmlText(line)}</p>`).join('');
    return `<li><label class="tick"><input type="checkbox" id="${id}"> <strong>${xmlText(title)}</strong></label>${texts}${more}</li>`;
  });
  return [
    `<p class="card-head"><strong>${xmlText(report.name)}</strong> (${xmlText(report.part)}). Tick as you go.</p>`,
    acceptedBoxes(report),
    `<ol class="card">${items.join('\n')}</ol>`,
  ].join('\n');
}
