import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { blendsOutlook, pictureOrder } from "./blends.js";
import { chainsOf } from "./chains.js";
import { dentsByPlace } from "./dents.js";
import { groupsOf } from "./groups.js";
import { groupsOnLoom } from "./groups-on-loom.js";
import { joiningRows } from "./joining-rows.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { layingOf } from "./laying.js";
import { leaseOfOldWarp } from "./lease-of-old-warp.js";
import { neighboursOf } from "./neighbours.js";
import { partnersToMake } from "./partners.js";
import { roomAtSides } from "./room-at-sides.js";
import { shaftCheck } from "./shaft-check.js";
import { shaftsOf } from "./shafts.js";
import { specialEnds } from "./special-ends.js";
import { tableTied } from "./table.js";
import { woundChain } from "./winding.js";

/** Every part of one warp. */
function parts(list: Runs<Stripe>, threads: number) {
  const stripes = laid(list, STRIPES, threads + 4);
  const { runs } = stripes;
  const faults = [{ is: "broken" as const, after: 3 }];
  const oldWarp = { threads: threads - 1, faults };
  const table = tableTied(oldWarp, { before: 0, after: 4 });
  const [shafts, dents] = [shaftsOf([1, 2, 3, 4], table, faults), dentsByPlace([2], table)];
  const special = specialEnds(table, faults);
  const groups = groupsOnLoom(groupsOf(runs, 24), table, special, { shafts, dents });
  const rows = joiningRows(groups, "one colour at a time", "hang a thrum");
  const made = chainsOf(runs, groups, "by group", 120);
  return {
    stripes,
    table,
    shafts,
    dents,
    special,
    groups,
    rows,
    made,
    wound: made.chains.map((chain) => woundChain(chain, groups, 2)),
    laying: layingOf(made.chains, { endOneOn: "left", knots: "in front of the reed", faces: "back of the loom" }),
    lease: leaseOfOldWarp(oldWarp, [1, 2, 3, 4]),
    partners: partnersToMake(table, shafts, dents),
    room: roomAtSides({ table, shafts, dents }, { after: { dents: 9, heddles: 2 } }),
    check: shaftCheck(runs, shafts),
    blends: blendsOutlook(runs),
    picture: pictureOrder(runs, 1),
    neighbours: neighboursOf(runs, { plum: "#5a2a4a", oat: "#d8ccb0" }),
  };
}

/** No bigint, Map, Set, undefined or function anywhere, and nothing lost on the way through JSON. */
function isPlain(value: unknown): boolean {
  if (value === null || typeof value === "string" || typeof value === "boolean") return true;
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object") return false;
  const isOurs = Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype;
  return isOurs && Object.values(value).every(isPlain);
}

test("every part is plain data", () => {
  const made = parts(
    [
      { ends: 20, yarns: ["oat"] },
      {
        repeat: "the rest",
        of: [
          { ends: 18, yarns: ["plum", "plum", "pink"] },
          { ends: 10, yarns: ["oat"] },
        ],
      },
    ],
    156,
  );
  for (const [name, part] of Object.entries(made)) expect([name, isPlain(part)]).toEqual([name, true]);
  expect(structuredClone(made)).toEqual(made);
  expect(JSON.parse(JSON.stringify(made))).toEqual(made);
});

test("19,950 ends in 300 stripes: every part is made of them too", () => {
  const list = Array.from({ length: 300 }, (_, at): Stripe => ({
    ends: 66.5 + (at % 2 === 0 ? 0.5 : -0.5),
    yarns: [at % 2 === 0 ? "oat" : "plum"],
  }));
  const made = parts(list, 19_946);
  expect(made.stripes.size).toBe(19_950);
  expect(made.rows.at(-1)?.knotsSoFar).toBe(19_950);
});
