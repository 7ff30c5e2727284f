import { readFileSync } from "node:fs";
import { yards } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planHtml } from "../html/plan-html.js";
import { planText } from "../text/plan-text.js";
import { planWarp } from "./plan-warp.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

function faultsWith(part: string): readonly string[] {
  const reading = readJob(`${readFileSync("examples/hall-napkins/job.yaml", "utf8")}\n${part}\n`);
  return reading.ok ? [] : reading.faults.map(({ path, expected }) => `${path}: ${expected}`);
}

const lines = (text: string): string => text.replace(/\s+/gu, " ");

describe("ends for a sample and for repairs", () => {
  const extraEnds = { sample: { madder: 4 }, repairs: { madder: 1, indigo: 2 } };
  const [plain, extra] = [planWarp(napkins()), planWarp({ ...napkins(), extraEnds })];

  it("are wound and bought, and leave warp, knots and sheds as they were", () => {
    // 80 + 4 + 1 = 85 ends of 5.56159 yd.
    const madder = extra.yarns.find(({ name }) => name === "madder");
    expect(madder?.warp.in(yards)).toBeCloseTo(472.735, 2);
    expect(madder?.massInPieces).toEqual(plain.yarns.find(({ name }) => name === "madder")?.massInPieces);
    for (const part of ["ends", "groups", "winding", "shedProof", "joining", "warpLength"] as const) {
      expect(JSON.stringify(extra[part])).toBe(JSON.stringify(plain[part]));
    }
  });

  it("stand in the winding list, in the yarn and in the record, and nowhere in a plan without them", () => {
    const text = lines(planText(extra));
    expect(text).toContain(
      "for yarn ends each sample madder 4 5.57 yd repairs madder 1 5.57 yd repairs indigo 2 5.57 yd",
    );
    expect(text).toContain("The warp yarn of madder is for 80 + 5 = 85 ends: 5 are wound beside the warp.");
    expect(text).toContain("ends beside the warp, left");
    expect(planHtml(extra)).toContain("They are not joined to the old warp");
    expect(planText(plain)).not.toContain("eside the warp");
  });

  it("are refused of a yarn there is none of, half written, or as half an end", () => {
    expect(faultsWith("extraEnds: { sample: { green: 2 }, repairs: {} }")).toEqual([
      "extraEnds.sample.green: one of the yarns",
    ]);
    expect(faultsWith("extraEnds: { repairs: { madder: 0.5 } }")).toEqual([
      "extraEnds.sample: the key sample",
      "extraEnds.repairs.madder: a whole number of ends, from 1 to 1000",
    ]);
  });
});

describe("colours side by side", () => {
  const seen = { natural: "#e9e0cb", madder: "#d9d0bb", indigo: "#2b3a67" };
  const told = planWarp({ ...napkins(), coloursSeen: { leastDifference: 10, colours: seen } });

  it("that are hard to tell apart are to be looked at, with the ends to mark", () => {
    const [pair] = told.fit.neighbours;
    // Madder lies beside natural at 24 | 64 and, turned back, at 304 | 344.
    expect(pair).toMatchObject({ colours: ["natural", "madder"], edges: [24, 64, 304, 344], agrees: false });
    expect(pair?.difference).toBeLessThan(10);
    expect(told.fit.verdict).toBe("check");
    expect(lines(planText(told))).toContain(
      "tie a thread of a contrasting colour round the last end before each edge where they meet: end 24, 64, 304, 344.",
    );
    expect(planHtml(told)).toContain("end 24, 64, 304, 344.");
  });

  it("that differ enough agree, and are no hindrance", () => {
    const { fit } = planWarp({ ...napkins(), coloursSeen: { leastDifference: 2, colours: seen } });
    expect(fit.neighbours.map(({ agrees }) => agrees)).toEqual([true, true]);
    expect(fit.verdict).toBe(planWarp(napkins()).fit.verdict);
  });

  it("are not judged where one of them was not seen, and not spoken of where none was", () => {
    const colours = { natural: seen.natural, indigo: seen.indigo };
    const { fit } = planWarp({ ...napkins(), coloursSeen: { leastDifference: 10, colours } });
    expect(fit.neighbours[0]).toMatchObject({ difference: null, agrees: true });
    expect(fit.neighbours[0]?.says).toContain("not judged");
    expect(planWarp(napkins()).fit.neighbours).toEqual([]);
  });

  it("are refused without a difference to hold them against, of no yarn, or in words", () => {
    expect(faultsWith('coloursSeen: { colours: { natural: "#e9e0cb" } }')).toEqual([
      "coloursSeen.leastDifference: the key leastDifference",
    ]);
    expect(faultsWith('coloursSeen: { leastDifference: 5, colours: { green: "#00ff00" } }')).toEqual([
      "coloursSeen.colours.green: one of the yarns",
    ]);
    expect(faultsWith("coloursSeen: { leastDifference: 5, colours: { natural: cream } }")).toEqual([
      'coloursSeen.colours.natural: a colour of a screen, such as "#2b3a67"',
    ]);
  });
});
