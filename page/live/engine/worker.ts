import { expose } from 'comlink';
import { createEngine } from './engine.js';

/** The kernel's bytes come once, from the page that holds them. */
let give: (bytes: ArrayBuffer) => void = () => undefined;
const wasm = new Promise<ArrayBuffer>((resolve) => {
  give = resolve;
});

/** What the page calls: the engine, and where its bytes go in. */
const remote = { ...createEngine(() => wasm), take: (bytes: ArrayBuffer) => give(bytes) };

export type Remote = typeof remote;

expose(remote);
