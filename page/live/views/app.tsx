import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import type { Thread } from '../engine/workers.js';
import { linkOf, sheetOf } from '../state/link.js';
import { FRESH, REASONS, type State, withScrew } from '../state/state.js';
import { Part } from './part.js';
import { Screw } from './screw.js';
import { Start } from './start.js';

/** The threads that the page asks, so that no answer waits for another kind. */
export interface Threads {
  readonly judge: Thread;
  readonly cures: Thread;
  readonly picture: Thread;
  readonly files: Thread;
}

/** The whole page. */
export function App({ threads, given }: { readonly threads: Threads; readonly given: string }) {
  const [state, setState] = useState<State>(given === '' ? FRESH : { ...FRESH, step: 'part', sheet: given });
  const change = useCallback((to: Partial<State>) => setState((now) => ({ ...now, ...to })), []);
  useEffect(() => {
    void sheetOf(location.hash).then((sheet) => sheet !== undefined && change({ step: 'part', sheet }));
  }, [change]);
  useEffect(() => {
    if (state.step !== 'part') return;
    const timer = setTimeout(async () => history.replaceState(null, '', (await linkOf(state.sheet)) || '#'), 400);
    return () => clearTimeout(timer);
  }, [state.step, state.sheet]);
  const name = useMemo(() => /^name:\s*([^#\n]+)/m.exec(state.sheet)?.[1]?.trim() ?? 'the part', [state.sheet]);
  const begin = async (kind: string, screwFirst: boolean) => {
    const sheet = await threads.judge.ask((engine) => engine.start(kind));
    if (sheet !== undefined) change({ step: screwFirst ? 'screw' : 'part', sheet, readings: {}, accepted: [] });
  };
  return (
    <>
      <header>
        <strong>Leadwright</strong>
        <nav aria-label="The way">
          <button type="button" aria-current={state.step === 'start'} onClick={() => change({ step: 'start' })}>
            What happened?
          </button>
          {state.sheet !== '' && /^part:\s*nut\b/m.test(state.sheet) && (
            <button type="button" aria-current={state.step === 'screw'} onClick={() => change({ step: 'screw' })}>
              Which screw?
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
        {state.step === 'start' && (
          <Start reasons={REASONS} begin={begin} open={(sheet) => change({ step: 'part', sheet })} />
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
        {state.step === 'part' && (
          <Part
            threads={threads}
            told={{ sheet: state.sheet, accepted: state.accepted }}
            write={(sheet) => change({ sheet })}
            accept={(accepted) => change({ accepted })}
            name={name}
          />
        )}
      </main>
    </>
  );
}
