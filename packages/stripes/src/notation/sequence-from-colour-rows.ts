import { check, refuse } from "../refusal/check.js";
import { anyColour, listOf, fields, oneOf, whole } from "../refusal/kinds.js";
import { madeSequence, stripe } from "../sequence/made-sequence.js";
import type { Sequence, Stripe } from "../sequence/sequence.js";
import { addTimes, type WrittenOrder } from "./written-order.js";

export interface ColourRow<C> {
  readonly colour: C;
  /** Ends in each column of the chart, 0 where the row is blank. */
  readonly ends: readonly number[];
}

/** A bracket over columns counted from the left, from 1. */
export interface ColumnBracket {
  readonly from: number;
  readonly to: number;
  readonly times: number;
}

export interface SequenceFromColourRowsInput<C> {
  readonly rows: readonly ColourRow<C>[];
  /** May be empty; brackets do not overlap. */
  readonly brackets: readonly ColumnBracket[];
  /** Side of the chart where end 1 stands: books differ. */
  readonly readFrom: "left" | "right";
}

const NAME = "sequenceFromColourRows";

/**
 * The sequence of a chart with a row for each colour and a column for each stripe.
 *
 * @throws StripeError for a column with no colour or with two, or brackets that overlap or leave the chart
 * @example
 * const rows = [{ colour: "red", ends: [2, 0] }, { colour: "tan", ends: [0, 4] }];
 * sequenceFromColourRows({ rows, brackets: [], readFrom: "left" }).ends // 6
 */
export function sequenceFromColourRows<C>(input: SequenceFromColourRowsInput<C>): Sequence<C> {
  check(NAME, input, {
    rows: listOf(1, fields({ colour: anyColour, ends: listOf(1, whole(0)) })),
    brackets: listOf(0, fields({ from: whole(1), to: whole(1), times: whole(1) })),
    readFrom: oneOf("left", "right"),
  });
  const { rows, brackets, readFrom } = input;
  const columns = rows.reduce((most, { ends }) => Math.max(most, ends.length), 0);
  const stripes = Array.from({ length: columns }, (_, column) => onlyStripe(rows, column));
  const written: WrittenOrder<C> = { stripes: [], ends: 0 };
  let column = 0;
  for (const { from, to, times } of [...brackets].sort((one, other) => one.from - other.from)) {
    if (from <= column || to < from || to > columns) outside(from, to, columns);
    addTimes(NAME, written, stripes.slice(column, from - 1), 1);
    addTimes(NAME, written, stripes.slice(from - 1, to), times);
    column = to;
  }
  addTimes(NAME, written, stripes.slice(column), 1);
  return madeSequence(NAME, readFrom === "left" ? written.stripes : written.stripes.reverse());
}

function outside(from: number, to: number, columns: number): never {
  return refuse(NAME, "out-of-range", ["brackets"], {
    expected: `brackets side by side within columns 1 to ${columns}`,
    received: `columns ${from} to ${to}`,
    remedy: "Count the columns from the left, from 1.",
  });
}

function onlyStripe<C>(rows: readonly ColourRow<C>[], column: number): Stripe<C> {
  const [only, ...others] = rows.flatMap(({ colour, ends }) => {
    const count = ends[column] ?? 0;
    return count > 0 ? [stripe(colour, count)] : [];
  });
  if (only !== undefined && others.length === 0) return only;
  return refuse(NAME, "does-not-fit", ["rows"], {
    expected: "ends in one row",
    received: `ends in ${only === undefined ? 0 : others.length + 1} rows at column ${column + 1}`,
    remedy: "A column is one stripe: write 0 in its other rows.",
  });
}
