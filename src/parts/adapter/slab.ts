import { onceFor } from '../../units/once.js';
import { nutPocketOutline } from '../common/bought-nut.js';
import { turned } from '../common/hole-pattern.js';
import type { Opening, Slab } from '../common/slab.js';
import { hollowCorners } from './necks.js';
import { cutoutOutline, type PatternHoles, type PlateSizes, plateOutline, type Step } from './plan.js';
import { spansOf } from './walls.js';

/** Fine enough for a section whose stress a limit hangs on; a drawn outside is never wider than meant, mm. */
const CHORD = 0.02;

/** The plate as it bends, finished sizes: all that is cut out of it taken off, rim and keys not counted. */
export const slabOf = onceFor((plate: PlateSizes): Slab => {
  const { thickness, bore, outerStep, innerStep, catchPocket, cutouts, nutHoles, carriageHoles } = plate;
  const round = ({ diameter, center }: Step, from: number, to: number): Opening => ({
    shape: { at: center, radius: diameter / 2 },
    from,
    to,
  });
  return {
    outline: plateOutline(plate, undefined, CHORD),
    thickness,
    corners: cutouts.length > 0 || plate.outline.shape === 'polygon' ? hollowCorners(plate) : [],
    openings: [
      { shape: { at: [0, 0], radius: bore / 2 }, from: 0, to: thickness },
      ...(outerStep ? [round(outerStep, thickness - outerStep.depth, thickness)] : []),
      ...(innerStep ? [round(innerStep, 0, innerStep.depth)] : []),
      ...(catchPocket
        ? [
            {
              shape: {
                outline: nutPocketOutline(catchPocket, catchPocket.acrossFlats).map((at) =>
                  turned(at, catchPocket.turn),
                ),
              },
              from: thickness - catchPocket.depth,
              to: thickness,
            },
          ]
        : []),
      ...cutouts.map((cutout) => ({
        shape: { outline: cutoutOutline(cutout, undefined, CHORD) },
        from: 0,
        to: thickness,
      })),
      ...[nutHoles, carriageHoles].flatMap((holes) => (holes ? holeOpenings(holes) : [])),
    ],
  };
});

function holeOpenings(holes: PatternHoles): Opening[] {
  const spans = spansOf(holes);
  return holes.centres.flatMap((at) =>
    spans.map(({ from, to, radius }): Opening => ({ shape: { at, radius }, from, to })),
  );
}
