import { type Asked, prepare } from './prepare.js';

// Unpacks off the main thread, so that the page can be scrolled meanwhile.
addEventListener('message', async ({ data }: MessageEvent<Asked>) => {
  const drawn = await prepare(data);
  const buffers = drawn.flatMap((body) => Object.values(body).map(({ buffer }) => buffer));
  (postMessage as (message: unknown, transfer: Transferable[]) => void)(drawn, buffers);
});
