import { describe, expect, it } from 'vitest';
import { workshopCard } from '../../src/output/page/workshop-card.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { readYaml } from '../../src/sheet/read-yaml.js';
import { nutSheet } from '../support/nut-sheets.js';
import { CLAMP } from '../support/sleeve-sheets.js';

function cardOf(changes: Record<string, unknown> = {}): string {
  return cardOfSheet(nutSheet(changes));
}

/** What a card says hangs on sheet and arithmetic alone. */
function cardOfSheet(sheet: object): string {
  const made = design(sheet);
  const card = workshopCard(check(made), kindOfDesign(KINDS, made).views(made, 'finished'));
  const from = card.indexOf('<ol class="card">');
  return card.slice(from, card.indexOf('</ol>', from));
}

describe('the workshop card of a nut', () => {
  it('says when it is worn out, that it drops its axis, what a solid print is and where the axis must stop', () => {
    const card = cardOf();
    // a quarter of a tooth of 2 − 1.1 mm
    expect(card).toContain('its play has grown by 0.23 mm, a quarter of its tooth');
    expect(card).toContain('drops the axis');
    expect(card).toContain('break it by hand');
    expect(card).toContain('twice the stall force');
    expect(card).toContain('plain grease');
    expect(card).not.toContain('cracks under stress');
  });

  it('keeps oil, solvent and threadlocker off plastics that crack', () => {
    const card = cardOf({
      material: 'pc',
      duty: { axis: 'horizontal', motor: undefined, load: 10, grease: 'dry' },
    });
    expect(card).toContain('pc cracks under stress: no threadlocker, solvent, spray or oil near it');
    expect(card).toContain('silicone or PFPE grease');
    expect(card).not.toContain('plain grease');
    expect(card).not.toContain('drops the axis');
  });
});

describe('what locks screws', () => {
  const plate = (load: number | undefined) =>
    cardOf({ material: 'petg', duty: { axis: 'vertical', pull: 'away', temperature: 25, load, motor: undefined } });

  it('is asked for before they go in where they shake loose in time, and where nobody tells', () => {
    for (const card of [plate(600), plate(undefined)]) {
      expect(card).toContain('Take prevailing-torque nuts, and screws one length longer');
      expect(card.indexOf('prevailing-torque')).toBeLessThan(card.indexOf('finger tight'));
    }
    expect(plate(600)).toContain('below 3 × the load they shake loose');
    expect(plate(undefined)).toContain('duty.load would tell');
    expect(plate(5)).not.toContain('prevailing-torque');
  });
});

describe('the workshop card of a part whose pockets are roofed', () => {
  const sheet = (bridging: string) => ({
    part: 'nut',
    name: 'roofed',
    screw: 'Tr8x2',
    body: { diameter: 16, length: 20 },
    flange: { diameter: 48, thickness: 8 },
    holes: { count: 4, circle: 32, screw: 'M4', joint: 'counterbore', head: 'flange' },
    material: 'petg',
    printer: { compensation: 'file', bridging },
  });

  it('says to drill a membrane through and to put washers under the heads before the screws go in', () => {
    const card = cardOfSheet(sheet('membrane'));
    expect(card).toContain('closed by one layer: drill it through, then put a washer under each head there');
    expect(card.indexOf('drill it through')).toBeLessThan(card.indexOf('finger tight'));
    expect(card).toContain('4 × M4 plain washer ISO 7089');
  });

  it('asks for washers alone under steps, and for nothing without roofs', () => {
    const stepped = cardOfSheet(sheet('steps'));
    expect(stepped).toContain('roofed in steps: put a washer under each head there');
    expect(stepped).not.toContain('drill it through');
    expect(cardOfSheet(sheet('none'))).not.toMatch(/put a washer under each head|drill it through/);
  });
});

