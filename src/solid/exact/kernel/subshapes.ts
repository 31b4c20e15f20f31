import type { OcShape, Session } from './session.js';

/** What of a kind a shape is made of, one for each place where it is used. */
export function subshapes(
  { oc, keep }: Session,
  shape: OcShape,
  kind: 'solid' | 'shell' | 'face' | 'edge' | 'vertex',
): OcShape[] {
  const { TopAbs_ShapeEnum: kinds } = oc;
  const explorer = keep(new oc.TopExp_Explorer(shape, kinds[`TopAbs_${kind.toUpperCase()}`], kinds.TopAbs_SHAPE));
  const found: OcShape[] = [];
  for (; explorer.More(); explorer.Next()) found.push(keep(explorer.Current()));
  return found;
}
