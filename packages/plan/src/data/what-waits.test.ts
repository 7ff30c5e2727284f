import { describe, expect, it } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import { planText } from "../views/text.js";
import { planOf } from "./plan-data.js";
import { waitsFor } from "./waits-for.js";

const STRIPES = `stripes:
  - 24 natural
  - mirror: [40 madder, { repeat: 3, of: [12 natural, 6 indigo] }, 66 natural]
    middle: twice
  - 24 natural
`;

/** What one figure or part waits for, as text; nothing where it is there. */
function waits(text: string, of: string): string {
  const [group = "", name = ""] = of.split(" ");
  return waitsFor(planOf(jobIn(text)), [[group, name]])
    .map((path) => path.join("."))
    .join(", ");
}

/** The hall napkins key by key: what is added, and what opens, each with what it waited for until then. */
const STEPS: readonly (readonly [
  added: string,
  keys: Readonly<Record<string, string>>,
  opens: Readonly<Record<string, string>>,
])[] = [
  [
    "loom.reed, loom.sley",
    { loom: "reed: 10 per inch, sley: 2" },
    { "loom dents": "loom.sley", "loom widthInReed": "cloth.sett" },
  ],
  [
    "cloth.widthReedToFinished",
    { cloth: "widthReedToFinished: 15 % lost" },
    { "loom finishedWidth": "cloth.widthReedToFinished" },
  ],
  [
    "loom.threading",
    { loom: "threading: [1, 2, 3, 4]" },
    { "loom shafts": "loom.threading", "tying check": "loom.threading" },
  ],
  [
    "pieces, cloth.lengthLoomToFinished, cloth.takeUp",
    {
      cloth: "lengthLoomToFinished: 10 % lost, takeUp: 8 % lost",
      pieces: "[{ number: 9, finishedLength: 16 in, hemEachEnd: 3/4 in }]",
    },
    { "piece woven": "pieces", "tape marks": "pieces", "warp inCloth": "pieces, cloth.takeUp" },
  ],
  [
    "join.knots, the wastes",
    { join: "knots: in front of the reed", warp: "wasteInFront: 10 in, wasteBehind: 18 in" },
    { "warp needed": "join.knots", "join spared": "join.knots" },
  ],
  [
    "yarns.count, cloth.picks, weft",
    {
      weft: "stripes: natural, allowance: 5 % added",
      cloth: "picks: 18 per inch",
      natural: "count: 2-ply of 8 cotton",
      madder: "count: 2-ply of 8 cotton",
      indigo: "count: 2-ply of 14 metric",
    },
    { "yarn inAll": "weft", "yarn mass": "yarns.natural.count, yarns.madder.count, yarns.indigo.count" },
  ],
  [
    "yarns.sold, yarns.onHand",
    {
      natural: "sold: 8 oz at 14.50 EUR, onHand: 6 oz",
      madder: "sold: 8 oz at 15.20 EUR, onHand: none",
      indigo: "sold: 50 g at 9 EUR, onHand: 20 g",
    },
    {
      "yarn packages":
        "yarns.natural.onHand, yarns.natural.sold, yarns.madder.onHand, yarns.madder.sold, yarns.indigo.onHand, yarns.indigo.sold",
      "yarn endsEnough": "yarns.natural.onHand, yarns.madder.onHand, yarns.indigo.onHand",
      "yarn cost": "yarns.natural.sold, yarns.madder.sold, yarns.indigo.sold",
    },
  ],
  [
    "oldWarp.ends, oldWarp.yarn",
    { oldWarp: "ends: 368, yarn: 2-ply of 8 cotton" },
    { "tying joining": "oldWarp.ends", "tying knots": "oldWarp.ends", "tying lease": "oldWarp.ends" },
  ],
  [
    "groups, winding",
    { groups: "24", winding: "threads: 2, chains: by stripe, most: 140 ends" },
    { "winding chains": "winding.chains", "winding wound": "winding.chains, winding.threads" },
  ],
  ["join.perHour", { join: "perHour: 190" }, { "tying hours": "join.perHour" }],
];

