import { readFileSync } from "node:fs";
import { inches, QuantityError } from "@thrum/maths";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planWarp } from "../plan/plan-warp.js";
import { chainGroups, spansOf } from "./chain-index.js";
import { joiningPages } from "./joining-pages.js";
import { planHtml } from "./plan-html.js";
import { raddleRows } from "../plan/raddle.js";
import { signsOf } from "./signs.js";
import { EIGHTHS_OF_AN_INCH, MILLIMETRES, tapeStrips } from "./tape-strips.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

const plan = planWarp(napkins());

describe("the joining pages of the napkins", () => {
  const pages = joiningPages(plan.groups);

  it("hold at most 20 lines each and every end once, carried from page to page", () => {
    const groups = pages.flatMap(({ lines }) => lines.filter((line) => line !== "rest"));
    expect(groups).toEqual(plan.groups);
    expect(Math.max(...pages.map(({ lines }) => lines.length))).toBeLessThanOrEqual(20);
    // 20 lines: 11 groups to end 164, a rest, 4 to end 250, then 6 + 12 + 6 + 12 ends.
    expect(pages.map(({ broughtForward }) => broughtForward)).toEqual([0, 286]);
    expect(pages.at(-1)?.carriedForward).toBe(368);
  });

  it("give a rest once 45 minutes of knots are tied, 150 at 200 an hour", () => {
    const lines = pages.flatMap((page) => page.lines);
    const untilRest = lines.slice(0, lines.indexOf("rest"));
    // Groups end at 140 and 164: the first of them past 150.
    expect(untilRest.at(-1)).toMatchObject({ lastEnd: 164 });
    expect(lines.at(-1)).not.toBe("rest");
  });

  it("say which ends each chain takes, and in which groups", () => {
    const groupOf = (end: number): number => plan.groups.find((one) => end <= one.lastEnd)?.group ?? 0;
    expect(chainGroups(plan).map(({ firstEnd, lastEnd }) => [firstEnd, lastEnd])).toEqual([
      [1, 118],
      [119, 250],
      [251, 368],
    ]);
    for (const { firstEnd, lastEnd, firstGroup, lastGroup } of chainGroups(plan)) {
      expect([firstGroup, lastGroup]).toEqual([groupOf(firstEnd), groupOf(lastEnd)]);
    }
  });

  it("count off the ends to pass over when one colour is tied before the others", () => {
    expect(spansOf("madder", plan.groups)).toEqual([
      { passOver: 24, firstEnd: 25, lastEnd: 64, ends: 40 },
      { passOver: 240, firstEnd: 305, lastEnd: 344, ends: 40 },
    ]);
    const spans = plan.yarns.flatMap(({ name }) => spansOf(name, plan.groups));
    expect(spans.reduce((total, { ends }) => total + ends, 0)).toBe(368);
  });
});

describe("a tape of paper", () => {
  it("is cut into strips that meet where they are joined, 19.444 in of 190 mm each", () => {
    // 17.5 ÷ 0.9 = 19.444 in = 493.89 mm: 190 + 190 + 113.89.
    const strips = tapeStrips(493.888, EIGHTHS_OF_AN_INCH);
    expect(strips.map(({ from, to }) => [from, to])).toEqual([
      [0, 190],
      [190, 380],
      [380, 493.888],
    ]);
    const figures = strips.flatMap(({ ticks }) => ticks.map(({ figure }) => figure)).filter((figure) => figure !== "");
    expect(figures).toEqual(Array.from({ length: 20 }, (_, at) => String(at)));
  });

  it("has its long ticks at whole centimetres or inches", () => {
    const long = (division: typeof MILLIMETRES): readonly number[] =>
      tapeStrips(60, division).flatMap(({ ticks }) =>
        ticks.filter(({ reach }) => reach === "long").map(({ at }) => at),
      );
    expect(long(MILLIMETRES)).toEqual([0, 10, 20, 30, 40, 50, 60]);
    expect(long(EIGHTHS_OF_AN_INCH)).toEqual([0, 25.4, 50.8]);
  });
});

