import type { CrossFault } from "./cross-faults.js";
import { printable } from "../text/printable.js";
import type { FaultPath } from "./fault.js";
import type { Job } from "./job.js";
import { unlike } from "../text/near-name.js";
import { isMirrored, isRepeated } from "./runs.js";
import type { Hand, Runs } from "./runs.js";

/** The hands of a list of runs, with their places. */
function handsOf<Run extends Hand>(list: Runs<Run>, path: FaultPath): readonly (readonly [Run, FaultPath])[] {
  return list.flatMap((run, index) => {
    const here = [...path, index];
    if (isRepeated(run)) return handsOf<Run>(run.of, [...here, "of"]);
    return isMirrored(run) ? handsOf<Run>(run.mirror, [...here, "mirror"]) : [[run, here] as const];
  });
}

type Used = readonly [hand: Hand, path: FaultPath];

/** Every place where yarns are named. */
function usedIn({ stripes = [], weft, pieces = [], betweenPieces, winding, loom }: Job): readonly Used[] {
  const alone = (yarn: string): Hand => ({ yarns: [yarn] });
  return [
    ...handsOf(stripes, ["stripes"]),
    ...handsOf(weft?.stripes ?? [], ["weft", "stripes"]),
    ...pieces.flatMap((piece, index) => handsOf(piece.weft?.stripes ?? [], ["pieces", index, "weft", "stripes"])),
    ...(betweenPieces?.weft === undefined ? [] : [[betweenPieces.weft, ["betweenPieces", "weft"]] as const]),
    ...(winding?.extra ?? []).map(({ yarn }, index) => [alone(yarn), ["winding", "extra", index]] as const),
    ...Object.keys(loom?.sley?.byYarn ?? {})
      .filter((name) => name !== "others")
      .map((name) => [alone(name), ["loom", "sley", "byYarn", name]] as const),
  ];
}

/** Names that are none of the yarns; without yarns names are free. */
function unknownNames(job: Job): readonly CrossFault[] {
  if (job.yarns === undefined) return [];
  const names = Object.keys(job.yarns);
  const known = new Set(names);
  return usedIn(job).flatMap(([{ yarns }, path]) =>
    [...new Set(yarns)]
      .filter((name) => !known.has(name))
      .map((name): CrossFault => {
        const received = `"${printable(name)}"`;
        const params = { candidates: names };
        return {
          code: "unknown-word",
          path,
          expected: "the name of a yarn",
          received,
          remedy: unlike(name, names),
          params,
        };
      }),
  );
}

/** The yarns of a blend lie in the same dents. */
function blendsOfTwoSleys({ stripes = [], loom }: Job): readonly CrossFault[] {
  const byYarn = loom?.sley?.byYarn;
  if (byYarn === undefined) return [];
  const ends = new Map(Object.entries(byYarn));
  return handsOf(stripes, ["stripes"]).flatMap(([{ yarns }, path]): CrossFault[] => {
    const each = [...new Set(yarns)].map((name) => ends.get(name) ?? ends.get("others"));
    if (new Set(each).size < 2) return [];
    const received = each.map((number) => (number === undefined ? "none" : String(number))).join(" and ");
    const expected = "one number of ends in a dent for all yarns of a blend";
    return [
      { code: "ambiguous", path, expected, received, remedy: "Give them the same number in loom.sley.", params: {} },
    ];
  });
}

export function nameFaults(job: Job): readonly CrossFault[] {
  return [...unknownNames(job), ...blendsOfTwoSleys(job)];
}
