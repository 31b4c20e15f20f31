import { type Check, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { screwShares } from '../../../mechanics/bolt/screw-shares.js';
import { ledgeStress } from '../../../mechanics/flange/ledge.js';
import { allowableStress } from '../../../mechanics/strength/allowable.js';
import { washer } from '../../../standards/fasteners/washer.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { judgeClamp } from '../../common/bolting.js';
import { heat } from '../../common/checks.js';
import { bendSlab } from '../../common/held-slab.js';
import type { JointHole } from '../../common/joints.js';
import { judgeCases, judgeCrash, judgedTemperature, type LoadCase, usedShare } from '../../common/load-cases.js';
import { reachAlong, type Slab } from '../../common/slab.js';
import { tipSlab } from '../../common/tipped-slab.js';
import type { Bearing } from '../bearing.js';
import type { EndHolderDesign } from '../dimensions.js';
import { usualWall } from '../layout.js';
import { loaded } from '../loads.js';
import { gripOf } from '../particulars.js';
import { type HolderPlan, openRadius, shoulderHeight, wallRadius } from '../plan.js';
import { holderOutline } from '../solid.js';
import { wallAround } from '../walls.js';

type HolderCheck = Check<EndHolderDesign>;
type Point = readonly [number, number];
const about = { group: 'body', question: 'holds', unit: 'MPa', source: 'derived: one law of strength' } as const;

/** Fine enough for a section whose stress a limit hangs on, mm. */
const CHORD = 0.02;

/** A press fit alone carries nothing along the screw. */
const heldAlong: HolderCheck = {
  ...about,
  id: 'held-along',
  title: 'What keeps the bearing along the screw',
  unit: '',
  source: 'common practice',
  moves: 'held_by',
  grave: true,
  run: ({ role, heldBy }) => {
    if (role !== 'locating') return undefined;
    if (heldBy === 'plate') return told('pass', 'it is held both ways, by body and plate');
    const lets = heldBy === 'lip' ? 'a lip gives when it is pulled at' : 'a press fit in plastic lets go in time';
    return told('fail', `${lets}; hold the bearing by a plate (held_by: plate)`);
  },
};

/**
 * Plastic around a bearing keeps its grip, and its shape.
 *
 *     wall = min(shorter side of the body/2, middle to the nearest hole − ⌀hole/2) − ⌀pocket/2, or ⌀bore/2 without one, or outer radius of a lip's groove
 */
const wallAroundBearing: HolderCheck = {
  ...about,
  id: 'bearing-wall',
  title: 'Plastic around the bearing',
  unit: 'mm',
  source: 'common practice',
  moves: 'body.length, body.width, holes',
  run: ({ bearing, finished }, inForce) => {
    if (!bearing) return undefined;
    const wall = wallAround(finished);
    const usual = usualWall(bearing.outside);
    const own = soft({ min: usual }, { min: 0.2 * bearing.outside });
    const { pass } = inForce.of(own);
    const cure = keeps(wall, pass) ? '' : '; make the body wider, or set its holes further out';
    return valued(
      exactly(wall),
      `${plain(pass.min ?? 0, 1)} mm are usual around ${plain(bearing.outside, 1)} mm${cure}`,
      own,
    );
  },
};

/** Body and plate between bearing and bolts: pushed one way the body bends, the other way the plate. */
const bodyBending: HolderCheck = {
  ...about,
  id: 'body-bending',
  title: 'Bending of body and plate',
  moves: 'body.thickness, body.cover, holes, duty.load, duty.span, material',
  grave: true,
  run: (design, limits) => {
    const { bearing, material, role } = design;
    if (role !== 'locating' || !bearing) return undefined;
    const weakest = weakestStrip(design);
    if (!weakest) return undefined;
    const { strip, what, cure } = weakest;
    const borne = ({ force, duration }: LoadCase) => ({
      value: force * strip.stress,
      allowed: allowableStress(material, {
        kind: 'tension',
        duration,
        temperature: judgedTemperature(design.duty),
      }),
      words: `${plain(strip.section.area, 0)} mm² of ${what} bend at ${plain(strip.distance, 1)} mm from the axis`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: `${cure}, or set bolts nearer` });
  },
};

/**
 * Of body and plate the one that bends more; the ring presses on each no nearer to its bolts than at the edge of its opening. On bolts
 * in a line beside the screw both tip about their edge.
 */
function weakestStrip(design: EndHolderDesign) {
  const { bore, cover } = design.finished;
  const bent = [
    { what: 'the body', cure: 'make the body thicker', slab: slabOf(design), opening: bore },
    ...(cover
      ? [{ what: 'the plate', cure: 'make the plate thicker (body.cover)', slab: coverOf(design), opening: cover.bore }]
      : []),
  ].flatMap(({ slab, opening, ...told }) => {
    const held = { slab, supports: supportsOf(design), reach: () => opening / 2 };
    return [bendSlab(held), tipSlab(held, { across: opening })].flatMap((found) =>
      found ? [{ ...told, strip: found.strip }] : [],
    );
  });
  return bent.reduce<(typeof bent)[number] | undefined>(
    (worst, next) => (worst && worst.strip.stress >= next.strip.stress ? worst : next),
    undefined,
  );
}

function coverOf({ finished }: EndHolderDesign): Slab {
  const { thickness, bore } = finished.cover!;
  return {
    outline: holderOutline(finished, CHORD),
    thickness,
    openings: [{ shape: { at: [0, 0], radius: bore / 2 }, from: 0, to: thickness }, ...holesIn(finished, thickness)],
  };
}

function holesIn({ holes }: EndHolderDesign['finished'], thickness: number): Slab['openings'] {
  return holes.centres.map((at) => ({ shape: { at, radius: holes.diameter / 2 }, from: 0, to: thickness }));
}

function slabOf({ finished }: EndHolderDesign): Slab {
  const { thickness, bore } = finished;
  const floor = shoulderHeight(finished);
  return {
    outline: holderOutline(finished, CHORD),
    thickness,
    openings: [
      { shape: { at: [0, 0], radius: bore / 2 }, from: 0, to: thickness },
      ...(floor === undefined
        ? []
        : [{ shape: { at: [0, 0] as const, radius: openRadius(finished) }, from: floor, to: thickness }]),
      ...holesIn(finished, thickness),
    ],
  };
}

function supportsOf({ finished: { holes }, pattern: { screw } }: EndHolderDesign) {
  const head = screw ? washer(screw).outside : holes.diameter;
  const shares = screwShares(holes.centres);
  return holes.centres.map((at, i) => ({ at, head, hole: holes.diameter, share: shares[i]! }));
}

/**
 * The shoulder stands out from the pocket's wall as a ledge, and the pocket's corner is sharp. What it bends by and what the
 * whole body bends by pull on opposite faces of it: each is judged alone.
 */
const shoulderBending: HolderCheck = {
  ...about,
  id: 'shoulder-bending',
  title: 'Bending of the shoulder at the corner of its pocket',
  moves: 'body.thickness, fit.shoulder, duty.load, duty.span, material',
  grave: true,
  run: (design, limits) => {
    const { material, duty } = design;
    const ledge = shoulderLedge(design);
    if (!ledge) return undefined;
    const { arm, thickness } = ledge;
    const borne = ({ force, duration }: LoadCase) => ({
      value: ledgeStress({ ...ledge, force }),
      allowed: allowableStress(material, { kind: 'tension', duration, temperature: judgedTemperature(duty) }),
      words: `the outer ring presses ${plain(arm, 1)} mm from the pocket's wall, on ${plain(thickness, 1)} mm of plastic with a sharp corner`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: 'make the body thicker behind the bearing' });
  },
};

/** The shoulder as a ledge in front of the wall of its pocket, or of the groove behind a lip. */
function shoulderLedge({ role, bearing, finished }: EndHolderDesign) {
  const floor = shoulderHeight(finished);
  if (role !== 'locating' || !bearing || floor === undefined) return undefined;
  const wall = wallRadius(finished);
  const { outer, inner } = seatOnBody(finished, bearing);
  return { arm: wall - (outer + inner) / 4, root: 2 * Math.PI * wall, thickness: floor };
}

/** Plastic behind the shoulder, and the plate before the bearing, as rings that shear. */
const ringShear: HolderCheck = {
  ...about,
  id: 'shoulder-shear',
  title: 'Shear of the shoulder and of the plate',
  moves: 'body.thickness, body.cover, material',
  grave: true,
  run: (design, limits) => {
    const { material, duty } = design;
    const ring = shearRing(design);
    if (!ring) return undefined;
    const { thin, area } = ring;
    const borne = ({ force, duration }: LoadCase) => ({
      value: force / area,
      allowed: allowableStress(material, { kind: 'shear', duration, temperature: judgedTemperature(duty) }),
      words: `${plain(thin, 1)} mm under the edge of the outer ring`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: 'make shoulder or plate thicker' });
  },
};

/** The thinner of shoulder and plate, and what of it shears under the edge of the outer ring. */
function shearRing({ role, bearing, finished }: EndHolderDesign) {
  const floor = shoulderHeight(finished);
  if (role !== 'locating' || !bearing || floor === undefined) return undefined;
  const thin = Math.min(floor, finished.cover?.thickness ?? floor);
  return { thin, area: Math.PI * bearing.outside * thin };
}

/** Plastic under the edge of the outer ring, or under its flange, and under the plate. */
const ringPressure: HolderCheck = {
  ...about,
  id: 'ring-pressure',
  title: 'Pressure of the outer ring on body and plate',
  moves: 'bearing, fit.shoulder, material',
  grave: true,
  run: (design, limits) => {
    const { role, bearing, material, duty } = design;
    if (role !== 'locating' || !bearing) return undefined;
    const area = seatOf(design.finished, bearing);
    const borne = ({ force, duration }: LoadCase) => ({
      value: force / area,
      allowed: allowableStress(material, { kind: 'pressure', duration, temperature: judgedTemperature(duty) }),
      words: `${plain(area, 0)} mm² of ${bearing.flange ? 'flange' : 'ring'} lie on plastic`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: 'a larger bearing, or a stronger material' });
  },
};

/** What of a bearing lies on plastic: on the body, or on the plate where that is less, mm². */
function seatOf(plan: HolderPlan, bearing: Bearing): number {
  const { cover } = plan;
  const { outer, inner } = seatOnBody(plan, bearing);
  const onBody = ringArea(outer, inner);
  const outside = (bearing.flange?.outside ?? bearing.outside) - 2 * bearing.chamfer;
  return Math.min(onBody, cover ? ringArea(outside, cover.bore) : onBody);
}

/** Diameters between which an outer ring, or its flange, lies on the body. */
function seatOnBody(
  { bore, chamfer }: HolderPlan,
  bearing: Bearing,
): { readonly outer: number; readonly inner: number } {
  const outer = bearing.flange?.outside ?? bearing.outside - 2 * bearing.chamfer;
  return { outer, inner: bore + 2 * chamfer };
}

function ringArea(outside: number, inside: number): number {
  return Math.max(1e-3, (Math.PI * (outside ** 2 - inside ** 2)) / 4);
}

/** An axis driven against its end pushes its screw on whatever keeps it. */
const endStop: HolderCheck = {
  ...about,
  id: 'end-stop',
  title: 'Crash at the end of travel',
  unit: '',
  source: 'common practice',
  limits: soft({ max: 1 }),
  moves: 'duty.motor.torque, body.thickness, body.cover, material',
  run: (design, { pass: { max = 1 } }) => {
    const { role, bearing, finished, material } = design;
    if (role !== 'locating' || !bearing) return undefined;
    return judgeCrash(loaded(design), max, ({ force, temperature }) => {
      const bears = (kind: 'tension' | 'shear' | 'pressure') =>
        allowableStress(material, { kind, duration: 'moment', temperature });
      const [weakest, ring, ledge] = [weakestStrip(design), shearRing(design), shoulderLedge(design)];
      return [
        ['the plastic under its bearing', usedShare(force / seatOf(finished, bearing), bears('pressure'))],
        ...(weakest ? [[weakest.what, usedShare(force * weakest.strip.stress, bears('tension'))] as const] : []),
        ...(ledge ? [['the shoulder', usedShare(ledgeStress({ ...ledge, force }), bears('tension'))] as const] : []),
        ...(ring ? [['the edge around its bearing', usedShare(force / ring.area, bears('shear'))] as const] : []),
      ];
    });
  },
};

/** Bolts that go slack let the holder move. */
const boltClamp: HolderCheck = {
  ...about,
  id: 'bolt-clamp',
  group: 'bolts',
  question: 'bolts-on',
  title: 'Clamp of bolts over load',
  unit: '',
  source: 'derived: relaxation of held strains',
  moves: 'holes.screw, holes.count, material',
  run: (design, limits) => {
    const { role, finished, material } = design;
    if (role !== 'locating') return undefined;
    const outline = holderOutline(finished, CHORD);
    const pattern = {
      hole: jointOf(design),
      centres: finished.holes.centres,
      length: gripOf(finished),
      edge: (along: Point) => reachAlong(outline, along),
    };
    return judgeClamp(pattern, { ...loaded(design), material, carries: 'away' }, limits);
  },
};

/** The holes as bolting sees them. */
export function jointOf({ pattern, finished }: EndHolderDesign): JointHole {
  return {
    joint: 'through',
    ...(pattern.screw ? { screw: pattern.screw } : {}),
    diameter: finished.holes.diameter,
  };
}

/** Whether bearing and body stay where they are. */
export const HOLD_CHECKS: readonly HolderCheck[] = [
  heldAlong,
  wallAroundBearing,
  bodyBending,
  shoulderBending,
  ringShear,
  ringPressure,
  endStop,
  heat,
  boltClamp,
];
