// Keys of the loom and the join that the nine examples leave out, counted by hand.
import { describe, expect, it } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import type { PlanFigures } from "./plan-data.js";
import { planOf } from "./plan-data.js";

const LOOM = "loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }\n";
const figuresOf = (text: string): PlanFigures => planOf(jobIn(text)).figures;

describe("faults of the old warp", () => {
  it("mend: no leaves a broken place empty, and the shafts go on behind it", () => {
    const { loom, tying } = figuresOf(
      `stripes: [23 oat]\n${LOOM}oldWarp: { ends: 23, faults: [{ after: 11, is: broken, mend: no }] }`,
    );
    // 23 + 1 = 24 places, 23 of them take an end; place 12 on shaft 4 is the empty one, so end 12 stands on shaft 1.
    expect([loom.oldPlaces.value, loom.places.value, tying.knots.value, loom.dents.value]).toEqual([24, 23, 23, 12]);
    expect(loom.shafts.value?.shafts.slice(9, 14)).toEqual([2, 3, 1, 2, 3]);
    expect(tying.check.value?.rows.map(({ ends }) => ends)).toEqual([6, 6, 6, 5]);
  });
  it("mend: yes adds the place of an end left out, with a partner to make first", () => {
    const { loom, tying } = figuresOf(
      `stripes: [24 oat]\n${LOOM}oldWarp: { ends: 23, faults: [{ after: 11, is: left out, mend: yes }] }`,
    );
    expect([loom.oldPlaces.value, loom.places.value, tying.knots.value]).toEqual([23, 24, 24]);
    // Its shaft by the threading is the fourth, its dent that of the end before.
    expect(tying.partners.value?.map(({ firstEnd, shafts, dents }) => [firstEnd, shafts, dents])).toEqual([
      [12, [4], [6]],
    ]);
  });
  it("left out and not mended, the threading jumps", () => {
    const { loom } = figuresOf(
      `stripes: [23 oat]\n${LOOM}oldWarp: { ends: 23, faults: [{ after: 11, is: left out }] }`,
    );
    expect(loom.places.value).toBe(23);
    // End 11 on shaft 3, end 12 on shaft 1: the fourth has none there.
    expect(loom.shafts.value?.shafts.slice(9, 14)).toEqual([2, 3, 1, 2, 3]);
  });
  it("mend: yes puts an end right that stands on another shaft", () => {
    const job = (mend: string) =>
      `stripes: [24 oat]\n${LOOM}oldWarp: { ends: 24, faults: [{ end: 8, is: on another shaft, shaft: 1${mend} }] }`;
    const lifts = (text: string) => figuresOf(text).tying.check.value?.rows.map(({ ends }) => ends);
    expect(lifts(job(""))).toEqual([7, 6, 6, 5]);
    expect(lifts(job(", mend: yes"))).toEqual([6, 6, 6, 6]);
  });
  it("an end in another dent is in that dent", () => {
    const job = (mend: string) =>
      `stripes: [24 oat]\n${LOOM}oldWarp: { ends: 24, faults: [{ end: 8, is: in another dent, dent: 5${mend} }] }`;
    const dent = (text: string) => JSON.stringify(figuresOf(text).loom.dentOf.value);
    expect(dent(job(""))).not.toBe(dent(job(", mend: yes")));
    expect(figuresOf(job("")).loom.dents.value).toBe(12);
  });
});

describe("ends at the sides", () => {
  const tied = (sides: string, stripes = "36 oat") =>
    figuresOf(`stripes: [${stripes}]\n${LOOM}oldWarp: { ends: 24 }\njoin: { sides: ${sides} }`);
  it("both: half each in whole repeats, the odd one after the last", () => {
    // 12 more are 3 repeats of 4, which are whole dents of 2: 1 before, 2 after.
    expect(tied("both").loom.sides.value).toEqual({ before: 4, after: 8 });
  });
  it("before end 1: old end 1 meets new end 13", () => {
    const { loom, tying } = tied("before end 1");
    expect(loom.sides.value).toEqual({ before: 12, after: 0 });
    expect(loom.table.value?.stretches.find(({ oldEnd }) => oldEnd === 1)?.newEnd).toBe(13);
    expect(tying.knots.value).toBe(36);
  });
  it("numbers: more before, fewer after, and what is open in the stripes filled by them", () => {
    const { loom, yarn } = tied("{ before: 8 more, after: 4 fewer }", "4 oat, the rest rose");
    // 24 + 8 − 4 = 28 places.
    expect([loom.ends.value, yarn["rose"]?.ends.value]).toEqual([28, 24]);
    expect(loom.sides.value).toEqual({ before: 8, after: -4 });
  });
});

