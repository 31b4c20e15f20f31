import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { badge, count, findingsOf } from './html.js';

/** The head of the page: what it is, whether it may be printed, and what to look at first. */
export function verdictSection(report: Report): string {
  const { name, part, verdict, accepted, bodies } = report;
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
    `<p class="lead">${xmlText(advice(report))}</p>`,
    ...accepted.map(
      ({ check, reason }) =>
        `<p class="accepted"><strong>Accepted although it fails:</strong> ${xmlText(check)}. ${xmlText(reason)}</p>`,
    ),
    firstThings(report),
    `<p class="facts">${facts.map(xmlText).join(' · ')}</p>`,
    '</header>',
  ].join('\n');
}

function advice({ checks, verdict }: Report): string {
  const cautions = findingsOf(checks, 'caution').length;
  if (verdict === 'pass') return `All ${count(checks.length, 'check')} pass. Print it, then follow the workshop card.`;
  if (verdict === 'fail') return `${count(findingsOf(checks, 'fail').length, 'check')} failed. Do not print this.`;
  if (cautions === 0) return 'It may be printed; read first what was accepted.';
  return `It may be printed; read ${cautions === 1 ? 'this caution' : `these ${cautions} cautions`} first.`;
}

/** What wants attention, with what would move it. */
function firstThings({ checks }: Report): string {
  const loud = [...findingsOf(checks, 'fail'), ...findingsOf(checks, 'caution')];
  if (loud.length === 0) return '';
  const items = loud.map(
    ({ title, message, moves }) =>
      `<li><strong>${xmlText(title)}.</strong> ${xmlText(sentence(message))} <span class="moves">Moved by: ${xmlText(moves)}</span></li>`,
  );
  return `<ul class="first">${items.join('')}</ul>`;
}

/** A message with a capital and a stop. */
function sentence(text: string): string {
  const stopped = /[.!?]$/.test(text) ? text : `${text}.`;
  return stopped.charAt(0).toUpperCase() + stopped.slice(1);
}
