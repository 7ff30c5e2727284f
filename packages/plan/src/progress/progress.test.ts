import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { faultText } from "../job/fault.js";
import { knotsTied } from "./knots-tied.js";
import { miscounts } from "./miscount.js";
import type { Progress } from "./progress.js";
import { progressText, readProgress } from "./read-progress.js";
import { stillHolds } from "./still-holds.js";
import { isTicked, tickedOff, untick } from "./ticks.js";

const napkins = readFileSync("examples/jobs/2-hall-napkins.progress.yaml", "utf8");

function progressIn(text: string): Progress {
  const reading = readProgress(text);
  if (!reading.ok) throw new Error(reading.faults.map(faultText).join("\n"));
  return reading.value;
}

function faultsOf(text: string): readonly string[] {
  const reading = readProgress(text);
  return reading.ok ? [] : reading.faults.map(faultText);
}

const progress = progressIn(napkins);
const groups = progress.groups ?? [];
/** A stripe is a run of groups of one yarn, none of which but its last is smaller than 24. */
const inStripes = groups.reduce<{ ends: number; stripe: number }[]>((done, { ends, yarns }, at) => {
  const before = groups[at - 1];
  const goesOn = before?.yarns[0] === yarns[0];
  return [...done, { ends, stripe: (done.at(-1)?.stripe ?? 0) + (goesOn ? 0 : 1) }];
}, []);

describe("a progress file", () => {
  it("of the napkins is read, written and read again as the same", () => {
    expect(groups.map(({ ends }) => ends).reduce((sum, ends) => sum + ends, 0)).toBe(368);
    expect(groups).toHaveLength(24);
    expect(progress).toMatchObject({ chains: [118, 132, 118], wound: "all", tied: [{ from: 1, to: 8 }], woven: 0 });
    expect(progressIn(progressText(progress))).toEqual(progress);
    expect(progressText(progressIn(progressText(progress)))).toBe(progressText(progress));
  });

  it("refuses a tick beyond the last group, by its line", () => {
    expect(faultsOf(napkins.replace("tied: 1 to 8", "tied: 1 to 6, 25"))).toEqual([
      "line 13, tied: expected groups up to 24, the last, received 25. Take the tick away, or look whether it is of another job.",
    ]);
    expect(faultsOf("job: a.yaml\nchains: [3, 4]\nwound: 1 to 3")).toHaveLength(1);
    expect(faultsOf("tied: all")).toEqual(["line 1, job: expected job in this group, received nothing. Add job."]);
    expect(faultsOf("")).toHaveLength(1);
    expect(faultsOf("job: a\ntied: 6 to 1")[0]).toContain("1 to 6, 8, or all, or none");
  });

  it("counts the knots of groups ticked and of the group in work", () => {
    // Groups 1 to 8 are 24 + 24 + 16 + 12 + 6 + 12 + 6 + 12 = 112 ends, and 5 knots of group 9.
    expect(knotsTied(progress, groups)).toBe(117);
  });
});

