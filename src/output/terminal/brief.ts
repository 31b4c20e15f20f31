import { isBroken, SOLID_GROUP } from '../../judge/accept.js';
import { hardwareWords } from '../../parts/common/hardware-words.js';
import { type Answer, type FirstThing, gravest, urgency, wordText } from '../answers/answer.js';
import { listed } from '../answers/figure-line.js';
import type { Report } from '../report.js';
import { beside, WIDTH, wrapped } from './layout.js';
import type { Paint } from './paint.js';

/** Lines that a usual part's answer takes at most. */
const MOST_LINES = 24;
/** Lines that one thing to see to takes at most. */
const MOST_THING_LINES = 3;
const LEAST_THING_LINES = 2;
const MOST_UNTOLD_LINES = 2;
const MOST_THINGS = 3;

/** How a brief report is shown. */
export interface BriefOptions {
  /** files that were written, as they are named to the reader; absent where nothing was to be written */
  readonly written?: readonly string[];
  readonly width?: number;
}

/** The answer, the questions, what to see to first, and how to go on; the whole report is a longer story. */
export function briefLines(report: Report, style: Paint, { written, width = WIDTH }: BriefOptions): string[] {
  const top = [...headLines(report, style, width), ''];
  const tail = tailLines(report, written, width);
  const left = MOST_LINES - top.length - tail.length - 2;
  const things = untoldTogether(report.first).map((thing) => unsaid(thing, report.sentence));
  const wanted = things.length === 0 ? 0 : MOST_THING_LINES + (things.length > 1 ? 1 : 0);
  const questions = shortestRows(report.questions, left - wanted, style, width);
  const first = thingLines(things, left - questions.length, style, width);
  return [...top, ...questions, ...(first.length > 0 ? ['', ...first] : []), ...(tail.length > 0 ? ['', ...tail] : [])];
}

/** Questions with as much of each figure as there is room for, the most urgent first; a line each in any case. */
function shortestRows(answers: readonly Answer[], room: number, style: Paint, width: number): string[] {
  const rows = (most: readonly number[]) => questionLines(answers, style, width, most);
  const byUrgency = answers.map((_, i) => i).sort((a, b) => urgency(answers[b]!) - urgency(answers[a]!));
  let most = answers.map(() => 1);
  for (const longer of [2, 3])
    for (const row of byUrgency) {
      const wanted = most.map((lines, i) => (i === row ? longer : lines));
      if (rows(wanted).length <= room) most = wanted;
    }
  return rows(most);
}

/** The verdict, the name and the sentence. */
export function headLines({ verdict, name, part, sentence }: Report, style: Paint, width = WIDTH): string[] {
  const word = { pass: style.good('PASS'), caution: style.warn('CAUTION'), fail: style.bad('FAIL') }[verdict];
  const [first = '', ...rest] = wrapped(`${name} (${part}): ${sentence}`, verdict.length + 2, width);
  return [`${style.bold(word)}  ${first.trimStart()}`, ...rest];
}

/** A row a question: its word, and the figure that leads it, in so many lines at most. */
export function questionLines(
  answers: readonly Answer[],
  style: Paint,
  width = WIDTH,
  most: readonly number[] = answers.map(() => Number.POSITIVE_INFINITY),
): string[] {
  const columns = [
    Math.max(0, ...answers.map(({ title }) => title.length)) + 4,
    Math.max(0, ...answers.map((answer) => wordText(answer).length)) + 2,
  ] as const;
  return answers.flatMap((answer, row) => {
    const longest = most[row]!;
    const label = `  ${answer.title}`.padEnd(columns[0]);
    const word = wordText(answer);
    const set = (text: string) => beside(`${label}${word}`, columns[0] + columns[1], text, width);
    const [first = '', ...rest] = cutOff(
      set(withRoom(answer.text, (text) => set(text).length <= longest)),
      longest,
      width,
    );
    return [`${label}${painted(answer, style)}${first.slice(label.length + word.length)}`, ...rest];
  });
}

/** A figure with as much of its title as fits: the limit is what decides. What is told in words is left to what follows. */
function withRoom(text: string, fits: (text: string) => boolean): string {
  const [, title = text, found = ''] = /^([^:]+): (.*)$/.exec(text) ?? [];
  const words = title.split(' ');
  const shorter = words.slice(1).map((_, i) => `${words.slice(0, words.length - 1 - i).join(' ')} …: ${found}`);
  return [text, ...shorter].find(fits) ?? title;
}

/** All that nobody told as one thing: most checks wait for more than one field. */
function untoldTogether(things: readonly FirstThing[]): readonly FirstThing[] {
  const [first, ...rest] = things.filter(({ field }) => field !== undefined);
  if (!first || rest.length === 0) return things;
  const fields = [first, ...rest].flatMap(({ field = '' }) => field);
  const checks = [...new Set([first, ...rest].flatMap((thing) => thing.checks))];
  const waits = checks.length === 1 ? '1 check waits' : `${checks.length} checks wait`;
  const one: FirstThing = { word: first.word, checks, text: `${listed(fields)} are not told, and ${waits} for them` };
  return things.flatMap((thing) => (thing === first ? [one] : thing.field === undefined ? [thing] : []));
}

/** A thing to see to without the words that stand in the sentence above it. */
function unsaid(thing: FirstThing, sentence: string): FirstThing {
  const pieces = thing.text.split(/(?<=[;:.]) /);
  const known = pieces.findIndex((piece) => sentence.includes(`(${piece.slice(0, -1)})`));
  return known < 1 || known === pieces.length - 1
    ? thing
    : { ...thing, text: pieces.filter((_, i) => i !== known).join(' ') };
}

