import { useEffect, useRef, useState } from 'preact/hooks';
import type { Report } from '../../../src/output/report.js';
import type { Made } from '../engine/engine.js';
import type { Card } from '../state/cards.js';
import type { Threads } from './app.js';
import { ExactBody, type ExactKeep } from './exact-body.js';
import type { Told } from './part.js';

interface Props {
  readonly threads: Threads;
  readonly told: Told;
  /** undefined while the sheet has mistakes */
  readonly report: Report | undefined;
  readonly name: string;
  readonly keep: Keep;
  readonly exactKeep: ExactKeep;
}

/** The drawer: what is in it, and how a card is put there; no `put` where the browser keeps nothing. */
export interface Keep {
  readonly cards: readonly Card[];
  readonly put?: (cards: readonly Card[]) => void;
}

/** The files to take away; shut while a question says no. */
export function Ledger({ threads, told, report, name, keep, exactKeep }: Props) {
  const { sheet } = told;
  const [made, setMade] = useState<{ readonly of: Told; readonly what: Made }>();
  const [isMaking, setMaking] = useState(false);
  useEffect(() => setMaking(false), [told]);
  const isShut = report === undefined || report.verdict === 'fail';
  const now = made?.of === told ? made.what : undefined;
  const make = async () => {
    setMaking(true);
    for (const which of ['stl', 'all'] as const) {
      const what = await threads.files.ask((engine) => engine.make(told, which));
      if (what) setMade({ of: told, what });
      if (!what || 'refused' in what) break;
    }
    setMaking(false);
  };
  return (
    <section class="card ledger" aria-label="To take away">
      <h2>To take away</h2>
      {isShut ? (
        <p class="quiet">shut while a question says no</p>
      ) : (
        !now && (
          <button type="button" class="main" onClick={make} disabled={isMaking}>
            {isMaking ? 'still to be proved' : 'Make and prove the files'}
          </button>
        )
      )}
      {now && 'refused' in now && <p role="alert">{now.refused}</p>}
      {now && 'files' in now && (
        <>
          <ul>
            {now.files.map(({ name: file, bytes }) => (
              <li key={file}>
                <Take file={file} bytes={bytes} />
              </li>
            ))}
          </ul>
          {/* below the files that are there, which stay where they are under a finger */}
          {isMaking && <p role="status">drawing, report and 3MF follow</p>}
          <ul class="quiet">
            {now.report.bodies.map(({ file, mass, material, facets }) => (
              <li key={file}>{`${file}: ${mass.toFixed(1)} g of ${material}, closed, ${facets} facets`}</li>
            ))}
            {now.report.hardware.map(({ item, size, count }) => (
              <li key={`${item}${size}`}>{`${count} × ${item} ${size}`}</li>
            ))}
          </ul>
        </>
      )}
      <ul>
        <li>
          <Take file={`${name}.yaml`} bytes={new TextEncoder().encode(sheet)} />
        </li>
      </ul>
      {!isShut && <ExactBody threads={threads} told={told} name={name} {...exactKeep} />}
      <KeepSheet card={{ kind: 'sheet', name, text: sheet }} keep={keep} />
    </section>
  );
}

/** Into the drawer; says what it takes the place of. */
function KeepSheet({ card, keep: { cards, put } }: { readonly card: Card; readonly keep: Keep }) {
  if (!put) return <p class="quiet">this browser keeps nothing: take the sheet along as a file, or by the address</p>;
  const old = cards.find(({ kind, name }) => kind === card.kind && name === card.name);
  if (old?.text === card.text) return <p class="quiet">kept in the drawer</p>;
  return (
    <button type="button" onClick={() => put([card])}>
      {old ? `keep it in place of ${card.name} in the drawer` : 'keep it in the drawer'}
    </button>
  );
}

/** A file to take, under an address that lives as long as it is shown. */
export function Take({ file, bytes }: { readonly file: string; readonly bytes: Uint8Array }) {
  const [url, setUrl] = useState('');
  // the same bytes keep their address, which may be in use
  const held = useRef(bytes);
  if (!isSame(held.current, bytes)) held.current = bytes;
  const kept = held.current;
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([new Uint8Array(kept)]));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [kept]);
  return (
    <>
      <a href={url} download={file}>
        {file}
      </a>{' '}
      <span class="quiet">{`${Math.max(1, Math.round(bytes.length / 1000))} kB`}</span>
    </>
  );
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
