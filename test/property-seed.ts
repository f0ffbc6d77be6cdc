import fc from 'fast-check';

/**
 * Property tests draw the same cases every time, so that a failure repeats; PROPERTY_SEED=random (or a number) looks
 * elsewhere.
 */
const { PROPERTY_SEED = '20260301' } = process.env;
if (PROPERTY_SEED !== 'random') fc.configureGlobal({ seed: Number(PROPERTY_SEED) });
