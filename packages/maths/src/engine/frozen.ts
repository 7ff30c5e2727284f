/** Frozen with all that hangs on it, as far as it is not frozen already: what a program is handed stays as it is. */
export function frozen<T>(thing: T): T {
  if (typeof thing !== "object" || thing === null || Object.isFrozen(thing)) return thing;
  for (const part of Object.values(thing)) frozen(part);
  return Object.freeze(thing);
}
