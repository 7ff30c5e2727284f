import { law, stripes } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { likeness } from "../comparing/likeness.js";
import { fullSett } from "./full-sett.js";
import { halfSett } from "./half-sett.js";
import { mirror } from "./mirror.js";
import { reverse } from "./reverse.js";
import { rotate } from "./rotate.js";
import { sequence, type Sequence } from "./sequence.js";

const setts = stripes.map(sequence).filter(({ runs }) => runs.length > 1);
const pivotsOf = ({ runs }: Sequence<string>): [number, number] => [runs[0]?.ends ?? 0, runs.at(-1)?.ends ?? 0];

law(
  14,
  "a full sett has twice the ends of the half less its two pivots, and its reverse is a rotation of it",
  [setts],
  (sett) => {
    const [first, last] = pivotsOf(sett);
    const full = fullSett({ sett, pivots: "full count" });
    expect(full.ends).toBe(2 * sett.ends - first - last);
    expect(fullSett({ sett, pivots: "half count" }).ends).toBe(2 * sett.ends);
    expect(likeness({ first: reverse(full), second: full, upTo: ["rotation"] })).not.toBeNull();
  },
);
law(15, "halving even pivots and mirroring gives the same full sett, begun elsewhere", [setts], (sett) => {
  const last = sett.runs.length - 1;
  const even = sequence(
    sett.runs.map(({ colour, ends }, index) => ({ colour, ends: index === 0 || index === last ? 2 * ends : ends })),
  );
  const full = fullSett({ sett: even, pivots: "full count" });
  expect(fullSett({ sett, pivots: "half count" }).runs).toEqual(full.runs);
  expect(likeness({ first: mirror(sett), second: full, upTo: ["rotation"] })).not.toBeNull();
});
law(14, "the half sett is found again from the full one, wherever that is begun", [setts, fc.nat(500)], (sett, by) => {
  const full = fullSett({ sett, pivots: "full count" });
  expect(halfSett({ sett: full, pivots: "full count" }).runs).toEqual(sett.runs);
  const found = halfSett({ sett: rotate({ sequence: full, by }), pivots: "full count" });
  const again = fullSett({ sett: found, pivots: "full count" });
  expect(likeness({ first: again, second: full, upTo: ["rotation"] })).not.toBeNull();
});

const written = (text: string): Sequence<string> =>
  sequence(text.split(" ").map((part) => ({ colour: part.charAt(0), ends: Number(part.slice(1)) })));

test("a sett with two odd pivots is still seen to reverse, though no rotation of it is a palindrome", () => {
  const full = fullSett({ sett: written("a3 b2 c5"), pivots: "full count" });
  expect(halfSett({ sett: full, pivots: "full count" }).runs).toEqual(written("a3 b2 c5").runs);
});
test("a palindrome that begins and ends in half a pivot is one whole repeat", () => {
  const sett = written("R3 W6 B42 Y4 K16 Y4 B42 W6 R3");
  expect(fullSett({ sett, pivots: "repeating" }).ends).toBe(126);
  expect(halfSett({ sett, pivots: "half count" }).runs).toEqual(written("R3 W6 B42 Y4 K8").runs);
});
test("counts that are nearly a palindrome do not reverse", () => {
  const nearly = written("K4 R4 G54 R4 K12 B4 K12 B4 R12 G12 R4 K48 R4 K4 B4 R4 K48 R4 G12 R12 B4 K12 R4 G54 R4 K4");
  expect(refusalOf(() => halfSett({ sett: nearly, pivots: "full count" })).code).toBe("not-symmetrical");
});
test.each<[string, () => unknown, string]>([
  ["a half sett of one stripe", () => fullSett({ sett: written("K4"), pivots: "full count" }), "does-not-fit"],
  [
    "a half sett of one stripe with half pivots",
    () => fullSett({ sett: written("K4"), pivots: "half count" }),
    "does-not-fit",
  ],
  ["a sett without a word on its pivots", () => fullSett({ sett: written("K4 R4") } as never), "missing"],
  ["pivots of another kind", () => fullSett({ sett: written("K4 R4"), pivots: "full" as never }), "unknown-word"],
  [
    "an odd pivot that would be halved",
    () => halfSett({ sett: written("K3 R4 Y6 R4"), pivots: "half count" }),
    "odd-pivot",
  ],
  ["a sett of one colour", () => halfSett({ sett: written("K3"), pivots: "full count" }), "not-symmetrical"],
  [
    "a sett that goes round one way",
    () => halfSett({ sett: written("a1 b2 c3 d4"), pivots: "full count" }),
    "not-symmetrical",
  ],
])("%s is refused", (_, call, code) => {
  expect(refusalOf(call).code).toBe(code);
});
