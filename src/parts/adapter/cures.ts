import { plain } from '../../units/format.js';
import { JOINTS, type Joint, threadReach } from '../common/joints.js';
import { type LayoutInput, LEAST_LIGAMENT, layoutThatFits, thicknessFor } from './layout.js';

/**
 * What would make room where no turn does, tried on the layout itself and named in the order of least trouble: other
 * joints, a thicker plate whose holes end above one another, a larger outline, no cut-outs.
 */
export function cures(input: LayoutInput): string[] {
  const joints = otherJoints(input);
  const stacked = stackedPlate(input);
  const larger = largerOutline(input);
  const whole = withoutCutouts(input);
  const found = [joints, stacked, larger, whole].filter((one) => one !== undefined);
  return found.length > 0
    ? found
    : ['none of other joints, a thicker plate and a larger outline is enough: use smaller screws, or another pattern'];
}

function withoutCutouts(input: LayoutInput): string | undefined {
  if (input.cutouts.length === 0) return undefined;
  const whole = { ...input, cutouts: [] };
  if (layoutThatFits(whole)) return 'cut-outs elsewhere, or none, are enough';
  const joints = otherJoints(whole);
  return joints && `cut-outs elsewhere, or none: then ${joints}`;
}

function otherJoints(input: LayoutInput): string | undefined {
  const { nut, carriage } = input;
  const nutJoints: readonly (Joint | undefined)[] = nut && nut.centres.length > 0 ? JOINTS : [undefined];
  const found = nutJoints.flatMap((nutJoint) =>
    JOINTS.flatMap((carriageJoint) => {
      const changed = withJoints(input, nutJoint, carriageJoint);
      const laid = layoutThatFits(changed);
      const changes = (nutJoint !== nut?.hole.joint ? 1 : 0) + (carriageJoint !== carriage.hole.joint ? 1 : 0);
      return laid ? [{ nutJoint, carriageJoint, changes, laid }] : [];
    }),
  );
  if (found.length === 0) return undefined;
  const best = found.reduce((a, b) =>
    b.changes < a.changes || (b.changes === a.changes && b.laid.ligament.gap > a.laid.ligament.gap + 1e-6) ? b : a,
  );
  const words = [
    ...(best.nutJoint !== undefined && best.nutJoint !== nut?.hole.joint ? [`nut.joint: ${best.nutJoint}`] : []),
    ...(best.carriageJoint !== carriage.hole.joint ? [`carriage.joint: ${best.carriageJoint}`] : []),
  ];
  return `${words.join(' with ')} leaves ${plain(best.laid.ligament.gap, 2)} mm`;
}

function withJoints(input: LayoutInput, nutJoint: Joint | undefined, carriageJoint: Joint): LayoutInput {
  const { nut, carriage } = input;
  const holes = [{ ...carriage.hole, joint: carriageJoint }];
  if (nut && nutJoint) holes.push({ ...nut.hole, joint: nutJoint });
  return {
    ...input,
    ...(nut && nutJoint ? { nut: { ...nut, hole: { ...nut.hole, joint: nutJoint } } } : {}),
    carriage: { ...carriage, hole: { ...carriage.hole, joint: carriageJoint } },
    thickness: Math.max(input.thickness, ...holes.map(thicknessFor)),
  };
}

/** Inserts from both faces of a plate, or of two plates on each other, thick enough that they end apart. */
function stackedPlate(input: LayoutInput): string | undefined {
  const { nut, carriage } = input;
  if (nut?.hole.screw === undefined || carriage.hole.screw === undefined || nut.seat !== 'outside') return undefined;
  const depth = threadReach(nut.hole.screw) + threadReach(carriage.hole.screw) + 2 + LEAST_LIGAMENT;
  const sunk = (input.outerStep?.depth ?? 0) + (input.innerStep?.depth ?? 0);
  const thickness = Math.ceil(2 * (depth + sunk)) / 2;
  if (thickness <= input.thickness) return undefined;
  const laid = layoutThatFits({ ...withJoints(input, 'insert', 'insert'), thickness });
  if (!laid) return undefined;
  return `plate.thickness: ${plain(thickness)} mm, or two plates stacked to it, with inserts from both faces leaves ${plain(laid.ligament.gap, 2)} mm`;
}

function largerOutline(input: LayoutInput): string | undefined {
  const { outline } = input;
  if (outline.shape === 'polygon') return undefined;
  for (const more of [0.5, 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 20]) {
    if (layoutThatFits({ ...input, outline: grown(outline, more) }))
      return `an outline ${plain(more)} mm further out on every side is enough`;
  }
  return undefined;
}

function grown(outline: Exclude<LayoutInput['outline'], { shape: 'polygon' }>, by: number): LayoutInput['outline'] {
  if (outline.shape === 'hull') return { ...outline, rim: outline.rim + by };
  if (outline.shape === 'round') return { ...outline, diameter: outline.diameter + 2 * by };
  return { ...outline, size: [outline.size[0] + 2 * by, outline.size[1] + 2 * by] };
}
