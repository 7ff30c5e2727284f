import { expect, test } from "vitest";
import type { Runs } from "../job/runs.js";
import type { Stripe } from "../job/stripes.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";
import { hardToTellApart, neighboursOf } from "./neighbours.js";

const of = (ends: number, ...yarns: string[]): Stripe => ({ ends, yarns });
const SEEN = { navy: "#1b2a4a", ink: "#1d2c4e", white: "#ffffff" };
const met = (list: Runs<Stripe>) =>
  neighboursOf(laid(list, STRIPES).runs, SEEN).map(({ yarns, edges }) => [
    [...yarns].sort((a, b) => (a < b ? -1 : 1)).join(),
    edges,
  ]);

test("each two yarns that meet stand once with their edges, the least different first, those not judged last", () => {
  expect(met([of(4, "white"), of(6, "navy"), of(8, "ink"), of(2, "navy"), of(3, "rust")])).toEqual([
    ["ink,navy", [10, 18]],
    ["navy,white", [4]],
    ["navy,rust", [20]],
  ]);
});

test("of a blend either yarn may stand at its edge, of strict turns the first or the last", () => {
  expect(met([of(4, "white"), of(6, "navy", "ink")]).map(([yarns]) => yarns)).toEqual(["ink,white", "navy,white"]);
  const inTurn: Stripe = { ends: 6, yarns: ["navy", "ink"], order: "strictly in turn" };
  expect(met([of(4, "white"), inTurn]).map(([yarns]) => yarns)).toEqual(["navy,white"]);
  expect(met([inTurn, of(4, "white")]).map(([yarns]) => yarns)).toEqual(["ink,white"]);
});

test("only those less different than asked for are told, with the edges to mark", () => {
  const neighbours = neighboursOf(laid([of(6, "navy"), of(8, "ink"), of(4, "white")], STRIPES).runs, SEEN);
  expect(hardToTellApart(neighbours, 5).map(({ values }) => values["edges"])).toEqual([[6]]);
  expect(hardToTellApart(neighbours, 5)[0]?.says).toContain(
    "round the last end before each edge where they meet: end 6.",
  );
  expect(hardToTellApart(neighbours, 0.1)).toEqual([]);
  expect(hardToTellApart(neighboursOf(laid([of(6, "navy"), of(8, "rust")], STRIPES).runs, SEEN), 5)).toEqual([]);
});
