import { percentOf, sign } from "@thrum/maths";
import type { Mass, Share } from "@thrum/maths";
import type { JobYarn } from "../job/yarns.js";

/** A fibre of the cloth. */
export interface FibreRow {
  readonly name: string;
  readonly place: string;
}

type Yarns = Readonly<Record<string, JobYarn>>;

interface InPieces {
  readonly yarns: Yarns;
  /** The yarns of the cloth, and their masses in the pieces. */
  readonly names: readonly string[];
}

function fibresOf(yarns: Yarns, name: string): NonNullable<JobYarn["fibre"]> {
  return (Object.hasOwn(yarns, name) ? yarns[name]?.fibre : undefined) ?? [];
}

/** The fibres of the yarns of the cloth, each once. */
export function fibreRows({ yarns, names }: InPieces): readonly FibreRow[] {
  const fibres = names.flatMap((name) => fibresOf(yarns, name).map(({ fibre }) => fibre));
  return [...new Set(fibres)].map((name) => ({ name, place: name }));
}

/** The yarns that hold one fibre: how much of each is in the pieces, and how much of that is the fibre. */
export interface YarnsWithFibre {
  readonly masses: readonly Mass[];
  readonly shares: readonly Share[];
}

export function yarnsWithFibre(
  given: InPieces & { readonly masses: readonly Mass[]; readonly fibre: string },
): YarnsWithFibre {
  const { yarns, names, masses, fibre } = given;
  const found = names.flatMap((name, at) => {
    const mass = masses[at];
    const part = fibresOf(yarns, name).find((one) => one.fibre === fibre);
    return mass === undefined || sign(mass) === 0 || part === undefined
      ? []
      : [{ mass, share: part.share ?? percentOf(100) }];
  });
  return { masses: found.map(({ mass }) => mass), shares: found.map(({ share }) => share) };
}

/** The masses and regains of all fibres but one. */
export function othersThan<T>(given: {
  readonly names: readonly string[];
  readonly all: readonly T[];
  readonly fibre: string;
}): readonly T[] {
  return given.all.filter((_, at) => given.names[at] !== given.fibre);
}
