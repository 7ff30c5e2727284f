import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { dentsPerInch, endsPerInch } from "../../units/index.js";
import {
  endsPerDentForEdges,
  exactSley,
  heddlesPerShaft,
  roomInReed,
  sleyFrom,
  stripeEdgesInDents,
  substituteReeds,
} from "./index.js";

const order = "a whole number of dents, 1 or more";

describe("what a sum of the reed wants and does not get is named, with what it is", () => {
  it.each<[(nothing: never) => unknown, unknown, string[]]>([
    [
      endsPerDentForEdges,
      { ends: 0, edges: [0], mostPerDent: 0 },
      [
        "endsPerDentForEdges({ ends }): a whole number of ends, 1 or more",
        "endsPerDentForEdges({ edges[0] }): a whole number of ends, 1 or more",
        "endsPerDentForEdges({ mostPerDent }): a whole number of ends in each dent, 1 or more",
      ],
    ],
    [
      endsPerDentForEdges,
      { ends: 4, edges: [2], mostPerDent: 101 },
      ["endsPerDentForEdges({ mostPerDent }): a whole number of ends in each dent, no more than 100"],
    ],
    [
      exactSley,
      { mostDents: 0 },
      ["exactSley({ reed }): a reed number", "exactSley({ sett }): a sett", `exactSley({ mostDents }): ${order}`],
    ],
    [
      exactSley,
      { reed: dentsPerInch(10), sett: endsPerInch(11), mostDents: 9 },
      ["exactSley(…): an order of 9 dents or fewer"],
    ],
    [
      heddlesPerShaft,
      { shafts: 1001, parts: [] },
      [
        "heddlesPerShaft({ shafts }): a whole number of shafts, no more than 1000",
        "heddlesPerShaft({ parts }): a list of the parts of a threading",
      ],
    ],
    [
      heddlesPerShaft,
      { shafts: 0 },
      [
        "heddlesPerShaft({ shafts }): a whole number of shafts, 1 or more",
        "heddlesPerShaft({ parts }): a list of the parts of a threading",
      ],
    ],
    [heddlesPerShaft, { shafts: 4, parts: [] }, ["heddlesPerShaft({ parts }): a list of the parts of a threading"]],
    [
      heddlesPerShaft,
      { shafts: 4, parts: [{ threading: [1, 5, 0], times: -1 }] },
      [
        "heddlesPerShaft({ parts[0].threading[1] }): a whole number of shafts, no more than 4",
        "heddlesPerShaft({ parts[0].threading[2] }): a whole number of shafts, 1 or more",
        "heddlesPerShaft({ parts[0].times }): a whole number of times, 0 or more",
      ],
    ],
    [
      heddlesPerShaft,
      {
        shafts: 4,
        parts: [
          { threading: [1, 2], times: 499_999 },
          { threading: [1, 2, 3], times: 1 },
        ],
      },
      ["heddlesPerShaft({ parts }): at most 1000000 heddles"],
    ],
    [
      roomInReed,
      { dents: 0 },
      [
        "roomInReed({ reed }): a reed number",
        "roomInReed({ reedLength }): a length",
        "roomInReed({ dents }): a whole number of dents, 1 or more",
      ],
    ],
    [
      stripeEdgesInDents,
      { ends: 0, edges: [0], endsInEachDent: [-1] },
      [
        "stripeEdgesInDents({ ends }): a whole number of ends, 1 or more",
        "stripeEdgesInDents({ edges[0] }): a whole number of ends, 1 or more",
        "stripeEdgesInDents({ endsInEachDent[0] }): a whole number of ends in each dent, 0 or more",
      ],
    ],
    [
      stripeEdgesInDents,
      { ends: 4, edges: [2], endsInEachDent: [0, 0] },
      ["stripeEdgesInDents({ endsInEachDent }): a dent with an end in it"],
    ],
    [
      stripeEdgesInDents,
      { ends: 4, edges: [2, 5], endsInEachDent: [2] },
      ["stripeEdgesInDents({ edges }): no edge past the last of 4 ends"],
    ],
    [
      substituteReeds,
      { ends: 0, mostDents: 0 },
      [
        "substituteReeds({ sett }): a sett",
        "substituteReeds({ ends }): a whole number of ends, 1 or more",
        "substituteReeds({ reeds }): a list of at least one, each a reed number",
        "substituteReeds({ within }): a share in percent",
        `substituteReeds({ mostDents }): ${order}`,
      ],
    ],
  ])("%o", (call, given, expected) => {
    expect(faultsOf(call, given)).toEqual(expected);
  });

  it("with what to write instead", () => {
    expect(() => exactSley({ reed: dentsPerInch(10), sett: endsPerInch(11), mostDents: 9 })).toThrow(
      "received 11 ends/in in a reed of 10 dents/in. Allow a longer order, or take a sett nearby: substituteReeds lists them.",
    );
    expect(() => heddlesPerShaft({ shafts: 4, parts: [] })).toThrow("Write [{ threading: [1, 2, 3, 4], times: 90 }].");
    const past = { ends: 4, edges: [5], endsInEachDent: [2] };
    expect(() => stripeEdgesInDents(past)).toThrow(/received edge 5\.$/u);
    const many = { shafts: 1, parts: [{ threading: [1], times: 1_000_001 }] };
    expect(() => heddlesPerShaft(many)).toThrow(/received 1000001\.$/u);
  });
});

describe("a sleying order that cannot be read", () => {
  const wanted = "sleyFrom({ order }): expected the ends of each dent with hyphens between, such as 2-1-1, received";

  it("is refused with what was wanted, received and to be done", () => {
    expect(() => sleyFrom("2,1")).toThrow(`${wanted} the text "2,1".`);
    expect(() => sleyFrom("2,1")).toThrow(/"2,1"\. Write whole numbers with hyphens between\.$/u);
    expect(() => sleyFrom("0-0")).toThrow(`${wanted} the text "0-0". An order of empty dents holds no warp.`);
    expect(() => sleyFrom(2 as never)).toThrow(`${wanted} the number 2. Give the order as text.`);
  });
});
