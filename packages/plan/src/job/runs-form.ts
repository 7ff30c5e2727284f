import { refuse } from "./form.js";
import type { Form, Tree } from "./form.js";
import { readRuns } from "./read-runs.js";
import type { RunKind } from "./run-kind.js";
import { exactSize } from "./run-size.js";
import { isMirrored, isRepeated } from "./runs.js";
import type { AnyRun, Runs } from "./runs.js";

const MOST = 20_000;

function runTree<Run>(kind: RunKind<Run>, run: AnyRun<Run>): Tree {
  if (isRepeated(run))
    return {
      group: [
        ["repeat", run.repeat],
        ["of", listTree(kind, run.of)],
      ],
    };
  if (isMirrored(run))
    return {
      group: [
        ["mirror", listTree(kind, run.mirror)],
        ["middle", run.middle],
      ],
    };
  return kind.run.write(run);
}

function listTree<Run>(kind: RunKind<Run>, list: Runs<Run>): Tree {
  return { list: list.map((run) => runTree(kind, run)) };
}

/** Runs in one of the four lists. */
export function runs<Run>(kind: RunKind<Run>): Form<Runs<Run>> {
  return {
    shape: { kind: "runs", run: kind.run },
    write: (list) => {
      const [first] = list;
      return list.length === 1 && first !== undefined && !isRepeated(first) && !isMirrored(first)
        ? runTree(kind, first)
        : listTree(kind, list);
    },
    read: (node, at) => {
      const list = readRuns(kind, node, at, { depth: 1, repeats: false, open: { met: false } });
      const size = list === null ? 0 : exactSize(list, kind.measured);
      if (size <= MOST) return list;
      const params = { most: MOST };
      return refuse(at, node, {
        expected: `at most ${String(MOST)} ${kind.noun}`,
        received: String(size),
        remedy: "Look at the repeats.",
        code: "out-of-range",
        params,
      });
    },
  };
}
