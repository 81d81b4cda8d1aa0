/** Version of the functions; package.json says the same, a test compares. */
export const FUNCTIONS_VERSION = '0.2.0';
/** Day on which a table or a start value last changed. */
export const DATA_VERSION = '2026-11-24';

/** The argument only ties recalculation to a cell that changes. */
export const versionText = (_after?: unknown): string => `Bosswright ${FUNCTIONS_VERSION}, data ${DATA_VERSION}`;