describe('the workshop card of a plate', () => {
  it('does not tighten the screws of a nut that floats', () => {
    const plate = {
      part: 'adapter',
      name: 'floating',
      kind: 'floating',
      nut: {
        body: 10.2,
        length: 15,
        flange: { diameter: 22, thickness: 3.5 },
        holes: { count: 4, circle: 16, diameter: 3.7, screw: 'M3' },
        joint: 'tapped',
      },
      carriage: { bore: 26, thickness: 8, holes: { count: 4, circle: 34, diameter: 3.4, screw: 'M3' } },
      plate: { thickness: 8, outline: { shape: 'round', diameter: 48 } },
      material: 'pc',
    };
    const card = cardOfSheet(plate);
    expect(card).toContain('do not tighten its screws');
    expect(card).toContain('with prevailing-torque nuts, run them home, then back them off');
    expect(card).toContain('the carriage alone, crosswise');
    expect(card).not.toContain('let the screw centre it, then tighten crosswise');
    const fixed = cardOfSheet({ ...plate, kind: 'joined' });
    expect(fixed).toContain('then tighten crosswise');
    expect(fixed).not.toContain('floats');
  });
});

describe('the workshop card of a test piece', () => {
  it('says how rings are tried, and mounts and runs nothing', () => {
    const card = cardOfSheet({ part: 'gauge', name: 'rings', screw: { designation: 'Tr8x2', major: 7.95 } });
    expect(card).toContain('try every ring by two fingers');
    expect(card).not.toMatch(/Mount in this order|tighten crosswise|First moves/);
  });
});

describe('the workshop card of a clamp sleeve', () => {
  it('says how hard to tighten, and again only where the grip counts on it', () => {
    const [once, twice] = [
      cardOfSheet({ ...CLAMP, retighten: 'no', motor: { ...CLAMP.motor, torque: 0.1 } }),
      cardOfSheet(CLAMP),
    ];
    for (const card of [once, twice]) {
      // 0.5·1.2·57.5 MPa under a washer of 7 mm on a hole of 3.4 mm: 1014 N; 0.2·3·1014 = 0.61 N·m
      expect(card).toContain('Tighten each M3 clamp screw to 0.61 N·m and no more');
      expect(card).toContain('free of grease');
      expect(card).toContain('pc cracks under stress');
    }
    expect(twice).toContain('cold, after the first hot day, to the same torque');
    expect(once).not.toContain('first hot day');
  });
});

describe('the workshop card of what an axis has besides', () => {
  const inOrder = (card: string, ...steps: readonly string[]) => {
    const places = steps.map((step) => {
      expect(card).toContain(step);
      return card.indexOf(step);
    });
    expect(places).toEqual([...places].sort((a, b) => a - b));
  };
  const started = (kind: string) => readYaml(startSheet(kind)).value as object;

  it('puts the bearing on before the collar, clamps it, and drills for the pin last', () => {
    const card = cardOfSheet(started('collar'));
    inOrder(
      card,
      'Onto the screw first: 1 × F8-16',
      'Put in loosely',
      'Turn the collar on',
      'Push the collar up',
      'Tighten each M3',
    );
    inOrder(card, 'Tighten each M3', 'Then drill 1.5 mm', 'The pin: 1 × 1.5x20 spring pin');
    expect(card).not.toContain('crosswise');
  });

  it('presses the bearing in before the holder goes over the screw, and leaves the screw free along', () => {
    const card = cardOfSheet(started('end-holder'));
    inOrder(
      card,
      'Push the bearing 608',
      'over the end of the screw',
      'Put in, finger tight: 4 × M4x25',
      'Set it with the axis driven',
    );
    expect(card).toContain('The screw stays free along its axis');
  });

  it('screws the motor to its plate before that goes to the machine, each with its own screws', () => {
    const card = cardOfSheet(started('motor-plate'));
    inOrder(
      card,
      'pilot in its hole',
      'For the motor: 4 × M3x10',
      'To the machine, finger tight: 4 × M4x20',
      'the nut driven to the motor',
    );
  });

  it('turns both threads of a twin nut on before it is seated, and says which reading tells how long its screws are', () => {
    const card = cardOfSheet(started('twin-nut'));
    inOrder(
      card,
      'the second must start without force',
      'Seat the part',
      '4 × M4 (as long as carriage.thickness tells)',
    );
  });

  it('closes the slit of a clamped nut last', () => {
    const card = cardOfSheet(started('clamped-nut'));
    inOrder(
      card,
      'Through the slit, loosely: 1 × M3',
      'then tighten crosswise',
      'Close the slit only until the play is gone',
    );
  });

  it('puts the nut on its plate before the plate on its carriage', () => {
    const card = cardOfSheet(started('adapter'));
    inOrder(
      card,
      'The nut onto the plate, finger tight',
      'The plate onto the carriage, finger tight',
      'set the limits of the axis anew',
    );
  });
});
