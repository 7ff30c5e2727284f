import { QuantityError, difference, inches, picksInLength, picksOfStripe, sum, times, wovenLength } from "@thrum/maths";
import type { Length, Loss, PicksPerLength } from "@thrum/maths";
import { waits } from "../core/waits.js";
import type { Hand, Runs } from "../job/runs.js";
import type { JobWeft, Shots } from "../job/weft.js";
import { isOpen, laid } from "./laid.js";
import type { RunKind } from "./laid.js";
import { handOf, isSameHand, turnedHand } from "./laid-stripes.js";

/** A stripe of the weft as it is woven. */
export interface LaidShots extends Hand {
  readonly picks: number;
  /** Whether they are beaten in other picks than those of the piece. */
  readonly apart: boolean;
}

interface Given {
  readonly runs: Runs<Shots>;
  readonly woven: Length;
  readonly picksInAll: number;
  readonly picks: PicksPerLength;
  readonly lengths: JobWeft["lengths"] | null;
  readonly loss: Loss | null;
}

/** A length of a stripe at weaving tension. */
function atLoom(length: Length, { lengths, loss }: Given): Length {
  if (lengths == null) return waits("weft", "lengths");
  if (lengths === "at the loom") return length;
  if (loss === null) return waits("cloth", "lengthLoomToFinished");
  return wovenLength({ finishedLength: length, hemEachEnd: times(length, 0), loomToFinished: loss });
}

/** Cloth that is beaten in picks of its own. */
function apart(runs: Runs<Shots>, given: Given): Length {
  const none = inches(0);
  return runs.reduce((so, run) => {
    if ("of" in run) return run.repeat === "the rest" ? so : sum(so, times(apart(run.of, given), run.repeat));
    if ("mirror" in run) {
      const last = run.middle === "once" ? run.mirror.slice(-1) : [];
      return difference(sum(so, times(apart(run.mirror, given), 2)), apart(last, given));
    }
    return run.at === undefined || run.length === undefined ? so : sum(so, atLoom(run.length, given));
  }, none);
}

function shotsKind(given: Given): RunKind<Shots, LaidShots> {
  const picksOf = ({ picks, length, at }: Shots, open: number): number => {
    if (picks === "the rest") return open;
    if (picks !== undefined) return picks;
    if (length === undefined) return given.picksInAll;
    return picksOfStripe({ wovenLength: atLoom(length, given), picks: at ?? given.picks });
  };
  return {
    counted: "picks",
    isOpen: ({ picks }) => picks === "the rest",
    closed: (shots, open) => ({ ...handOf(shots), picks: picksOf(shots, open), apart: shots.at !== undefined }),
    size: ({ picks, apart: isApart }) => (isApart ? 0 : picks),
    isNothing: ({ picks }) => picks === 0,
    turned: (shots) => ({ ...shots, ...turnedHand(shots) }),
    together: (one, other) =>
      one.apart === other.apart && isSameHand(one, other) ? { ...one, picks: one.picks + other.picks } : null,
    placed: (shots) => shots,
  };
}

/** The stripes of one piece: picks as written, lengths to the nearest pick, `the rest` what is over. */
export function laidShots(given: Given): readonly LaidShots[] {
  const { runs, woven, picks, picksInAll } = given;
  const kind = shotsKind(given);
  const ownCloth = apart(runs, given);
  const room = ownCloth.value === "0" ? picksInAll : picksInLength({ wovenLength: difference(woven, ownCloth), picks });
  const { runs: stripes, size } = laid(runs, kind, isOpen(runs, kind) ? room : undefined);
  if (size <= room) return stripes;
  const [expected, received] = [`stripes of at most ${String(room)} picks`, `stripes of ${String(size)}`];
  throw new QuantityError({ code: "out-of-range", where: "weft", expected, received, remedy: "" });
}
