import { useState } from 'preact/hooks';
import type { REASONS } from '../state/state.js';

/** Sheets are small; what is larger is none. */
const LARGEST = 262_144;

interface Props {
  readonly reasons: typeof REASONS;
  readonly begin: (kind: string, screwFirst: boolean) => void;
  readonly open: (sheet: string) => void;
}

/** What happened, in sentences; or a sheet that is there already. */
export function Start({ reasons, begin, open }: Props) {
  const [wrong, setWrong] = useState('');
  const read = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > LARGEST) setWrong(`${file.name}: ${file.size} bytes; a sheet has at most ${LARGEST}`);
    else open(await file.text());
  };
  return (
    <section class="card start" aria-label="What happened?">
      <h1>What happened?</h1>
      <ul>
        {reasons.map(({ kind, words, screwFirst }) => (
          <li key={kind}>
            <button type="button" onClick={() => begin(kind, screwFirst)}>
              {words}
            </button>
          </li>
        ))}
      </ul>
      <p>
        <label class="quiet">
          or open a sheet: <input type="file" accept=".yaml,.yml" onChange={(e) => read(e.currentTarget.files?.[0])} />
        </label>
      </p>
      {wrong !== '' && <p role="alert">{wrong}</p>}
      <p class="quiet">
        A printed nut or coupling can drop an axis or throw a part: block the axis, isolate the power, guard what turns.
        Plastics creep. Not for lifting people or loads over people. Local codes and licensed practice come first.
      </p>
    </section>
  );
}
