import { frozen } from "../../engine/frozen.js";
import { refuse } from "../../engine/refusal.js";
import { drawn } from "./drawn.js";
import type { Weave } from "./drawn.js";

/** What one set of threads does in a repeat. */
export interface ThreadsInWeave {
  /** Of each thread: where it passes between face and back in one repeat, which closes on itself. */
  readonly intersections: readonly number[];
  /** Threads passed over or under between two intersections, over all threads of the set. */
  readonly averageFloat: number;
  readonly longestFloat: number;
}

export interface WeaveQuantities {
  /** In one repeat as drawn. */
  readonly ends: number;
  readonly picks: number;
  readonly ofEnds: ThreadsInWeave;
  readonly ofPicks: ThreadsInWeave;
}

/** The lengths of the floats of one thread, the last running on into the first. */
function floatsOf(thread: readonly boolean[]): readonly number[] {
  const turns = thread.flatMap((side, at) => (side === thread.at(at - 1) ? [] : [at]));
  return turns.map((turn, at) => (turns[at + 1] ?? (turns[0] ?? 0) + thread.length) - turn);
}

function quantitiesOf(name: "end" | "pick", threads: readonly (readonly boolean[])[]): ThreadsInWeave {
  const floats = threads.map(floatsOf);
  const loose = floats.findIndex((own) => own.length === 0);
  if (loose >= 0) {
    refuse(
      "no-answer",
      ["weaveQuantities", "weave"],
      "threads that each pass between face and back",
      `${name} ${String(loose + 1)} on one side throughout`,
      "Draw the whole repeat; a thread that is never bound is in no cloth.",
    );
  }
  const all = floats.flat();
  return frozen({
    intersections: floats.map((own) => own.length),
    averageFloat: all.reduce((total, float) => total + float, 0) / all.length,
    longestFloat: all.reduce((longest, float) => Math.max(longest, float), 0),
  });
}

/**
 * Ends, picks, intersections and floats of a weave, counted from its drawing.
 *
 * @param weave one repeat, pick by pick
 * @throws QuantityError "unreadable" for what is no drawing, "no-answer" where a thread is never bound
 * @source gate-tf
 * @example weaveQuantities(["xx..", ".xx.", "..xx", "x..x"]).ofEnds.averageFloat // 2
 */
export function weaveQuantities(weave: Weave): WeaveQuantities {
  const rows = drawn("weaveQuantities", weave);
  const ends = rows[0]?.length ?? 0;
  const columns = Array.from({ length: ends }, (_, end) => rows.map((row) => row[end] === true));
  return Object.freeze({
    ends,
    picks: rows.length,
    ofEnds: quantitiesOf("end", columns),
    ofPicks: quantitiesOf("pick", rows),
  });
}
