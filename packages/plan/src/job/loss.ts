import { compare } from "@thrum/maths";
import type { Length, Loss } from "@thrum/maths";
import { lengthNotation } from "./amounts.js";
import { lossNotation } from "./percents.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";

/** A loss as written: a percentage of what was there before, or the two measures of one piece. */
export interface WrittenLoss {
  readonly lost?: Loss;
  readonly before?: Length;
  readonly after?: Length;
}

/** The measures of one piece, before and after. */
export interface Measures {
  readonly before: Length;
  readonly after: Length;
}

function measuresOf(written: string): Measures {
  const [before = "", after = "", more] = written.split(" to ");
  if (more !== undefined) throw new Unreadable("Write two measures of one piece, such as 40 cm to 35 cm.");
  return { before: lengthNotation.read(before), after: lengthNotation.read(after) };
}

const measuresText = ({ before, after }: Measures): string =>
  `${lengthNotation.write(before)} to ${lengthNotation.write(after)}`;

const EITHER = "Write 8 % lost, or two measures: 21 in to 19 1/2 in.";

const notation: Notation<WrittenLoss> = {
  read: (written) => {
    if (written.includes(" to ")) {
      const measures = measuresOf(written);
      if (compare(measures.after, measures.before) <= 0) return measures;
      throw new Unreadable(
        "The second measure is longer than the first: write first what was there before.",
        "out-of-range",
      );
    }
    if (/^[\d./ ]+ ?%$/u.test(written)) throw new Unreadable(EITHER.replace("8 %", written), "ambiguous");
    if (!written.endsWith("% lost")) throw new Unreadable(EITHER);
    return { lost: lossNotation.read(written) };
  },
  write: ({ lost, before, after }) => {
    if (lost !== undefined) return lossNotation.write(lost);
    return before === undefined || after === undefined ? "" : measuresText({ before, after });
  },
};

export const loss: Form<WrittenLoss> = text("a loss", "8 % lost", notation);
/** Measures as they were found, though the second be longer: that is asked about, not refused. */
export const measures: Form<Measures> = text("two measures of one piece", "21 in to 19 1/2 in", {
  read: measuresOf,
  write: measuresText,
});
