import type { DentsPerLength, Length, Mass } from "@thrum/maths";
import { isMass, length, massNotation } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form } from "./form.js";
import { whole } from "./forms.js";
import { listOrOne } from "./lists.js";
import { group } from "./group.js";
import { numberAndRest, readHand } from "./hand.js";
import { dentsPerLength } from "./per-length.js";
import type { Meanings } from "./meaning.js";
import { jobWords } from "./job-words.js";

/** Ends wound beside the warp, never tied. */
export interface BesideTheWarp {
  readonly ends: number;
  readonly yarn: string;
}

export interface JobWinding {
  readonly threads?: number;
  readonly chains?: "by stripe" | "by group" | "by colour" | { readonly every: number };
  /** Of one chain. */
  readonly most?: { readonly ends: number } | { readonly mass: Mass };
  /** Once round the reel with the yarn on. */
  readonly turn?: Length;
  /** From peg to peg. */
  readonly step?: Length;
  /** Teeth of the raddle. */
  readonly raddle?: DentsPerLength;
  readonly extra?: readonly BesideTheWarp[];
}

type Chains = NonNullable<JobWinding["chains"]>;
type Most = NonNullable<JobWinding["most"]>;

const WAYS = jobWords["winding.chains"];

/** Digits of so many ends; from 1 to 20,000. */
function endsOf(digits: string | undefined): number | undefined {
  const ends = Number(digits);
  return digits !== undefined && ends >= 1 && ends <= 20_000 ? ends : undefined;
}

const chains: Form<Chains> = text<Chains>("how the chains are cut", "by stripe", {
  read: (written) => {
    const word = WAYS.find((way) => way === written);
    if (word !== undefined) return word;
    const every = endsOf(/^every (\d{1,5}) ends?$/u.exec(written)?.[1]);
    if (every !== undefined) return { every };
    throw new Unreadable(`Write ${WAYS.join(", ")}, or every 40 ends.`, "unknown-word");
  },
  write: (value) => (typeof value === "string" ? value : `every ${String(value.every)} ends`),
});

const most: Form<Most> = text<Most>("ends or a mass", "140 ends", {
  read: (written) => {
    const ends = endsOf(/^(\d{1,5}) ends?$/u.exec(written)?.[1]);
    if (ends !== undefined) return { ends };
    if (isMass(written)) return { mass: massNotation.read(written) };
    throw new Unreadable("Write 140 ends, or 80 g.");
  },
  write: (value) => ("ends" in value ? `${String(value.ends)} ends` : massNotation.write(value.mass)),
});

const beside: Form<BesideTheWarp> = text<BesideTheWarp>("ends and their yarn", "2 natural", {
  read: (written) => {
    const [ends, rest = ""] = numberAndRest(written) ?? [];
    const [yarn = "", more] = readHand(rest).yarns;
    if (typeof ends !== "number" || more !== undefined || ends > 20_000)
      throw new Unreadable("Write the ends and one yarn, such as 2 natural.");
    return { ends, yarn };
  },
  write: ({ ends, yarn }) => `${String(ends)} ${yarn}`,
});

export const winding: Form<JobWinding> = group<JobWinding>({
  threads: whole("threads wound together", 1, 100),
  chains,
  most,
  turn: length,
  step: length,
  raddle: dentsPerLength,
  extra: listOrOne("ends wound beside", beside),
});

/** What each key of `winding` means, for the schema. */
export const windingMeans: Meanings = {
  threads: "Threads wound together.",
  chains: "Where the warp is cut into chains.",
  most: "The most of one chain, in ends or as a mass.",
  turn: "Once round the reel, with the yarn on.",
  step: "From peg to peg: the warp is wound in whole steps.",
  raddle: "Teeth of the raddle in a length.",
  extra: "Wound beside the warp, never tied.",
};
