import type { OcShape, Session } from './session.js';

/** A solid turned inside out measures a negative volume. */
export function facingOut(session: Session, shape: OcShape): OcShape {
  return volumeOf(session, shape) < 0 ? session.keep(shape.Reversed()) : shape;
}

function volumeOf({ oc, keep }: Session, shape: OcShape): number {
  const props = keep(new oc.GProp_GProps());
  oc.BRepGProp.VolumeProperties(shape, props, false, false, false);
  return props.Mass();
}
