import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Drawer, openDrawer } from '../engine/drawer.js';
import type { WriteExact } from '../engine/exact.js';
import type { Thread } from '../engine/workers.js';
import { type AxisPart, writtenBack } from '../state/axis-part.js';
import { type Card, profilesIn } from '../state/cards.js';
import { forScrew } from '../state/compare.js';
import type { ExactPackage } from '../state/exact-package.js';
import { linkOf, sheetOf } from '../state/link.js';
import { FRESH, REASONS, type State, startsWithScrew, withScrew } from '../state/state.js';
import { Compare } from './compare.js';
import { DrawerCards } from './drawer-cards.js';
import { Part } from './part.js';
import { Screw } from './screw.js';
import { Start } from './start.js';

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
  const drawer = useRef<Drawer | undefined>(undefined);
  const [keeps, setKeeps] = useState(false);
  const [exact, setExact] = useState<ExactPackage>();
  const handOver = (handed: ExactPackage | undefined) => {
    setExact(handed);
    // where the browser has no room for it, it is there while the page is
    drawer.current?.keepExact(handed).catch(() => undefined);
  };
  const reread = useCallback(async () => {
    const cards = await drawer.current?.all();
    if (cards) change({ cards });
  }, [change]);
  useEffect(() => {
    void openDrawer().then((opened) => {
      drawer.current = opened;
      setKeeps(opened !== undefined);
      void opened?.exact().then(setExact);
      return reread();
    });
  }, [reread]);
  const put = async (cards: readonly Card[]) => {
    await drawer.current?.put(cards);
    await reread();
  };
  const remove = async (card: Card) => {
    await drawer.current?.remove(card);
    await reread();
  };
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
        <nav aria-label="The way">
          <button type="button" aria-current={state.step === 'start'} onClick={() => change({ step: 'start' })}>
            What happened?
          </button>
          {Object.keys(state.compared).length > 0 && (
            <button type="button" aria-current={state.step === 'compare'} onClick={() => change({ step: 'compare' })}>
              Which screw does it?
            </button>
          )}
          {state.sheet !== '' && startsWithScrew(state.sheet) && (
            <button type="button" aria-current={state.step === 'screw'} onClick={() => change({ step: 'screw' })}>
              Which screw?
            </button>
          )}
          {state.from && (
            <button type="button" onClick={() => state.from && backTo(state.from)}>
              back to the axis
            </button>
          )}
          {state.sheet !== '' && (
            <button type="button" aria-current={state.step === 'part'} onClick={() => change({ step: 'part' })}>
              {name}
            </button>
          )}
        </nav>
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
