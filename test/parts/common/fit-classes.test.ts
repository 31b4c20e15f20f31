import { describe, expect, it } from 'vitest';
import { FIT_CLASSES, resolveFit } from '../../../src/parts/common/fit-classes.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';

const asked = (given: Parameters<typeof resolveFit>[0]) => {
  const notes = new Assumptions();
  return { fit: resolveFit(given, notes), assumed: notes.list.map(({ field }) => field) };
};

describe('the fit that a sheet asks for', () => {
  it('is running where it does not say, and that is listed', () => {
    expect(asked(undefined)).toEqual({ fit: { name: 'running', ...FIT_CLASSES.running }, assumed: ['fit'] });
    expect(asked({})).toEqual({ fit: { name: 'running', ...FIT_CLASSES.running }, assumed: ['fit'] });
  });

  it('is a class, in which either clearance may be replaced', () => {
    expect(asked({ class: 'close' })).toEqual({ fit: { name: 'close', ...FIT_CLASSES.close }, assumed: [] });
    expect(asked({ class: 'loose', axial: 0 }).fit).toEqual({ name: 'loose', diametral: 0.4, axial: 0 });
    expect(asked({ class: 'loose', diametral: 0, axial: 0.2 }).fit).toEqual({
      name: 'loose',
      diametral: 0,
      axial: 0.2,
    });
  });

  it('is its own where both clearances are given, and running by what is not given', () => {
    expect(asked({ diametral: 0, axial: 0 })).toEqual({ fit: { name: 'own', diametral: 0, axial: 0 }, assumed: [] });
    const running = { name: 'running', ...FIT_CLASSES.running };
    expect(asked({ diametral: 0.5 })).toEqual({ fit: { ...running, diametral: 0.5 }, assumed: ['fit'] });
    expect(asked({ axial: 0.2 })).toEqual({ fit: { ...running, axial: 0.2 }, assumed: ['fit'] });
  });
});
