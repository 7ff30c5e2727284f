import type { PlanSum } from "@thrum/plan";

/** A row of the sheet: one figure, its rows of the scope side by side. */
export interface GridRow {
  readonly label: string;
  readonly sums: readonly PlanSum[];
}

/** The figures of one group under one heading. */
export interface GridGroup {
  readonly group: string;
  /** Of the rows of its scope; one without a name, where it is worked once. */
  readonly rowNames: readonly (string | null)[];
  readonly rows: readonly GridRow[];
}

function groupedBy<T>(list: readonly T[], key: (one: T) => string): readonly (readonly [string, readonly T[]])[] {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const known = groups.get(key(one));
    if (known === undefined) groups.set(key(one), [one]);
    else known.push(one);
  }
  return [...groups];
}

/** How deep a figure stands on others: what is read stands above what reads it. */
function depths(sums: readonly PlanSum[]): ReadonlyMap<PlanSum, number> {
  const byPath = new Map(sums.map((sum) => [JSON.stringify(sum.path), sum]));
  const known = new Map<PlanSum, number>();
  const readBy = (sum: PlanSum): readonly PlanSum[] => {
    const paths = (origin: PlanSum["from"][string]): readonly string[] => {
      if ("list" in origin) return origin.list.flatMap(paths);
      return "path" in origin ? [JSON.stringify(origin.path)] : [];
    };
    return Object.values(sum.from).flatMap((origin) => paths(origin).flatMap((path) => byPath.get(path) ?? []));
  };
  const depth = (sum: PlanSum): number => {
    const found = known.get(sum);
    if (found !== undefined) return found;
    known.set(sum, 0);
    const made = 1 + Math.max(0, ...readBy(sum).map(depth));
    known.set(sum, made);
    return made;
  };
  for (const sum of sums) depth(sum);
  return known;
}

/** The groups in the order of the work: what reads nothing first, the deepest last. */
export function gridOf(sums: readonly PlanSum[]): readonly GridGroup[] {
  const depth = depths(sums);
  const deepest = (list: readonly PlanSum[]): number => Math.max(...list.map((sum) => depth.get(sum) ?? 0));
  return groupedBy(sums, ({ group }) => group)
    .map(([group, all]) => ({ group, all }))
    .sort((a, b) => deepest(a.all) - deepest(b.all))
    .map(({ group, all }) => ({
      group,
      rowNames: [...new Set(all.map(({ row }) => row))],
      rows: groupedBy(all, ({ name }) => name)
        .map(([, own]) => ({ label: own[0]?.label ?? "", sums: own }))
        .sort((a, b) => deepest(a.sums) - deepest(b.sums)),
    }));
}