describe("the sheets", () => {
  it("have a raddle only where the warp is beamed before it is tied", () => {
    expect(planHtml(plan)).not.toContain('id="raddle"');
    const loom = { ...napkins().loom, knotsTied: "behind the heddles", weaverFaces: "front of the loom" } as const;
    const behind = planWarp({ ...napkins(), loom });
    const text = planHtml(behind);
    expect(text).toContain('id="raddle"');
    expect(text).toContain("tie from right to left");
    // 18 whole inches of 20 ends and 0.4 of one with the last 8.
    expect(raddleRows(behind).at(-2)).toEqual(["18 in", 360]);
    expect(raddleRows(behind).at(-1)).toEqual(["19 in", 368]);
  });

  it("mark the hems on the tape: 3/4 in finished is 0.833 in at weaving tension, divided by 0.9", () => {
    // 3/4 ÷ 0.9 = 0.8333 in = 21.167 mm below the beginning; 493.889 − 21.167 − 2 × 190 = 92.722 mm down the third strip.
    const text = planHtml(plan);
    const drawnAt = [...text.matchAll(/<path d="M0 ([\d.]+)h28"/gu)].map(([, y]) => Number(y) - 6);
    expect(drawnAt).toEqual([21.167, 92.722]);
    expect(text).toContain("The hem at each end of it takes 0.833 in, by the tape about 7/8 in of that.");
    const unhemmed = planHtml(planWarp({ ...napkins(), pieces: { ...napkins().pieces, hemEachEnd: inches(0) } }));
    expect(unhemmed).toContain("There is no hem.");
    expect(unhemmed).not.toMatch(/<path d="M0 [\d.]+h28"/u);
  });

  it("say how long each end is where it is wound, and end every stripe of the joining with a heavy rule", () => {
    const text = planHtml(plan);
    expect(text).toContain("<b>5.57 yd</b> from end to end");
    // 17 stripes: the middle one, mirrored, is one of 132.
    expect(text.match(/<tr class="stripe-ends">/gu)).toHaveLength(17);
  });

  it("run nothing, ask for nothing from outside and name each part once", () => {
    const text = planHtml(plan);
    expect(text).not.toMatch(/<script|<link|<img|<iframe|\bon[a-z]+=|https?:|@import|url\((?!#)/u);
    const names = [...text.matchAll(/ id="([^"]*)"/gu)].map(([, name]) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it("tell the colours apart by letter and hatch, whatever their names", () => {
    const [one] = plan.yarns;
    if (one === undefined) throw new Error("a plan without yarn");
    const named = Array.from({ length: 40 }, (_, at) => ({ ...one, name: `blue ${String(at)}` }));
    const letters = [...signsOf({ ...plan, yarns: named }).values()].map(({ letter }) => letter);
    expect(new Set(letters).size).toBe(40);
  });

  it("are refused for a copy of a plan", () => {
    expect(() => planHtml({ ...plan })).toThrow(QuantityError);
  });
});

describe("text from the job in a page", () => {
  const rude = fc.string({
    unit: fc.constantFrom(
      "<",
      ">",
      "&",
      '"',
      "'",
      "`",
      "</style>",
      "<script>",
      "\u0000",
      "\u202e",
      "]]>",
      "${",
      "é",
      "𝔸",
    ),
    minLength: 1,
    maxLength: 8,
  });
  /** Everything between the angle brackets of a page: with harmless words the same list. */
  const tagsOf = (text: string): readonly string[] => text.match(/<[^>]*>/gu) ?? [];

  it("never becomes a tag or an attribute", () => {
    const harmless = tagsOf(pageWith("plain", "plain", "plain"));
    fc.assert(
      fc.property(rude, rude, rude, (title, note, yarn) => {
        const text = pageWith(`t${title}`, `n${note}`, `y${yarn.slice(0, 20)}`);
        expect(tagsOf(text)).toEqual(harmless);
        expect(text).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}]/u);
      }),
      { numRuns: 60 },
    );
  });

  function pageWith(title: string, note: string, yarn: string): string {
    const job = napkins();
    const { madder, ...others } = job.yarns;
    if (madder === undefined) throw new Error("the example has no madder");
    const stripes = [
      { colour: yarn, ends: 184 },
      { colour: "natural", ends: 92 },
      { colour: "indigo", ends: 92 },
    ];
    const winding = { ...job.winding, mostEndsInChain: 200 };
    return planHtml(planWarp({ ...job, title, note, yarns: { ...others, [yarn]: madder }, stripes, winding }));
  }
});
