import type { Job } from "./job.js";
import { receivedText } from "./placed-fault.js";
import type { Place, PlacedFault } from "./placed-fault.js";

function fault(path: Place, expected: string, received: string, remedy: string): PlacedFault {
  return { code: "out-of-range", path, expected, received, remedy };
}

/** Every yarn has one price, and every amount is of the currency of the rate. */
function costFaults({ costs, yarns }: Job): readonly PlacedFault[] {
  if (costs === undefined) return [];
  const { packagePrices, hourlyRate, others } = costs;
  const unpriced = Object.keys(yarns).filter((name) => !Object.hasOwn(packagePrices, name));
  const idle = Object.keys(packagePrices).filter((name) => !Object.hasOwn(yarns, name));
  const amounts = [
    ...Object.entries(packagePrices).map(([name, price]) => [["packagePrices", name], price] as const),
    [["others"], others] as const,
  ];
  const foreign = amounts.filter(([, amount]) => amount.unit !== hourlyRate.unit);
  return [
    ...unpriced.map((name) =>
      fault(["costs", "packagePrices"], `a price for ${name}`, "none", "Write the price of one package of it."),
    ),
    ...idle.map((name) =>
      fault(
        ["costs", "packagePrices", name],
        "one of the yarns",
        receivedText(name),
        "Correct the name, or leave it out.",
      ),
    ),
    ...foreign.map(([path, amount]) =>
      fault(
        ["costs", ...path],
        `${hourlyRate.unit}, as the hourly rate is`,
        receivedText(amount),
        "Exchange it first.",
      ),
    ),
  ];
}

/** Every yarn is of one fibre. */
function fibreFaults({ fibres, yarns }: Job): readonly PlacedFault[] {
  if (fibres === undefined) return [];
  const named = Object.entries(fibres).flatMap(([fibre, one]) =>
    one.yarns.map((yarn, at) => ({ yarn, path: ["fibres", fibre, "yarns", at] })),
  );
  const unknown = named.filter(({ yarn }) => !Object.hasOwn(yarns, yarn));
  const twice = named.filter(({ yarn }, at) => named.findIndex((other) => other.yarn === yarn) < at);
  const missing = Object.keys(yarns).filter((name) => named.every(({ yarn }) => yarn !== name));
  return [
    ...unknown.map(({ yarn, path }) => fault(path, "one of the yarns", receivedText(yarn), "Correct the name.")),
    ...twice.map(({ yarn, path }) =>
      fault(path, "each yarn once", receivedText(yarn), "A yarn of two fibres is not told."),
    ),
    ...missing.map((name) => fault(["fibres"], `the fibre of ${name}`, "none", "Name it under one of the fibres.")),
  ];
}

/** What is wound beside the warp, and every colour that was seen, is of a yarn of the job. */
function namedFaults({ extraEnds, coloursSeen, yarns }: Job): readonly PlacedFault[] {
  const named: readonly (readonly [Place, object])[] = [
    [["extraEnds", "sample"], extraEnds?.sample ?? {}],
    [["extraEnds", "repairs"], extraEnds?.repairs ?? {}],
    [["coloursSeen", "colours"], coloursSeen?.colours ?? {}],
  ];
  return named.flatMap(([path, byName]) =>
    Object.keys(byName)
      .filter((name) => !Object.hasOwn(yarns, name))
      .map((name) =>
        fault([...path, name], "one of the yarns", receivedText(name), "Correct the name, or leave it out."),
      ),
  );
}

/** What the parts that may be left out leave open, say twice, or say of a yarn there is none of. */
export function afterFaults(job: Job): readonly PlacedFault[] {
  return [...namedFaults(job), ...costFaults(job), ...fibreFaults(job)];
}
