import { Decimal, kept } from "../numbers.js";
import { stepsOf } from "../formula/index.js";
import type { Run, Value } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { misnamed, roundedOff } from "./answer-slips.js";
import type { Judged } from "./judged.js";
import { roughAnswer, roughly } from "./roughly.js";
import type { Rough } from "./roughly.js";
import { slipsOf } from "./slips.js";

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
export function slipAnswers(worked: Run, { exact, unit, toClaim }: Judged): readonly SlipAnswer[] {
  const factor = toClaim(new Decimal(1)).toNumber();
  const turned = new Map<Value, Rough>();
  const known = new Map<unknown, ReturnType<typeof roughly>>();
  const ofFormula = [...slipsOf(worked)]
    .sort((a, b) => a.rank - b.rank)
    .map(({ says, line, lines, from, values }): SlipAnswer => {
      const rough = known.get(values) ?? roughly(values, turned);
      known.set(values, rough);
      return {
        says,
        line: line === "" ? "" : inWords(line),
        rough: roughAnswer(lines.slice(from), rough) * factor,
        exact: () => {
          const { steps, failed } = stepsOf(lines.slice(from), values, worked.nearness);
          const end = steps.at(-1)?.value;
          return failed === null && end instanceof Decimal ? kept(toClaim(end)) : null;
        },
      };
    });
  const ofAnswer = [...misnamed(exact, unit), ...roundedOff(exact)].map(([says, number]): SlipAnswer => ({
    says: () => says,
    line: "",
    rough: number.toNumber(),
    exact: () => number,
  }));
  return [...ofFormula, ...ofAnswer];
}
