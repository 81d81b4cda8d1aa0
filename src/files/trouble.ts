// What was thrown, as a page says it in its language.
import type { Trouble } from '../package/unreadable';

export type { Trouble };

/** As an error, whatever was thrown. */
export const troubleOf = (thrown: unknown): Trouble => (thrown instanceof Error ? thrown : { message: String(thrown) });
