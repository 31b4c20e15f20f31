import { type Answer, type FirstThing, wordText } from '../answers/answer.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { badge } from './html.js';

/** The head of the page: what it is, the answer in a sentence, what was accepted, and each question with its figure. */
export function verdictSection(report: Report): string {
  const { name, part, verdict, sentence, bodies } = report;
  const mass = bodies.reduce((sum, body) => sum + body.mass, 0);
  const facts = [
    part,
    ...new Set(bodies.map(({ material }) => material)),
    ...(mass > 0 ? [`${mass.toFixed(1)} g`] : []),
    report.applied,
  ];
  return [
    '<header>',
    `<h1>${xmlText(name)} ${badge(verdict)}</h1>`,
    `<p class="lead">${xmlText(sentence)}</p>`,
    acceptedBoxes(report),
    questionList(report.questions),
    `<p class="facts">${facts.map(xmlText).join(' · ')}</p>`,
    '</header>',
  ].join('\n');
}

/** Failed checks that were accepted, by reason; nobody who prints or mounts the part may overlook them. */
export function acceptedBoxes({ accepted }: Pick<Report, 'accepted'>): string {
  if (accepted.length === 0) return '';
  const reasons = [...new Set(accepted.map(({ reason }) => reason))];
  const rows = reasons.map((reason) => {
    const checks = accepted.filter((one) => one.reason === reason);
    const names = checks.map(({ check }) => `<span class="id">${xmlText(check)}</span>`);
    return `<p>${names.join(', ')} — ${xmlText(reason)}</p>`;
  });
  return `<div class="accepted"><strong>Accepted although it fails</strong>${rows.join('')}</div>`;
}

function questionList(answers: readonly Answer[]): string {
  const rows = answers.map(
    (answer) =>
      `<div><dt>${xmlText(answer.title)}</dt><dd><span class="word ${answer.word}">${wordText(answer)}</span> ${xmlText(answer.text)}</dd></div>`,
  );
  return `<dl class="questions">${rows.join('\n')}</dl>`;
}

/** What to see to, the most urgent first; what has one cause is told once. */
export function seeToList({ first }: Report): string {
  if (first.length === 0) return '';
  return `<ul class="first">${first.map(thing).join('\n')}</ul>`;
}

function thing({ text, accepted, ...rest }: FirstThing): string {
  const stopped = /[.!?]$/.test(text) ? text : `${text}.`;
  const reason = accepted === undefined ? '' : ` Accepted: ${xmlText(accepted)}`;
  const shown = wordText(accepted === undefined ? rest : { ...rest, accepted });
  return `<li><span class="word ${rest.word}">${shown}</span> ${xmlText(stopped)}${reason}</li>`;
}
