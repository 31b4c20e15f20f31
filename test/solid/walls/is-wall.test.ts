import { describe, expect, it } from 'vitest';
import { ROLE } from '../../../src/solid/facet-roles.js';
import { isWall } from '../../../src/solid/walls/is-wall.js';
import type { Edge } from '../../../src/solid/walls/wall-edges.js';
import { leaning, lookingAlong } from '../../support/hand-mesh.js';

const [BELOW, ABOVE, ASIDE] = [0, 1, 2];
const UP = [0, 0, 0, 0, 0, 1] as const;
const FAR_CORNER: Edge = { at: [100, 0, 0], reach: 0, facets: [BELOW, ABOVE] };

/** A face that looks down, one that looks up but for so many degrees, and one that looks aside. */
const faces = (degrees: number) => lookingAlong([0, 0, -1], leaning(degrees), [1, 0, 0]);
const roles = (below: number = ROLE.plain, above: number = ROLE.plain) => Uint8Array.of(below, above, ROLE.plain);
const ray = (thickness = 2) => ({ ray: UP, from: BELOW, to: ABOVE, thickness });

describe('what lies between two faces is a wall', () => {
  it.each([
    [0, true],
    [39, true],
    [41, false],
    [180, false],
  ])('where the far one leans by %d°: %s', (degrees, expected) => {
    expect(isWall(ray(), faces(degrees), roles(), [])).toBe(expected);
  });

  it.each([
    ['a broken edge beyond', roles(ROLE.plain, ROLE.bevel), false],
    ['a mark beyond', roles(ROLE.plain, ROLE.mark), false],
    ['a broken edge that the ray leaves', roles(ROLE.bevel), true],
    ['a thread to itself', roles(ROLE.thread, ROLE.thread), false],
    ['a thread that is met from below', roles(ROLE.plain, ROLE.thread), false],
    ['a thread that is left upwards', roles(ROLE.thread), false],
  ])('as its faces are: %s', (_, own, expected) => {
    expect(isWall(ray(), faces(0), own, [])).toBe(expected);
  });

  it('with a thread where it is crossed level', () => {
    const mesh = lookingAlong([-1, 0, 0], [1, 0, 0]);
    const level = { ray: [0, 0, 0, 1, 0, 0] as const, from: 0, to: 1, thickness: 2 };
    expect(isWall(level, mesh, Uint8Array.of(ROLE.thread, ROLE.plain), [])).toBe(true);
    expect(isWall(level, mesh, Uint8Array.of(ROLE.plain, ROLE.thread), [])).toBe(true);
  });
});

// Faces at 30° that are √3 mm apart meet 3 mm on; looked for half as far again and as far as they are apart: 6.232 mm
describe('faces that meet in an edge bound no wall', () => {
  const wedge = (edge: Partial<Edge>) => isWall(ray(Math.sqrt(3)), faces(30), roles(), [{ ...FAR_CORNER, ...edge }]);

  it('where the edge is as near as they would meet', () => {
    expect(wedge({ at: [3, 0, 0] })).toBe(false);
    expect(wedge({ at: [6.2, 0, 0] })).toBe(false);
    expect(wedge({ at: [6.3, 0, 0] })).toBe(true);
  });

  it('counted from the ends of the edge, and whichever of its faces comes first', () => {
    expect(wedge({ at: [3, 4.5, 0], reach: 0 })).toBe(false);
    expect(wedge({ at: [3, 9, 0], reach: 0 })).toBe(true);
    expect(wedge({ at: [3, 9, 0], reach: 9 })).toBe(false);
    expect(wedge({ at: [3, 0, 0], facets: [ABOVE, BELOW] })).toBe(false);
  });

  it('not for an edge of another face', () => {
    expect(wedge({ at: [3, 0, 0], facets: [BELOW, ASIDE] })).toBe(true);
    expect(wedge({ at: [3, 0, 0], facets: [ASIDE, ABOVE] })).toBe(true);
  });

  it('which goes on smoothly within 25°', () => {
    const bent = (degrees: number) => lookingAlong([0, 0, -1], leaning(30), leaning(30 + degrees));
    const at = (degrees: number) =>
      isWall(ray(Math.sqrt(3)), bent(degrees), roles(), [{ ...FAR_CORNER, at: [3, 0, 0], facets: [BELOW, ASIDE] }]);
    expect([at(24), at(26)]).toEqual([false, true]);
  });

  it('and faces within 4° of parallel meet nowhere near', () => {
    const nearly = (degrees: number) => isWall(ray(), faces(degrees), roles(), [{ ...FAR_CORNER, at: [3, 0, 0] }]);
    expect([nearly(3), nearly(5)]).toEqual([true, false]);
  });
});
