import * as v from "valibot";
import { any, some } from "./amounts.js";
import type { AmountSchemas } from "./amounts.js";
import type { JobCosts, JobFibre, JobFirstInches, JobFound, JobPicks } from "./job.js";
import { count, oneOf, positive, yarnName } from "./values.js";

export const picksSchema: v.GenericSchema<unknown, JobPicks> = v.object({
  picks: count("picks", 1000),
  in: oneOf("1 inch", "1 centimetre"),
});

export function firstInchesSchema({ length }: AmountSchemas): v.GenericSchema<unknown, JobFirstInches> {
  return v.object({ picksAtLoom: picksSchema, widthAtFell: some(length, "length") });
}

/** What was measured once the cloth was woven and washed. */
export function foundSchema({ length }: AmountSchemas): v.GenericSchema<unknown, JobFound> {
  const measure = some(length, "length");
  return v.object({
    warpUsed: measure,
    length: v.object({ onLoom: measure, offLoom: measure, finished: measure }),
    width: v.object({ inReed: measure, atFell: measure, offLoom: measure, finished: measure }),
  });
}

export function costsSchema({ money, loss }: AmountSchemas): v.GenericSchema<unknown, JobCosts> {
  return v.object({
    packagePrices: v.record(yarnName, some(money, "price"), "the price of a package of each yarn, by its name|"),
    hours: positive("hours", 100_000),
    hourlyRate: some(money, "rate"),
    others: any(money, "cost"),
    commission: loss,
  });
}

export function fibresSchema({
  addition,
}: AmountSchemas): v.GenericSchema<unknown, Readonly<Record<string, JobFibre>>> {
  const yarns = v.pipe(
    v.array(yarnName, "the yarns spun from this fibre, such as [natural, madder]|"),
    v.minLength(1, "one yarn or more|"),
  );
  return v.record(yarnName, v.object({ regain: addition, yarns }), "the fibres by name|");
}
