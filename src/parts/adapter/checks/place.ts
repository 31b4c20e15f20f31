import { type Check, hard, type Limits, soft, valued } from '../../../judge/check.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { plain, upwards, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { cures } from '../cures.js';
import { type AdapterDesign, roomLeft } from '../dimensions.js';
import { fits, LEAST_LIGAMENT } from '../layout.js';
import { thinnestNeck } from '../necks.js';
import { insideEdge } from '../plan.js';
import { LEAST_ROOM, widest } from '../walls.js';

type AdapterCheck = Check<AdapterDesign>;
const place = { group: 'mount', question: 'holds', source: 'common practice' } as const;

/** What the turn of the nut leaves. */
export const clocking: AdapterCheck = {
  ...place,
  /**
   * Walls between holes, pockets, bore and edge at the turn that was chosen.
   *
   *     wall = middle to middle − radii of both openings, or middle to edge − radius, the least
   *     wall = air + 1.2 mm beside a rim or within a recess, where air is enough
   */
  id: 'clocking',
  title: 'Least wall as turned',
  unit: 'mm',
  limits: hard({ min: LEAST_LIGAMENT }),
  moves: 'nut.joint, carriage.joint, plate.thickness, plate.outline, clocking',
  run: ({ layout, input, nut }, { pass: { min = LEAST_LIGAMENT } }) => {
    const { ligament, clocking } = layout;
    const how = input.clocking === undefined ? 'turned' : 'as stated, turned';
    const turned = nut ? `the nut ${how} by ${plain(clocking.turn)}° leaves ` : '';
    const turns = input.clocking === undefined ? 'No turn is better' : 'Leave clocking out to have it worked out';
    const missing = min - ligament.gap;
    const help =
      missing > 0
        ? `; ${upwards(missing)} mm are missing${nut ? `. ${turns}` : ''}: ${cures(input).join('; else ')}`
        : '';
    return valued(exactly(ligament.gap), `${turned}${worked(ligament.gap, 'mm')} mm between ${ligament.what}${help}`);
  },
};

/**
 * Heads, washers and keys need room, and a way for the tool.
 *
 *     air = middle of a screw to flange, next head or edge of the carriage's bore − radii of the heads or washers between, the least
 */
export const headRoom: AdapterCheck = {
  ...place,
  id: 'head-room',
  question: 'screws-go-in',
  title: 'Air beside heads and tools',
  unit: 'mm',
  limits: hard({ min: LEAST_ROOM }),
  moves: 'carriage.joint, nut.joint, clocking',
  run: ({ layout, input }, { pass: { min = LEAST_ROOM } }) => {
    const { room, ligament } = layout;
    if (room.gap === Infinity) return undefined;
    const air = room.gap + LEAST_ROOM;
    const ways = fits(layout) ? 'sink the heads, or turn the nut' : cures(input).join('; else ');
    const told = air < min && ligament.gap >= LEAST_LIGAMENT;
    const cure = told ? `; ${upwards(min - air)} mm are missing: ${ways}` : '';
    return valued(exactly(air), `${worked(air, 'mm')} mm between ${room.what}${cure}`);
  },
};

/**
 * Holes that tear out.
 *
 *     e = middle of a hole to the edge of the plate / ⌀screw, the least; cut-outs aside
 *     limit = max(1.5, (largest radius of the hole + 1.2 mm) / ⌀screw)
 */
export const holeEdge: AdapterCheck = {
  ...place,
  id: 'hole-edge',
  title: 'Holes to edge, in diameters',
  unit: '',
  limits: soft({ min: 1.5 }, { min: 1 }),
  moves: 'plate.outline, plate.outline.rim',
  run: ({ layout: { plate } }, { of }) => {
    const edge = insideEdge(plate);
    const rows = [plate.nutHoles, plate.carriageHoles].flatMap((holes) => {
      if (holes?.hole.screw === undefined) return [];
      const unit = fastenerThread(holes.hole.screw).diameter;
      return holes.centres.map((centre) => ({
        value: edge(centre) / unit,
        ligament: edge(centre) - widest(holes),
        least: (widest(holes) + LEAST_LIGAMENT) / unit,
      }));
    });
    if (rows.length === 0) return undefined;
    const worst = rows.reduce((a, b) => (b.value < a.value ? b : a));
    const limits: Limits = { pass: { min: Math.max(1.5, worst.least) }, fail: { min: Math.max(1, worst.least) } };
    const cure = worst.value < (of(limits).pass.min ?? 0) ? '; a wider outline gives edge' : '';
    return valued(
      exactly(worst.value),
      `${plain(worst.value, 2)} screw diameters from hole to edge, ${worked(worst.ligament, 'mm')} mm beside the opening${cure}`,
      limits,
    );
  },
};

/**
 * Necks that a drawn outline or cut-outs leave; a round or hulled plate without cut-outs has none.
 *
 *     neck = the shortest way through the plate between edges that face apart, to within 40°
 */
export const plateNeck: AdapterCheck = {
  ...place,
  id: 'plate-neck',
  title: 'Thinnest neck of the plate',
  unit: 'mm',
  limits: soft({ min: LEAST_LIGAMENT }),
  moves: 'plate.outline, plate.cutouts',
  run: ({ layout: { plate } }, { pass: { min = LEAST_LIGAMENT } }) => {
    if (plate.outline.shape !== 'polygon' && plate.cutouts.length === 0) return undefined;
    const neck = thinnestNeck(plate);
    if (neck === Infinity) return undefined;
    const cure = neck < min ? '; move the cut-outs or the corners apart, or break off what runs out to a point' : '';
    return valued(exactly(neck), `${worked(neck, 'mm')} mm at the narrowest${cure}`);
  },
};

/**
 * The plate must go where it is wanted.
 *
 *     room = min(corners of the plate to the edge of its room, corners of the room to the edge of the plate), negative where they cross; cut-outs aside
 */
export const mountRoom: AdapterCheck = {
  ...place,
  id: 'mount-room',
  question: 'meets-carriage',
  title: 'Room around the plate',
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'plate.outline, plate.flats',
  run: (design, { pass: { min = 0 } }) => {
    if (!design.carriage.room) return undefined;
    const left = roomLeft(design);
    const cure = left < min ? '; cut flats, or draw the outline as a polygon' : '';
    return valued(exactly(left), `the plate keeps ${worked(left, 'mm')} mm inside its room${cure}`);
  },
};
