import type { Path } from "../core/source.js";

/** What a line is made of: words, a count, the name of a yarn with its sign, a place to write in. */
export type Inline = string | number | { readonly yarn: string } | { readonly blank: string };

export type Line = readonly Inline[];

/** What a line is to whoever reads it at the loom. */
export type Manner = "fact" | "step" | "caution" | "MUST" | "CHECK" | "ASK" | "WAITS" | "note";

export interface Says {
  readonly is: "says";
  readonly as: Manner;
  readonly says: Line;
}

export interface TableRow {
  readonly cells: readonly Line[];
  /** Whether a stripe ends with it. */
  readonly isEdge: boolean;
  /** What is to be done in this row and in no other. */
  readonly note: string | null;
}

export interface Table {
  readonly is: "table";
  readonly caption: string;
  /** Read from the bench or the reel, or at the table. */
  readonly read: "bench" | "table";
  /** Whether each row is ticked off. */
  readonly ticked: boolean;
  readonly heads: readonly string[];
  readonly rows: readonly TableRow[];
}

/** Lines to fill in. */
export interface Blanks {
  readonly is: "blanks";
  readonly what: readonly string[];
}

/** The stripes as threads: their hands in order, and how wide each is. */
export interface Picture {
  readonly is: "picture";
  readonly stripes: readonly { readonly yarns: readonly string[]; readonly ends: number }[];
}

/** A tape to cut out, in millimetres. */
export interface Tape {
  readonly is: "tape";
  readonly piece: string;
  readonly millimetres: number;
  readonly hem: number;
  readonly divided: "inches" | "centimetres";
}

/** Lines set under each other as they are. */
export interface Lines {
  readonly is: "lines";
  readonly heading: string;
  readonly lines: readonly string[];
}

export type Block =
  Says | Table | Blanks | Picture | Tape | Lines | { readonly is: "heading"; readonly heading: string };

/** A page of the plan, for both printers. */
export interface Section {
  /** Letters and hyphens, once in the document. */
  readonly name: string;
  readonly heading: string;
  readonly blocks: readonly Block[];
  /** What it still waits for. */
  readonly needs: readonly Path[];
  /** Whether anything in it is of this job. */
  readonly isOfJob: boolean;
}
