import type { DirectCount, IndirectCount, Length, Mass, Money, Share } from "@thrum/maths";

/** The finished thread of a yarn: by its label, or by number and plies. */
export interface YarnCount {
  readonly label?: { readonly length: Length; readonly mass: Mass };
  readonly number?: NumberedCount;
}

/** A count as the trade writes it. */
export interface NumberedCount {
  readonly count: DirectCount | IndirectCount;
  /** One number a folding, the last first: 3-ply of 2-ply is 3, 2. Empty where the number is of the finished thread. */
  readonly plies: readonly number[];
}

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
