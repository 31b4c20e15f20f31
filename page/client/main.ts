import { startChecks } from './checks-table.js';
import { startViewer } from './controls.js';
import { readData } from './data.js';
import { keepTicks } from './ticks.js';

startChecks();
keepTicks();
document.getElementById('print-card')?.addEventListener('click', () => {
  document.documentElement.classList.add('card-only');
  window.print();
  document.documentElement.classList.remove('card-only');
});
const data = readData();
// the still picture is painted first
if (data) requestAnimationFrame(() => setTimeout(() => startViewer(data)));
