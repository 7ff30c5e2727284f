import type { PlanData, Units } from "@thrum/plan";
import type { Task } from "../keep/records.js";
import type { Band, Yarn } from "../parts/yarn.js";

type Figures = PlanData["figures"];
type Value<Part extends { readonly value: unknown }> = NonNullable<Part["value"]>;

export type Group = Value<Figures["tying"]["onLoom"]>[number];
/** A group in its turn of tying. */
export type Row = Value<Figures["tying"]["joining"]>[number];
export type Special = Row["special"][number];
export type WoundChain = Value<Figures["winding"]["wound"]>[number];
export type LaidChain = Value<Figures["winding"]["laying"]>[number];
export type ShaftRow = Value<Figures["tying"]["check"]>["rows"][number];
export type TyingOrder = "from end 1" | "from the last end" | "one colour at a time";

/** A sentence of the plan, as what it is read. */
export interface Step {
  readonly as: string;
  readonly says: string;
}

/** Where a piece stops, in words of the tape. */
export interface Mark {
  readonly title: string;
  readonly at: string;
  readonly ofEntry: number;
  readonly one: string;
  readonly hem: string | null;
  readonly fringe: string | null;
}

/** A plan as the screens at the loom show it: plain data, every number as the package gives it. */
export interface Loom {
  readonly title: string;
  readonly units: Units;
  readonly ends: number;
  readonly yarns: readonly Yarn[];
  readonly bands: readonly Band[];
  /** Of every new end: the yarn by its place in the list, the shaft, the dent, the old end. */
  readonly yarnOf: readonly number[];
  readonly shaftOf: readonly (number | string)[];
  readonly dentOf: readonly (number | null)[];
  readonly oldOf: readonly (number | null)[];
  /** Ends of a repeat of the threading; 0 where it is written whole or not known. */
  readonly repeat: number;
  readonly repeatPlaceOf: readonly number[];
  readonly order: TyingOrder;
  /** Where end 1 is as she sits; null until the job says. */
  readonly side: "left" | "right" | null;
  readonly isAfresh: boolean;
  readonly knotsAre: string | null;
  readonly groups: readonly Group[] | null;
  readonly rows: readonly Row[] | null;
  readonly knots: number;
  readonly chains: readonly WoundChain[] | null;
  readonly laid: readonly LaidChain[] | null;
  readonly shafts: readonly ShaftRow[] | null;
  readonly marks: readonly Mark[] | null;
  readonly picks: string | null;
  readonly steps: Readonly<Partial<Record<Task, readonly Step[]>>>;
  /** What is to be done, and what was found before, in a group and in no other. */
  readonly doIn: Readonly<Record<number, string>>;
  readonly foundIn: Readonly<Record<number, string>>;
  /** What a task waits for: keys of the job. */
  readonly waits: Readonly<Partial<Record<Task, readonly string[]>>>;
}
