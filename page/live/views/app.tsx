import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import type { WriteExact } from '../engine/exact.js';
import type { Thread } from '../engine/workers.js';
import { type AxisPart, writtenBack } from '../state/axis-part.js';
import { type Card, profilesIn } from '../state/cards.js';
import { forScrew } from '../state/compare.js';
import { linkOf, sheetOf } from '../state/link.js';
import { FRESH, REASONS, type State, withScrew } from '../state/state.js';
import { Compare } from './compare.js';
import { DrawerCards } from './drawer-cards.js';
import { Part } from './part.js';
import { Screw } from './screw.js';
import { Start } from './start.js';
import { useDrawer } from './use-drawer.js';
import { Way } from './way.js';

/** The threads that the page asks, so that no answer waits for another kind. */
export interface Threads {
  readonly judge: Thread;
  readonly cures: Thread;
  /** the section at each key */
  readonly sketch: Thread;
  /** what the kernel draws in its place */
  readonly picture: Thread;
  readonly files: Thread;
  /** a thread for each STEP file */
  readonly writeExact: WriteExact;
  /** where faults of the program are told, as `fault` events */
  readonly faults: EventTarget;
}

/** The whole page. */
export function App({ threads, given }: { readonly threads: Threads; readonly given: string }) {
  const [state, setState] = useState<State>(given === '' ? FRESH : { ...FRESH, step: 'part', sheet: given });
  /** what went wrong apart from the sheet */
  const [trouble, setTrouble] = useState('');
  const change = useCallback((to: Partial<State>) => setState((now) => ({ ...now, ...to })), []);
  useEffect(() => {
    void sheetOf(location.hash).then((held) => {
      if (!held) return;
      if ('sheet' in held) change({ step: 'part', sheet: held.sheet });
      else setTrouble(held.why);
    });
  }, [change]);
  useEffect(() => {
    const tell = (event: Event) =>
      setTrouble(`a fault of the program: ${(event as CustomEvent<string>).detail}; take the sheet along`);
    threads.faults.addEventListener('fault', tell);
    return () => threads.faults.removeEventListener('fault', tell);
  }, [threads]);
  useEffect(() => {
    if (state.step !== 'part') return;
    const timer = setTimeout(async () => history.replaceState(null, '', (await linkOf(state.sheet)) || '#'), 400);
    return () => clearTimeout(timer);
  }, [state.step, state.sheet]);
  const name = useMemo(() => /^name:\s*([^#\n]+)/m.exec(state.sheet)?.[1]?.trim() ?? 'the part', [state.sheet]);
  const tellCards = useCallback((cards: readonly Card[]) => change({ cards }), [change]);
  const { keeps, put, remove, exact, handOver } = useDrawer(tellCards);
  const { sheet, accepted, cards } = state;
  // the same profiles are told as before, however often the drawer is read: what is being made for them goes on
  const known = JSON.stringify(profilesIn(cards));
  const profiles = useMemo((): ReturnType<typeof profilesIn> => JSON.parse(known), [known]);
  const told = useMemo(() => ({ sheet, accepted, profiles }), [sheet, accepted, profiles]);
  const keep = { cards, ...(keeps ? { put: (more: readonly Card[]) => void put(more) } : {}) };
  const open = (sheet: string, from?: State['from']) => change({ step: 'part', sheet, from, accepted: [], form: '' });
  const backTo = (from: AxisPart) => {
    const { axis, left } = writtenBack(from, state.sheet);
    setTrouble(left.length === 0 ? '' : `not taken over into the axis: ${left.join(', ')}; change it there`);
    open(axis);
  };
  const begin = async (kind: string, screwFirst: boolean) => {
    const sheet = await threads.judge.ask((engine) => engine.start(kind));
    if (sheet !== undefined)
      change({ step: screwFirst ? 'screw' : 'part', sheet, from: undefined, readings: {}, accepted: [], form: '' });
  };
  const beginFor = async (designation: string) => {
    const sheet = await threads.judge.ask((engine) => engine.start('nut'));
    if (sheet !== undefined)
      change({ step: 'part', sheet: forScrew(sheet, designation, state.compared), accepted: [], form: '' });
  };
  return (
    <>
      <header>
        <strong>Leadwright</strong>
        <Way state={state} name={name} go={(step) => change({ step })} back={() => state.from && backTo(state.from)} />
      </header>
      <main>
        {trouble !== '' && (
          <p class="card trouble" role="alert">
            {trouble}
          </p>
        )}
        {state.step === 'start' && (
          <Start
            reasons={REASONS}
            begin={begin}
            compare={() => change({ step: 'compare' })}
            open={open}
            drawer={<DrawerCards keep={keep} open={open} remove={(card) => void remove(card)} />}
            take={(more) => void put(more)}
          />
        )}
        {state.step === 'screw' && (
          <Screw
            thread={threads.judge}
            typed={state.readings}
            type={(readings) => change({ readings })}
            take={(block) => change({ step: 'part', sheet: withScrew(state.sheet, block) })}
            skip={() => change({ step: 'part' })}
          />
        )}
        {state.step === 'compare' && (
          <Compare
            thread={threads.judge}
            typed={state.compared}
            type={(compared) => change({ compared })}
            take={(designation) => void beginFor(designation)}
          />
        )}
        {state.step === 'part' && (
          <Part
            threads={threads}
            told={told}
            write={(sheet) => change({ sheet })}
            openPart={(role, part) => open(part, { axis: sheet, role, opened: part })}
            {...(state.from ? { ofAxis: state.from.role } : {})}
            accept={(accepted) => change({ accepted })}
            name={name}
            form={state.form}
            fill={(form) => change({ form })}
            keep={keep}
            exactKeep={{ exact, handOver }}
          />
        )}
      </main>
    </>
  );
}
