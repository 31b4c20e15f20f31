import { describe, expect, it } from 'vitest';
import type { CollarDesign } from '../../../src/parts/collar/dimensions.js';
import { flankClearance, spreadPlay, spreads, threadedCollar } from '../../../src/parts/collar/thread-fit.js';
import { design } from '../../../src/pipeline/design.js';
import { PLAIN, THREADED, THREADED_HALVES } from '../../support/collar-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Record<string, unknown>;

const collar = (base: object, changes: Tree = {}) =>
  threadedCollar(design(changed(base as Tree, changes)) as CollarDesign)!;
const found = (id: string, changes: Tree = {}) => findingOf(changed(THREADED, changes), id);

describe('the thread of a collar on its screw, by hand', () => {
  it('is none of a plain bore', () => {
    expect(threadedCollar(design(PLAIN) as CollarDesign)).toBeUndefined();
    const overCrests = changed(PLAIN, { shaft: undefined, screw: 'Tr10x2' });
    expect(threadedCollar(design(overCrests) as CollarDesign)).toBeUndefined();
    for (const id of ['thread-clearance', 'thread-pitch-error', 'print-layers', 'print-thread-depth'])
      expect(findingOf(PLAIN, id)).toBeUndefined();
  });

  it('has at least what is cut, less what print and screw take of it', () => {
    // Tr8x2: flanks on 7 mm, by their class 0.071 mm less at most; holes ± 0.05, pc ± 0.3 % of 7.1 mm
    const { least, likely } = flankClearance(collar(THREADED));
    expect(likely).toBeCloseTo(0.1, 6);
    expect(least).toBeCloseTo(0.1 - 0.05 - 0.003 * 7.1 + 0.071, 3);
  });

  it('is never surer than what is cut, though the class leaves more', () => {
    // Tr10x2 in petg: 0.071 mm less by its class, 0.05 and 0.2 % of 9.1 mm taken
    const tr10 = { screw: { designation: 'Tr10x2', major: '9.93 ± 0.02 mm' }, bearing: 'F10-18', material: 'petg' };
    expect(0.071 - 0.05 - 0.002 * 9.1).toBeGreaterThan(0);
    expect(flankClearance(collar(THREADED, tr10)).least).toBeCloseTo(0.1, 6);
    expect(flankClearance(collar(THREADED, tr10)).most).toBeGreaterThan(0.16);
  });

  it('is cut for the middle, and comes out smaller where nobody compensates', () => {
    // holes 0.15 mm smaller, pc 0.65 % of 7.1 mm
    const printer = { hole_offset: 0.15, compensation: 'none' };
    expect(flankClearance(collar(THREADED, { printer })).likely).toBeCloseTo(0.1 - 0.15 - 0.0065 * 7.1, 3);
    expect(found('thread-clearance', { printer })!.word).toBe('no');
  });

  /** A slit ring opened by 1 mm on the diameter: strain h·e·(e + R)/(2·R²·(2e² + R²)), force e·E·L·h³/(12·R²·(2e² + R²)). */
  const perMm = ({ finished, material }: CollarDesign) => {
    const { outside, bore, clamp, length } = finished;
    const [h, r, e] = [(outside - bore.diameter) / 2, (outside + bore.diameter) / 4, clamp.offset];
    const all = r ** 2 * (2 * e ** 2 + r ** 2);
    return { strain: (h * e * (e + r)) / (2 * all), force: (e * material.modulus * length * h ** 3) / (12 * all) };
  };

  it('spreads by what a blade of 200 N forces', () => {
    const one = collar(THREADED, { outside_diameter: 30 });
    const forced = 200 / perMm(one).force;
    expect(forced).toBeLessThan(0.38);
    expect(spreads(one) / forced).toBeCloseTo(1, 1);
  });

  it('spreads by what its back bears for a moment', () => {
    // half of 40 MPa over 3000 MPa
    const stiff = { preset: 'pla', tensile: '40 MPa', modulus: '3000 MPa' };
    const one = collar(THREADED, { material: stiff });
    const strained = (0.5 * 40) / 3000 / perMm(one).strain;
    expect(strained).toBeLessThan(200 / perMm(one).force);
    expect(spreads(one) / strained).toBeCloseTo(1, 1);
  });

  it('spreads no farther than a fifth of its depth, which alone bounds two halves', () => {
    // 7.95 − 6.05 mm
    expect(spreads(collar(THREADED_HALVES))).toBeCloseTo(0.2 * 1.9, 6);
    expect(spreads(collar(THREADED_HALVES, { outside_diameter: 60 }))).toBeCloseTo(0.38, 6);
    expect(spreads(collar(THREADED, { material: 'pa12' }))).toBeLessThanOrEqual(0.38 + 1e-9);
  });

  it('keeps of its play what the drift of the pitch leaves', () => {
    // (0.0997 + 0.38)·tan 15° = 0.1285; pc 0.3 % and a rolled pitch 0.1 % of 12 mm: 0.048
    const { play, drift } = spreadPlay(collar(THREADED_HALVES, { length: 12 }));
    expect(play).toBeCloseTo(0.1285, 3);
    expect(drift).toBeCloseTo(0.048, 4);
    // and 0.25 % more where nobody compensates the shrink
    const none = collar(THREADED_HALVES, { length: 12, printer: { compensation: 'none' } });
    expect(spreadPlay(none).drift).toBeCloseTo(0.048 + 0.03, 4);
    // cut 0.1 mm wider along the axis it has so much more
    const wide = collar(THREADED_HALVES, { length: 12, fit: { diametral: 0.1, axial: 0.1 } });
    expect(spreadPlay(wide).play - play).toBeCloseTo(0.1, 6);
  });

  it('does not go on with a fit below nothing, whatever the slit gives', () => {
    const word = (fit: Tree, id = 'thread-clearance') => found(id, { fit })!.word;
    expect(word({ diametral: -0.4, axial: 0 })).toBe('no');
    expect(word({ diametral: 0, axial: 0 })).toBe('no');
    expect(word({ diametral: 0.05, axial: 0 })).toBe('yes');
    // 0.13 mm of play at most less 0.2
    expect(word({ diametral: 0.1, axial: -0.2 }, 'thread-pitch-error')).toBe('no');
    expect(found('thread-clearance', { fit: { diametral: -0.2, axial: 0.1 } })!.message).toMatch(
      /^-0\.2 mm on the diameter between flanks, .*; a fit\.diametral 0\.25 mm larger gives it$/,
    );
  });

  it('jams where it is long', () => {
    // 0.4 % of 60 mm are 0.24, of 20 mm 0.08 of some 0.13 mm
    expect(found('thread-pitch-error')!.word).toBe('yes');
    expect(found('thread-pitch-error', { length: 60 })!.word).toBe('no');
    expect(found('thread-pitch-error', { length: 60 })!.message).toMatch(
      / less 0\.24 mm of pitch error over 60 mm; a shorter collar, a fit\.axial .* larger or a wider fit\.diametral leaves more$/,
    );
  });

  it('says how much more along the axis would do', () => {
    const { value, message } = found('thread-pitch-error', { length: 60 })!;
    const lacks = Number(/a fit\.axial (\S+) mm larger/.exec(message)![1]);
    expect(lacks).toBeGreaterThanOrEqual(0.05 - value!);
    expect(lacks).toBeLessThan(0.06 - value! + 1e-9);
  });

  it('wants layers and lines as the thread of a nut does', () => {
    // M4: 0.7 mm of pitch in layers of 0.3, 0.38 mm deep in lines of 0.45
    const m4 = { screw: { designation: 'M4', major: '3.95 ± 0.03 mm' }, pin: undefined, bearing: undefined };
    const printer = { nozzle: 0.4, layer: 0.3 };
    expect(found('print-layers', { ...m4, printer })!.value).toBeCloseTo(0.7 / 0.3, 6);
    expect(found('print-thread-depth', { ...m4, printer })!.value).toBeCloseTo(0.379 / 0.45, 2);
    expect(found('print-layers', { ...m4, printer })!.message).toMatch(
      /metal collar behind it \(bore: plain, backed_by/,
    );
  });
});
