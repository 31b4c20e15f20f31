import { useEffect, useState } from 'preact/hooks';
import { EXACT_PACKAGE } from '../../../src/solid/exact/exact-kernel.js';
import type { ExactText } from '../engine/exact-worker.js';
import { type ExactPackage, exactPackageOf, LARGEST_PACKAGE } from '../state/exact-package.js';
import type { Threads } from './app.js';
import { Take } from './ledger.js';
import type { Told } from './part.js';

/** The package of the exact kernel, as a person handed it over; undefined until then. */
export interface ExactKeep {
  readonly exact: ExactPackage | undefined;
  readonly handOver: (exact: ExactPackage | undefined) => void;
}

interface Props extends ExactKeep {
  readonly threads: Threads;
  readonly told: Told;
  readonly name: string;
}

/** The part for a CAD system, by a kernel that this page does not hold. */
export function ExactBody({ threads, told, name, exact, handOver }: Props) {
  return (
    <details class="exact">
      <summary>for a CAD system: STEP</summary>
      {exact ? (
        <Write threads={threads} told={told} name={name} exact={exact} handOver={handOver} />
      ) : (
        <HandOver handOver={handOver} />
      )}
    </details>
  );
}

function HandOver({ handOver }: Pick<Props, 'handOver'>) {
  const [why, setWhy] = useState('');
  const read = async (list: FileList | null) => {
    const files = [...(list ?? [])];
    if (files.length === 0) return;
    const size = files.reduce((sum, file) => sum + file.size, 0);
    if (size > LARGEST_PACKAGE) return setWhy(`${size} bytes; at most ${LARGEST_PACKAGE} are read`);
    const handed = files.map(async (file) => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }));
    const found = await exactPackageOf(await Promise.all(handed));
    if ('why' in found) return setWhy(found.why);
    handOver(found);
  };
  return (
    <>
      <p class="quiet">
        {`It wants a general kernel for exact bodies, which this page neither holds nor asks for: npm pack ${EXACT_PACKAGE.name} gives one file, 14 MB, under LGPL-2.1. Hand it over, or the script and the .wasm in it; a build of your own does, too.`}
      </p>
      <label class="quiet">
        the kernel’s file:{' '}
        <input type="file" multiple accept=".tgz,.gz,.js,.wasm" onChange={(e) => read(e.currentTarget.files)} />
      </label>
      {why !== '' && <p role="alert">{why}</p>}
    </>
  );
}

function Write({ threads, told, name, exact, handOver }: Props & { readonly exact: ExactPackage }) {
  const [made, setMade] = useState<{ readonly of: Told; readonly what: ExactText }>();
  const [isMaking, setMaking] = useState(false);
  useEffect(() => setMaking(false), [told]);
  const now = made?.of === told ? made.what : undefined;
  const write = async () => {
    setMaking(true);
    const asked = await threads.files.ask((engine) => engine.exact(told));
    const what = asked && 'request' in asked ? await threads.writeExact(exact, asked.request) : asked;
    if (what) setMade({ of: told, what });
    setMaking(false);
  };
  return (
    <>
      {now && 'step' in now ? (
        <p>
          <Take file={`${name}.step`} bytes={new TextEncoder().encode(now.step)} />
        </p>
      ) : (
        <button type="button" onClick={write} disabled={isMaking}>
          {isMaking ? 'building its exact body' : 'Write the STEP file'}
        </button>
      )}
      {now && 'refused' in now && <p role="alert">{now.refused}</p>}
      <p>
        <button type="button" onClick={() => handOver(undefined)}>
          forget the kernel
        </button>
      </p>
    </>
  );
}
