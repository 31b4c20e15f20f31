import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../../src/output/report.js';
import type { Made } from '../engine/engine.js';
import type { Threads } from './app.js';
import type { Told } from './part.js';

interface Props {
  readonly threads: Threads;
  readonly told: Told;
  /** undefined while the sheet has mistakes */
  readonly report: Report | undefined;
  readonly name: string;
}

/** The files to take away; shut while a question says no. */
export function Ledger({ threads, told, report, name }: Props) {
  const { sheet, accepted } = told;
  const [made, setMade] = useState<{ readonly of: Told; readonly what: Made }>();
  const [isMaking, setMaking] = useState(false);
  useEffect(() => setMaking(false), [sheet, accepted]);
  const isShut = report === undefined || report.verdict === 'fail';
  const now = made?.of.sheet === sheet && made.of.accepted === accepted ? made.what : undefined;
  const make = async () => {
    setMaking(true);
    const what = await threads.files.ask((engine) => engine.make(sheet, accepted));
    setMaking(false);
    if (what) setMade({ of: told, what });
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
              <Take key={file} file={file} bytes={bytes} />
            ))}
          </ul>
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
        <Take file={`${name}.yaml`} bytes={new TextEncoder().encode(sheet)} />
      </ul>
    </section>
  );
}

/** A file to take, under an address that lives as long as it is shown. */
function Take({ file, bytes }: { readonly file: string; readonly bytes: Uint8Array }) {
  const [url, setUrl] = useState('');
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([new Uint8Array(bytes)]));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return (
    <li>
      <a href={url} download={file}>
        {file}
      </a>{' '}
      <span class="quiet">{`${Math.max(1, Math.round(bytes.length / 1000))} kB`}</span>
    </li>
  );
}
