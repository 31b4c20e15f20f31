import type { PageData } from '../../src/output/page/page-data.js';
import { pause } from './pause.js';
import type { Drawn } from './prepare.js';
import { type Cut, Viewer } from './viewer.js';

/** Puts the model in place of its still picture. */
export type StartViewer = typeof startViewer;

/** @throws Error where the browser has no WebGL */
export async function startViewer(stage: HTMLElement, data: PageData, drawn: readonly Drawn[]): Promise<void> {
  const tools = document.getElementById('tools');
  if (!tools) return;
  const viewer = new Viewer(stage, data, drawn);
  await pause();
  connect(viewer, tools);
  await viewer.ready();
  stage.dataset.state = 'live';
  tools.hidden = false;
}

function connect(viewer: Viewer, tools: HTMLElement): void {
  const field = (id: string) => tools.querySelector<HTMLInputElement>(`#${id}`);
  const cut = tools.querySelector<HTMLSelectElement>('#cut');
  const cutAt = field('cut-at');
  const applyCut = () => {
    const how = cutOf(cut?.value);
    if (cutAt) cutAt.disabled = how === 'none';
    viewer.cut(how, Number(cutAt?.value ?? 0) / 100);
  };
  cut?.addEventListener('change', applyCut);
  cutAt?.addEventListener('input', applyCut);
  const pull = field('pull');
  pull?.addEventListener('input', () => viewer.pull(Number(pull.value) / 100));
  const companions = field('companions');
  const bed = field('bed');
  const applyBed = () => {
    viewer.showCompanions(companions?.checked === true);
    viewer.layOnBed(bed?.checked === true);
  };
  companions?.addEventListener('change', applyBed);
  bed?.addEventListener('change', applyBed);
  const press = (id: string, work: () => void) => tools.querySelector(`#${id}`)?.addEventListener('click', work);
  press('zoom-in', () => viewer.zoom(1.25));
  press('zoom-out', () => viewer.zoom(0.8));
  press('view-reset', () => viewer.reset());
  press('view-top', () => viewer.look(-90, 89));
  press('view-side', () => viewer.look(-90, 0));
  applyCut();
  applyBed();
}

function cutOf(value: string | undefined): Cut {
  return value === 'along' || value === 'across' ? value : 'none';
}
