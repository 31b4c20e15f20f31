import type { CouponHead } from '../../calibrate/results-text.js';
import type { CouponDesign } from './dimensions.js';

/** What a results file must know of the coupon it belongs to. */
export function couponHead({ name, plan, screw, material, printer }: CouponDesign): CouponHead {
  const { shrink, holes } = printer.compensation;
  return {
    coupon: name,
    material: material.name,
    printer: { nozzle: printer.nozzle, layer: printer.layer, line_width: printer.lineWidth },
    applied: {
      plane: shrink === 'file' ? material.shrink.plane.likely : 0,
      axial: shrink === 'file' ? material.shrink.axial.likely : 0,
      hole_offset: holes === 'file' ? printer.holeOffset : { at_zero: 0, per_mm: 0 },
    },
    ...(plan.thread && screw
      ? {
          screw: {
            pitch_diameter: screw.pitchDiameter.likely,
            pitch: screw.pitch.likely,
            lead: screw.lead,
            flank_angle: screw.flankAngle,
          },
        }
      : {}),
  };
}
