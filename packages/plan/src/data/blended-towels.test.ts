// The blends of the third example through the whole plan: `48 plum + pink` and `9 plum + plum + pink`, four times.
import { describe, expect, it } from "vitest";
import { examplePlan } from "#ci/example-plans.js";

const { yarn, winding, tying, stripe, loom } = examplePlan("3-blended-towels").figures;
const [PAIR, THREE] = [
  ["plum", "pink"],
  ["plum", "plum", "pink"],
];

describe("blended towels", () => {
  it("each yarn has its share of the hand", () => {
    // Plum 4 × (24 + 6), pink 4 × (24 + 3), natural the others of 440.
    expect(["plum", "pink", "natural"].map((name) => yarn[name]?.ends.value)).toEqual([120, 108, 212]);
  });

  it("a stripe of a blend is one winding row, in whole hands", () => {
    const rows = winding.wound.value?.flatMap(({ parts }) => parts) ?? [];
    // 440 ends in chains of 150 at most are three; the cut nearest a third falls within the second stripe of pairs.
    expect(winding.wound.value?.map(({ ends }) => ends).reduce((so, ends) => so + ends, 0)).toBe(440);
    expect(winding.wound.value?.length).toBe(3);
    const [pair] = rows.filter(({ yarns, ends }) => yarns.length === 2 && ends === 48);
    // Two threads in the hand: 24 passes, back at the near peg.
    expect(pair).toMatchObject({ yarns: PAIR, threads: 2, passes: 24, byItsHand: false, endsAt: "near peg" });
    const threes = rows.filter(({ yarns }) => yarns.length === 3);
    expect(threes.length).toBe(4);
    // Two threads are no multiple of three: wound by its hand, 3 passes, so that it ends at the other peg.
    for (const row of threes)
      expect(row).toMatchObject({ yarns: THREE, ends: 9, threads: 3, passes: 3, byItsHand: true, dropForLastPass: 0 });
    expect(threes[0]?.endsAt).toBe("far peg");
  });

  it("groups are whole hands, and a group is one joining row", () => {
    const groups = tying.groups.value ?? [];
    // 20 | 4 × (24, 24 | 24 | 9 | 19), the last 19 with the 20 after it as 24 and 15.
    expect(groups.map(({ ends }) => ends)).toEqual([
      20,
      ...[1, 2, 3].flatMap(() => [24, 24, 24, 9, 19]),
      ...[24, 24, 24, 9, 24, 15],
    ]);
    for (const { ends, yarns } of groups) expect(ends % yarns.length).toBe(0);
    const rows = tying.joining.value ?? [];
    expect(rows.map(({ ends, yarns }) => [ends, yarns])).toEqual(groups.map(({ ends, yarns }) => [ends, yarns]));
    expect(rows.at(-1)?.knotsSoFar).toBe(440);
  });

  it("the shafts of a point: 73 repeats and 2 ends, blends counted apart from the colours", () => {
    const rows = tying.check.value?.rows ?? [];
    // Of [1, 2, 3, 4, 3, 2] shafts 1 and 4 come once, 2 and 3 twice; ends 439 and 440 stand on 1 and 2.
    expect(rows.map(({ shaft, ends }) => [shaft, ends])).toEqual([
      [1, 74],
      [2, 147],
      [3, 146],
      [4, 73],
    ]);
    // Two ends of three in a round of six are on shafts 2 and 3; 192 ends of pairs begin at the third place of a round.
    const of = (hand: readonly string[]) =>
      rows.map(({ blends }) => blends.find(({ yarns }) => yarns.join() === hand.join())?.ends);
    expect(of(PAIR)).toEqual([32, 64, 64, 32]);
    expect(of(THREE).reduce<number>((so, ends) => so + (ends ?? 0), 0)).toBe(36);
  });

  it("the shaft check is told for each hand", () => {
    const hands = tying.check.value?.hands ?? [];
    // Ends 21–68 are 24 pairs on 3 4, 3 2, 1 2 in turn.
    expect(hands.filter(({ stripe: at }) => at === 2)).toEqual([
      { stripe: 2, yarns: PAIR, shafts: [3, 4], hands: 8 },
      { stripe: 2, yarns: PAIR, shafts: [3, 2], hands: 8 },
      { stripe: 2, yarns: PAIR, shafts: [1, 2], hands: 8 },
    ]);
    // Ends 93–101, the 93rd on the third place of its round: 3 4 3, 2 1 2, 3 4 3.
    expect(hands.filter(({ stripe: at }) => at === 4)).toEqual([
      { stripe: 4, yarns: THREE, shafts: [3, 4, 3], hands: 2 },
      { stripe: 4, yarns: THREE, shafts: [2, 1, 2], hands: 1 },
    ]);
    expect(loom.stripes.value?.runs[3]).toMatchObject({ firstEnd: 93, lastEnd: 101 });
  });

  it("the outlook: stripes to expect, and never more than two hands' worth of one yarn together", () => {
    const outlook = stripe.outlook.value ?? [];
    expect(outlook.length).toBe(8);
    // 24 (1 + 1) − 23/2 = 73/2.
    expect(outlook[0]).toMatchObject({ stripe: 2, hands: 24, ordersOfHand: "2", stripesToExpect: "73/2" });
    expect(outlook[0]?.yarns.map(({ mostTogether }) => mostTogether)).toEqual([2, 2]);
    // 3 (1 + 2 (1 − 2/6)) − 2 (4/9 + 1/9) = 7 − 10/9 = 53/9; 3 orders of a hand, 3³ = 27 of the stripe.
    expect(outlook[1]).toMatchObject({ stripe: 4, hands: 3, ordersOfHand: "3", stripesToExpect: "53/9" });
    expect(Number(outlook[1]?.ordersOfHand) ** (outlook[1]?.hands ?? 0)).toBe(27);
    expect(outlook[1]?.yarns.map(({ mostTogether }) => mostTogether)).toEqual([4, 2]);
  });
});
