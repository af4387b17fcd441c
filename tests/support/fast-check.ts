import fc from 'fast-check';

/**
 * Properties are drawn from one fixed seed, so that a run is the same everywhere; `KNURLWRIGHT_SEED=random` draws anew,
 * and a number gives a seed that was reported.
 */
const { KNURLWRIGHT_SEED } = process.env;
if (KNURLWRIGHT_SEED !== 'random') fc.configureGlobal({ seed: Number(KNURLWRIGHT_SEED ?? 2026) });

export default fc;
