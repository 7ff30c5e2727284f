// What weavers found wrong in an earlier form of the sheets, tried again: each stands alone.
import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { PlanData } from "../data/plan-data.js";
import { faultsText } from "../job/fault.js";
import { readJob } from "../job/read-job.js";
import { planDifferencesText } from "./differences.js";
import { planHtml } from "./html.js";
import { planPages } from "./plan-pages.js";
import { planText } from "./text.js";

type Change = readonly [from: string | RegExp, to: string];

function changed(text: string, changes: readonly Change[]): string {
  return changes.reduce((so, [from, to]) => {
    const made = so.replace(from, to);
    if (made === so) throw new Error(`nothing to change at ${String(from)}`);
    return made;
  }, text);
}

const napkins = (...changes: readonly Change[]): PlanData =>
  planWarp(jobIn(changed(exampleText("2-hall-napkins"), changes)));
const flat = (plan: PlanData): string => planText(plan, { without: "workings" }).replace(/\s+/gu, " ");
const faults = (text: string): string => {
  const reading = readJob(text);
  return reading.ok ? "" : faultsText(reading.faults);
};

describe("knots that cannot pass", () => {
  // 3360 yd per lb ÷ 80 = 42 yd per lb.
  const heavy = () =>
    napkins(
      ["natural: { count: 2-ply of 8 cotton", "natural: { count: 42 yd per lb"],
      ["madder: { count: 2-ply of 8 cotton", "madder: { count: 42 yd per lb"],
    );

  it("a yarn 80 times heavier is a MUST with its way out", () => {
    expect(flat(heavy())).toMatch(
      /MUST The knots of natural and madder will not pass the reed\. [^.]*(?:Tie behind the reed|thread afresh)[^.]*\./u,
    );
  });

  it("nowhere is it said that such a yarn can be tied on, or is expected to stick", () => {
    expect(flat(heavy())).not.toMatch(/can be tied on|expect sticking/u);
  });

  it("rug wool in a gap of 1 mm does not pass: the thicker thread decides, and two of them do not fit side by side", () => {
    // Nm 3/2: d = 0.9638 mm; 1.3 ÷ 0.9638 = 1.35 threads, fewer than 2; 0.7 × 2 × 0.9638 = 1.349 mm, more than 1.0 mm.
    const rug = flat(
      napkins(
        ["natural: { count: 2-ply of 8 cotton", "natural: { count: 2-ply of 3 metric"],
        ["reed: 10 per inch", "reed: 15 per inch"],
        ["gapInDent: 1.6 mm", "gapInDent: 1.0 mm"],
      ),
    );
    expect(rug).toMatch(/MUST The knots of natural will not pass the reed/u);
    expect(rug).toContain("2 new threads side by side take 1.93 mm of 1 mm");
  });
});

it("black is drawn black and white white where they are seen, and neither where they are not", () => {
  const swatch = (page: string, yarn: string): string | undefined =>
    new RegExp(`fill="url\\(#hatch-([a-z-]+)\\)"[^>]*/>\\s*</svg>\\s*<span>${yarn}</span>`, "u").exec(page)?.[1];
  const names: readonly Change[] = [
    [/natural/gu, "black"],
    [/madder/gu, "white"],
  ];
  const unseen = planHtml(napkins(...names));
  expect(["black", "white"]).not.toContain(swatch(unseen, "black"));
  expect(["black", "white"]).not.toContain(swatch(unseen, "white"));
  const seen = planHtml(
    napkins(
      ...names,
      ["black: { count", 'black: { seen: "#101010", count'],
      ["white: { count", 'white: { seen: "#f4efe4", count'],
      ["indigo: {", 'indigo: { seen: "#2b3a6b",'],
    ),
  );
  expect([swatch(seen, "black"), swatch(seen, "white")]).toEqual(["black", "white"]);
});

it("the page counts first and cuts after, as the text does", () => {
  const page = planHtml(napkins());
  const at = ["old-warp", "winding", "before-cutting", "joining"].map((name) =>
    page.indexOf(`<section class="sheet" id="${name}"`),
  );
  expect(at).not.toContain(-1);
  expect(at).toEqual([...at].sort((one, other) => one - other));
});

