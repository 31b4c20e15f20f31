import { type Check, hard, notJudged, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { othersToo } from '../../common/others-too.js';
import { askingPlastic } from '../../common/plastic-told.js';
import type { CouplingDesign } from '../dimensions.js';
import { insertTemperature } from '../temperatures.js';

/** Reserve below the softening, K. @source common-practice */
const RESERVE = 20;

/**
 * A hub on a hot shaft goes soft, and so does the insert behind it.
 *
 *     reserve = softening temperature − temperature there, the least of both hubs and the insert
 */
export const heat: Check<CouplingDesign> = askingPlastic({
  id: 'heat',
  group: 'hubs',
  question: 'holds',
  title: 'Reserve before it softens',
  unit: 'K',
  source: 'common practice',
  limits: hard({ min: RESERVE }),
  moves: 'motor.temperature, duty.temperature, material, insert.material',
  grave: true,
  run: (design, { pass }) => {
    const { material, insert, hubs } = design;
    const { at: rubber, known } = insertTemperature(design);
    const rows = [
      ...hubs.map(({ name, temperature: { at } }) => ({
        name,
        reserve: material.softening - at,
        words: `${material.name} softens at ${plain(material.softening, 0)} °C, ${plain(at, 0)} °C ${name === 'motor-hub' ? 'at the motor shaft' : 'around it'}`,
      })),
      {
        name: 'insert',
        reserve: insert.material.softening - rubber,
        words: `${insert.material.name} serves to ${plain(insert.material.softening, 0)} °C, ${plain(rubber, 0)} °C at the insert`,
      },
    ];
    const { name: worst, reserve, words } = rows.reduce((a, b) => (b.reserve < a.reserve ? b : a));
    const others = rows.filter((row) => row.name !== worst && !keeps(row.reserve, pass));
    const too = othersToo(others.map((row) => `${row.name.replace('-', ' ')} with ${plain(row.reserve, 1)} K`));
    const holds = keeps(reserve, pass);
    if (holds && !known) return notJudged('duty.temperature');
    const cure = holds ? '' : '; use a material that softens later, or keep the heat away';
    return valued(exactly(reserve), `${words}${too}${cure}`);
  },
});
