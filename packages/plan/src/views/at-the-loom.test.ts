// What the sheets promise whoever stands at the loom, one thing each.
import { describe, expect, it } from "vitest";
import { examplePlan } from "#ci/example-plans.js";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { PlanData } from "../data/plan-data.js";
import type { Block, Section } from "./block.js";
import { planPages } from "./plan-pages.js";
import { planText } from "./text.js";

type Change = readonly [from: string | RegExp, to: string];

function napkins(...changes: readonly Change[]): PlanData {
  const text = exampleText("2-hall-napkins");
  return planWarp(
    jobIn(
      changes.reduce((so, [from, to]) => {
        const made = so.replace(from, to);
        if (made === so) throw new Error(`nothing to change at ${String(from)}`);
        return made;
      }, text),
    ),
  );
}

const flat = (plan: PlanData): string => planText(plan, { without: "workings" }).replace(/\s+/gu, " ");
const page = (plan: PlanData, name: string): Section => {
  const found = planPages(plan).find((one) => one.name === name);
  if (found === undefined) throw new Error(`no page ${name}`);
  return found;
};
const tables = ({ blocks }: Section) => blocks.flatMap((block) => (block.is === "table" ? [block] : []));

describe("winding", () => {
  const chains = (plan: PlanData): readonly string[] =>
    tables(page(plan, "winding"))
      .map(({ caption }) => caption)
      .filter((caption) => caption.startsWith("Chain"));

  it("is cut at stripes, at groups, by colour or every so many ends, as the job says", () => {
    // 24 + 40 + 3 × 18 = 118, 132, 118: no chain over 140.
    expect(chains(napkins())).toEqual([
      "Chain 1: 118 ends, ends 1–118",
      "Chain 2: 132 ends, ends 119–250",
      "Chain 3: 118 ends, ends 251–368",
    ]);
    const most = "chains: by stripe, most: 140 ends";
    expect(chains(napkins([most, "chains: by group, most: 100 ends"])).length).toBe(4);
    // 252 natural, 80 madder, 36 indigo.
    expect(chains(napkins([most, "chains: by colour"]))).toEqual([
      "Chain 1: 252 ends",
      "Chain 2: 80 ends",
      "Chain 3: 36 ends",
    ]);
    // 368 ÷ 92 = 4.
    expect(chains(napkins([most, "chains: every 92 ends"])).length).toBe(4);
  });

  it("ties the count where a group ends and nowhere else", () => {
    const plan = napkins();
    const ends = new Set(plan.figures.tying.groups.value?.map(({ group }) => group));
    const named = [...flat(plan).matchAll(/\(group (\d+)\)/gu)].map(([, group]) => Number(group));
    expect(new Set(named)).toEqual(ends);
    expect(named).toHaveLength(24);
  });
});

describe("counting and tying", () => {
  it("new ends without an old one, and how they get it, stand before the first knot", () => {
    const wider = planPages(examplePlan("6-wider-runner"));
    const names = wider.map(({ name }) => name);
    expect(names.indexOf("partners")).toBeGreaterThan(-1);
    expect(names.indexOf("partners")).toBeLessThan(names.indexOf("joining"));
    const [first] = tables(page(examplePlan("6-wider-runner"), "partners"));
    // 264 − 240 = 24 ends after the last.
    expect(first?.rows.map(({ cells }) => cells[0])).toEqual([["241–264"]]);
  });

  it("beside each edge stands the end from which to look", () => {
    const knots = tables(page(napkins(), "joining")).find(({ read }) => read === "bench");
    const at = knots?.heads.indexOf("look from") ?? -1;
    for (const { isEdge, cells } of knots?.rows ?? []) expect(cells[at]?.[0] !== "").toBe(isEdge);
    expect(knots?.rows.filter(({ isEdge }) => isEdge)).toHaveLength(17);
  });

  it("from the last end the shaft and the dent are those of the end tied last", () => {
    const knots = tables(page(napkins(["join: {", "join: { order: from the last end,"]), "joining")).find(
      ({ read }) => read === "bench",
    );
    const [first] = knots?.rows ?? [];
    const cell = (head: string) => first?.cells[knots?.heads.indexOf(head) ?? -1]?.[0];
    // Group 24 is ends 345 to 368: 345 is the first of a round of four, in dent 173.
    expect([cell("new ends"), cell("shaft"), cell("dent")]).toEqual(["368–345", 1, 173]);
  });

  it("ends dropped at a side are counted with the others, cut back first and passed over", () => {
    const plan = napkins(["  - 24 natural", "  - 16 natural"], ["join: {", "join: { sides: before end 1,"]);
    const [counted] = tables(page(plan, "old-warp"));
    expect(counted?.rows[0]?.cells.slice(0, 3)).toEqual([[1], ["1–24"], [24]]);
    const text = flat(plan);
    expect(text.indexOf("Cut back old 1–8 first")).toBeLessThan(text.indexOf("Begin at end 1"));
    expect(text).toContain("! pass over old 1–8: cut back before");
  });

  it("ends threaded by themselves have no knot", () => {
    const text = flat(
      napkins(["  - 24 natural", "  - 32 natural"], ["join: {", "join: { sides: both, partner: thread it itself,"]),
    );
    expect(text).toContain("368 knots for 376 ends.");
    expect(text).toContain("! pass over new 1–4: threaded by themselves, no knot");
    expect(text).not.toContain("tie new 1–4");
  });
});

