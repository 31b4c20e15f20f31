import { type Check, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { heat as ofPart } from '../../parts/common/checks.js';
import { besideMotor, MOTOR_HEAT } from '../../parts/common/motor-heat.js';
import { askedWhereItHangs } from '../../parts/common/untold.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import type { AxisDesign } from '../axis-design.js';

/**
 * Whatever sits at the motor gets as warm as its face.
 *
 *     reserve = softening − the warmer of motor and air, by the part at the motor that softens first
 */
const heat: Check<AxisDesign> = {
  id: 'axis-heat',
  group: 'heat',
  question: 'heat',
  title: 'Reserve before it softens',
  unit: 'K',
  source: 'common practice',
  limits: ofPart.limits!,
  moves: 'motor.temperature, duty.temperature, material of coupling, collar and motor plate',
  grave: true,
  run: ({ parts, sheet: { motor, duty } }, { pass }) => {
    const near = parts.flatMap(({ role, facts: { isAtMotor, material } }) =>
      isAtMotor && material ? [{ role, material }] : [],
    );
    if (near.length === 0) return undefined;
    const face = motor?.temperature ?? MOTOR_HEAT.most;
    const temperature = besideMotor(face, duty?.temperature);
    const where = temperature > face ? 'the air at the motor is at' : "the motor's shaft and face get";
    const weakest = near.reduce((a, b) => (b.material.softening < a.material.softening ? b : a));
    const { name, softening } = weakest.material;
    const reserve = softening - temperature;
    const cure = keeps(reserve, pass)
      ? ''
      : '; a material that softens later there, less current, or a gasket of 2 mm under the motor';
    return valued(
      exactly(reserve),
      `${weakest.role} of ${name} softens at ${plain(softening, 0)} °C, ${where} ${plain(temperature, 0)} °C${cure}`,
    );
  },
};

/** Whether what sits at the motor stands its heat. */
export const HEAT_CHECKS: readonly Check<AxisDesign>[] = askedWhereItHangs(
  [heat],
  [{ field: 'motor.temperature', milder: onCoolest }],
);

/** The same axis with the coolest motor that is usual; undefined where its temperature is told. */
function onCoolest(design: AxisDesign): AxisDesign | undefined {
  const { sheet } = design;
  if (sheet.motor?.temperature !== undefined) return undefined;
  return { ...design, sheet: { ...sheet, motor: { ...sheet.motor, temperature: MOTOR_HEAT.least } } };
}
