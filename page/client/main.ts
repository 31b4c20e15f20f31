import { startChecks } from './checks-table.js';
import { readData } from './data.js';
import { startStage } from './stage.js';
import { keepTicks } from './ticks.js';

startChecks();
keepTicks();
document.getElementById('print-card')?.addEventListener('click', () => {
  document.documentElement.classList.add('card-only');
  window.print();
  document.documentElement.classList.remove('card-only');
});
const data = readData();
if (data) startStage(data);
