import { type Mesh, placementMatrix } from '../../solid/mesh.js';
import { onBed } from '../on-bed.js';
import type { PartInHand } from '../part-in-hand.js';
import { bodyColour, COMPANION_COLOUR, COMPANION_CUT, COMPANION_OPACITY, CUT_COLOURS } from '../picture/palette.js';
import { viewFrom } from '../picture/picture.js';
import type { BodyRow } from '../report.js';
import { base64 } from './base64.js';
import type { PageBody, PageData } from './page-data.js';

/** A triangle's corners fit into two bytes each up to here. */
const NARROW = 65_536;
const NOWHERE = [0, 0, 0] as const;

/** What the page draws of a part. */
interface Shown extends Pick<PartInHand, 'bodies' | 'views'> {
  readonly report: { readonly bodies: readonly Pick<BodyRow, 'bounds' | 'turn_over'>[] };
}

/** The meshes of a part, as they are in its files, ready to stand in a page. */
export function pageData({ bodies, views, report }: Shown): PageData {
  const lying = onBed(report.bodies);
  return {
    bodies: bodies.map((body, i) => ({
      name: body.name,
      ...meshText(body),
      colour: bodyColour(i),
      cutColour: bodyColour(i, CUT_COLOURS),
      inUse: placementMatrix(views.inUse?.[body.name] ?? {}),
      apart: views.apart?.[body.name] ?? NOWHERE,
      onBed: placementMatrix(lying[i] ?? {}),
    })),
    companions: views.companions.map(({ name, mesh }) => ({
      name,
      ...meshText(mesh),
      colour: COMPANION_COLOUR,
      cutColour: COMPANION_CUT,
      inUse: placementMatrix({}),
      apart: NOWHERE,
      onBed: placementMatrix({}),
    })),
    opacity: COMPANION_OPACITY,
    cutTowards: views.cutTowards,
    ...viewFrom(views, 'whole'),
  };
}

function meshText({ positions, triangles }: Mesh): Pick<PageBody, 'positions' | 'triangles' | 'wide'> {
  const wide = positions.length / 3 > NARROW;
  const corners = new Uint8Array(4 * positions.length);
  const numbers = new Uint8Array((wide ? 4 : 2) * triangles.length);
  const [a, b] = [new DataView(corners.buffer), new DataView(numbers.buffer)];
  for (let i = 0; i < positions.length; i++) a.setFloat32(4 * i, positions[i]!, true);
  for (let i = 0; i < triangles.length; i++) {
    if (wide) b.setUint32(4 * i, triangles[i]!, true);
    else b.setUint16(2 * i, triangles[i]!, true);
  }
  return { positions: base64(corners), triangles: base64(numbers), wide };
}
