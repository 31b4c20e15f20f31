import type { PageData } from '../../src/output/page/page-data.js';
import { type Asked, type Drawn, prepare } from './prepare.js';

/** The code of `worker.ts`, put in when the page is bundled. */
declare const WORKER_CODE: string;

/** The part as the page carries it. */
export function readData(): PageData | undefined {
  const text = document.getElementById('part-data')?.textContent;
  return text ? (JSON.parse(text) as PageData) : undefined;
}

/** What is drawn of every body and companion, worked out by a worker; here where the browser allows none. */
export function drawnBodies({ packed, bodies, companions }: PageData): Promise<Drawn[]> {
  const asked = { packed, packings: [...bodies, ...companions].map(({ packing }) => packing) };
  return byWorker(asked).catch(() => prepare(asked));
}

function byWorker(asked: Asked): Promise<Drawn[]> {
  return new Promise((resolve, reject) => {
    const address = URL.createObjectURL(new Blob([WORKER_CODE], { type: 'text/javascript' }));
    const worker = new Worker(address);
    const end = () => {
      worker.terminate();
      URL.revokeObjectURL(address);
    };
    worker.onmessage = ({ data }: MessageEvent<Drawn[]>) => {
      resolve(data);
      end();
    };
    worker.onerror = () => {
      reject(new Error('no worker'));
      end();
    };
    worker.postMessage(asked);
  });
}
