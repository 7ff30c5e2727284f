// The stripes page reads an order as people write it, and asks where it could mean two things.
import { readStripes } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { asJob, runsOf } from "../../docs/.vitepress/theme/stripes/order-as.js";
import { MOST_ENDS, readOrder } from "../../docs/.vitepress/theme/stripes/read-order.js";

const endsOf = (text: string): number => readOrder(text).total;

describe("an order as people write it", () => {
  it.each([
    ["24 natural, 40 indigo", 64],
    ["24 natural\n40 indigo\n", 64],
    ["24 natural; 40 indigo;", 64],
    ["natural 24, indigo 40", 64],
    ["24N, 40I", 64],
    ["2 times [3 a, 4 b]", 14],
    ["3x(1 a, 2 b)", 9],
    ["(1 a, 2 b) x 3", 9],
    ["[1 a, 2 b] 3 times", 9],
    ["[1 a, [2 b, 1 c] × 2] 3 times", 21],
    ["mirror twice [10 a, 4 b]", 28],
    ["[10 a, 4 b] mirrored once", 24],
    ["mirror [10 a, 4 b] middle twice", 28],
    ["16 plum + pink, 3 a", 19],
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24
    ["24 natural, mirror twice [40 madder, 3 x [12 natural, 6 indigo], 66 natural], 24 natural", 368],
  ])("%j is %i ends", (text, ends) => {
    expect(endsOf(text)).toBe(ends);
    expect(runsOf(readOrder(text).list).reduce((sum: number, one: { ends: number }) => sum + one.ends, 0)).toBe(ends);
  });

  it.each([
    ["24 natural 40 indigo", "is a comma missing before 40?"],
    ["12 m 6 n", "is a comma missing before 6?"],
    ["1 red, 1 blue repeat 10 times", "is a comma missing before 10?"],
    ["24N 40I", "is a comma missing before 40?"],
    ["[10 a, 4 b] mirrored", "once in the middle, or twice"],
    ["[1 a]", "How often"],
    ["3 a [1 b] 2 times", "before a bracket"],
    ["15 plum + pink", "Write 14 or 16"],
    ["", "Write the order here"],
    ["[3 a", "not closed"],
    ["3 a]", "not opened"],
    ["natural", "How many ends"],
    ["0 natural", "one end or more"],
  ])("%j is asked about", (text, says) => {
    expect(() => readOrder(text)).toThrow(says);
  });

  it("stops before it draws more than a page can", () => {
    expect(endsOf(`${String(MOST_ENDS)} a`)).toBe(MOST_ENDS);
    expect(() => readOrder("[[[9999 a] 9999 times] 9999 times] 9999 times")).toThrow("at most 5000 ends");
  });

  it("writes the order as a job file reads it", () => {
    const { list } = readOrder("24 natural, mirror twice [40 madder, 3 x [12 natural, 6 indigo]], 16 plum + pink");
    expect(readStripes(asJob(list).replace("stripes:\n", ""))).toMatchObject({ ok: true });
  });
});
