import { type Check, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { floatTurn } from '../../../mechanics/float.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, smallest } from '../../../units/measured.js';
import { USUAL_BACKLASH } from '../../common/backlash.js';
import { CATCH_FINDING, CATCH_GAP, nutPocketReach, screwHolding, thinCatch } from '../../common/bought-nut.js';
import { floatBacklash, floatWords } from '../../common/float.js';
import { LEDGE } from '../../common/ledge.js';
import { remedyWords } from '../../common/remedy-words.js';
import { boresEntered } from '../bores-entered.js';
import type { AdapterDesign } from '../dimensions.js';
import { drilledWords, USUAL_FLOAT } from '../drilled.js';
import { floatRooms } from '../float-remedies.js';
import { floatStop } from '../float-stop.js';
import { insideEdge, isSolidRim, rimThickness } from '../plan.js';
import { bedFace, hanging } from '../print-advice.js';

type AdapterCheck = Check<AdapterDesign>;
const seat = { group: 'mount', question: 'meets-nut', source: 'common practice' } as const;

/**
 * A flange that lies on a narrow ring tilts.
 *
 *     ring = lesser of least width across the flange/2 and axis to the plate's edge, − ⌀bore/2; from the corners of a catch nut's pocket where they reach further
 */
export const mountSeat: AdapterCheck = {
  ...seat,
  id: 'mount-seat',
  title: 'Ring that the flange lies on',
  unit: 'mm',
  limits: soft({ min: 2 }, { min: 0.5 }),
  moves: 'plate.bore, nut.flange',
  run: ({ nut, layout: { plate }, seatHeight, registers }, { pass: { min = 0 } }) => {
    if (!nut) return undefined;
    const side = Math.min(
      ...[...nut.flange.size, nut.flange.flats ?? Infinity].map((one) => one / 2),
      insideEdge(plate)([0, 0]),
    );
    const opening = Math.max(plate.bore / 2, plate.catchPocket ? nutPocketReach(plate.catchPocket) : 0);
    const ring = side - opening;
    const off = registers.nut === 'none' ? '' : `, within ${worked(registers.clearance / 2, 'mm')} mm of the middle`;
    const place = `square to the axis, ${plain(seatHeight)} mm from the carriage's face${off}`;
    const found =
      ring > 0
        ? `the flange lies on a ring ${worked(ring, 'mm')} mm wide, ${place}`
        : `the opening is ${worked(-2 * ring, 'mm')} mm wider than the flange, which falls through`;
    const cure = ring < min ? '; a smaller plate.bore gives it a seat' : '';
    return valued(exactly(ring), `${found}${cure}`);
  },
};

/** The nut must enter the plate, and what reaches the carriage must enter that. */
export const mountBore: AdapterCheck = {
  ...seat,
  id: 'mount-bore',
  title: 'Clearance of the nut',
  unit: 'mm',
  limits: { pass: { min: 0.1 }, fail: { min: 0 } },
  moves: 'plate.bore, carriage.bore, nut.seat, nut.stands',
  run: (design, { pass }) => {
    const rows = boresEntered(design);
    if (rows.length === 0) return undefined;
    const worst = rows.reduce((a, b) => (b.room.likely < a.room.likely ? b : a));
    const value = smallest(...rows.map(({ room }) => room));
    const cure = allKeep(value, pass)
      ? ''
      : remedyWords(
          design,
          'mount-bore',
          'no wider bore, other face or nut that stands away lets it in: measure surer, or take another nut',
        );
    return valued(value, `${worked(worst.room.likely, 'mm')} mm in ${worst.where}${cure}`);
  },
};

/** A floating nut must move a little, and not much. */
export const mountFloat: AdapterCheck = {
  ...seat,
  id: 'mount-float',
  title: 'Sideways float, each way',
  unit: 'mm',
  limits: soft(USUAL_FLOAT),
  moves: 'float, nut.holes.diameter, plate.bore, carriage.bore, hold',
  run: (design, { pass }) => {
    const { nut, float, hold, spacers } = design;
    if (!nut || float === undefined) return undefined;
    const { holes, bore, step, carriage } = floatRooms(design);
    const value = smallest(holes, ...[bore, step, carriage].flatMap((room) => room ?? []));
    const { min = 0 } = pass;
    const inCarriage = carriage !== undefined && carriage.likely <= value.likely;
    const where = inCarriage ? "; the carriage's opening, which it reaches into, stops it first" : '';
    const usual = 'another float, from 0.2 to 0.5 mm, is usual';
    const narrow = 'a wider opening in the carriage, or a plate so thick that the nut ends in it, lets it float';
    const tight = inCarriage ? narrow : drilledWords(design).replace(/^; /, '');
    const none = value.least < min ? tight : usual;
    const cure = allKeep(value, pass) ? '' : spacers ? remedyWords(design, 'mount-float', none) : `; ${usual}`;
    if (spacers)
      return valued(value, `${floatWords(spacers, { ...floatStop(design), sideways: value })}${where}${cure}`);
    const turn = floatTurn({ float: Math.max(0, value.likely), radius: floatStop(design).radius });
    const keep =
      hold === 'keys'
        ? 'keys keep it from turning; nothing but its load holds it down'
        : 'no listed screw passes its holes';
    return valued(
      value,
      `${worked(value.likely, 'mm')} mm each way and ${plain(2 * turn, 2)}° of turning play; ${keep}${where}${cure}`,
    );
  },
};

/** Play that a float adds when the load reverses. */
export const floatBacklashCheck: AdapterCheck = {
  ...seat,
  id: 'float-backlash',
  question: 'axis',
  title: 'Lost motion by the float',
  unit: 'mm',
  limits: soft({ max: USUAL_BACKLASH.vertical }),
  moves: 'float.along, nut.holes.diameter, float.sleeve, hold',
  run: (design, limits) => {
    const { float, spacers, screw, duty, pulls } = design;
    if (float === undefined) return undefined;
    if (!screw) return notJudged('screw');
    // where only its load holds it down, the nut lifts when the load turns round
    const along = spacers?.along ?? exactly(0);
    const lost = floatBacklash(along, floatStop(design), screw.lead);
    const own = soft({ max: duty.axis === 'vertical' ? USUAL_BACKLASH.vertical : USUAL_BACKLASH.other });
    const { max = 0 } = limits.of(own).pass;
    const pressed = duty.axis === 'vertical' && !pulls.includes('away') ? ', or hold: keys' : '';
    const cure = lost.most > max ? `; less float.along or float.sideways${pressed}` : '';
    return valued(
      lost,
      `${worked(lost.likely, 'mm')} mm besides what the thread has: ${worked(along.likely, 'mm')} mm along, the rest by turning from stop to stop at a lead of ${plain(screw.lead)} mm${cure}`,
      own,
    );
  },
};

/**
 * A thin ring breaks off, a high one keeps the plate off its seat.
 *
 *     wall = (⌀outside − ⌀inside)/2 of the rim; of one solid down to the bore (⌀rim − ⌀bore)/2 − offset of rim from bore
 */
export const rimWall: AdapterCheck = {
  ...seat,
  id: 'rim-wall',
  question: 'meets-carriage',
  title: 'Wall of the rim',
  unit: 'mm',
  limits: soft({ min: 1.6 }, { min: 0.8 }),
  moves: 'carriage.bore, carriage.offset, plate.bore, register.carriage',
  run: ({ layout: { plate } }, { pass: { min = 0 } }) => {
    const { rim } = plate;
    if (!rim) return undefined;
    const wall = rimThickness(rim, plate.bore);
    const solid = isSolidRim(rim, plate.bore) ? ', solid down to the bore' : '';
    const aside = Math.hypot(...rim.center);
    const off = aside > 0 ? ` where the bore stands ${worked(aside, 'mm')} mm off its middle` : '';
    const cure = wall < min ? '; a smaller plate.bore thickens it, or leave it out with register.carriage: none' : '';
    return valued(
      exactly(wall),
      `the rim is ${worked(wall, 'mm')} mm thick${solid}${off} and ${plain(rim.height)} mm high${cure}`,
    );
  },
};

/**
 * A rim longer than its bore keeps the plate off.
 *
 *     height = register.depth, against the thickness of the carriage
 */
export const rimHeight: AdapterCheck = {
  ...seat,
  id: 'rim-height',
  question: 'meets-carriage',
  title: 'Height of the rim',
  unit: 'mm',
  moves: 'register.depth, carriage.thickness',
  trifle: true,
  run: ({ layout: { plate }, carriage }, { of }) => {
    if (!plate.rim || !carriage.thickness) return undefined;
    const most = carriage.thickness.likely;
    const own = soft({ max: most });
    const cure =
      plate.rim.height > (of(own).pass.max ?? most) ? '; it keeps the plate off: a smaller register.depth' : '';
    return valued(exactly(plate.rim.height), `${plain(plate.rim.height)} mm into ${plain(most)} mm${cure}`, own);
  },
};

/**
 * What hangs over air while it is printed.
 *
 *     reach = max((⌀recess − ⌀bore)/2, corner of the catch nut's pocket − ⌀bore/2, radius of a pocket without roof − ⌀hole/2), of what opens on the bed
 */
export const printSupport: AdapterCheck = {
  id: 'print-support',
  group: 'print',
  question: 'prints',
  source: 'common practice',
  title: 'Reach over air',
  unit: 'mm',
  limits: soft(LEDGE.pass, LEDGE.fail),
  moves: 'register.nut, register.carriage, nut.joint, carriage.joint, printer.bridging',
  run: ({ layout: { plate }, printer }, { pass: { max = 0 } }) => {
    const bed = bedFace(plate);
    const ledge = hanging(plate, bed);
    const cure =
      ledge > max
        ? `; pockets on both faces, or a rim opposite a recess, need support: use register.nut: bore, other joints, or for pockets of screws ${printer.bridging === 'none' ? 'printer.bridging: membrane' : 'a thicker plate, which takes that roof'}`
        : '';
    return valued(
      exactly(ledge),
      `ceilings reach ${worked(ledge, 'mm')} mm over air with the ${bed === 'outside' ? 'outer' : "carriage's"} face on the bed${cure}`,
    );
  },
};

/** A screw that does not hold wants a second, metal nut. */
export const catchNut: AdapterCheck = {
  id: 'catch-nut',
  group: 'drive',
  question: 'axis',
  source: 'common practice',
  title: 'Catch nut',
  unit: 'mm',
  limits: soft(CATCH_GAP.limits),
  moves: 'catch_nut',
  run: (design, { pass }) => {
    if (design.catchNut) {
      const { gap, height } = design.catchNut;
      const thin = design.screw && thinCatch(height, design.screw.pitch.likely);
      if (thin) return told('caution', thin);
      const cure = keeps(gap, pass) ? '' : `; a catch_nut.gap of ${plain(CATCH_GAP.usual)} mm is usual`;
      return valued(
        exactly(gap),
        `the catch nut stands ${worked(gap, 'mm')} mm off and bears nothing until the working nut fails${cure}`,
      );
    }
    const { screw, duty, nut } = design;
    if (!screw) return nut && duty.axis !== 'horizontal' ? notJudged('screw') : undefined;
    if (screwHolding(screw) === 'holds') return undefined;
    return duty.axis === 'horizontal'
      ? told('pass', 'a horizontal axis does not fall; without power the screw may run back')
      : told('caution', CATCH_FINDING);
  },
};
