import { describe, expect, it } from 'vitest';
import { axisCard } from '../../src/axis/card.js';
import { checkAxis } from '../../src/axis/check.js';
import { axisWith, designed } from '../support/axis-sheets.js';

function cardOf(changes = {}): string {
  const axis = designed(changes);
  return axisCard(checkAxis(axis), axis);
}
const titles = (card: string) => [...card.matchAll(/<strong>([^<]+)<\/strong><\/label>/g)].map(([, title]) => title);
const at = (card: string, text: string) => {
  expect(card).toContain(text);
  return card.indexOf(text);
};

describe('the card of a whole refit', () => {
  const card = cardOf();

  it('goes in the order of work: nothing is loosened before the axis is blocked and the power is off', () => {
    expect(titles(card)).toEqual([
      'Measure, while it still runs',
      'Order and cut',
      'Print',
      'Try everything on the bench',
      'Block the axis',
      'Isolate the power',
      'Take out',
      'Mount, from the nut to the far end',
      'Turn by hand over the whole travel',
      'Level both ends',
      'Set steps and direction',
      'First moves at a tenth of the feed',
      'After the first hot day: retighten',
      'Every month: look at the play',
    ]);
    expect(at(card, 'Loosen the screws')).toBeGreaterThan(at(card, '<strong>Isolate the power'));
    expect(card).toContain('Calipers reach in with the power off');
  });

  it('tells the length to order, steps and direction, and what is tightened again', () => {
    // shaft 25 and a disc of 3 mm; the ring ends 5 mm after 330, a pitch of 2 beyond: 337 − 28 = 309, and what calipers leave open
    expect(card).toContain('Screw: order or cut 310 to 311 mm');
    // 200 · 16 / 2
    expect(card).toContain('Steps per mm: 1600');
    expect(card).toContain('set 1600 steps per mm instead of 400');
    expect(card).toContain('coupling: Tighten the clamp screws again once');
  });

  const mountOf = (html: string) => {
    const from = at(html, 'Mount, from the nut');
    return html.slice(from, html.indexOf('<strong>Turn by hand', from));
  };

  it('mounts nut, screw, coupling and far end in this order, and sets what finds its place last', () => {
    const mount = mountOf(card);
    const places = ['nut', 'screw', 'coupling', 'end-holder', 'all parts are in'].map((role) =>
      at(mount, `<strong>${role}</strong>`),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
    // shaft 25 and a disc of 3 mm
    expect(mount).toContain('until it begins 28 mm from the motor plate');
    expect(at(mount, 'end-holder: The ring touches nothing')).toBeGreaterThan(places.at(-1)!);
  });

  it('goes on by each part as its own card does: pens, pads and torques in the order of work', () => {
    const mount = mountOf(card);
    const steps = ['Wash shaft', 'Put into the hubs, loosely', 'Mark the shafts', 'Into the ring', 'Tighten each M3'];
    const places = steps.map((step) => at(mount, step));
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('fastens a motor plate before the nut', () => {
    const plate = {
      motor: { preset: 'frame-23', length: 50, weight: 7 },
      machine: { holes: { rectangle: [80, 80], screw: 'M5' }, face: 'motor', thickness: 6 },
      hub_depth: 20,
    };
    const mount = mountOf(cardOf({ parts: { 'motor-plate': plate } }));
    expect(mount).toContain('tighten the motor plate, then the nut there');
    expect(at(mount, 'pilot in its hole')).toBeLessThan(at(mount, '<strong>nut</strong>'));
  });

  it('never tightens a nut that floats, nor loosens it to find out', () => {
    expect(card).toContain('tighten the nut there, crosswise');
    const { parts } = axisWith() as { parts: { nut: { holes: object } } };
    const floating = cardOf({ parts: { nut: { float: 0.3, holes: { ...parts.nut.holes, fit: null } } } });
    expect(floating).toContain('A nut that floats stays free');
    expect(floating).toContain('it must still give every way');
    expect(floating).not.toMatch(/tighten the nut there|Loosen the nut’s screws/);
  });
});
