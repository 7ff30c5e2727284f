import { EXACT_STEP, onStep } from "../../engine/numbers.js";
import { positive, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { refuse } from "../../engine/refusal.js";
import { DentsPerLength, EndsPerLength } from "../../units/index.js";
import { endsADent } from "./ends-a-dent.js";
import { evenOrder } from "./even-order.js";
import { settOfSley } from "./sett-of-sley.js";
import type { SettOfSleyInput } from "./sett-of-sley.js";

export interface ExactSleyInput {
  readonly reed: DentsPerLength;
  /** Wanted, exactly. */
  readonly sett: EndsPerLength;
  /** In the longest order one is ready to sley. */
  readonly mostDents: number;
}

/** A sleying order that gives a sett exactly, the shortest there is. */
export interface ExactSley {
  readonly ends: number;
  readonly dents: number;
  /** In each dent of the order, spread evenly. */
  readonly endsInEachDent: readonly number[];
  /** "1-2-1-2-2" */
  readonly order: string;
  readonly says: string;
  readonly steps: readonly ReportStep<SettOfSleyInput>[];
}

function inWords(ends: number, dents: number): string {
  const [every, more] = [Math.floor(ends / dents), ends % dents];
  if (more === 0) return `${String(every)} in every dent.`;
  return `${String(every)} in every dent and one more in ${String(more)} of every ${String(dents)} dents.`;
}

/**
 * The shortest sleying order that gives a wanted sett exactly: the ends over the dents, and what is left over spread evenly.
 *
 * @param input the reed, the sett, and the longest order one is ready to sley
 * @throws QuantityError "no-answer" where no order of so few dents gives it
 * @source taylor-1909
 * @example exactSley({ reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 10 }).order // "1-2-1-2-2"
 */
export function exactSley(input: ExactSleyInput): ExactSley {
  const declared = {
    reed: positive(DentsPerLength, "of the reed"),
    sett: positive(EndsPerLength, "wanted, exactly"),
    mostDents: whole("dents", "in the longest order one is ready to sley", { atLeast: 1, atMost: 100 }),
  };
  readInputs("exactSley", declared, input);
  const { reed, sett, mostDents } = input;
  const perDent = endsADent(sett, reed);
  for (let dents = 1; dents <= mostDents; dents += 1) {
    const ends = onStep(perDent.times(dents), EXACT_STEP)?.toNumber() ?? 0;
    if (ends < 1) continue;
    const endsInEachDent = evenOrder(ends, dents);
    const step = { reed, dents: endsInEachDent.map(() => 1), endsPerDent: endsInEachDent };
    return frozen({
      ends,
      dents,
      endsInEachDent,
      order: endsInEachDent.join("-"),
      says: inWords(ends, dents),
      steps: [{ calculation: settOfSley, input: step }],
    });
  }
  refuse(
    "no-answer",
    ["exactSley"],
    `an order of ${String(mostDents)} dents or fewer`,
    `${String(sett)} in a reed of ${String(reed)}`,
    "Allow a longer order, or take a sett nearby: substituteReeds lists them.",
  );
}
