import { plain, worked } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import type { Particulars } from '../part-kind.js';
import type { CouponDesign } from './dimensions.js';

/** How to print and to read a coupon. */
export function couponParticulars(design: CouponDesign): Particulars {
  const { plan, material, printer } = design;
  const { layer, lineWidth } = printer;
  const drawn =
    plan.scale || plan.diameters ? ['scale, bores and posts stand in the file as they are meant: nothing applied'] : [];
  const compensated =
    plan.thread || plan.pockets ? [`threads and pockets are compensated: ${appliedWords(material, printer)}`] : [];
  return {
    hardware: [],
    cautions: [
      'Print all bodies at the place and turn they have in their files: X and Y of the scale coupon are those of the printer.',
      'Let the print cool on the bed, take off strings, not the edges; read each feature two or three times, at different places.',
      ...(material.moistureGrowth >= 0.001
        ? [
            `${material.name} grows with moisture: read the coupon in the state its parts will be used in, and write that state down.`,
          ]
        : []),
      `Then: leadwright new results COUPON-SHEET --to results.yaml, fill it in, leadwright calibrate results.yaml.`,
    ],
    applied: [...drawn, ...compensated].join('; '),
    print: {
      face_up: 'plate on the bed, marks up',
      why: `layers of ${plain(layer)} mm and lines of ${worked(lineWidth, 'mm')} mm as for the parts that will follow, 4 walls, solid; every opening goes through, nothing hangs over`,
      support: 'none',
    },
  };
}
