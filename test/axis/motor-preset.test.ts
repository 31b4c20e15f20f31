import { describe, expect, it } from 'vitest';
import { withMotorShaft } from '../../src/axis/motor-preset.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import type { Fields } from '../../src/sheet/fields-map.js';

const motorOf = (motor: unknown) => withMotorShaft({ name: 'a', motor } as Fields, SHIPPED).motor;

describe('the shaft of a motor frame', () => {
  // NEMA ICS 16: frame 17 has a shaft of 5 mm, most with a flat of 4.5; frame 11 one of 5 mm
  it('is put under a frame by its name', () => {
    expect(motorOf('frame-17')).toEqual({ preset: 'frame-17', shaft: { diameter: '5 mm', flat: '4.5 mm' } });
    expect(motorOf({ preset: 'frame-11', torque: '0.1 N m' })).toEqual({
      preset: 'frame-11',
      torque: '0.1 N m',
      shaft: { diameter: '5 mm' },
    });
  });

  it('gives way to what is said of the shaft itself', () => {
    expect(motorOf({ preset: 'frame-17', shaft: { length: '24 mm', flat: '4.4 mm' } })).toEqual({
      preset: 'frame-17',
      shaft: { diameter: '5 mm', flat: '4.4 mm', length: '24 mm' },
    });
  });

  it.each([[{ diameter: '8 mm' }], [{ across_flats: '7 mm' }], [{ form: 'round' }]])(
    'is another one where %j is said',
    (shaft) => {
      expect(motorOf({ preset: 'frame-17', shaft })).toEqual({ preset: 'frame-17', shaft });
    },
  );

  it('may be said as a diameter alone', () => {
    expect(motorOf({ preset: 'frame-17', shaft: '8 mm' })).toEqual({ preset: 'frame-17', shaft: { diameter: '8 mm' } });
  });

  it('is nothing where no frame is named', () => {
    for (const motor of [undefined, 5, { shaft: { diameter: '5 mm' } }, { preset: 17 }]) {
      const sheet = { name: 'a', motor } as Fields;
      expect(withMotorShaft(sheet, SHIPPED)).toBe(sheet);
    }
  });

  it('leaves the rest of the sheet as it is, and refuses a frame that is not there', () => {
    expect(withMotorShaft({ name: 'a', motor: 'frame-17', screw: 'Tr8x2' }, SHIPPED)).toMatchObject({
      name: 'a',
      screw: 'Tr8x2',
    });
    expect(() => motorOf('frame-99')).toThrow(/^motor\.preset: frame-99; /);
  });
});
