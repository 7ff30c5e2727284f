/** How a cell looks; every field is a wish that may be left unsaid. */
export interface Look {
  readonly bold?: true;
  readonly large?: true;
  readonly wrap?: true;
  /** Set in from the left, so that a unit stands clear of its number. */
  readonly indent?: true;
  /** Three places after the point, whatever the cell holds; or no text at all. */
  readonly shows?: "three places" | "nothing";
  /** The colour behind it, as six hexadecimal digits. */
  readonly fill?: string;
  readonly colour?: string;
}

/** What stands in a cell: text, a number, or a formula with the value it has now; null where the program works it out. */
export type Content =
  | { readonly text: string }
  | { readonly number: number }
  | { readonly formula: string; readonly now: number | string | null };

/** A cell of a sheet. */
export interface BookCell {
  /** Such as B2. */
  readonly at: string;
  readonly content: Content;
  readonly look: Look;
}

/** What may be typed into a cell: what makes a custom formula true, or what stands in the range a list names. */
export interface Rule {
  readonly at: string;
  readonly type: "custom" | "list";
  readonly formula: string;
  readonly title: string;
  readonly says: string;
}

/** A look that cells take while a formula is true. */
export interface LiveLook {
  readonly at: string;
  readonly formula: string;
  readonly look: Look;
}

/** A note that hangs on a cell. */
export interface Note {
  readonly at: string;
  readonly text: string;
}

/** One sheet of a workbook. */
export interface Sheet {
  readonly name: string;
  /** Widths of the columns from A on, in characters. */
  readonly widths: readonly number[];
  /** Heights of rows, in points, that are not those of their text. */
  readonly heights: ReadonlyMap<number, number>;
  readonly cells: readonly BookCell[];
  readonly rules: readonly Rule[];
  readonly liveLooks: readonly LiveLook[];
  readonly notes: readonly Note[];
}

/** A workbook as data; `xlsxOf` writes it. */
export interface Book {
  readonly sheets: readonly Sheet[];
  /** Names of cells and ranges, each with where it stands, such as `'Sum'!$B$5`. */
  readonly names: ReadonlyMap<string, string>;
}