const YARNS = ["natural", "madder", "indigo"];

/** A job of the stripes with the keys of the first so many steps. */
function jobOf(steps: number): string {
  const keys = new Map<string, string[]>();
  for (const [, added] of STEPS.slice(0, steps))
    for (const [key, value] of Object.entries(added)) keys.set(key, [...(keys.get(key) ?? []), value]);
  const inline = (key: string, values: readonly string[]) =>
    /^[[\d]/u.test(values[0] ?? "") ? `${key}: ${values.join("")}` : `${key}: { ${values.join(", ")} }`;
  const groups = [...keys].map(([key, values]) => inline(key, values));
  const yarns = YARNS.flatMap((name) => groups.filter((text) => text.startsWith(`${name}:`)));
  const others = groups.filter((text) => !yarns.includes(text));
  return `${STRIPES}${[...others, ...(yarns.length > 0 ? [`yarns: { ${yarns.join(", ")} }`] : [])].join("\n")}\n`;
}

describe("the hall napkins, key by key", () => {
  it.each(STEPS.map(([added, , opens], at) => [added, opens, at] as const))("%s", (_, opens, at) => {
    const [before, after] = [jobOf(at), jobOf(at + 1)];
    for (const [figure, needs] of Object.entries(opens)) {
      expect(`${figure}: ${waits(before, figure)}`).toBe(`${figure}: ${needs}`);
      expect(`${figure}: ${waits(after, figure)}`).toBe(`${figure}: `);
    }
  });
});

/** Jobs with little in them: what their sheets say, and a figure that waits with its keys. */
const PARTIAL: readonly (readonly [
  name: string,
  job: string,
  says: readonly RegExp[],
  waiting: string,
  needs: string,
])[] = [
  // 24 + 2 × (40 + 3 × 18 + 66) + 24 ends; natural 48 + 2 × (36 + 66), madder 2 × 40, indigo 2 × 18.
  [
    "stripes",
    STRIPES,
    [/368 ends/u, /natural\s+252/u, /madder\s+80/u, /indigo\s+36/u],
    "loom widthInReed",
    "cloth.sett",
  ],
  // An old warp and its loom, no stripes: 240 ÷ 2 ÷ 10 in.
  [
    "an old warp and its loom",
    "oldWarp: { ends: 240 }\nloom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }\n",
    [/120 dents/u, /12 in/u],
    "tying joining",
    "stripes",
  ],
  // Pieces and losses alone: 17.5 ÷ 0.9 = 19.44 in, told to the next mark of the tape.
  [
    "pieces and a loss",
    "pieces: [{ number: 9, name: napkin, finishedLength: 16 in, hemEachEnd: 3/4 in }]\ncloth: { lengthLoomToFinished: 10 % lost }\n",
    [/napkin/u, /19 1\/2 in/u],
    "warp inCloth",
    "cloth.takeUp",
  ],
  // What was found alone: 3/2 ÷ 21.
  [
    "what was found",
    "found: { takeUp: 21 in to 19 1/2 in }\n",
    [/7\.14/u],
    "warp needed",
    "pieces, cloth.takeUp, join.knots",
  ],
  // Stripes and yarns without a length: what is there is told, what is needed waits for it.
  [
    "a yarn on hand",
    `${STRIPES}yarns: { natural: { count: 2-ply of 8 cotton, sold: 8 oz, onHand: 6 oz }, madder: {}, indigo: {} }\n`,
    [/natural/u, /WAITS {2}.*pieces/u],
    "yarn inAll",
    "pieces, cloth.takeUp, join.knots",
  ],
];

describe("jobs with little in them", () => {
  it.each(PARTIAL)("%s", (_, job, says, waiting, needs) => {
    const text = planText(planOf(jobIn(job)));
    for (const sentence of says) expect(text).toMatch(sentence);
    expect(waits(job, waiting)).toBe(needs);
    expect(text).not.toMatch(/NaN|undefined|null|\[object/u);
  });
});
