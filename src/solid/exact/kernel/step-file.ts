import type { Placement } from '../../mesh.js';
import type { OcShape, Session } from './session.js';
import { locationOf } from './steady.js';
import { subshapes } from './subshapes.js';

/** Where the kernel's own disk, which is memory, holds a file while it is written or read. */
const FILE = '/part.step';

/** A solid with its name, and where it stands in an assembly. */
interface PlacedSolid {
  readonly name: string;
  readonly place: Placement;
  readonly solid: OcShape;
}

/** The text of a STEP file of bodies; an assembly where there are several. @throws Error the kernel wrote none */
export function writtenStep(session: Session, product: string, bodies: readonly PlacedSolid[]): string {
  const { oc, keep } = session;
  const doc = keep(new oc.TDocStd_Document(keep(new oc.TCollection_ExtendedString('XCAF', true))));
  // the first writer sets what follows to its own defaults
  const writer = keep(new oc.STEPCAFControl_Writer());
  oc.Interface_Static.SetCVal('write.step.schema', 'AP242DIS');
  oc.Interface_Static.SetIVal('write.surfacecurve.mode', 0);
  addProducts(session, doc, product, bodies);
  if (!writer.Perform(doc, FILE, keep(new oc.Message_ProgressRange())))
    throw new Error('the kernel did not write the file');
  const step = oc.FS.readFile(FILE, { encoding: 'utf8' }) as string;
  oc.FS.unlink(FILE);
  return step;
}

/** Each body as a product in its own frame; several stand in one more. */
function addProducts(session: Session, doc: OcShape, product: string, bodies: readonly PlacedSolid[]): void {
  const { oc, keep } = session;
  const tool = keep(oc.XCAFDoc_DocumentTool.ShapeTool(keep(doc.Main())));
  oc.XCAFDoc_DocumentTool.SetLengthUnit(doc, 0.001);
  const named = (label: OcShape, name: string): OcShape => {
    keep(oc.TDataStd_Name.Set(label, keep(new oc.TCollection_ExtendedString(name, true))));
    return label;
  };
  const labels = bodies.map(({ name, solid }) => named(keep(tool.AddShape(solid, false, false)), name));
  if (labels.length < 2) return;
  const whole = named(keep(tool.NewShape()), product);
  for (const [i, label] of labels.entries()) {
    const { name, place } = bodies[i]!;
    named(keep(tool.AddComponent(whole, label, locationOf(session, place))), name);
  }
  tool.UpdateAssemblies();
}

/** The solids that a STEP file holds. */
export function solidsOfStep(session: Session, step: string): OcShape[] {
  const { oc, keep } = session;
  oc.FS.writeFile(FILE, step);
  const reader = keep(new oc.STEPControl_Reader());
  reader.ReadFile(FILE);
  oc.FS.unlink(FILE);
  reader.TransferRoots(keep(new oc.Message_ProgressRange()));
  return subshapes(session, keep(reader.OneShape()), 'solid');
}
