import type { Loom } from "../work/loom.js";
import type { Yarn } from "./yarn.js";

/** The yarns of a hand, each once, as they look. */
export function yarnsIn({ yarns }: Pick<Loom, "yarns">, hand: { readonly yarns: readonly string[] }): readonly Yarn[] {
  return yarns.filter(({ name }) => hand.yarns.includes(name));
}
