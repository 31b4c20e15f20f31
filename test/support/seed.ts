import fc from 'fast-check';

/**
 * Hunts draw the same cases on every run, so that a red run is a change and not luck. `SEED=random npm run soak` draws
 * others; `SEED=42` draws those of 42.
 */
const wanted = process.env.SEED ?? '20261125';
if (wanted !== 'random') fc.configureGlobal({ seed: Number(wanted) });
