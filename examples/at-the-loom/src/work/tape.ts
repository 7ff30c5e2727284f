import type { Progress } from "@thrum/plan";
import { loom as words } from "../words/loom.js";
import type { Change } from "./act.js";
import type { Mark } from "./loom.js";

/** The piece being woven; null where all are. */
export function pieceNow(
  progress: Progress,
  marks: readonly Mark[],
): { readonly mark: Mark; readonly piece: number } | null {
  const piece = (progress.woven ?? 0) + 1;
  const mark = marks[piece - 1];
  return mark === undefined ? null : { mark, piece };
}

/** A piece is woven, to its mark or to where she stopped. */
export function woven(
  progress: Progress,
  marks: readonly Mark[],
  at?: NonNullable<Progress["wovenTo"]>[number]["at"],
): Change {
  const piece = (progress.woven ?? 0) + 1;
  const next = marks[piece];
  const says = next === undefined ? words.allWoven : words.pieceSaid(piece + 1, next.at);
  const wovenTo = at === undefined ? progress.wovenTo : [...(progress.wovenTo ?? []), { piece, at }];
  return { progress: { woven: piece, wovenTo }, here: { open: null }, says, clicks: 2 };
}
