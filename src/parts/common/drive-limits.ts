import { type Bounds, type Limits, notJudged, type Outcome, soft, valued } from '../../judge/check.js';
import { allKeep } from '../../judge/judge.js';
import { COLUMN_SHARE, columnLoad } from '../../mechanics/column.js';
import { DERATING, whirlSpeed } from '../../mechanics/whirl.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured } from '../../units/measured.js';
import { longestSpan } from './axial-path.js';

/** A screw and what it is asked to do. */
interface Driven {
  readonly screw: Screw;
  readonly duty: Pick<DutySheet, 'span' | 'feed' | 'load' | 'ends'>;
}

/** Share of the whirling speed: practice stays under the derated one. */
export const BELOW_WHIRL: Limits = soft({ max: DERATING }, { max: 1 });

/** Share of the buckling force: practice stays under half of it. */
export const BELOW_BUCKLING: Limits = soft({ max: COLUMN_SHARE }, { max: 1 });

/**
 * Diameters that a level screw may stand free before its own weight draws its end down.
 * @source common-practice: ends of an axis
 */
export const SAG_DIAMETERS = 40;

/** Free length of a level screw, as a share of that from which it sags. */
export const BELOW_SAG: Limits = soft({ max: 1 });

/** Speed of a screw as a share of its whirling speed; undefined where nothing is told of span and feed. */
export function judgeWhirl({ duty, screw }: Driven, { pass }: Limits): Outcome | undefined {
  const { span, feed, ends } = duty;
  if (span === undefined && feed === undefined) return undefined;
  if (span === undefined) return notJudged('duty.span');
  if (feed === undefined) return notJudged('duty.feed');
  if (ends === undefined) return notJudged('duty.ends');
  const whirl = (rootDiameter: number) => whirlSpeed({ rootDiameter, span, ends });
  const speed = (60 * feed) / screw.lead;
  const share = byRoot(screw, (root) => speed / whirl(root));
  const cure = allKeep(share, pass) ? '' : '; hold its ends better, shorten it, feed slower or take a coarser lead';
  return valued(
    share,
    `${plain(speed, 0)} rpm of ${plain(whirl(screw.leastRoot.cut), 0)} rpm with ${rootWords(screw)}${cure}`,
  );
}

/**
 * Load of a screw as a share of the force at which it buckles. Where nobody tells its span, that is asked for, unless a screw as long
 * as is usual at most bears the load too.
 */
export function judgeColumn({ duty, screw }: Driven, { pass }: Limits): Outcome | undefined {
  const { span, load, ends } = duty;
  if (span === undefined) return bearsAtLongest({ duty, screw }, pass) ? undefined : notJudged(...untoldOf(duty));
  if (load === undefined) return notJudged('duty.load');
  if (ends === undefined) return notJudged('duty.ends');
  const column = (rootDiameter: number) => columnLoad({ rootDiameter, span, ends });
  const share = byRoot(screw, (root) => load / column(root));
  const cure = allKeep(share, pass)
    ? ''
    : '; hold its ends better, shorten it, or let the load pull on it instead of push';
  return valued(
    share,
    `${plain(load, 0)} N of ${plain(column(screw.leastRoot.cut), 0)} N that buckle it with ${rootWords(screw)}${cure}`,
  );
}

/** Free length of a level screw, as a share of that from which its end sags; undefined where its far end is held. */
export function judgeSag({ duty, screw }: Driven, { pass }: Limits): Outcome | undefined {
  const { span, ends } = duty;
  if (ends !== undefined && ends !== 'fixed-free') return undefined;
  if (span === undefined) return notJudged('duty.span');
  const most = SAG_DIAMETERS * screw.major.likely;
  const share = exactly(span / most);
  const isFine = allKeep(share, pass);
  if (ends === undefined && !isFine) return notJudged('duty.ends');
  const cure = isFine ? '' : '; hold its far end (part: end-holder), or take a thicker screw';
  return valued(share, `${plain(span)} mm stand free, of ${plain(most, 0)} mm from which a level screw sags${cure}`);
}

/** Whether a screw of which neither length nor ends are told bears the load, by the worst of both that is usual. */
function bearsAtLongest({ duty: { load, ends = 'fixed-free' }, screw }: Driven, pass: Bounds): boolean {
  if (load === undefined) return true;
  const span = longestSpan(screw.major.likely);
  const column = (rootDiameter: number) => columnLoad({ rootDiameter, span, ends });
  return allKeep(
    byRoot(screw, (root) => load / column(root)),
    pass,
  );
}

function untoldOf({ ends }: Driven['duty']): string[] {
  return ends === undefined ? ['duty.span', 'duty.ends'] : ['duty.span'];
}

/** A share that grows as the root gets thinner: likely at the thinnest of the class, at most with a rolled one. */
function byRoot({ leastRoot }: Screw, share: (root: number) => number): Measured {
  const cut = share(leastRoot.cut);
  return { least: cut, likely: cut, most: share(leastRoot.rolled) };
}

function rootWords({ leastRoot: { cut, rolled } }: Screw): string {
  const thinner = rolled < cut ? `, ${plain(rolled, 2)} mm if it is rolled` : '';
  return `the thinnest root that it may have, ${plain(cut, 2)} mm${thinner}`;
}
