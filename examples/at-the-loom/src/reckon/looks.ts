import { yarnSigns } from "@thrum/plan";
import type { PlanData, YarnSign } from "@thrum/plan";
import type { Band, Yarn } from "../parts/yarn.js";

/** The letters, hatches and colours of the sheets, for the screen. */
export function yarnsOf(plan: PlanData): readonly Yarn[] {
  return yarnSigns(plan).map(({ name, letter, hatch, seen }) => ({ name, letter, fill: seen, hatch }));
}

/** Bands of a blend so that both its colours are seen; no more than these. */
const MOST_BANDS = 24;

/** The stripes as bands of one colour each, a blend in turns of its hand. */
export function bandsOf(plan: PlanData): readonly Band[] {
  const looks = new Map(yarnSigns(plan).map((sign): [string, YarnSign] => [sign.name, sign]));
  const runs = plan.figures.loom.stripes.value?.runs ?? [];
  return runs.flatMap(({ yarns, ends }) => {
    const turns = yarns.length === 1 ? 1 : yarns.length * Math.max(1, Math.min(MOST_BANDS, ends) / yarns.length);
    const bands = Math.floor(turns);
    const letters = [...new Set(yarns)].map((name) => looks.get(name)?.letter ?? "").join("");
    return Array.from({ length: bands }, (_, at): Band => {
      const sign = looks.get(yarns[at % yarns.length] ?? "");
      return {
        ends: ends / bands,
        fill: sign?.seen ?? null,
        hatch: sign?.hatch ?? "",
        letter: at === 0 ? letters : "",
        under: at === 0 ? ends : 0,
      };
    });
  });
}
