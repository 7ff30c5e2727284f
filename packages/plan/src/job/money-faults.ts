import type { CrossFault } from "./cross-faults.js";
import type { FaultPath } from "./fault.js";
import type { Job } from "./job.js";

/** Every price and cost of a job is in one currency: no rate between two lasts. */
export function moneyFaults({ yarns = {}, costs }: Job): readonly CrossFault[] {
  const prices = Object.entries(yarns).flatMap(([name, { sold = [] }]) =>
    sold.flatMap(({ price }, index) =>
      price === undefined ? [] : [[price.unit, ["yarns", name, "sold", index]] as const],
    ),
  );
  const others = [costs?.hourlyRate, costs?.others].map(
    (one, index) => [one?.unit, ["costs", index === 0 ? "hourlyRate" : "others"]] as const,
  );
  const all: readonly (readonly [string | undefined, FaultPath])[] = [...prices, ...others];
  const [first] = all.flatMap(([unit]) => (unit === undefined ? [] : [unit]));
  return all.flatMap(([unit, path]): CrossFault[] => {
    if (unit === undefined || first === undefined || unit === first) return [];
    const expected = `money in one currency, ${first}`;
    return [
      {
        code: "wrong-kind",
        path,
        expected,
        received: unit,
        remedy: `Write the amount in ${first}.`,
        params: { candidates: [first] },
      },
    ];
  });
}
