import type { Path } from "./source.js";

/** Thrown by a part that finds in what it was given that one key more is needed. */
export class Waits extends Error {
  override readonly name = "Waits";
  readonly needs: readonly Path[];

  constructor(needs: readonly Path[]) {
    super(needs.map((path) => path.join(".")).join(", "));
    this.needs = needs;
  }
}

/** Says that a key more is needed. */
export function waits(...path: Path): never {
  throw new Waits([path]);
}