function painted(answer: Pick<Answer, 'word' | 'accepted'>, { good, warn, bad }: Paint): string {
  const text = wordText(answer);
  if (answer.word === 'yes') return good(text);
  return answer.word === 'no' && answer.accepted === undefined ? bad(text) : warn(text);
}

/** The most urgent things, as many as there is room for; what was accepted although it fails in any case, if need be a line each. */
function thingLines(things: readonly FirstThing[], room: number, style: Paint, width: number): string[] {
  const accepted = things.filter((thing) => thing.accepted !== undefined);
  const fewest = [MOST_THING_LINES, 2].find(
    (most) => accepted.flatMap((thing) => thingOf(thing, style, width, most)).length + 1 <= room,
  );
  const lines: string[] = [];
  let shown = 0;
  for (const thing of things) {
    const isLast = shown + 1 === things.length;
    // the first stands in any case: where little room is left it is cut, like a figure above it
    const fits = shown > 0 ? MOST_THING_LINES : Math.max(LEAST_THING_LINES, room - (isLast ? 0 : 1));
    const longest = thing.accepted === undefined ? Math.min(MOST_THING_LINES, fits) : (fewest ?? 1);
    const own = thingOf(thing, style, width, longest);
    const hasRoom = shown < MOST_THINGS && lines.length + own.length + (isLast ? 0 : 1) <= room;
    if (shown > 0 && !hasRoom && thing.accepted === undefined) break;
    lines.push(...own);
    shown += 1;
  }
  const left = things.length - shown;
  return left === 0 ? lines : [...lines, `  and ${left} more, and every figure: --all`];
}

/** A thing to see to, in so many lines at most; what nobody told takes fewer. */
function thingOf(thing: FirstThing, style: Paint, width: number, longest: number): string[] {
  const { text, accepted, checks, word } = thing;
  const whole =
    accepted === undefined ? text : `accepted although it fails: ${checks.join(', ')} — ${accepted}. ${text}`;
  const lines = wrapped(whole, 4, width);
  const most = word === 'not-told' ? MOST_UNTOLD_LINES : longest;
  const kept = cutOff(lines, most, width);
  const bullet = word === 'no' ? '!' : '–';
  return kept
    .map((line, i) => (i === 0 ? `  ${bullet} ${line.trimStart()}` : line))
    .map(accepted === undefined ? plainly : style.bold);
}

function plainly(line: string): string {
  return line;
}

/** So many lines at most; the last one says that there were more. */
function cutOff(lines: readonly string[], most: number, width: number): readonly string[] {
  return lines.length > most ? [...lines.slice(0, most - 1), shortened(lines[most - 1]!, width)] : lines;
}

function shortened(line: string, width: number): string {
  return line.length + 2 <= width ? `${line} …` : `${line.slice(0, line.lastIndexOf(' '))} …`;
}

/** Files, how to print, what to buy, and what to mind. */
function tailLines(report: Report, written: readonly string[] | undefined, width: number): string[] {
  const { print, bodies, hardware, verdict } = report;
  if (verdict === 'fail')
    return [...overrideLines(report, width), ...(written === undefined ? [] : ['  nothing was written'])];
  const materials = [...new Set(bodies.map(({ material }) => material))];
  const grams = bodies.reduce((sum, { mass }) => sum + mass, 0);
  const made = bodies.length === 0 ? [] : [listed(materials), `${grams.toFixed(1)} g`];
  const support = print?.support === 'none' ? 'no support' : 'with support';
  const laid = print ? [`face up: ${print.face_up}`, support] : [];
  const rows: [string, string][] = [
    ['written', written === undefined ? '' : filesText(written)],
    ['print', [...made, ...laid].join(', ')],
    ['buy', hardwareWords(hardware).join('; ')],
    ['mind', mindText(written)],
  ];
  return rows.flatMap(([label, text]) => (text === '' ? [] : beside(`  ${label}`, 12, text, width)));
}

/** How to go on where a check fails. */
export function overrideLines({ checks }: Report, width?: number): string[] {
  const open = checks.filter(({ word, accepted }) => word === 'no' && accepted === undefined);
  const override = gravest(open.filter((finding) => finding.group !== SOLID_GROUP && !isBroken(finding)));
  if (!override) return [];
  return wrapped(`change what moves it, or accept it by name: --accept ${override.id}=REASON`, 2, width);
}

/** Files of one folder, which is named once; of a folder in it, how many. */
function filesText(files: readonly string[]): string {
  const folder = files.map(folderOf).reduce((a, b) => (b.length < a.length ? b : a));
  if (!files.every((file) => file.startsWith(folder))) return files.join(', ');
  const inside = files.map((file) => file.slice(folder.length));
  const folders = [...new Set(inside.map(folderOf))].filter((name) => name !== '');
  const counts = folders.map((name) => `${name} (${inside.filter((file) => file.startsWith(name)).length})`);
  return `${folder} ${[...counts, ...inside.filter((file) => folderOf(file) === '')].join(', ')}`;
}

function folderOf(file: string): string {
  return file.slice(0, Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
}

function mindText(written: readonly string[] | undefined): string {
  const safe = 'isolate power and block the axis';
  if (written === undefined) return `${safe}; the card that make writes says how`;
  return written.some((file) => file.endsWith('report.html'))
    ? `${safe}; the card in report.html says how`
    : `${safe}; --all says the rest`;
}
