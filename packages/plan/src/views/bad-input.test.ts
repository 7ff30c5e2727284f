import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { Section } from "./block.js";
import { moreThanAReam } from "./ream.js";
import { planText } from "./text.js";

const napkins = exampleText("2-hall-napkins");

function planned(text: string): string {
  return planText(planWarp(jobIn(text)), { without: "workings" });
}

/** On one line, and the first page apart from the rest. */
function pages(text: string): { readonly first: string; readonly rest: string } {
  const flat = (part: string): string => part.replace(/\n +/gu, " ").replace(/\n/gu, " ");
  const at = text.indexOf("\nSTRIPES\n");
  return { first: flat(text.slice(0, at)), rest: flat(text.slice(at)) };
}

function changed(...changes: readonly (readonly [from: string | RegExp, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    const made = text.replace(from, to);
    if (made === text) throw new Error(`nothing to change at ${String(from)}`);
    return made;
  }, napkins);
}

describe("what cannot be done is told first, with its way out, and the rest is still printed", () => {
  it("a stripe wider than a chain", () => {
    // The middle stripe has 132 ends.
    const { first, rest } = pages(planned(changed([/most: \d+ ends/u, "most: 100 ends"])));
    expect(first).toContain("MUST   Stripe 9 has 132 ends, a chain at most 100. Cut by group, or allow longer chains.");
    for (const heading of ["WINDING LIST", "JOINING LIST", "PIECE TAPE"]) expect(rest).toContain(heading);
  });

  it("a weight limit of a chain below one end", () => {
    const { first, rest } = pages(planned(changed([/most: \d+ ends/u, "most: 0.1 g"])));
    expect(first).toMatch(
      /MUST +The most of a chain is less than one end of natural, madder and indigo weighs: allow a heavier chain/u,
    );
    expect(rest).toContain("JOINING LIST");
  });

  it("a step from peg to peg that a fixed length does not meet", () => {
    // 210 in are 7 steps of 27 in and 21 in.
    const { first, rest } = pages(
      planned(changed([/^warp: \{/mu, "warp: { length: 210 in,"], [/^winding: \{/mu, "winding: { step: 27 in,"])),
    );
    expect(first).toMatch(/CHECK .*27 in.*210 in|CHECK .*210 in.*27 in/u);
    expect(rest).toContain("JOINING LIST");
  });

  it("a yarn 80 times heavier, whose knots pass nowhere", () => {
    // 3360 yd per lb ÷ 80 = 42 yd per lb.
    const heavy = changed(
      ["natural: { count: 2-ply of 8 cotton", "natural: { count: 42 yd per lb"],
      ["madder: { count: 2-ply of 8 cotton", "madder: { count: 42 yd per lb"],
    );
    const { first, rest } = pages(planned(heavy));
    expect(first).toMatch(/MUST +The knots of natural and madder will not pass the reed\. .*thread afresh\./u);
    expect(rest).toContain("JOINING LIST");
  });

  it("a warp tied end by end in groups of one, on more pages than a ream", () => {
    // 6 200 groups are counted and tied: 2 × 6 200 rows, 23 to a page, are 539 pages.
    const { first, rest } = pages(
      planned(`stripes: [6200 oat]
groups: 1
loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }
oldWarp: { ends: 6200 }
join: { knots: in front of the reed, knot: weaver's }
`),
    );
    expect(first).toMatch(
      /^\S.*THE JOB CHECK +Printed, this takes at least 539 pages, more than a ream of 500: print the pages you need, or count in larger groups/u,
    );
    for (const heading of ["COUNT OF THE OLD WARP", "JOINING LIST", "SHAFT CHECK"]) expect(rest).toContain(heading);
    expect(rest).toMatch(/\[ \]=? +6200 +6200 +oat +1 +4 +3100/u);
  });

  it("more pages than a ream of paper", () => {
    const row = { cells: [], isEdge: false, note: null };
    const sheet = (rows: number): Section => ({
      name: "joining",
      heading: "Joining list",
      needs: [],
      isOfJob: true,
      blocks: [
        {
          is: "table",
          caption: "",
          read: "bench",
          ticked: true,
          heads: [],
          rows: Array.from({ length: rows }, () => row),
        },
      ],
    });
    // 23 rows to a page: 11 500 are a ream, 11 546 are 502 pages.
    expect(moreThanAReam([sheet(11_500)])).toEqual([]);
    const [told] = moreThanAReam([sheet(11_546)]);
    expect(told).toMatchObject({ is: "says", as: "CHECK" });
    expect(JSON.stringify(told)).toContain("at least 502 pages, more than a ream of 500: print the pages you need");
    const withWorkings = moreThanAReam([sheet(11_546), { ...sheet(0), name: "workings" }]);
    expect(JSON.stringify(withWorkings)).toContain("more than a ream of 500: leave out the workings");
  });
});
