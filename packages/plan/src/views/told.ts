import type { Source } from "../core/source.js";
import type { Told } from "../parts/told.js";
import type { Says } from "./block.js";
import type { Template } from "./view.js";

const STANDINGS = ["must", "check", "ask", "free"] as const;
const MANNERS = { must: "MUST", check: "CHECK", ask: "ASK", free: "note" } as const;

/** One finding as it is printed. */
export function toldLine({ standing, says }: Told): Says {
  return { is: "says", as: MANNERS[standing], says: [says] };
}

/** All findings, what must be mended first; nobody is asked for what they wait for. */
export function findings(
  parts: readonly Source<readonly Told[], string>[],
  more: readonly Source<{ readonly tooWide: readonly Told[] }, string>[],
): Template {
  return {
    reads: [...parts, ...more],
    build: (at) => {
      const own = parts.map((part) => at.see(part)).flatMap((seen) => (seen.is === "there" ? seen.value : []));
      const others = more
        .map((part) => at.see(part))
        .flatMap((seen) => (seen.is === "there" ? seen.value.tooWide : []));
      const all = [...own, ...others];
      const blocks = STANDINGS.flatMap((standing) => all.filter((one) => one.standing === standing).map(toldLine));
      return { blocks, needs: [], isOfJob: blocks.length > 0 };
    },
  };
}
