import { type Band, type Candidate, candidates } from '../../src/identify/candidates.js';
import { identify } from '../../src/identify/identify.js';
import type { NextMeasurement } from '../../src/identify/next-measurement.js';
import type { Readings } from '../../src/identify/readings.js';
import { measureOverWires } from '../../src/standards/three-wire.js';

/** A repeatable stream of numbers from 0 to 1. */
export function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** One actual screw, made somewhere within its limits, and a person with calipers. */
export class Bench {
  readonly #next: () => number;
  readonly #uncertainty: number;
  readonly #one: Candidate;
  readonly #major: number;
  readonly #pitchDiameter: number;

  constructor(one: Candidate, seed: number, uncertainty = 0.03) {
    this.#next = stream(seed);
    this.#uncertainty = uncertainty;
    this.#one = one;
    this.#major = this.#within(one.major);
    this.#pitchDiameter = this.#within(one.pitchDiameter);
  }

  #within({ least, most }: Band): number {
    return least + this.#next() * (most - least);
  }

  /** A length with a normal error of half the uncertainty. */
  #read(length: number, times = 1): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.#next()));
    const error = (this.#uncertainty / 2) * radius * Math.cos(2 * Math.PI * this.#next());
    return Number(Math.max(0.001, length + times * error).toFixed(4));
  }

  /** Three readings of the major, ten pitches. */
  first(): Readings {
    const { pitch } = this.#one.row;
    return {
      major: [this.#read(this.#major), this.#read(this.#major), this.#read(this.#major)],
      crests: { count: 10, length: this.#read(10 * pitch) },
    };
  }

  /** The measurement asked for. */
  further({ what, wire }: NextMeasurement): Partial<Readings> {
    const { row, form, flankAngle, lead, minor } = this.#one;
    if (what === 'starts') return { starts: row.starts };
    if (what === 'crest') return { crest: form === 'metric-v' ? 'sharp' : 'flat' };
    if (what === 'travel') return { travel: { turns: 10, length: this.#read(10 * lead) } };
    if (what === 'crests') return { crests: { count: 20, length: this.#read(20 * row.pitch) } };
    if (what === 'major') return { major: [this.#read(this.#major)] };
    if (what === 'minor') return { minor: this.#read(this.#within(minor), 2) };
    if (what === 'crest_flat') {
      const tan = Math.tan((flankAngle * Math.PI) / 180);
      return { crestFlat: this.#read(row.pitch / 2 - (this.#major - this.#pitchDiameter) * tan, 2) };
    }
    const over = measureOverWires({
      flankAngle,
      pitch: row.pitch,
      lead,
      wire: wire!,
      pitchDiameter: this.#pitchDiameter,
    });
    return { wires: { wire: wire!, over: this.#read(over) } };
  }
}

/** What a run over many screws came to. */
export interface Tally {
  screws: number;
  /** first, or named as not to be told from the first */
  named: number;
  /** first and alone after the suggested measurements */
  parted: number;
  /** still in doubt after them, but named */
  doubtful: number;
  readonly missed: string[];
}

/**
 * Measures every screw of every series, `rounds` of each, following the suggestions up to three times. `told` is the
 * uncertainty the person claims, where it is not the true one.
 */
export function measureAll(rounds: number, uncertainty: number, every = 1, told = uncertainty): Tally {
  const tally: Tally = { screws: 0, named: 0, parted: 0, doubtful: 0, missed: [] };
  candidates().forEach((one, index) => {
    for (let round = 0; round < rounds; round += 1) {
      if ((index + round) % every === 0) measureOne(one, index * 1009 + round * 7919 + 1, { uncertainty, told }, tally);
    }
  });
  return tally;
}

function measureOne(
  one: Candidate,
  seed: number,
  errors: { readonly uncertainty: number; readonly told: number },
  tally: Tally,
): void {
  const bench = new Bench(one, seed, errors.uncertainty);
  const name = one.row.designation;
  let readings: Readings = { ...bench.first(), uncertainty: errors.told };
  let found = identify(readings);
  tally.screws += 1;
  const first = found.candidates[0]!.designation;
  if (first === name || (!found.separable && found.twins.includes(name))) tally.named += 1;
  else tally.missed.push(`${name}: ${first} ${found.fits} ${JSON.stringify(readings)}`);
  for (let more = 0; more < 3 && !found.separable && found.nextMeasurement !== null; more += 1) {
    readings = { ...readings, ...bench.further(found.nextMeasurement) };
    found = identify(readings);
  }
  const now = found.candidates[0]!.designation;
  if (now === name && found.separable) tally.parted += 1;
  else if (now === name || found.twins.includes(name)) tally.doubtful += 1;
}