describe("what is asked", () => {
  it("which way she faces is asked behind the reed alone, and the side of end 1 where chains are laid", () => {
    const asked = (plan: PlanData): string => JSON.stringify(planPages(plan).map(({ needs }) => needs));
    const knots = (where: string): Change => ["knots: in front of the reed", `knots: ${where}`];
    expect(asked(napkins())).not.toContain("faces");
    expect(asked(napkins(knots("behind the heddles")))).not.toContain("faces");
    expect(asked(napkins(knots("behind the reed")))).toContain("faces");
    expect(asked(napkins(["  endOneOn: left # seen from the front\n", ""]))).toContain("endOneOn");
  });
});

describe("after the last knot", () => {
  it("one crossed pair and one empty heddle are mended alone", () => {
    const text = flat(napkins());
    expect(text).toMatch(/Two ends crossed, each on the other's shaft: untie the two .*? tie them on again\./u);
    expect(text).toMatch(
      /One heddle empty, and an end too few on its shaft: hang a thread .*? weight it over the back beam\./u,
    );
  });

  it("the shaft check comes before the first pick at every position", () => {
    for (const knots of ["in front of the reed", "behind the reed, faces: back of the loom", "behind the heddles"]) {
      const text = flat(
        napkins(
          ...(knots === "in front of the reed" ? [] : [["knots: in front of the reed", `knots: ${knots}`] as const]),
        ),
      );
      const weave = text.search(/\[ \] Weave /u);
      expect(text.indexOf("SHAFT CHECK")).toBeLessThan(weave);
    }
  });

  it("a width at the fell an inch off plans the finished width again", () => {
    const found = "found: { firstInches: { width: 17 in }, width: { atFell: 16 in, finished: 14 in } }\nwinding:";
    // 16 to 14 in is an eighth; 17 × 7/8 = 14.875 in, where 15 5/8 in were planned.
    expect(flat(napkins(["winding:", found]))).toContain(
      "Finished width, planned again: 14 7/8 in, with 12.5 % lost from the fell to finished.",
    );
    // Without a washed sample nothing is taken for granted: it is asked for, and what the wash may take is said.
    const unwashed = flat(napkins(["winding:", "found: { firstInches: { width: 17 in } }\nwinding:"]));
    expect(unwashed).toContain("Wash a sample of this cloth");
    // 15.64 ÷ 17 = 0.92.
    expect(unwashed).toContain("the wash may take 8 % of that width");
  });
});

describe("threaded afresh", () => {
  const afresh: readonly Change[] = [
    [/oldWarp:[\s\S]*?\n\n/u, "oldWarp: none\n\n"],
    [/join: .*\n/u, ""],
  ];
  const headings = (plan: PlanData): readonly string[] => planPages(plan).map(({ heading }) => heading);

  it("has a threading list and no word of knots", () => {
    expect(headings(napkins(...afresh))).toContain("Threading list");
    expect(headings(napkins(...afresh))).not.toContain("Joining list");
    const steps = planPages(napkins(...afresh)).flatMap(({ blocks }) =>
      blocks.flatMap((block: Block) =>
        block.is === "says" && block.as === "step" ? [JSON.stringify(block.says)] : [],
      ),
    );
    for (const one of steps) expect(one).not.toMatch(/knot|old warp|old end/u);
  });

  it("is beamed after it is threaded, or before where a raddle spreads it", () => {
    const order = (plan: PlanData, ...lines: readonly string[]): void => {
      const text = flat(plan);
      const at = lines.map((line) => text.indexOf(line));
      expect(at).not.toContain(-1);
      expect(at).toEqual([...at].sort((one, other) => one - other));
    };
    order(napkins(...afresh), "THREADING LIST", "back rod", "wind on", "Lay paper", "front rod");
    order(
      napkins(...afresh, ["winding: {", "winding: { raddle: 2 per inch,"]),
      "back rod",
      "Beam the warp now",
      "Lay paper",
      "THREADING LIST",
      "front rod",
    );
  });
});
