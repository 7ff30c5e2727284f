import { tieOn } from "@thrum/maths";
import type { EndsAtSides, Finding, TieOnReport } from "@thrum/maths";
import type { Neighbours } from "./neighbours.js";

type NewWarp = Parameters<typeof tieOn>[1];

/** A finding of the comparison; one about grist names the new yarns of which it is true. */
export interface FitFinding extends Finding {
  readonly yarns: readonly string[];
}

/** The old warp compared with the new one, each of the new yarns for itself, and the colours that lie side by side. */
export interface WarpFit {
  readonly verdict: TieOnReport["verdict"];
  readonly findings: readonly FitFinding[];
  /** Every two colours that lie side by side; none where the job does not say what they look like. */
  readonly neighbours: readonly Neighbours[];
  readonly steps: TieOnReport["steps"];
}

/** A yarn of the new warp by its finished thread. */
export interface NewYarn {
  readonly name: string;
  readonly count: NewWarp["count"];
}

/** Ends more or fewer are no hindrance where they can be added or dropped at the sides. */
function endsFinding(finding: Finding, sides: EndsAtSides): Finding {
  if (finding.about !== "ends" || finding.agrees) return finding;
  const standing = sides.verdict === "does not fit" ? "must" : "check";
  return { ...finding, standing, says: sides.says };
}

function verdictOf(findings: readonly Pick<Finding, "standing" | "agrees">[]): TieOnReport["verdict"] {
  const differs = (standing: Finding["standing"]): boolean =>
    findings.some((one) => one.standing === standing && !one.agrees);
  return differs("must") ? "does not fit" : differs("check") ? "check" : "fits";
}

function gristFindings(reports: readonly (readonly [string, TieOnReport])[]): readonly FitFinding[] {
  const bySentence = new Map<string, FitFinding>();
  for (const [name, { findings }] of reports) {
    for (const finding of findings.filter(({ about }) => about === "grist")) {
      const same = bySentence.get(finding.says);
      bySentence.set(finding.says, { ...finding, yarns: [...(same?.yarns ?? []), name] });
    }
  }
  return [...bySentence.values()];
}

/** Compares the warps; a yarn unlike the old one is found even beside others that are like it. */
export function warpFit(
  old: Parameters<typeof tieOn>[0],
  planned: Omit<NewWarp, "count">,
  yarns: readonly NewYarn[],
  sides: EndsAtSides,
  neighbours: readonly Neighbours[],
): WarpFit {
  const reports = yarns.map(({ name, count }) => [name, tieOn(old, { ...planned, count })] as const);
  const [first] = reports;
  if (first === undefined) throw new RangeError("a warp without a yarn");
  const [, { findings: shared, steps }] = first;
  const findings = shared.flatMap((finding) =>
    finding.about === "grist" ? gristFindings(reports) : [{ ...endsFinding(finding, sides), yarns: [] }],
  );
  return { verdict: verdictOf([...findings, ...neighbours]), findings, neighbours, steps };
}
