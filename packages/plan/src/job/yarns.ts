import type { Length, Mass, Money, Share } from "@thrum/maths";
import { decimalOf, isLength, lengthNotation, massNotation, numberText } from "./amounts.js";
import { moneyNotation } from "./money.js";
import { shareNotation } from "./percents.js";
import { count } from "./count.js";
import type { YarnCount } from "./count.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";
import { listOrOne } from "./lists.js";
import { byName } from "./by-name.js";
import { group } from "./group.js";
import { yarnNameFault } from "./yarn-name.js";
import type { Meanings } from "./meaning.js";

export type { NumberedCount, YarnCount } from "./count.js";

/** A package as it is sold, by its mass or by its length. */
export interface Sold {
  readonly mass?: Mass;
  readonly length?: Length;
  readonly price?: Money;
}

/** What is there of a yarn; nothing at all is an empty list. Packages need not be whole. */
export type OnHand = readonly ({ readonly mass: Mass } | { readonly length: Length } | PackagesOnHand)[];

export interface PackagesOnHand {
  readonly packages: number;
  readonly called: "cone" | "tube" | "skein" | "ball" | "package";
}

export interface FibrePart {
  readonly fibre: string;
  /** Of its mass; left out where it is all of it. */
  readonly share?: Share;
}

export interface JobYarn {
  readonly count?: YarnCount;
  readonly sold?: readonly Sold[];
  readonly onHand?: OnHand;
  readonly fibre?: readonly FibrePart[];
  /** Its colour on a screen: `#` and six hexadecimal digits. */
  readonly seen?: string;
}

const soldNotation: Notation<Sold> = {
  read: (written) => {
    const [amount = "", at] = written.split(" at ");
    const size = isLength(amount) ? { length: lengthNotation.read(amount) } : { mass: massNotation.read(amount) };
    return at === undefined ? size : { ...size, price: moneyNotation.read(at) };
  },
  write: ({ mass, length, price }) => {
    const size = [
      mass === undefined ? [] : massNotation.write(mass),
      length === undefined ? [] : lengthNotation.write(length),
    ]
      .flat()
      .join(" ");
    return price === undefined ? size : `${size} at ${moneyNotation.write(price)}`;
  },
};

const CALLED = ["cone", "tube", "skein", "ball", "package"] as const;

function partOnHand(written: string): OnHand[number] {
  const [, number = "", word = ""] = /^(.+?) (\p{L}+?)s?$/u.exec(written) ?? [];
  const called = CALLED.find((one) => one === word);
  if (called === undefined)
    return isLength(written) ? { length: lengthNotation.read(written) } : { mass: massNotation.read(written) };
  const packages = Number(decimalOf(number) ?? 0);
  if (packages >= 0.01 && packages <= 100_000) return { packages, called };
  throw new Unreadable(`Write how many, such as 2 ${called}s, or none.`);
}

function partText(part: OnHand[number]): string {
  if ("mass" in part) return massNotation.write(part.mass);
  if ("length" in part) return lengthNotation.write(part.length);
  return `${numberText(String(part.packages), true)} ${part.called}${part.packages > 1 ? "s" : ""}`;
}

const onHandNotation: Notation<OnHand> = {
  read: (written) => {
    if (written === "none") return [];
    if (decimalOf(written) !== null)
      throw new Unreadable(`Of what? Write ${written} oz, ${written} yd, ${written} cones, or none.`, "ambiguous");
    return written.split(" + ").map(partOnHand);
  },
  write: (parts) => (parts.length === 0 ? "none" : parts.map(partText).join(" + ")),
};

const FIBRE = /^\p{L}[\p{L}\p{M} '-]{0,39}$/u;
/** Why this cannot be the name of a fibre. */
export function fibreNameFault(name: string): string | undefined {
  return FIBRE.test(name) ? undefined : "A fibre is written in letters, such as cotton.";
}

function fibrePart(written: string): FibrePart {
  const [, share, fibre = ""] = /^(?:(.+? ?%) )?([^%]+)$/u.exec(written) ?? [];
  if (!FIBRE.test(fibre)) throw new Unreadable("");
  return share === undefined ? { fibre } : { fibre, share: shareNotation.read(share) };
}

const fibreNotation: Notation<readonly FibrePart[]> = {
  read: (written) => {
    const parts = written.split(" + ").map(fibrePart);
    const shares = parts.flatMap(({ share }) => (share === undefined ? [] : [Number(share.value)]));
    if (parts.length === 1 && shares.length === 0) return parts;
    if (shares.length !== parts.length)
      throw new Unreadable("Write a share before every fibre, such as 70 % silk + 30 % wool.");
    const all = shares.reduce((sum, share) => sum + share, 0);
    if (Math.abs(all - 100) < 1e-9) return parts;
    throw new Unreadable(
      `The shares come to ${String(Number(all.toPrecision(6)))} %: write them so that they come to 100 %.`,
      "out-of-range",
    );
  },
  write: (parts) =>
    parts
      .map(({ fibre, share }) => (share === undefined ? fibre : `${shareNotation.write(share)} ${fibre}`))
      .join(" + "),
};

const colour: Notation<string> = {
  read: (written) => {
    if (/^#[0-9a-f]{6}$/iu.test(written)) return written;
    throw new Unreadable(`Write it in quotes, # and six hexadecimal digits: "#8e3b32".`);
  },
  write: (value) => value,
};

const yarn: Form<JobYarn> = group<JobYarn>({
  count,
  sold: listOrOne("packages", text("a package as it is sold", "8 oz at 14.50 EUR", soldNotation)),
  onHand: text("what is there", "1 cone + 3 oz", onHandNotation),
  fibre: text("a fibre, or shares of several", "70 % silk + 30 % wool", fibreNotation),
  seen: text("a colour", `"#8e3b32"`, colour),
});

export const yarns: Form<Readonly<Record<string, JobYarn>>> = byName("yarns", yarn, {}, yarnNameFault);

/** What each key of `yarns.*` means, for the schema. */
export const yarnMeans: Meanings = {
  count: "The finished thread: by its label, or by plies and number.",
  sold: "A package as it is sold, or a list of sizes; with a price each, the cheapest mixture too.",
  onHand: "What is there: masses, lengths, packages, sums of them, or none.",
  fibre: "Its fibre, or shares of its mass.",
  seen: "Its colour on a screen, in quotes: for pictures, and for neighbours hard to tell apart.",
};