describe("ticks", () => {
  it("are joined and parted", () => {
    expect(tickedOff([{ from: 1, to: 6 }], 8)).toEqual([
      { from: 1, to: 6 },
      { from: 8, to: 8 },
    ]);
    expect(tickedOff([{ from: 1, to: 6 }], 7)).toEqual([{ from: 1, to: 7 }]);
    expect(untick("all", 3, 5)).toEqual([
      { from: 1, to: 2 },
      { from: 4, to: 5 },
    ]);
    expect([isTicked("all", 9), isTicked([{ from: 1, to: 3 }], 4), isTicked(undefined, 1)]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("hold up to the first group that differs; the others are of an older plan", () => {
    const changed = groups.map((one, at) => (at === 4 ? { ...one, yarns: ["plum"] } : one));
    const now = { groups: changed, chains: [118, 250] };
    const held = stillHolds(progress, now);
    expect([held.groups, held.chains]).toEqual([4, 1]);
    expect([held.olderGroups[0], held.olderGroups.at(-1), held.olderChains]).toEqual([5, 24, [2, 3]]);
    expect(stillHolds(progress, { groups, chains: [118, 132, 118] })).toMatchObject({
      groups: 24,
      chains: 3,
      olderGroups: [],
    });
  });
});

describe("a miscount at the edge of a stripe", () => {
  it("is looked for first in a group that was counted odd", () => {
    // An old end is left over at the edge of group 9, where 5 of 6 indigo were counted in the chain.
    expect(miscounts(progress, inStripes, "from end 1")).toEqual([
      {
        group: 9,
        seen: { old: 1, new: 0 },
        lookFor: "a loose new end",
        means: ["a new end was passed over", "two new ends lie in one knot", "the chain is short"],
        odd: [{ group: 9, firstEnd: 113, lastEnd: 118, old: 0, new: -1 }],
        among: [{ group: 9, firstEnd: 113, lastEnd: 118 }],
        says: "1 old left, no new: a new end was passed over, or two new ends lie in one knot; else the chain is short. Look for a loose new end in ends 113 to 118. Group 9, ends 113 to 118, was counted with 1 new end too few: begin there.",
        untie: "All before end 113 agreed. Untie no more than group 9.",
      },
    ]);
  });

  it("lies after the last edge that agreed: at the edge of group 15, in ends 119 to 250", () => {
    const seen: Progress = { job: "a", leftOver: [{ group: 15, new: 1 }] };
    const [found] = miscounts(seen, inStripes, "from end 1");
    expect([found?.among[0]?.firstEnd, found?.among.at(-1)?.lastEnd, found?.lookFor]).toEqual([
      119,
      250,
      "a bare old end",
    ]);
  });

  it("reaches past an edge that did not agree either, and leaves out groups whose both counts were right", () => {
    const leftOver = [
      { group: 9, old: 1 },
      { group: 15, old: 1 },
    ];
    const seen: Progress = { job: "a", leftOver, counted: { old: "all", new: [{ from: 1, to: 9 }] } };
    const [, found] = miscounts(seen, inStripes, "from end 1");
    expect(found?.among.map(({ group }) => group)).toEqual([10, 11, 12, 13, 14, 15]);
    const uncounted: Progress = { job: "a", leftOver };
    expect(miscounts(uncounted, inStripes, "from end 1")[1]?.among[0]?.firstEnd).toBe(113);
    expect(miscounts(uncounted, inStripes, "from the last end")[0]?.among.at(-1)?.lastEnd).toBe(250);
    expect(miscounts(uncounted, inStripes, "one colour at a time")[1]?.among[0]?.firstEnd).toBe(119);
  });

  it("is said with how much may be untied", () => {
    const [found] = miscounts({ job: "a", leftOver: [{ group: 15, old: 1 }] }, inStripes, "from end 1");
    expect(found?.says).toBe(
      "1 old left, no new: a new end was passed over, or two new ends lie in one knot; else the chain is short. Look for a loose new end in ends 119 to 250.",
    );
    expect(found?.untie).toBe("All before end 119 agreed. Untie no more than groups 10 to 15.");
    const first = miscounts({ job: "a", leftOver: [{ group: 1, new: 2 }] }, inStripes, "from end 1")[0];
    expect(first?.untie).toBe("No edge was held before it. Untie no more than group 1.");
  });

  it("holds what was counted on the old warp against the threads that are counted there", () => {
    // Two places of one group without an old end: 22 threads are right, 21 one too few.
    const faults = inStripes.map((one, at) => (at === 9 ? { ...one, oldThreads: one.ends - 2 } : one));
    const progress: Progress = {
      job: "a",
      leftOver: [{ group: 15, new: 1 }],
      counted: { odd: [{ group: 10, old: 21 }] },
    };
    expect(miscounts(progress, faults, "from end 1")[0]?.odd).toMatchObject([{ group: 10, old: -1, new: 0 }]);
  });

  it("is none where one of each is left: tie on", () => {
    const seen: Progress = {
      job: "a",
      leftOver: [
        { group: 9, old: 1, new: 1 },
        { group: 15, old: 0 },
      ],
    };
    expect(miscounts(seen, inStripes, "from end 1").map(({ lookFor }) => lookFor)).toEqual(["tie on"]);
  });
});
