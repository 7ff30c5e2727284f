import { job } from "../figures/keys.js";
import * as warp from "../figures/warp.js";
import * as winding from "../figures/winding.js";
import { counted } from "../parts/told.js";
import type { WoundChain, WoundPart } from "../parts/winding.js";
import type { Block } from "./block.js";
import { byTheTapeUp, byTheYard } from "./length-formats.js";
import { fromTo, handLine } from "./hands.js";
import { many } from "./shown.js";
import { listOf } from "./table.js";
import * as told from "../figures/told.js";
import { toldLine, toldOf } from "./told-lines.js";
import { says, shown, step } from "./view.js";
import type { At, View } from "./view.js";
import { fromPart, optional, under } from "./ways.js";

/** Rounds there and back, and a half where the last way is not gone back. */
function rounds({ rounds: whole, halfRound }: WoundPart): string | number {
  if (!halfRound) return whole;
  return whole === 0 ? "1/2" : `${String(whole)} 1/2`;
}

/** What falls within the stripe besides winding. */
function meanwhile({ ties, threads, byItsHand, dropForLastPass, endsAt }: WoundPart, isLast: boolean): string {
  const counts = ties.map(({ group, total }) => `${String(total)} (group ${String(group)})`).join(", ");
  return [
    ...(byItsHand ? [`hold its ${counted(threads, "thread")}`] : []),
    ...(counts === "" ? [] : [`tie the count at ${counts}`]),
    ...(dropForLastPass === 0
      ? []
      : [`lay ${String(dropForLastPass)} of ${counted(threads, "thread")} aside for the last pass`]),
    ...(endsAt === "far peg" ? [isLast ? "stop at the far peg" : "change colour at the far peg"] : []),
  ].join("; ");
}

function chainTable({ chain, ends, parts }: WoundChain, at: At): readonly Block[] {
  const from = parts[0]?.firstEnd ?? null;
  const aside = parts.every(({ firstEnd }, index) => index === 0 || firstEnd === (parts[index - 1]?.lastEnd ?? 0) + 1);
  const which = aside ? `, ends ${fromTo(from, parts.at(-1)?.lastEnd ?? null) ?? ""}` : "";
  return listOf(
    { caption: `Chain ${String(chain)}: ${counted(ends, "end")}${which}`, read: "bench", ticked: true },
    parts,
    [
      ["colour", handLine],
      ["ends", ({ ends: own }) => own],
      ["rounds", rounds],
      ["so far", ({ runningTotal }) => runningTotal],
      ["meanwhile", (part) => meanwhile(part, part === parts.at(-1))],
    ],
    at,
  );
}

function fingers(chains: readonly WoundChain[]): readonly Block[] {
  const parts = chains.flatMap(({ parts: own }) => own);
  const blends = parts.some(({ yarns, order }) => yarns.length > 1 && order === undefined);
  const turns = parts.some(({ order }) => order !== undefined);
  const lines = [
    ...(parts.some(({ threads }) => threads > 1)
      ? ["Keep a finger between the threads wound together, so that they do not twist about each other."]
      : []),
    ...(blends
      ? [
          "Wind a blend with its threads in the hand together: either may come first. Take them as the lease gives them.",
        ]
      : []),
    ...(turns ? ["Lay the lease thread by thread where two colours lie strictly one and one."] : []),
  ];
  return lines.map((line): Block => ({ is: "says", as: "step", says: [line] }));
}

/** What stands at the warping board or the reel: every chain, stripe by stripe. */
export const windingPage: View = {
  name: "winding",
  heading: "Winding list",
  blocks: [
    says`Wind ${many(job.winding.threads, "thread")} at a time, ${shown(warp.length, byTheYard)} from end to end (${shown(warp.length, byTheTapeUp)}).`,
    optional(says`That is ${many(warp.turns, "turn")} of the reel.`),
    step`Begin each chain at the near peg; a round is there and back.`,
    fromPart(winding.wound, fingers),
    toldOf(told.neighbours, told.step, told.surplus),
    step`Make the lease at the end of the chain that will be tied, and tie it up before the chain leaves its pegs.`,
    step`Label each chain with its number and its first end.`,
    fromPart(winding.chains, ({ tooWide, waitsForMost }) => [
      ...tooWide.map(toldLine),
      ...(waitsForMost ? [{ is: "says", as: "WAITS", says: ["winding.most."] } as const] : []),
    ]),
    fromPart(winding.wound, (chains, at) => chains.flatMap((chain) => chainTable(chain, at))),
    optional(
      under(
        "Beside the warp",
        fromPart(job.winding.extra, (extra, at) => [
          {
            is: "says",
            as: "step",
            says: [
              "Wind these apart, as long as the warp, and tie a label to each. They are never tied in, and not counted among the ends of the warp.",
            ],
          },
          ...listOf(
            { caption: "Ends wound beside", ticked: true },
            extra,
            [
              ["yarn", ({ yarn }) => [{ yarn }]],
              ["ends", ({ ends }) => ends],
            ],
            at,
          ),
        ]),
      ),
    ),
  ],
};
