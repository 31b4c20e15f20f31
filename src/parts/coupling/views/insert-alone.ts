import { sectionPlanes } from '../../common/drawn/section-planes.js';
import { noted, spreadOf } from '../../common/drawn/spread.js';
import { beyond, line } from '../../common/drawn/strokes.js';
import type { AskedView, PartViews, SizeChoice } from '../../part-views.js';
import type { CouplingDesign } from '../dimensions.js';
import { couplingBodies } from '../solid.js';
import { insertSizes, lobeOnX } from './across.js';
import { clearanceWords } from './notes.js';

/** The insert for two bought hubs: cut through two lobes, and seen on its face. */
export function insertAloneViews(design: CouplingDesign, choice: SizeChoice): PartViews {
  const { insert, gap, jaws } = design;
  const plan = insert[choice];
  const spread = spreadOf(insert, choice);
  const [body] = couplingBodies(design, choice);
  const shape = lobeOnX(plan, body!.recipe.shape);
  const { height, reach, lobes, hole } = plan;
  const face = { ...insertSizes({ plan, shape, spread }), title: 'Insert' };
  const cut: AskedView = {
    title: 'Section A–A',
    solid: { bodies: [shape], sight: { kind: 'section', planes: [0, 180] } },
    strokes: [line('centre', [beyond(height), 0], [-height - beyond(height), 0])],
    sizes: [
      {
        name: 'insert.height',
        value: height,
        ...spread(height, 'along'),
        from: [0, -reach],
        to: [-height, -reach],
        side: 'below',
      },
    ],
    letters: [],
  };
  return {
    side: cut,
    end: {
      ...face,
      sizes: face.sizes.filter(({ name }) => name !== 'insert.height'),
      planes: sectionPlanes([0, 180], () => reach),
    },
    holes: hole > 0 ? [{ label: 'I', at: [0, 0], diameter: hole, note: 'through insert' }] : [],
    notes: [
      `For bought hubs of ${noted(2 * jaws.outer)} outside with ${jaws.count} jaws ${noted(jaws.height)} high: floors ${noted(gap)} apart`,
      `${insert.hardness}, ${lobes} lobes, ${clearanceWords(insert.flankClearance)} at each flank`,
    ],
    material: insert.material.name,
    companions: [],
    cutTowards: 0,
  };
}
