import type { OcShape, Session } from './session.js';

/** Booleans by the kernel's names of them. */
const BOOLEANS = {
  union: 'BRepAlgoAPI_Fuse',
  difference: 'BRepAlgoAPI_Cut',
  intersection: 'BRepAlgoAPI_Common',
} as const;

/**
 * One shape with others put to it, cut from it, or what it has in common with all of them together.
 * @throws Error the kernel gave up
 */
export function joined(
  session: Session,
  how: keyof typeof BOOLEANS,
  shape: OcShape,
  tools: readonly OcShape[],
): OcShape {
  if (tools.length === 0) return shape;
  const { oc, keep } = session;
  const run = keep(new oc[BOOLEANS[how]]());
  run.SetArguments(listOf(session, [shape]));
  run.SetTools(listOf(session, tools));
  run.Build(keep(new oc.Message_ProgressRange()));
  if (!run.IsDone()) throw new Error('the kernel gave up on a boolean');
  run.SimplifyResult(true, true, 1e-9);
  return keep(run.Shape());
}

function listOf({ oc, keep }: Session, shapes: readonly OcShape[]): OcShape {
  const list = keep(new oc.NCollection_List_TopoDS_Shape());
  for (const shape of shapes) list.Append(shape);
  return list;
}
