import { render } from 'preact';
import { exactWriter } from './engine/exact.js';
import { startThread } from './engine/workers.js';
import { unpacked } from './unpacked.js';
import { App } from './views/app.js';

/** A figure is waited for as long as it takes to be sure that it hangs; all else is given up for the next [ms]. */
const PATIENCE = 2000;

async function begin(): Promise<void> {
  const host = document.getElementById('live')!;
  const [script, wasm, exact] = await Promise.all([unpacked('engine'), unpacked('kernel'), unpacked('exact')]);
  const url = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  const given = document.getElementById('sheet')?.textContent ?? '""';
  const faults = new EventTarget();
  const fault = (message: string) => faults.dispatchEvent(new CustomEvent('fault', { detail: message }));
  const threads = {
    judge: startThread(url, { patience: PATIENCE, fault }),
    cures: startThread(url, { patience: 0, fault }),
    sketch: startThread(url, { patience: PATIENCE, fault }),
    picture: startThread(url, { wasm, patience: 0, fault }),
    files: startThread(url, { wasm, patience: 0, fault }),
    writeExact: exactWriter(exact),
    faults,
  };
  host.replaceChildren();
  render(<App threads={threads} given={JSON.parse(given)} />, host);
}

void begin();
