import type { PageData } from '../../src/output/page/page-data.js';
import { type Cut, Viewer } from './viewer.js';

/** Puts the model in place of its still picture; without WebGL the picture stays and says so. */
export function startViewer(data: PageData): void {
  const stage = document.getElementById('stage');
  const tools = document.getElementById('tools');
  if (!stage || !tools) return;
  let viewer: Viewer;
  try {
    viewer = new Viewer(stage, data);
  } catch {
    stage.dataset.state = 'still';
    const note = document.getElementById('stage-note');
    if (note) note.textContent = 'This browser shows no 3D; the picture was drawn when the part was made.';
    return;
  }
  stage.dataset.state = 'live';
  tools.hidden = false;
  connect(viewer, tools);
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
