import { startViewer } from './controls.js';

// Found by `stage.ts`, whichever way this came into the page.
Object.assign(globalThis, { startViewer });
