import { type Finding, hard, soft, valued } from '../judge/check.js';
import { finding } from '../judge/run-checks.js';
import type { PlannedBody } from '../parts/part-kind.js';
import { facetGraph } from '../solid/facet-graph.js';
import { facetRoles } from '../solid/facet-roles.js';
import type { Body } from '../solid/mesh.js';
import { type Ceiling, ceilingsOf, LEAST_CEILING } from '../solid/overhang.js';
import { rayCaster } from '../solid/ray-caster.js';
import { type ThinPlace, thinnestWall } from '../solid/wall-thickness.js';
import { plain } from '../units/format.js';
import { exactly } from '../units/measured.js';

/** A fused body with what is known of it. */
export interface FusedBody extends Pick<PlannedBody, 'recipe' | 'turnOver' | 'printer' | 'leastWall'> {
  readonly body: Body;
  readonly file: string;
}

/** What walls and ceilings of a body measure. */
export interface BodyMeasures {
  readonly from: FusedBody;
  readonly wall?: ThinPlace;
  /** those that lines cannot be laid across, the largest first */
  readonly ceilings: readonly Ceiling[];
}

/** Lines carry themselves this far from hold to hold, mm. @source common-practice */
export const LONGEST_BRIDGE = 10;
/** Three lines of the usual nozzle, mm. @source common-practice */
const LEAST_WALL = 1.2;
/** How far the thinnest measured wall may be below the one that was worked out, mm. */
const WALL_LEEWAY = 0.05;

const MEASURED = { group: 'print', question: 'prints', source: 'common practice, measured on the solid' } as const;

/** Measures walls and ceilings of a body on its facets. */
export function measureBody(from: FusedBody): BodyMeasures {
  const { body, recipe, turnOver = false, printer } = from;
  const mesh = facetGraph(body);
  const roles = facetRoles(mesh, recipe.shape);
  const wall = thinnestWall(mesh, roles, rayCaster(mesh));
  const ceilings = ceilingsOf(mesh, roles, { turnOver, layer: printer.layer });
  const open = ceilings.filter(
    ({ area, bridge = Number.POSITIVE_INFINITY }) => area >= LEAST_CEILING && bridge > LONGEST_BRIDGE,
  );
  return { from, ...(wall ? { wall } : {}), ceilings: open };
}

/** What was measured, as findings: walls and ceilings are cautions, a wall that was worked out thicker is our own fault. */
export function measuredFindings(bodies: readonly BodyMeasures[]): Finding[] {
  return [...wallFindings(bodies), overhangFinding(bodies), ...faultFindings(bodies)];
}

/** Whether a body wants support as it lies on the bed. */
export function needsSupport({ ceilings }: BodyMeasures): boolean {
  return ceilings.length > 0;
}

/**
 * Rays through the solid, square to its facets, find the walls that arithmetic did not think of.
 *
 *     wall = the shortest way through the solid, threads' dead ends and bevels aside
 */
function wallFindings(bodies: readonly BodyMeasures[]): Finding[] {
  const rows = bodies.flatMap(({ from, wall }) => (wall ? [{ from, wall }] : []));
  if (rows.length === 0) return [];
  const { from, wall } = rows.reduce((a, b) => (b.wall.thickness < a.wall.thickness ? b : a));
  const about = {
    ...MEASURED,
    id: 'measured-wall',
    title: 'Thinnest wall of the solid',
    unit: 'mm',
    limits: soft({ min: LEAST_WALL }),
    moves: 'whatever stands on either side of it',
  };
  const words = `${plain(wall.thickness, 2)} mm in ${from.file}, ${placeWords(wall.at, from)}, as it stands in the file`;
  return [finding(about, valued(exactly(wall.thickness), words))];
}

/** Where a place lies as the body is printed. */
function placeWords([x, y, z]: readonly [number, number, number], { body, turnOver = false }: FusedBody): string {
  const up = turnOver ? -1 : 1;
  let bed = Number.POSITIVE_INFINITY;
  for (let i = 2; i < body.positions.length; i += 3) bed = Math.min(bed, up * body.positions[i]!);
  return `${plain(up * z - bed, 1)} mm over the bed and ${plain(Math.hypot(x, y), 1)} mm from the axis`;
}

/**
 * Flat roofs that hang over air sag, or want support.
 *
 *     area = Σ ceilings farther than 45° from the vertical, bridges up to 10 mm and thread flanks aside
 */
function overhangFinding(bodies: readonly BodyMeasures[]): Finding {
  const area = bodies.reduce((sum, { ceilings }) => sum + ceilings.reduce((all, one) => all + one.area, 0), 0);
  const about = {
    ...MEASURED,
    id: 'measured-overhang',
    title: 'Ceilings that are printed over air',
    unit: 'mm²',
    limits: soft({ max: 0 }),
    moves: 'the side on which pockets open, printer.bridging',
  };
  const words = bodies.flatMap(({ from, ceilings }) =>
    ceilings.length > 0 ? [ceilingWords(from.file, ceilings)] : [],
  );
  const message =
    words.length > 0
      ? `${words.join('; ')}. Lay it on support there`
      : `nothing hangs farther than 45° from the vertical, bridges up to ${LONGEST_BRIDGE} mm and thread flanks aside`;
  return finding(about, valued(exactly(area), message));
}

function ceilingWords(file: string, ceilings: readonly Ceiling[]): string {
  const [first] = ceilings;
  const area = ceilings.reduce((sum, one) => sum + one.area, 0);
  const many = ceilings.length === 1 ? '' : ` in ${ceilings.length} places, the largest ${plain(first!.area, 1)} mm²`;
  const across = first!.bridge === undefined ? 'held on one side only' : `${plain(first!.bridge, 1)} mm across`;
  return `${file} has ${plain(area, 1)} mm² of ceiling over air${many}, ${across}, ${plain(first!.height, 1)} mm over the bed`;
}

/**
 * What is measured must not be thinner than what was promised.
 *
 *     below = wall worked out − wall measured, of the worst body
 */
function faultFindings(bodies: readonly BodyMeasures[]): Finding[] {
  const rows = bodies.flatMap(({ from, wall }) =>
    wall ? [{ from, wall, least: from.leastWall, below: from.leastWall.size - wall.thickness }] : [],
  );
  if (rows.length === 0) return [];
  const { from, wall, least, below } = rows.reduce((a, b) => (b.below > a.below ? b : a));
  const about = {
    group: 'solid',
    question: 'prints',
    moves: 'nothing in the sheet: please report it',
    source: 'quality of a solid',
    id: 'solid-wall',
    title: 'Thinnest wall of the solid below the one that was worked out',
    unit: 'mm',
    limits: hard({ max: WALL_LEEWAY }),
  };
  const words = `${from.file} is ${plain(wall.thickness, 3)} mm thick ${placeWords(wall.at, from)}, ${plain(least.size, 3)} mm were worked out: ${least.where}`;
  return [finding(about, valued(exactly(Math.max(0, below)), words))];
}
