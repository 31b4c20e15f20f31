import type { PageData } from '../../src/output/page/page-data.js';
import type { StartViewer } from './controls.js';
import { drawnBodies } from './data.js';
import { pause } from './pause.js';
import { inflated } from './prepare.js';

/** How far below what is seen the model is made ready [px]. */
const AHEAD = 200;

/** Puts the model in place of its still picture once it is scrolled to; without WebGL the picture stays and says so. */
export function startStage(data: PageData): void {
  const stage = document.getElementById('stage');
  if (!stage) return;
  const watch = new IntersectionObserver(
    (seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      watch.disconnect();
      // the still picture is painted first
      requestAnimationFrame(() => setTimeout(() => start(stage, data).catch(() => stay(stage))));
    },
    { rootMargin: `${AHEAD}px` },
  );
  watch.observe(stage);
}

async function start(stage: HTMLElement, data: PageData): Promise<void> {
  const [drawn, startViewer] = await Promise.all([drawnBodies(data), viewerCode()]);
  await pause();
  await startViewer(stage, data, drawn);
}

function stay(stage: HTMLElement): void {
  stage.dataset.state = 'still';
  const note = document.getElementById('stage-note');
  if (note) note.textContent = 'This browser shows no 3D; the picture was drawn when the part was made.';
}

/** The viewer, which is large and stands deflated in the page; pages that share a script have it there. */
async function viewerCode(): Promise<StartViewer> {
  const scope = globalThis as { startViewer?: StartViewer };
  const packed = document.getElementById('viewer-code')?.textContent;
  if (!scope.startViewer && packed) {
    const script = document.createElement('script');
    script.textContent = new TextDecoder().decode(await inflated(packed));
    await pause();
    document.head.append(script);
    await pause();
  }
  if (!scope.startViewer) throw new Error('the viewer is missing');
  return scope.startViewer;
}
