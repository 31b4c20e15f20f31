import { type State, startsWithScrew } from '../state/state.js';

interface WayProps {
  readonly state: State;
  /** of the part */
  readonly name: string;
  readonly go: (step: State['step']) => void;
  /** back to the axis that the part was opened from */
  readonly back: () => void;
}

/** The steps of the page, those that there is something for. */
export function Way({ state, name, go, back }: WayProps) {
  const to = (step: State['step'], title: string) => (
    <button type="button" aria-current={state.step === step} onClick={() => go(step)}>
      {title}
    </button>
  );
  return (
    <nav aria-label="The way">
      {to('start', 'What happened?')}
      {Object.keys(state.compared).length > 0 && to('compare', 'Which screw does it?')}
      {state.sheet !== '' && startsWithScrew(state.sheet) && to('screw', 'Which screw?')}
      {state.from && (
        <button type="button" onClick={back}>
          back to the axis
        </button>
      )}
      {state.sheet !== '' && to('part', name)}
    </nav>
  );
}