describe("threadings and sleys written whole", () => {
  it("two threadings heddle by heddle: second ends go on the same knot", () => {
    const { loom, tying } = figuresOf(
      "stripes: [24 oat]\nloom: { threading: [1, 2, { repeat: 4, of: [1, 2, 3, 4] }, 3, 4] }\noldWarp: { ends: 20 }\ncloth: { threading: [2 ends on 1, 2 ends on 2, { repeat: 4, of: [1, 2, 3, 4] }, 2 ends on 3, 2 ends on 4] }",
    );
    // 20 heddles each, so nothing at the sides; 4 of them take two new ends on one knot.
    expect([loom.sides.value, tying.knots.value, loom.pairs.value?.length]).toEqual([{ before: 0, after: 0 }, 20, 4]);
    expect(tying.check.value?.rows.map(({ ends }) => ends)).toEqual([6, 6, 6, 6]);
  });
  it("a pair on the loom that the cloth has not: the later old end is cut back", () => {
    const { loom, tying } = figuresOf(
      "stripes: [20 oat]\nloom: { threading: [2 ends on 1, 2 ends on 2, { repeat: 4, of: [1, 2, 3, 4] }, 2 ends on 3, 2 ends on 4] }\noldWarp: { ends: 24 }\ncloth: { threading: [1, 2, { repeat: 4, of: [1, 2, 3, 4] }, 3, 4] }",
    );
    expect([loom.sides.value, tying.knots.value]).toEqual([{ before: 0, after: 0 }, 20]);
    expect(tying.check.value?.rows.map(({ ends }) => ends)).toEqual([5, 5, 5, 5]);
  });
  it("floating and doubled selvedges: every thread counts", () => {
    const { loom, tying } = figuresOf(
      `stripes: [26 oat]
loom:
  reed: 10 per inch
  sley: [1 dent at 1, 1 dent at 4, { repeat: the rest, of: [2] }, 1 dent at 4, 1 dent at 1]
  threading: [floating, 2 ends on 3, 2 ends on 4, { repeat: the rest, of: [1, 2, 3, 4] }, 2 ends on 1, 2 ends on 2, floating]
oldWarp: { ends: 26 }`,
    );
    // 26 − 10 = 16 in the middle, 4 on each shaft and 2 more by the selvedges; 1 + 1 + 16/2 + 1 + 1 dents.
    expect(tying.check.value?.rows.map(({ shaft, ends }) => [shaft, ends])).toEqual([
      [1, 6],
      [2, 6],
      [3, 6],
      [4, 6],
      ["floating", 2],
    ]);
    expect(loom.dents.value).toBe(12);
  });
  it("empty dents count for the width", () => {
    const { loom } = figuresOf(
      "stripes: [32 oat]\nloom: { reed: 10 per inch, sley: [8 dents at 2, 3 dents empty, 8 dents at 2] }\noldWarp: { ends: 32 }",
    );
    expect(loom.dents.value).toBe(19);
    expect(loom.widthInReed.value?.value).toBe("1.9");
  });
  it("a stretch by its ends: the last dent is not full", () => {
    const { loom } = figuresOf(
      "stripes: [16 oat]\nloom: { reed: 10 per inch, sley: [10 ends at 3, 6 ends at 2] }\noldWarp: { ends: 16 }",
    );
    // 3 + 3 + 3 + 1, then 2 + 2 + 2.
    expect(loom.dents.value).toBe(7);
  });
});

describe("winding", () => {
  it("chains every 40 ends", () => {
    const { winding } = figuresOf(
      "stripes: [30 oat, 100 rose, 30 oat]\ngroups: 10\nwinding: { threads: 2, chains: every 40 ends }",
    );
    expect(winding.chains.value?.chains.length).toBe(4);
  });
  it("the raddle at 4.1 ends to the cm: 123 up to 30 cm, 246 up to 60 cm", () => {
    // 10 × 4.1 = 41, 20 × 4.1 = 82, 30 × 4.1 = 123 exactly: no end lost to a double.
    const { winding } = figuresOf("stripes: [246 oat]\ncloth: { sett: 4.1 per cm }\nwinding: { raddle: 1 per 30 cm }");
    expect(winding.raddle.value?.map(({ ends }) => ends)).toEqual([123, 246]);
  });
});
