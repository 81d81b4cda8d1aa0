/** Of every random test: a failure repeats on every machine. */
export const SEED = 20_261_124;
