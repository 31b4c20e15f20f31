import { beforeAll, describe, expect, it } from 'vitest';
import { type Identification, identify } from '../../src/identify/identify.js';
import { readDriveSheet } from '../../src/pipeline/drive-sheet.js';
import { InputError } from '../../src/units/faults.js';
import { type Drawn, drawnScrews, oddReadings } from '../support/drawn-screws.js';

describe('identify, 20,000 screws of all series, one in ten worn', () => {
  let answers: { readonly screw: Drawn; readonly found: Identification }[];
  beforeAll(() => {
    answers = drawnScrews(20_000, 3).map((screw) => ({ screw, found: identify(screw.readings) }));
  }, 300_000);

  it('names the first screw as often as its odds say, and every other', () => {
    const firsts = answers.map(({ screw, found }) => oddsOf(found.candidates[0]!, screw));
    const all = answers.flatMap(({ screw, found }) => found.candidates.map((one) => oddsOf(one, screw)));
    for (const odds of [firsts, all]) {
      for (let bin = 0; bin < 20; bin += 1) {
        const those = odds.filter(({ stated }) => Math.min(19, Math.floor(20 * stated)) === bin);
        if (those.length < 1000) continue;
        const stated = those.reduce((sum, one) => sum + one.stated, 0) / those.length;
        const seen = those.filter(({ is }) => is).length / those.length;
        expect.soft(Math.abs(seen - stated), `${bin / 20}: stated ${stated}, seen ${seen}`).toBeLessThanOrEqual(0.02);
      }
    }
  });

  it('is wrong in at most 3 of 1,000 answers above 98 %', () => {
    const sure = answers.filter(({ found }) => found.candidates[0]!.probability > 0.98);
    const wrong = sure.filter(({ screw, found }) => found.candidates[0]!.designation !== screw.name);
    expect(sure.length).toBeGreaterThan(10_000);
    expect(wrong.length / sure.length).toBeLessThanOrEqual(0.003);
  });

  it('gives lines that a sheet takes, or says what contradicts', () => {
    expect(answers.filter(({ found }) => !leadsOn(found)).map(({ screw }) => screw.readings)).toEqual([]);
  });
});

it('leads on from 5,000 odd or scanty readings', () => {
  const lost = oddReadings(5000, 5).filter((readings) => !leadsOn(identify(readings)));
  expect(lost).toEqual([]);
});

function oddsOf({ probability, designation }: { probability: number; designation: string }, { name }: Drawn) {
  return { stated: probability, is: designation === name };
}

/** A contradiction with words, or lines of a sheet in which nothing is wrong, but for sizes that they ask to be read. */
function leadsOn({ contradictions, block }: Identification): boolean {
  if (contradictions.some((one) => one.length > 20)) return true;
  try {
    return readDriveSheet(block).screw !== undefined;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.faults.every(({ path }) => block.includes(`# ${path.replace('screw.', '')}: measure it`));
  }
}
