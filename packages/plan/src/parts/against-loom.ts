import { compare } from "@thrum/maths";
import type { EndsPerLength } from "@thrum/maths";
import type { JobJoin, JobSides } from "../job/job.js";
import { againstRoom } from "./disagreements.js";
import { perLengthText } from "./amount-words.js";
import type { SideTaken } from "./room-at-sides.js";
import { closingEnds, timesOfRepeat } from "./sides.js";
import { facing } from "./laying.js";
import { counted } from "./told.js";
import type { AtSides } from "./table.js";
import type { Told } from "./told.js";
import type { WayToAdd } from "./ways-to-add.js";

/** The sett that was wanted against that of reed and sley: the loom wins. */
export function againstSett(wanted: EndsPerLength, loom: EndsPerLength): readonly Told[] {
  if (compare(wanted, loom) === 0) return [];
  const [of, gives] = [perLengthText(wanted), perLengthText(loom)];
  const says = `Wanted ${of}; reed and sley give ${gives}. Reckoned with ${gives}.`;
  return [{ standing: "check", about: "sett", says, values: { wanted: of, loom: gives } }];
}

export interface EndsOnPlaces {
  readonly ends: number;
  readonly places: number;
}

const changed = (more: number): string => `${counted(Math.abs(more), "end")} ${more > 0 ? "more" : "fewer"}`;

function atWhich({ before, after }: AtSides): string {
  const words = [
    before === 0 ? "" : `${changed(before)} before end 1`,
    after === 0 ? "" : `${changed(after)} after the last`,
  ];
  return words.filter((one) => one !== "").join(", ");
}

/** What one way of adding comes to. */
function wayInWords({ where, sides, taken, fits }: WayToAdd): string {
  const short = againstRoom(taken).map(({ says }) => says);
  return `sides: ${where} (${atWhich(sides)}) ${fits ? "fits" : `does not: ${short.join(" ").replace(/\.$/u, "")}`}`;
}

/** The number of ends against the places, where nothing says at which side they are added or dropped. */
export function whichSide({ ends, places }: EndsOnPlaces, ways: readonly WayToAdd[]): readonly Told[] {
  const more = ends - places;
  const says = `${counted(ends, "end")} on ${counted(places, "place")}: ${changed(more)}. Say where, join.sides. ${ways.map(wayInWords).join("; ")}.`;
  const fits = ways.some((way) => way.fits);
  const values = {
    ends,
    places,
    more,
    fit: ways.filter((way) => way.fits).map(({ where }) => where),
    ways: ways.map(wayInWords),
  };
  return [{ standing: fits || ways.length === 0 ? "ask" : "must", about: "sides", says, values }];
}

/** Numbers at the two sides that do not make up the difference. */
export function againstNumbers({ ends, places }: EndsOnPlaces, sides: JobSides): readonly Told[] {
  const { numbers } = sides;
  const more = ends - places;
  if (numbers === undefined || numbers.before + numbers.after === more) return [];
  const made = numbers.before + numbers.after;
  const says = `The sides come to ${changed(made)}, the stripes want ${changed(more)} than the ${counted(places, "place")}. The joining list waits.`;
  return [{ standing: "must", about: "sides", says, values: { ends, places, more, made, ...numbers } }];
}

/** What is added at the sides as the job says, what is short there, and the way that would do. */
export function againstSides(
  { ends, places }: EndsOnPlaces,
  sides: AtSides,
  taken: readonly SideTaken[],
  ways: readonly WayToAdd[],
): readonly Told[] {
  if (ends === places) return [];
  const says = `${counted(ends, "end")} on ${counted(places, "place")}: ${atWhich(sides)}.`;
  const told: Told = { standing: "check", about: "sides", says, values: { ends, places, ...sides } };
  const short = againstRoom(taken);
  const instead = ways.find((way) => way.fits);
  if (short.length === 0 || instead === undefined) return [told, ...short];
  const remedy = `All ${counted(Math.abs(ends - places), "end")} fit with sides: ${instead.where}.`;
  return [told, ...short.map((one) => ({ ...one, says: `${one.says} ${remedy}`, values: { ...one.values, remedy } }))];
}

/** How often a bare threading goes into the ends, and what stays open at the last. */
export function timesThreaded(ends: number, repeat: number, isChanged: boolean): readonly Told[] {
  if (repeat < 2) return [];
  const { times, open } = timesOfRepeat(repeat, ends);
  const often = `The threading of ${counted(repeat, "end")} goes ${counted(times, "time")} into ${counted(ends, "end")}`;
  const values = { ends, repeat, times, open };
  if (open === 0) return [{ standing: "free", about: "threading", says: `${often}.`, values }];
  const [below, above] = closingEnds(ends, repeat);
  const closes = `${often}; ${counted(open, "end stays", "ends stay")} open after the last repeat. ${String(below)} or ${String(above)} ends close it.`;
  return [
    { standing: isChanged ? "check" : "free", about: "threading", says: closes, values: { ...values, below, above } },
  ];
}

/** The way the weaver faces, where it follows from the knots. */
export function againstFacing(
  knots: NonNullable<JobJoin["knots"]>,
  faces: NonNullable<JobJoin["faces"]>,
): readonly Told[] {
  const follows = facing(knots, null);
  if (follows === null) return [];
  const values = { knots, faces, follows };
  if (follows === faces)
    return [{ standing: "free", about: "faces", says: `Tied ${knots} you face the ${faces}: that agrees.`, values }];
  const says = `Tied ${knots} you face the ${follows}; the job says the ${faces}. Reckoned with the ${follows}.`;
  return [{ standing: "check", about: "faces", says, values }];
}
