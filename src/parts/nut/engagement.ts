import { threadPressure } from '../../mechanics/thread/bearing-pressure.js';
import { exactly, type Measured } from '../../units/measured.js';
import { type Teeth, type ThreadStretch, teethOf } from '../common/teeth.js';
import type { NutDesign } from './dimensions.js';
import { springForceOf } from './variants/anti-backlash.js';
import { sideOf } from './variants/twin-side.js';

/** One thread of a nut, and what it is pushed with. */
interface Thread {
  /** in words, empty where the nut has but one */
  readonly name: string;
  readonly stretch: ThreadStretch;
  /** N, when the nut is pushed with a force */
  readonly under: (force: number) => number;
}

/** A stress in the thread that has it worst, over what the screw's crests may measure: of a screw that nobody measured, what its class allows. */
export interface TeethStress {
  readonly name: string;
  /** N, on this thread */
  readonly force: number;
  readonly value: Measured;
}

/** What a stress is worked out from. */
export type TeethFormula = (loaded: Teeth & { readonly axialForce: number }) => number;

/** The worst of the nut's threads when the nut is pushed with a force. */
export function worstTeeth(design: NutDesign, force: number, formula: TeethFormula): TeethStress {
  const { major, inHand } = design.screw;
  const least = Math.min(major.least, inHand.major.least);
  const whole = wholeTurns(design);
  const rows = threadsOf(design).map(({ name, stretch, under }) => {
    const axialForce = under(force);
    const at = (major: number) => {
      const teeth = teethOf({ thread: design.finished.thread, screw: design.screw }, stretch, major);
      return formula({ ...teeth, engagedLength: whole * teeth.engagedLength, axialForce });
    };
    return { name, force: axialForce, value: { least: at(major.most), likely: at(major.likely), most: at(least) } };
  });
  return rows.reduce((worst, next) => (next.value.likely > worst.value.likely ? next : worst));
}

/** What rubs hardest under a force: the worst of the teeth, or what a lever presses sideways. */
export function rubbedHardest(design: NutDesign, force: number): TeethStress {
  const teeth = worstTeeth(design, force, threadPressure);
  const side = sideOf(design, force);
  if (!side || side.pressure <= teeth.value.likely) return teeth;
  return {
    name: ' sideways on either thread, by the lever of the load,',
    force: side.force,
    value: exactly(side.pressure),
  };
}

/** What gives the nut's threads more flank, in words. */
export function longer({ family }: NutDesign): string {
  return family?.kind === 'anti-backlash' ? 'a longer nut and family.follower, a softer spring' : 'a longer nut';
}

/** A spring between two nuts loads both of them, and the working one besides its load. */
function threadsOf({ finished, family, catchPocket }: NutDesign): readonly Thread[] {
  const { leadIn } = finished;
  const stretch = { length: finished.length - (catchPocket?.depth ?? 0), leadIn };
  // in one stiff body either thread may come to carry first, and then carries alone; the wide bore stands beyond its inner end
  if (family?.kind === 'twin')
    return [
      {
        name: ' in one of both threads, which may carry alone',
        stretch: { length: family.each, leadIn, chamfered: 1 },
        under: (force) => force,
      },
    ];
  if (family?.kind !== 'anti-backlash') return [{ name: '', stretch, under: (force) => force }];
  const spring = springForceOf(family);
  return [
    { name: ' in the main nut, its spring included', stretch, under: (force) => force + spring },
    { name: ' in the follower', stretch: { length: family.follower, leadIn }, under: () => spring },
  ];
}

/** Share of every turn that is there: a slit takes its own. */
function wholeTurns({ family, finished }: NutDesign): number {
  return family?.kind === 'clamped' ? 1 - family.slit.width / (Math.PI * finished.thread.pitchDiameter) : 1;
}
