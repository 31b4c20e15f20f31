import { deflateSync } from 'fflate';
import { placementMatrix } from '../../solid/mesh.js';
import { onBed } from '../on-bed.js';
import type { PartInHand } from '../part-in-hand.js';
import { bodyColour, COMPANION_COLOUR, COMPANION_CUT, COMPANION_OPACITY, CUT_COLOURS } from '../picture/palette.js';
import { viewFrom } from '../picture/picture.js';
import type { BodyRow } from '../report.js';
import { base64 } from './base64.js';
import { packMesh } from './pack-mesh.js';
import type { PageData } from './page-data.js';

const NOWHERE = [0, 0, 0] as const;

/** What the page draws of a part. */
interface Shown extends Pick<PartInHand, 'bodies' | 'views'> {
  readonly report: { readonly bodies: readonly Pick<BodyRow, 'bounds' | 'turn_over'>[] };
}

/** The meshes of a part, as they are in its files, ready to stand in a page. */
export function pageData({ bodies, views, report }: Shown): PageData {
  const lying = onBed(report.bodies);
  const ours = bodies.map(packMesh);
  const theirs = views.companions.map(({ mesh }) => packMesh(mesh));
  return {
    packed: deflated([...ours, ...theirs].map(({ bytes }) => bytes)),
    bodies: bodies.map((body, i) => ({
      name: body.name,
      packing: ours[i]!.packing,
      colour: bodyColour(i),
      cutColour: bodyColour(i, CUT_COLOURS),
      inUse: placementMatrix(views.inUse?.[body.name] ?? {}),
      apart: views.apart?.[body.name] ?? NOWHERE,
      onBed: placementMatrix(lying[i] ?? {}),
    })),
    companions: views.companions.map(({ name }, i) => ({
      name,
      packing: theirs[i]!.packing,
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

/** Bytes one after the other, deflated and as text. */
function deflated(parts: readonly Uint8Array[]): string {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  // the last three levels take two thirds of the time and gain three bytes in a thousand
  return base64(deflateSync(whole, { level: 6, mem: 4 }));
}
