import { lookUpIn } from "../core/look-up.js";
import type { Path } from "../core/source.js";
import type { PlanData } from "../data/plan-data.js";
import { NAMES } from "../data/listed.js";
import * as join from "../figures/join.js";
import { PLAN } from "../figures/list.js";
import { pathText } from "../job/fault.js";
import { writtenPath } from "../job/written-path.js";
import type { Block, Section } from "./block.js";
import { VIEWS } from "./pages.js";
import { signsOf } from "./signs.js";
import type { Signs } from "./signs.js";
import { unitsOf } from "./units.js";
import { moreThanAReam } from "./ream.js";
import { workingsSection } from "./workings-page.js";

/** What may be left out of what is printed. */
export interface PrintOptions {
  readonly without?: "workings";
}

/** A plan ready for a printer. */
export interface Printed {
  readonly title: string;
  readonly sections: readonly Section[];
  readonly signs: Signs;
}

function needsOnce(needs: readonly Path[]): readonly Path[] {
  return [...new Map(needs.map(writtenPath).map((path) => [pathText(path), path])).values()];
}

function waitsFor(needs: readonly Path[]): string {
  const texts = needs.map(pathText);
  const shown = texts.slice(0, MOST_NEEDS).join(", ");
  return texts.length > MOST_NEEDS ? `${shown} and ${String(texts.length - MOST_NEEDS)} more` : shown;
}

const MOST_NEEDS = 6;

function waits(says: string): Block {
  return { is: "says", as: "WAITS", says: [says] };
}

/** The first page also says which of the others wait, and for what. */
function told(sections: readonly Section[]): readonly Section[] {
  const [first, ...others] = sections;
  if (first === undefined) return [];
  const waiting = others.filter(({ needs }) => needs.length > 0);
  const lines = waiting.map(({ heading, needs }) => waits(`${heading}: ${waitsFor(needs)}.`));
  const withNeeds = others
    .filter(({ isOfJob }) => isOfJob)
    .map((one) =>
      one.needs.length === 0 ? one : { ...one, blocks: [...one.blocks, waits(`${waitsFor(one.needs)}.`)] },
    );
  return [{ ...first, blocks: [...first.blocks, ...lines] }, ...withNeeds];
}

/** The sections of a plan, read from its data alone. */
export function sectionsOf(plan: PlanData, { without }: PrintOptions = {}): Printed {
  const look = lookUpIn(plan, { names: NAMES, scopes: PLAN.scopes });
  const at = { ...look, units: unitsOf(plan.job), row: null };
  const standing = look.see(join.standing);
  const isAfresh = standing.is === "there" && standing.value === "afresh";
  const pages = VIEWS.map(({ name, heading, afresh, blocks }): Section => {
    const built = blocks.map((block) => block.build(at));
    return {
      name,
      heading: isAfresh ? (afresh ?? heading) : heading,
      blocks: built.flatMap((one) => one.blocks),
      needs: needsOnce(built.flatMap((one) => one.needs)),
      isOfJob: built.some(({ isOfJob }) => isOfJob),
    };
  });
  const sections = without === "workings" ? pages : [...pages, workingsSection(plan)];
  const yarns = look.rows("yarn");
  const names = yarns.is === "there" ? yarns.value.map(({ name }) => name) : [];
  const [first, ...others] = told(sections);
  const all =
    first === undefined
      ? []
      : [{ ...first, blocks: [...moreThanAReam([first, ...others]), ...first.blocks] }, ...others];
  return { title: plan.job.title ?? "A warp", sections: all, signs: signsOf(names, plan.job) };
}
