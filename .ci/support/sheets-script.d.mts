/** The text of the script, from the sources as they stand. */
export function scriptBundle(): Promise<string>;
