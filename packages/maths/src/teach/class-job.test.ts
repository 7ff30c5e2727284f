import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { reedWidth, warpLength, warpMass, weftLength, wovenLength } from "../handbook/index.js";
import { cottonCount, endsPerInch, inches, percentAdded, picksPerInch, pounds, yards } from "../units/index.js";
import { asText } from "../engine/working/index.js";
import { classJob, jobSum } from "./index.js";

const { finishedLength, hemEachEnd, loomToFinished } = napkins;
const sums = [
  jobSum("width", reedWidth, { like: { ends: 300, sett: endsPerInch(15) }, unit: inches, decimals: 1 }),
  jobSum("length", warpLength, { like: napkins, unit: yards, decimals: 2 }),
  jobSum("mass", warpMass, {
    like: { ends: 300, warpLength: yards(7), count: cottonCount(4), allowance: percentAdded(5) },
    unit: pounds,
    decimals: 3,
    keep: ["count"],
    takes: [
      ["ends", "width.ends"],
      ["warpLength", "length"],
    ],
  }),
  jobSum("piece", wovenLength, {
    like: { finishedLength, hemEachEnd, loomToFinished },
    unit: inches,
    decimals: 1,
    takes: [
      ["finishedLength", "length.finishedLength"],
      ["hemEachEnd", "length.hemEachEnd"],
      ["loomToFinished", "length.loomToFinished"],
    ],
  }),
  jobSum("weft", weftLength, {
    like: { wovenLength: inches(25), picks: picksPerInch(14), widthInReed: inches(20) },
    unit: yards,
    decimals: 1,
    takes: [
      ["wovenLength", "piece"],
      ["widthInReed", "width"],
    ],
  }),
];

const amount = (one: unknown): number => Number((one as { value: string }).value);

describe("one job told in several sums", () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])("agrees with itself, seed %i", (seed) => {
    const [width, length, mass, piece, weft] = classJob(sums, seed).sums;
    const [ends, sett] = [width?.input["ends"], width?.input["sett"]];
    expect(width?.key.answer).toBe((Math.round((Number(ends) / amount(sett)) * 10) / 10).toFixed(1));
    const l = Object.fromEntries(
      Object.entries(length?.input ?? {}).map(([name, one]) => [name, typeof one === "number" ? one : amount(one)]),
    );
    const cut = (l["finishedLength"] ?? 0) + 2 * (l["hemEachEnd"] ?? 0);
    const woven = cut / (1 - (l["loomToFinished"] ?? 0) / 100);
    const warp = ((l["pieces"] ?? 0) * woven) / (1 - (l["takeUp"] ?? 0) / 100) + (l["loomWaste"] ?? 0);
    expect(Number(length?.key.answer)).toBeCloseTo(warp / 36, 2);
    const allowance = amount(mass?.input["allowance"]);
    const weight = (Number(ends) * Number(length?.key.answer) * (1 + allowance / 100)) / (4 * 840);
    expect(Number(mass?.key.answer)).toBeCloseTo(weight, 3);
    expect(Number(piece?.key.answer)).toBeCloseTo(woven, 1);
    const picks = amount(weft?.input["picks"]);
    const laid = (Number(piece?.key.answer) * picks * Number(width?.key.answer)) / 36;
    expect(Math.abs(Number(weft?.key.answer) - laid)).toBeLessThan(0.051);
  });

  it("says on the sheet where a number comes from, and gives no answer away but those taken on", () => {
    const { sheet, key, sums: made } = classJob(sums, 1);
    expect(asText(sheet)).toContain("Sum 3, mass.");
    expect(asText(sheet)).toContain(`warp length: ${made[1]?.key.answer ?? ""} yd, `);
    expect(asText(sheet)).toContain("the answer of sum 2");
    expect(asText(sheet)).toContain("as in sum 2");
    expect(asText(sheet)).not.toContain(`${made[4]?.key.answer ?? ""} yd`);
    expect(asText(key)).toContain(`${made[4]?.key.answer ?? ""} yd`);
  });

  it("is the same job for the same seed, another for another", () => {
    expect(asText(classJob(sums, 3).sheet)).toBe(asText(classJob(sums, 3).sheet));
    expect(asText(classJob(sums, 3).sheet)).not.toBe(asText(classJob(sums, 4).sheet));
  });

  it("tells an answer that is right from the pupil's own figure above from one that is not", () => {
    const { sums: made } = classJob(sums, 1);
    const [, length, mass] = made;
    const own = (Number(length?.key.answer) + 1).toFixed(2);
    const from = (Number(mass?.key.answer) * Number(own)) / Number(length?.key.answer);
    const right = mass?.judge(mass.key.answer, { answers: { length: own } });
    expect(right?.verdict.value).toBe("right");
    const carried = mass?.judge(from.toFixed(3), { answers: { length: own } });
    expect(carried?.carriedFrom).toEqual(["length"]);
    expect(carried?.says).toEqual(["Right from your own figure of length, which is to be looked at first."]);
    expect(mass?.judge(from.toFixed(3)).verdict.value).toBe("wrong");
    expect(mass?.judge("99", { answers: { length: own } }).carriedFrom).toEqual([]);
    expect(mass?.judge("99", { answers: { length: "about seven" } }).carriedFrom).toEqual([]);
    expect(mass?.judge("99", { answers: { length: "0" } }).carriedFrom).toEqual([]);
  });

  it("refuses a sum that takes from none before it", () => {
    expect(() => classJob(sums.slice(2), 1)).toThrow("the name of an earlier sum (there is none)");
    expect(() => classJob([...sums.slice(0, 1), ...sums.slice(3)], 1)).toThrow("the name of an earlier sum (width)");
  });
});
