import { lengthNotation, massNotation } from "./amounts.js";
import type { CrossFault } from "./cross-faults.js";
import type { Job } from "./job.js";
import type { JobYarn, Sold } from "./yarns.js";

function sizeText({ mass, length }: Sold): string {
  if (mass !== undefined) return massNotation.write(mass);
  return length === undefined ? "" : lengthNotation.write(length);
}

/** Packages on hand say how much there is only where they are sold in one size. */
export function packageFaults({ yarns = {} }: Job): readonly CrossFault[] {
  return Object.entries(yarns).flatMap(
    ([name, { onHand = [], sold = [] }]: readonly [string, JobYarn]): CrossFault[] => {
      const packages = onHand.flatMap((part) =>
        "packages" in part ? [`${String(part.packages)} ${part.called}${part.packages > 1 ? "s" : ""}`] : [],
      );
      if (packages.length === 0 || sold.length === 1) return [];
      const listed = sold.length === 0 ? "no size" : sold.map(sizeText).join(" and ");
      const received = packages.join(" + ");
      const remedy = `Of which size? sold lists ${listed}. Write the mass.`;
      return [
        {
          code: "ambiguous",
          path: ["yarns", name, "onHand"],
          expected: "packages of one size",
          received,
          remedy,
          params: {},
        },
      ];
    },
  );
}
