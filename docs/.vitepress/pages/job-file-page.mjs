// The page of the job file: every key with its meaning and a value, from the form that editors check by.
import { readFileSync } from "node:fs";
import { root } from "./handbook.mjs";
import { fence, plain, table } from "./markdown.mjs";

const schema = JSON.parse(readFileSync(`${root}packages/plan/job.schema.json`, "utf8"));

/** One value of each notation of runs, which the form has no example of. */
const RUNS = {
  stripes: "[24 natural, 16 plum + pink, the rest natural]",
  "loom.sley": "2",
  "loom.threading": "[1, 2, 3, 4]",
  "oldWarp.stripes": "[40 green, the rest white]",
  "cloth.threading": "[1, 2, 3, 4, 3, 2]",
  weft: "natural",
  "weft.stripes": "[4 in of slate, the rest oat]",
  "pieces.*.weft": "oat",
  "pieces.*.weft.stripes": "[12 madder, the rest natural]",
};

/** Values that say more than the one example of their kind. */
const VALUES = {
  "loom.heddleEye.wide": "3 mm",
  "loom.heddleEye.high": "8 mm",
  "loom.sley.NAME": "3",
  "oldWarp.left.pastReed": "10 in",
  "oldWarp.left.behindHeddles": "24 in",
  "join.sides.after": "4 fewer",
};

/** Words about a value stand without the marks of what is typed. */
const ABOUT = ["a whole number", "a number", "words", "a list of such"];

/** Several forms of one value as they follow each other; null, which stands for a key left out, is none. */
const waysOf = ({ anyOf, ...one }) => (anyOf ?? [one]).filter(({ type }) => type !== "null");
const isGroup = (way) => way.properties !== undefined || typeof way.additionalProperties === "object";

function valueOf(way) {
  if (way.$ref !== undefined) return RUNS[way.$ref.replace("#/$defs/", "")];
  if (way.enum !== undefined) return way.enum.filter((word) => typeof word !== "boolean").join(", ");
  if (way.examples !== undefined) return way.examples[0];
  if (way.type === "integer") return "a whole number";
  if (way.type === "number") return "a number";
  if (way.type === "array") return waysOf(way.items).some(isGroup) ? undefined : "a list of such";
  return isGroup(way) ? undefined : "words";
}

/** A key and all those below it, each once, as rows of its table. */
function rowsOf(key, described) {
  const ways = waysOf(described);
  const known = VALUES[key] === undefined ? ways.map(valueOf) : [VALUES[key]];
  const values = [...new Set(known.filter((value) => value !== undefined))];
  const shown = values.map((value) => (ABOUT.includes(value) ? value : `\`${value}\``)).join(" or ");
  const own = [`\`${key}\``, plain(described.description ?? ""), shown];
  const items = ways.flatMap((way) => (way.type === "array" ? waysOf(way.items) : [way]));
  const below = items.flatMap((way) => [
    ...Object.entries(way.properties ?? {}),
    ...(typeof way.additionalProperties === "object" ? [["NAME", way.additionalProperties]] : []),
  ]);
  return [...(own[1] + own[2] === "" ? [] : [own]), ...below.flatMap(([name, one]) => rowsOf(`${key}.${name}`, one))];
}

/** Rows of one key are one row: a value of several forms has its keys in each of them. */
function once(rows) {
  const found = new Map();
  for (const [key, meaning, value] of rows) {
    const before = found.get(key);
    const values = new Set([...(before?.[2].split(" or ") ?? []), value].filter((one) => one !== ""));
    found.set(key, [key, before?.[1] || meaning, [...values].join(" or ")]);
  }
  return [...found.values()];
}

export function jobFilePage() {
  const smallest = readFileSync(`${root}examples/jobs/1-smallest.yaml`, "utf8").trimEnd();
  const tables = Object.entries(schema.properties).map(([key, described]) => rowsOf(key, described));
  const single = tables.filter((rows) => rows.length === 1).flat();
  const groups = tables.filter((rows) => rows.length > 1);
  const heads = ["key", "meaning", "value"];
  return [
    "# The job file",
    "What a weaver writes down about a warp tied, or threaded, to a loom, as plain text in YAML. The smallest job:",
    fence("yaml", smallest),
    "`thrum check job.yaml` says whether anything is wrong in a file, `thrum plan job.yaml` prints its plan, and `thrum schema` gives an editor the form to check by. Nine whole jobs stand in `examples/jobs` of the repository; [the weaver's job](./weavers-job.md) goes through one of them.",
    "## How it is read",
    "- Every key may be left out. What is not given is not reckoned, and the plan says which key each sheet waits for. No sett, waste, percentage or allowance is ever assumed.\n- A value is what you would say: `16 in`, `2 yd 6 in`, `68.5 cm`, `1 lb 4 oz`, `20 per inch`, `14.50 EUR`.\n- A loss says `8 % lost` or gives both measures of one piece, `40 cm to 35 cm`; what is put on top says `5 % added`.\n- A yarn's count is what the label says, `3360 yd per lb`, or plies and number, `2-ply of 8 cotton`, or the number of the finished thread, `80 tex in all`. `8/2 cotton` may be read in two ways, so it is not taken.\n- What cannot be read is told all at once, each with its line and what to write instead. Two entries that disagree are no fault: the plan goes on with the one nearer the wood, or with the count, and tells the other.",
    "## Stripes and other runs",
    "Stripes, weft, threading and sley share one notation, the number first:",
    table(
      ["written", "means"],
      [
        ["`24 natural`", "24 ends of that yarn"],
        ["`16 plum + pink`", "16 ends, both yarns in the hand at once, in the order the lease gives"],
        ["`16 plum / pink`", "16 ends, strictly one and one"],
        ["`{ repeat: 3, of: [12 natural, 6 indigo] }`", "those runs three times"],
        ["`{ mirror: [40 rose, 12 slate], middle: once }`", "there and back; the middle run stands `once` or `twice`"],
        ["`the rest natural`, `repeat: the rest`", "as much as there is room for; one such place in a list"],
        ["`12 madder`, `2 in of madder`", "in the weft: so many picks, or so long"],
        ["`3`, `2 ends on 1`, `floating`", "in a threading: shaft 3, a doubled end, an end in no heddle"],
        ["`2`, `12 dents at 3`, `4 dents empty`", "in a sley: one dent of two, a stretch of dents, dents left empty"],
      ],
    ),
    "A list of bare numbers in a threading or sley is one repeat, taken over and over. Every thread counts as an end, those of doubled selvedges and of blends too.",
    "## Every key",
    table(heads, once(single)),
    ...groups.map(
      ([first, ...rows]) => `### ${first[0].replaceAll("`", "")}\n\n${table(heads, once([first, ...rows]))}`,
    ),
  ].join("\n\n");
}
