import type { Decimal } from "../numbers.js";
import type { Run } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { misnamed, roundedOff } from "./answer-slips.js";
import type { Judged } from "./judged.js";
import { slipsOf } from "./slips.js";
import { roughSums, sumWith } from "./sums.js";

/** What a known slip makes of the answer. */
export interface SlipAnswer {
  readonly says: () => string;
  /** The line it stands at; empty where an input or the answer is misread. */
  readonly line: string;
  /** In the unit of the claim, as a double. */
  readonly rough: number;
  /** The same exactly; null where the sum with the slip comes to nothing. */
  readonly exact: () => Decimal | null;
}

/** Every known slip of a formula with what it makes of the answer, the likeliest first. */
export function slipAnswers(worked: Run, judged: Judged): readonly SlipAnswer[] {
  const { exact, unit } = judged;
  const rough = roughSums(judged);
  const ofFormula = [...slipsOf(worked)]
    .sort((a, b) => a.rank - b.rank)
    .map((slip): SlipAnswer => ({
      says: slip.says,
      line: inWords(slip.line),
      rough: rough(slip),
      exact: () => sumWith(slip, worked, judged)?.number ?? null,
    }));
  const ofAnswer = [...misnamed(exact, unit), ...roundedOff(exact)].map(([says, number]): SlipAnswer => ({
    says: () => says,
    line: "",
    rough: number.toNumber(),
    exact: () => number,
  }));
  return [...ofFormula, ...ofAnswer];
}