it("on a telephone each group is a card: every figure carries its own head, every box and blank can be filled", () => {
  const page = planHtml(napkins());
  const joining = /<section class="sheet" id="joining"[\s\S]*?<\/section>/u.exec(page)?.[0] ?? "";
  // 24 groups.
  expect(joining.match(/data-head="knots"/gu)).toHaveLength(24);
  expect(joining.match(/data-head="dent"/gu)).toHaveLength(24);
  expect(joining.match(/<td class="tick-cell"><input type="checkbox"/gu)).toHaveLength(24);
  expect(joining.match(/aria-label="old ends left over in group \d+"/gu)).toHaveLength(24);
  expect(page).toMatch(/@media screen and \(max-width: 600px\)[\s\S]*tbody tr \{ display: grid/u);
});

it("one colour is one chain where it is asked for, and its counting ties stand at the ends of the groups that are tied", () => {
  const plan = napkins(
    [/chains: by stripe, most: 140 ends/u, "chains: by colour"],
    ["join: {", "join: { order: one colour at a time,"],
  );
  // Madder, 40 and 40 ends in groups of 24 and 16: ties at 24, 40, 64 and 80.
  expect(flat(plan)).toMatch(
    /Chain 2: 80 ends .*?madder 40 10 40 tie the count at 24 \(group 2\), 40 \(group 3\) \[ \] madder 40 10 80 tie the count at 64 \(group 22\), 80 \(group 23\)/u,
  );
  expect(flat(plan)).toContain("pass over so many old ends, those already tied among them");
});

describe("the steps of the trade", () => {
  const at = (text: string, ...lines: readonly string[]): void => {
    const found = lines.map((line) => text.indexOf(line));
    expect(found).not.toContain(-1);
    expect(found).toEqual([...found].sort((one, other) => one - other));
  };
  const behindReed = () =>
    flat(napkins(["knots: in front of the reed", "knots: behind the reed, faces: back of the loom"]));

  it("the lease sticks are tied to each other and to the loom before the warp is slackened", () => {
    at(behindReed(), "Tie the two sticks to each other at both ends, and both to the loom", "Ease the tension");
    const behindHeddles = flat(napkins(["knots: in front of the reed", "knots: behind the heddles"]));
    at(behindHeddles, "Tie the two sticks to each other at both ends, and both to the loom", "Ease the tension");
  });

  it("both pairs of sticks come out before a knot is drawn past them", () => {
    at(behindReed(), "Take both pairs of lease sticks out", "Ease the knots back");
  });

  it("in front of the reed only those sticks are taken out that are there", () => {
    expect(flat(napkins())).toContain(
      "Take the lease sticks out, those of the new warp and any that still hang in the old one",
    );
  });

  it("the back rod is tied up before the cut", () => {
    at(behindReed(), "Tie the back rod up to the back beam now", "Cut behind the reed");
    at(flat(napkins()), "Tie the back rod up to the back beam now", "Cut in front of the reed");
  });

  it("paper or sticks go in while the warp is beamed", () => {
    at(behindReed(), "Wind on from the front", "Lay paper or flat sticks between the layers");
  });

  it("each knot is tugged, and a finger kept between threads wound together", () => {
    at(flat(napkins()), "Keep a finger between the threads wound together", "tug each knot");
  });

  it("whether the old warp reaches is said before the cut", () => {
    at(flat(napkins()), "the old warp must stand 8 in (20 cm) past the reed. It reaches", "Cut in front of the reed");
    expect(flat(napkins(["pastReed: 10 in", "pastReed: 6 in"]))).toMatch(
      /MUST .*?8 in \(20 cm\) past the reed.*?2 in/u,
    );
  });
});

it("what is spared is rounded down and what is needed up", () => {
  const plan = flat(
    napkins(["wasteInFront: 10 in, wasteBehind: 18 in", "wasteInFront: 10.01 in, wasteBehind: 18.24 in"]),
  );
  // In eighths: 18.24 is over 18 1/8, 10.01 over 10.
  expect(plan).toContain("stands in for 18 1/8 in of waste at the other end; the new warp still brings 10 1/8 in");
});

describe("noise", () => {
  it("no thousandths, no source and no sum of another way stand outside the workings", () => {
    for (const name of ["2-hall-napkins", "3-blended-towels", "4-scarves", "8-blankets"]) {
      const text = planText(planWarp(jobIn(exampleText(name))), { without: "workings" });
      expect(text).not.toMatch(/\d\.\d{3}/u);
      expect(text).not.toMatch(/Source:|Added up instead|needed 0|0 packages/u);
    }
  });

  it("no working stands twice, and all of them stand at the back", () => {
    const text = planText(napkins());
    const [, workings = ""] = text.split("WORKINGS AND SOURCES\n");
    expect(workings).toContain("Source:");
    const sums = workings
      .trim()
      .split(/\n\n+/u)
      .map((one) => one.split("\n").slice(1).join("\n"));
    expect(sums.length).toBeGreaterThan(10);
    expect(new Set(sums).size).toBe(sums.length);
  });

  it("knots of one thickness are judged once", () => {
    expect(flat(napkins()).match(/Knots of natural/gu)).toHaveLength(1);
    expect(flat(napkins())).not.toContain("Knots of madder");
  });
});

it("the words are those of the loom", () => {
  const all = ["3-blended-towels", "6-wider-runner", "7-warp-with-faults"].map((name) =>
    flat(planWarp(jobIn(exampleText(name)))),
  );
  for (const text of all)
    expect(text).not.toMatch(/shafts? \d+ to \d+|Both yarns|No two lifts|place \d|mark\/found|, on the __/u);
  expect(all[0]).toMatch(/first shaft last shaft/u);
});

it("a facing that follows from the knots is told, and nobody is asked to choose", () => {
  const plan = flat(napkins(["join: {", "join: { faces: front of the loom,"]));
  expect(plan).toContain(
    "CHECK Tied in front of the reed you face the back of the loom; the job says the front of the loom. Reckoned with the back of the loom.",
  );
  expect(plan).not.toMatch(/choose one/iu);
});

describe("lengths as they are written", () => {
  it("a comma is answered with what to write", () => {
    const said = faults("stripes: [4 oat]\nwinding: { turn: '1,5 cm' }");
    expect(said).toContain("1.5 cm");
    expect(said).not.toContain("locale");
  });

  it("a full stop after the unit is read", () => {
    expect(faults("stripes: [4 oat]\nwinding: { turn: 1.5 in. }")).toBe("");
  });
});

describe("nothing is assumed", () => {
  it("without groups a stripe is one", () => {
    const { figures } = napkins([/^groups: 24\n/mu, ""]);
    expect(figures.tying.groups.value?.length).toBe(figures.loom.stripes.value?.runs.length);
  });

  it("hours are told at a speed that was counted, and not without it", () => {
    expect(flat(napkins())).not.toMatch(/ hours?\b(?!ly)/u);
    // 368 ÷ 200 = 1.84
    expect(flat(napkins(["join: {", "join: { perHour: 200,"]))).toContain("At 200 knots an hour that is 1.84 hours.");
  });

  it("a gap that was not measured is named as what is published", () => {
    expect(flat(napkins(["gapInDent: 1.6 mm", "gapInDent: not measured"]))).toContain(
      "The gap was not measured: it is the published share of the pitch.",
    );
  });
});

describe("units of the job", () => {
  it("a job in centimetres has no inch but in brackets", () => {
    const text = flat(planWarp(jobIn(exampleText("4-scarves"))));
    expect(text.replace(/\(\d+ in\)/gu, "")).not.toMatch(/\d in\b|inch/u);
    expect(text).toContain("30 cm (12 in) behind the heddles");
    expect(text).toContain("Trim the tails of the knots to about 1 cm");
  });

  it("a scale that shows pounds shows ounces with them", () => {
    expect(flat(planWarp(jobIn(exampleText("3-blended-towels"))))).toMatch(/\d lb \d+ oz/u);
    expect(flat(planWarp(jobIn(exampleText("3-blended-towels"))))).not.toMatch(/\d\.\d+ lb/u);
  });
});

it("two plans side by side show what is short of each yarn", () => {
  // 14.8 − 6 = 8.8 oz of natural at nine napkins.
  const text = planDifferencesText(napkins(), napkins(["number: 9", "number: 7"]));
  expect(text).toMatch(/natural: missing +8\.8 oz +\d/u);
});

it("the record names what was short of each yarn", () => {
  const record = planPages(napkins()).find(({ name }) => name === "record");
  const table = record?.blocks.find((block) => block.is === "table");
  expect(table?.is === "table" ? table.heads : []).toContain("was short by");
});
