import type { JobSides } from "../job/job.js";
import type { Threaded } from "../job/loom.js";
import type { Runs } from "../job/runs.js";
import { isOpen, laid } from "./laid.js";
import { THREADING } from "./laid-heddles.js";
import type { LaidHeddle } from "./laid-heddles.js";
import type { AtSides, Paired } from "./table.js";

export interface ThreadingsWhole {
  readonly loom: Runs<Threaded>;
  readonly cloth: Runs<Threaded>;
  readonly oldPlaces: number;
  readonly newEnds: number;
}

/** The threadings of cloth and loom, both written whole, laid together heddle by heddle. */
export interface HeddlesTogether {
  /** Ends in the heddles that one has more; null where the numbers given for the sides cut through them. */
  readonly sides: AtSides | null;
  /** Old places whose heddle holds another number of ends in the cloth. */
  readonly pairs: readonly Paired[];
}

const endsIn = (heddles: readonly LaidHeddle[]): number => heddles.reduce((sum, { ends }) => sum + ends, 0);

/** How many of the first heddles hold so many ends; null where none do. */
function heddlesWith(ends: number, heddles: readonly LaidHeddle[], most: number): number | null {
  let [held, number] = [0, 0];
  for (; number < most && held < ends; number += 1) held += heddles[number]?.ends ?? 0;
  return held === ends ? number : null;
}

function heddlesOf(list: Runs<Threaded>, ends: number): readonly LaidHeddle[] {
  return laid(list, THREADING, isOpen(list, THREADING) ? ends : undefined).runs;
}

/**
 * Heddles that one threading has more are those of the sides; of the others the loom's may hold an end more, cut back,
 * or fewer, and then a second new end goes to the same knot.
 */
export function heddlesTogether(given: ThreadingsWhole, sides: JobSides | null): HeddlesTogether {
  const loom = heddlesOf(given.loom, given.oldPlaces);
  const cloth = heddlesOf(given.cloth, given.newEnds);
  const more = cloth.length - loom.length;
  const [longer, most] = [more < 0 ? loom : cloth, Math.abs(more)];
  const sign = more < 0 ? -1 : 1;
  const numbers = sides?.numbers;
  const first =
    numbers !== undefined
      ? heddlesWith(numbers.before * sign, longer, most)
      : sides?.where === "both"
        ? Math.trunc(most / 2)
        : sides?.where === "before end 1"
          ? most
          : 0;
  const shift = first ?? 0;
  const before = endsIn(longer.slice(0, shift)) * sign + 0;
  const after = endsIn(longer.slice(longer.length - (most - shift))) * sign + 0;
  const atSides = { before, after };
  const agrees = first !== null && (numbers === undefined || numbers.after === atSides.after);
  const pairs: Paired[] = [];
  let oldPlace = 0;
  loom.forEach((heddle, at) => {
    oldPlace += heddle.ends;
    const other = more < 0 ? (at < shift ? undefined : cloth[at - shift]) : cloth[at + shift];
    const apart = other === undefined ? 0 : other.ends - heddle.ends;
    if (apart > 0) pairs.push({ oldPlace, more: apart });
    for (let back = 0; back < -apart; back += 1) pairs.push({ oldPlace: oldPlace - back, more: -1 });
  });
  return { sides: agrees ? atSides : null, pairs };
}
