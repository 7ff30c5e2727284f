import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { groupsOf } from "./groups.js";
import { groupsOnLoom } from "./groups-on-loom.js";
import { joiningRows } from "./joining-rows.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { miscountSeen } from "./miscount.js";
import type { SeenAtEdge, Tying } from "./miscount.js";
import { NOTHING_ADDED } from "./sides.js";
import { tableTied } from "./table.js";

const of = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns });
const napkins: Runs<Stripe> = [
  of(24, "natural"),
  {
    mirror: [of(40, "madder"), { repeat: 3, of: [of(12, "natural"), of(6, "indigo")] }, of(66, "natural")],
    middle: "twice",
  },
  of(24, "natural"),
];
const table = tableTied({ threads: 368, faults: [] }, NOTHING_ADDED);
const groups = groupsOnLoom(groupsOf(laid(napkins, STRIPES).runs, 24), table, [], { shafts: null, dents: null });
const right = groups.map(({ group, ends }) => ({ group, old: ends, new: ends }));
const seen = (group: number, old: number, now: number): SeenAtEdge => ({ group, old, new: now });

function tying(order: Parameters<typeof joiningRows>[1], given: Partial<Tying> = {}): Tying {
  const rows = joiningRows(groups, order, null);
  return { rows, oneColourAtATime: order === "one colour at a time", leftOver: [], counted: [], ...given };
}

test("one old end is left at the edge of group 15, edge 9 having agreed: in ends 119 to 250", () => {
  const found = miscountSeen(tying("from end 1"), seen(15, 1, 0));
  expect(found).toMatchObject({ is: "miscount", firstEnd: 119, lastEnd: 250, lookFor: "a loose new end" });
  expect(found.suspects.map(({ group }) => group)).toEqual([10, 11, 12, 13, 14, 15]);
  expect(found.says).toBe(
    "1 old end left over: a new end was passed over, or two new ends lie in one knot; else the chain is short of 1. Look for a loose new end. It lies in ends 119 to 250.",
  );
});

test("a group counted odd is named first: group 9, ends 113 to 118, the chain short of one indigo", () => {
  const counted = right.map((one) => (one.group === 9 ? { ...one, new: 5 } : one));
  const found = miscountSeen(tying("from end 1", { counted }), seen(9, 1, 0));
  expect(found.suspects).toEqual([{ group: 9, firstEnd: 113, lastEnd: 118, oldOff: 0, newOff: -1 }]);
  expect(found.says).toContain("Group 9, ends 113 to 118, was counted with 1 new end too few: begin there.");
  const later = { counted, leftOver: [seen(9, 1, 0)] };
  // Edge 9 did not agree either: from the edge of group 8 on, end 112.
  expect(miscountSeen(tying("from end 1", later), seen(15, 1, 0))).toMatchObject({ firstEnd: 113, lastEnd: 250 });
  expect(miscountSeen(tying("from end 1", later), seen(15, 1, 0)).suspects.map(({ group }) => group)).toEqual([9]);
});

test("groups whose both counts were right are left out, unless all were", () => {
  const counted = right.filter(({ group }) => group !== 12 && group !== 14);
  const half = [...counted, { group: 14, old: 24, new: null }];
  const suspects = (all: Tying["counted"]) =>
    miscountSeen(tying("from end 1", { counted: all }), seen(15, 0, 1)).suspects.map(({ group }) => group);
  expect([suspects(half), suspects(right)]).toEqual([
    [12, 14],
    [10, 11, 12, 13, 14, 15],
  ]);
  expect(miscountSeen(tying("from end 1"), seen(15, 0, 1)).lookFor).toBe("a bare old end");
});

test("from the last end the edge lies at the first end of a stripe; one colour at a time in the stripe itself", () => {
  // The middle stripe is done with group 10; before it the edge of group 16 agreed.
  expect(miscountSeen(tying("from the last end"), seen(10, 0, 1))).toMatchObject({ firstEnd: 119, lastEnd: 250 });
  const byColour = tying("one colour at a time", { leftOver: [seen(3, 1, 0)] });
  expect(miscountSeen(byColour, seen(23, 1, 0))).toMatchObject({ firstEnd: 305, lastEnd: 344 });
});

test("nothing left over agrees; both seen: tie on", () => {
  expect(miscountSeen(tying("from end 1"), seen(9, 0, 0)).is).toBe("agrees");
  expect(miscountSeen(tying("from end 1"), seen(9, 2, 1)).is).toBe("tie on");
  expect(() => miscountSeen(tying("from end 1"), seen(99, 1, 0))).toThrow(RangeError);
});
