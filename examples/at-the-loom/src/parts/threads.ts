import type { Loom, Special } from "../work/loom.js";

/** One thread of the picture, old above or new below, at its place from the left. */
export interface Thread {
  readonly end: number;
  readonly x: number;
  /** The colour's place in the list of yarns. */
  readonly yarn: number;
  readonly shaft: string;
  readonly isOfGroup: boolean;
  readonly hasOld: boolean;
  /** An old end beside it that is cut back. */
  readonly cutBack: boolean;
  readonly endsStripe: boolean;
  readonly isTied: boolean;
}

export interface Laid {
  readonly threads: readonly Thread[];
  readonly wide: number;
}

const [STEP, IN_HAND, BETWEEN_REPEATS, MARGIN] = [12, 8, 5, 10];
const FEW = 12;

interface Asked {
  readonly first: number;
  readonly last: number;
  /** Knots of the group that are tied, from its first end, or from its last where it is tied so. */
  readonly knots: number;
  readonly special: readonly Special[];
  readonly before?: number;
  readonly after?: number;
}

/** Whether a space stands before this end: at a threading repeat, or at a dent where the threading is written whole. */
function isParted({ repeat, repeatPlaceOf, dentOf }: Loom, end: number): boolean {
  if (repeat > 1) return repeatPlaceOf[end - 1] === 1;
  return repeat === 0 && dentOf[end - 1] !== dentOf[end - 2];
}

/** The threads of a group with a few neighbours, where each is drawn. */
export function laidThreads(loom: Loom, { first, last, knots, special, before = 3, after = 3 }: Asked): Laid {
  const from = Math.max(1, first - before);
  const to = Math.min(loom.ends, last + after);
  const isBack = loom.order === "from the last end";
  const edges = new Set((loom.groups ?? []).filter(({ endsStripe }) => endsStripe).map(({ lastEnd }) => lastEnd));
  const blends = (loom.groups ?? []).filter(({ yarns, order }) => order === undefined && yarns.length > 1);
  const cut = new Set(special.filter(({ cutBack }) => cutBack > 0).map(({ newEnd }) => newEnd));
  let x = MARGIN - STEP;
  const threads: Thread[] = [];
  for (let end = from; end <= to; end += 1) {
    const blend = blends.find(({ firstEnd, lastEnd }) => end >= firstEnd && end <= lastEnd);
    const isInHand = blend !== undefined && (end - blend.firstEnd) % blend.yarns.length !== 0;
    x += (isInHand ? IN_HAND : STEP) + (end > from && isParted(loom, end) ? BETWEEN_REPEATS : 0);
    const isOfGroup = end >= first && end <= last;
    const turn = isBack ? last - end : end - first;
    const isLabelled = isOfGroup && (last - first < FEW || end === first || end === last);
    const shaft = loom.shaftOf[end - 1];
    threads.push({
      end,
      x,
      yarn: loom.yarnOf[end - 1] ?? 0,
      shaft:
        isLabelled && shaft !== undefined && shaft !== "not known" ? (shaft === "floating" ? "–" : String(shaft)) : "",
      isOfGroup,
      hasOld: (loom.oldOf[end - 1] ?? null) !== null,
      cutBack: cut.has(end),
      endsStripe: edges.has(end) && end < to,
      isTied: isOfGroup ? turn < knots : isBack ? end > last : end < first,
    });
    if (cut.has(end)) x += IN_HAND;
  }
  return { threads, wide: x + MARGIN };
}
