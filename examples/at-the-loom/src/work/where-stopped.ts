import { isTicked } from "@thrum/plan";
import type { WorkRecord } from "../keep/records.js";
import { loom as words } from "../words/loom.js";
import { pieceNow } from "./tape.js";
import type { Loom, Row } from "./loom.js";
import { knotsInWork, lastTied, toTie } from "./tie.js";
import { windingNow } from "./wind.js";

/** The last thing done, to be compared with the loom. */
export interface Stopped {
  readonly asks: string;
  readonly hand: { readonly yarns: readonly string[] } | null;
  readonly who: string;
  readonly number: string;
  readonly unit: string;
  readonly facts: readonly (readonly [string, string])[];
  readonly row: Row | null;
  readonly knots: number;
}

const plain = { hand: null, who: "", facts: [], row: null, knots: 0 } as const;

function tying({ progress }: WorkRecord, loom: Loom): Stopped | null {
  const rows = loom.rows ?? [];
  const now = toTie(progress, rows);
  const begun = now === null ? 0 : knotsInWork(progress, now);
  const row = now !== null && begun > 0 ? now : lastTied(progress, rows);
  if (row === null) return null;
  const knots = begun > 0 ? begun : row.knots;
  const isBack = row.to < row.from;
  const end = begun > 0 ? (isBack ? row.from - begun + 1 : row.from + begun - 1) : row.to;
  const [shaft, dent] = [loom.shaftOf[end - 1], loom.dentOf[end - 1]];
  const facts: Stopped["facts"] = [
    ["group", `${String(row.group)} of ${String(rows.length)}`],
    ...(shaft === undefined || shaft === "not known" ? [] : [[words.shaft, String(shaft)] as const]),
    ...(dent === undefined || dent === null ? [] : [[words.dent, String(dent)] as const]),
  ];
  return { asks: words.isLastKnot, hand: row, who: "", number: String(end), unit: words.lastEnd, facts, row, knots };
}

/** Where the work stopped; null where nothing of its task is done. */
export function whereStopped(work: WorkRecord, loom: Loom): Stopped | null {
  const { progress, here } = work;
  switch (here.task) {
    case "tie":
      return tying(work, loom);
    case "count": {
      const group = [...(loom.groups ?? [])].reverse().find((one) => isTicked(progress.counted?.old, one.group));
      if (group === undefined) return null;
      const number = String(group.lastOldEnd ?? group.lastEnd);
      return {
        ...plain,
        asks: words.isLastGroup,
        who: words.groupOf(group.group, loom.groups?.length ?? 0),
        number,
        unit: words.atEnd,
      };
    }
    case "wind": {
      const at = windingNow(progress, loom.chains ?? []);
      if (at === null || (at.pass === 0 && progress.winding === undefined)) return null;
      const who = words.windChain(at.chain.chain, loom.chains?.length ?? 0);
      return {
        ...plain,
        asks: words.isLastRound,
        hand: at.part,
        who,
        number: words.rounds(at.pass),
        unit: words.ofRounds(at.part.passes),
      };
    }
    case "tape": {
      const woven = progress.woven ?? 0;
      if (woven === 0) return null;
      const at = pieceNow(progress, loom.marks ?? []);
      return {
        ...plain,
        asks: words.isLastPiece,
        who: at === null ? words.allWoven : "",
        number: String(woven),
        unit: words.pieces,
      };
    }
    case "cut":
    case "lay":
    case "through":
    case "shafts":
    case "inches":
    case "measures": {
      const done = here.steps[here.task]?.length ?? 0;
      const of = String(loom.steps[here.task]?.length ?? done);
      return done === 0 ? null : { ...plain, asks: words.isLastStep, number: String(done), unit: `of ${of}` };
    }
  }
}
