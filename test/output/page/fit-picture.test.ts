import { expect, it } from 'vitest';
import { fitPicture } from '../../../src/output/page/fit-picture.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { nutSheet } from '../../support/nut-sheets.js';

const report = check(design(nutSheet()));
const picture = fitPicture(report);

/** Length of the line across a gap, and of the picture's pixels in a millimetre: 1.3 pitches are 420 wide. */
function gapLines(svg: string): number[] {
  return [...svg.matchAll(/class="gap[^"]*" d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/g)].map(([, x1, y1, x2, y2]) =>
    Math.hypot(Number(x2) - Number(x1), Number(y2) - Number(y1)),
  );
}

it('draws each gap as large as it is told', () => {
  const pitch = report.dimensions.finished.pitch as number;
  const { crest_gap, root_gap, backlash } = report.fit!;
  const scale = 420 / (1.3 * pitch);
  const [crest, root, flank] = gapLines(picture) as [number, number, number];
  expect(crest / scale).toBeCloseTo(crest_gap.likely, 3);
  expect(root / scale).toBeCloseTo(root_gap.likely, 3);
  // one flank of two
  expect(flank / scale).toBeCloseTo(backlash.likely / 2, 3);
});

it('tells figure and limit beside each number, and how much it is enlarged', () => {
  expect(picture.match(/<circle/g)).toHaveLength(3);
  for (const words of ['over the crests of the screw', 'at least 0.05', 'at least 0.1, at most'])
    expect(picture).toContain(words);
  const pitch = report.dimensions.finished.pitch as number;
  // 96 pixels to the inch of 25.4 mm
  expect(picture).toContain(`${Math.round(420 / 1.3 / pitch / (96 / 25.4))} times enlarged`);
});

it('marks a gap that is none', () => {
  const tight = check(design(nutSheet({ limits: { 'thread-crest-gap': { min: 2 } } })));
  expect(tight.checks.find(({ id }) => id === 'thread-crest-gap')?.word).toBe('no');
  expect(fitPicture(tight)).toContain('gap no-fit');
  expect(picture).not.toContain('gap no-fit');
});

it('is empty where no thread is cut', () => {
  expect(fitPicture(check(design(startSheet('coupling'))))).toBe('');
});
