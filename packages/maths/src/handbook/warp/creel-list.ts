import { atLeastZero, positive, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { allTogether } from "../../engine/refusal.js";
import { Length } from "../../units/index.js";
import { spoolLength } from "./spool-length.js";
import type { SpoolLengthInput } from "./spool-length.js";
import { readYarnStripes } from "./yarn-stripe.js";
import type { YarnStripe } from "./yarn-stripe.js";

export interface CreelListInput {
  /** From the first end wound to the last. */
  readonly stripes: readonly YarnStripe[];
  readonly endsPerSection: number;
  /** Of every end, loom waste counted in. */
  readonly warpLength: Length;
  /** Lost at the end of every section. */
  readonly cutWaste: Length;
}

/** What stands in the creel for one section, in the order of its ends. */
export interface CreelSection {
  readonly section: number;
  readonly ends: number;
  readonly creel: readonly YarnStripe[];
}

/** One spool, with the length it needs for the sections that use it and no others. */
export interface CreelSpool {
  readonly yarn: string;
  /** The first, second and so on of its yarn. */
  readonly spool: number;
  readonly sections: number;
  readonly length: Length;
  readonly step: ReportStep<SpoolLengthInput>;
}

export interface CreelList {
  readonly sections: readonly CreelSection[];
  readonly spools: readonly CreelSpool[];
}

/** Cuts the stripes into sections of so many ends. */
function sectionsOf(stripes: readonly YarnStripe[], endsPerSection: number): readonly CreelSection[] {
  const sections: { section: number; ends: number; creel: YarnStripe[] }[] = [];
  for (const { yarn, ends } of stripes) {
    for (let left = ends; left > 0;) {
      let last = sections.at(-1);
      if (last === undefined || last.ends === endsPerSection) {
        last = { section: sections.length + 1, ends: 0, creel: [] };
        sections.push(last);
      }
      const taken = Math.min(left, endsPerSection - last.ends);
      last.creel.push({ yarn, ends: taken });
      last.ends += taken;
      left -= taken;
    }
  }
  return sections;
}

/** How many sections use the first spool of each yarn, the second and so on. */
function usesOf(sections: readonly CreelSection[]): ReadonlyMap<string, readonly number[]> {
  const uses = new Map<string, number[]>();
  for (const { creel } of sections) {
    const ends = new Map<string, number>();
    for (const stripe of creel) ends.set(stripe.yarn, (ends.get(stripe.yarn) ?? 0) + stripe.ends);
    for (const [yarn, spools] of ends) {
      const counts = uses.get(yarn) ?? [];
      for (let spool = 0; spool < spools; spool += 1) counts[spool] = (counts[spool] ?? 0) + 1;
      uses.set(yarn, counts);
    }
  }
  return uses;
}

/**
 * A striped warp in sections: what stands in the creel for each, and the length of every spool from only the sections that
 * use it.
 *
 * @param input the stripes, the ends of a section, the length of the warp, and what is lost at each section's end
 * @throws QuantityError for a field that is missing, unknown or of another kind
 * @source vogl-2001
 * @example
 * const stripes = [{ yarn: "ash", ends: 30 }, { yarn: "coal", ends: 10 }];
 * creelList({ stripes, endsPerSection: 20, warpLength: yards(8), cutWaste: yards(0) }).spools[0].sections // 2
 */
export function creelList(input: CreelListInput): CreelList {
  const { stripes, ...others } = Object(input) as CreelListInput;
  const declared = {
    endsPerSection: whole("ends", "in one section, one spool each", { atLeast: 1 }),
    warpLength: positive(Length, "of every end, loom waste counted in"),
    cutWaste: atLeastZero(Length, "lost at the end of every section"),
  };
  allTogether(
    () => readInputs("creelList", declared, others),
    () => readYarnStripes("creelList", stripes),
  );
  const { endsPerSection, warpLength, cutWaste } = input;
  const sections = sectionsOf(stripes, endsPerSection);
  const spools = [...usesOf(sections)].flatMap(([yarn, uses]) =>
    uses.map((used, at) => {
      const step = { sections: used, warpLength, cutWaste };
      const made = { calculation: spoolLength, input: step };
      return { yarn, spool: at + 1, sections: used, length: spoolLength(step), step: made };
    }),
  );
  return frozen({ sections, spools });
}
