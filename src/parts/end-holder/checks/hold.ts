import { type Check, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { allowableStress } from '../../../mechanics/strength/allowable.js';
import { washer } from '../../../standards/fasteners/washer.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { judgeClamp } from '../../common/bolting.js';
import { heat } from '../../common/checks.js';
import { bendSlab } from '../../common/held-slab.js';
import type { JointHole } from '../../common/joints.js';
import { judgeCases, judgedTemperature, type LoadCase, type Loaded } from '../../common/load-cases.js';
import type { Slab } from '../../common/slab.js';
import type { EndHolderDesign } from '../dimensions.js';
import { usualWall } from '../layout.js';
import { gripOf } from '../particulars.js';
import { openRadius, shoulderHeight } from '../plan.js';
import { holderOutline } from '../solid.js';
import { wallAround } from '../walls.js';

type HolderCheck = Check<EndHolderDesign>;
const about = { group: 'body', question: 'holds', unit: 'MPa', source: 'derived: one law of strength' } as const;

/** Fine enough for a section whose stress a limit hangs on, mm. */
const CHORD = 0.02;

/** A holder that carries along the screw is pulled both ways. */
function loaded({ duty, screw }: EndHolderDesign): Loaded {
  return { duty, screw, pulls: ['away', 'onto'] };
}

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

/** Plastic around a bearing keeps its grip, and its shape. */
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
  title: 'Bending of body and plate between bearing and bolts',
  moves: 'body.thickness, body.cover, holes, material',
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

/** Of body and plate the one that bends more; the ring presses on each no nearer to its bolts than at the edge of its opening. */
function weakestStrip(design: EndHolderDesign) {
  const { bore, cover } = design.finished;
  const bent = [
    { what: 'the body', cure: 'make the body thicker', slab: slabOf(design), opening: bore },
    ...(cover
      ? [{ what: 'the plate', cure: 'make the plate thicker (body.cover)', slab: coverOf(design), opening: cover.bore }]
      : []),
  ].flatMap(({ slab, opening, ...told }) => {
    const found = bendSlab({ slab, supports: supportsOf(design), reach: () => opening / 2 });
    return found ? [{ ...told, strip: found.strip }] : [];
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
  const { thickness, bore, pocket } = finished;
  const floor = shoulderHeight(finished);
  return {
    outline: holderOutline(finished, CHORD),
    thickness,
    openings: [
      { shape: { at: [0, 0], radius: bore / 2 }, from: 0, to: thickness },
      ...(pocket && floor !== undefined
        ? [{ shape: { at: [0, 0] as const, radius: openRadius(finished) }, from: floor, to: thickness }]
        : []),
      ...holesIn(finished, thickness),
    ],
  };
}

function supportsOf({ finished: { holes }, pattern: { screw } }: EndHolderDesign) {
  const head = screw ? washer(screw).outside : holes.diameter;
  return holes.centres.map((at) => ({ at, head, hole: holes.diameter, share: 1 / holes.centres.length }));
}

/** Plastic behind the shoulder, and the plate before the bearing, as rings that shear. */
const ringShear: HolderCheck = {
  ...about,
  id: 'shoulder-shear',
  title: 'Shear of the shoulder and of the plate',
  moves: 'body.thickness, body.cover, material',
  run: (design, limits) => {
    const { role, bearing, finished, material, duty } = design;
    const floor = shoulderHeight(finished);
    if (role !== 'locating' || !bearing || floor === undefined) return undefined;
    const thin = Math.min(floor, finished.cover?.thickness ?? floor);
    const area = Math.PI * bearing.outside * thin;
    const borne = ({ force, duration }: LoadCase) => ({
      value: force / area,
      allowed: allowableStress(material, { kind: 'shear', duration, temperature: judgedTemperature(duty) }),
      words: `${plain(thin, 1)} mm under the edge of the outer ring`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: 'make shoulder or plate thicker' });
  },
};

/** Plastic under the edge of the outer ring, or under its flange, and under the plate. */
const ringPressure: HolderCheck = {
  ...about,
  id: 'ring-pressure',
  title: 'Pressure of the outer ring on body and plate',
  moves: 'bearing, fit.shoulder, material',
  run: (design, limits) => {
    const { role, bearing, finished, material, duty } = design;
    if (role !== 'locating' || !bearing) return undefined;
    const { bore, chamfer, cover } = finished;
    const edge = 2 * bearing.chamfer;
    const onBody = bearing.flange
      ? ringArea(bearing.flange.outside, bore + 2 * chamfer)
      : ringArea(bearing.outside - edge, bore);
    const onPlate = cover ? ringArea((bearing.flange?.outside ?? bearing.outside) - edge, cover.bore) : onBody;
    const area = Math.min(onBody, onPlate);
    const borne = ({ force, duration }: LoadCase) => ({
      value: force / area,
      allowed: allowableStress(material, { kind: 'pressure', duration, temperature: judgedTemperature(duty) }),
      words: `${plain(area, 0)} mm² of ${bearing.flange ? 'flange' : 'ring'} lie on plastic`,
    });
    return judgeCases(loaded(design), limits, { borne, cure: 'a larger bearing, or a stronger material' });
  },
};

function ringArea(outside: number, inside: number): number {
  return Math.max(1e-3, (Math.PI * (outside ** 2 - inside ** 2)) / 4);
}

/** Bolts that go slack let the holder move. */
const boltClamp: HolderCheck = {
  ...about,
  id: 'bolt-clamp',
  group: 'bolts',
  question: 'bolts-on',
  title: 'Clamp force that the bolts keep, over the load',
  unit: '',
  source: 'derived: relaxation of held strains',
  moves: 'holes.screw, holes.count, material',
  run: (design, limits) => {
    const { role, finished, material } = design;
    if (role !== 'locating') return undefined;
    const pattern = { hole: jointOf(design), centres: finished.holes.centres, length: gripOf(finished) };
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
  ringShear,
  ringPressure,
  heat,
  boltClamp,
];
