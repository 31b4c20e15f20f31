import { expect, it } from 'vitest';
import { besideMotor, motorHeat } from '../../../src/parts/common/motor-heat.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';

it('a motor is as warm as the sheet says, and nothing is assumed', () => {
  const notes = new Assumptions();
  expect(motorHeat(0, notes)).toStrictEqual({ temperature: 0 });
  expect(notes.list).toEqual([]);
});

it('a motor that nobody measured is judged at 80 °C, and may be as cool as 50 °C; that is said', () => {
  const notes = new Assumptions();
  expect(motorHeat(undefined, notes)).toEqual({ temperature: 80, coolest: 50 });
  expect(notes.list).toMatchObject([{ field: 'motor.temperature', value: 80 }]);
});

it('what touches a motor is as warm as its face or the air, whichever is warmer', () => {
  expect([besideMotor(58, 25), besideMotor(20, 110), besideMotor(58, undefined)]).toEqual([58, 110, 58]);
});
