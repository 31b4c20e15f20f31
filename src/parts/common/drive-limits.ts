import { type Bounds, type CheckFacts, type Limits, notJudged, type Outcome, soft, valued } from '../../judge/check.js';
import { allKeep } from '../../judge/judge.js';
import { COLUMN_SHARE, columnLoad } from '../../mechanics/column.js';
import type { ScrewEnds } from '../../mechanics/ends.js';
import { DERATING, whirlSpeed } from '../../mechanics/whirl.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { longestSpan } from './axial-path.js';

/** A screw and what it is asked to do. */
export interface Driven {
  readonly screw: Screw;
  readonly duty: Pick<DutySheet, 'span' | 'feed' | 'load' | 'ends'>;
}

/** Share of the whirling speed: practice stays under the derated one. */
export const BELOW_WHIRL: Limits = soft({ max: DERATING }, { max: 1 });

/** Share of the buckling force: practice stays under half of it. */
export const BELOW_BUCKLING: Limits = soft({ max: COLUMN_SHARE }, { max: 1 });

/** What the checks of every part that judges its screw share. */
export const WHIRL = {
  title: 'Speed of the screw, as a share of its whirling speed',
  unit: '',
  limits: BELOW_WHIRL,
} as const satisfies Partial<CheckFacts>;
export const COLUMN = {
  title: 'Load against the force at which the screw buckles',
  unit: '',
  limits: BELOW_BUCKLING,
} as const satisfies Partial<CheckFacts>;

/**
 * Diameters from which a level screw sags under its own weight: 40 with a free end, and what is held by as much of its length.
 *
 *     f/L = k·q·L³ / (E·I)      k = 1/8, 5/384, 1/185, 1/384, so L = 40·d · ∛(1/(8·k))
 *
 * @source common-practice: ends of an axis; derived: beams under their own weight
 */
export const SAG_DIAMETERS: Readonly<Record<ScrewEnds, number>> = {
  'fixed-free': 40,
  supported: 85,
  'fixed-supported': 114,
  'fixed-fixed': 145,
};

export const SAG = {
  title: 'Length of the level screw, over that from which it sags',
  unit: '',
  limits: soft({ max: 1 }),
} as const satisfies Partial<CheckFacts>;

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
  if (load === undefined) return notJudged('duty.load');
  if (span === undefined) return bearsAtLongest(load, { duty, screw }, pass) ? undefined : notJudged(...untoldOf(duty));
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

/** Length of a level screw as a share of that from which it sags; where nobody tells how its ends are held, as with a free one. */
export function judgeSag({ duty, screw }: Driven, { pass }: Limits): Outcome | undefined {
  const { span, ends = 'fixed-free' } = duty;
  if (span === undefined) return notJudged('duty.span');
  const most = (diameter: number) => SAG_DIAMETERS[ends] * diameter;
  const { least, likely } = screw.major;
  const share = { least: span / most(screw.major.most), likely: span / most(likely), most: span / most(least) };
  const isFine = allKeep(share, pass);
  if (duty.ends === undefined && !isFine) return notJudged('duty.ends');
  const free = ends === 'fixed-free';
  const better = free ? 'hold its far end (part: end-holder)' : 'hold its ends better';
  const cure = isFine ? '' : `; ${better}, or take a thicker screw`;
  return valued(
    share,
    `${plain(span)} mm ${free ? 'stand free' : 'between its ends'}, of ${plain(most(likely), 0)} mm from which a level screw sags${cure}`,
  );
}

/** Whether a screw of which neither length nor ends are told bears the load, by the worst of both that is usual. */
function bearsAtLongest(load: number, { duty: { ends = 'fixed-free' }, screw }: Driven, pass: Bounds): boolean {
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
