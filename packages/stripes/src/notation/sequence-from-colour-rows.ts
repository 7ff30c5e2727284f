import { check, refuse } from "../refusal/check.js";
import { anyColour, listOf, fields, oneOf, whole } from "../refusal/kinds.js";
import { madeSequence, refuseLength, stripe } from "../sequence/made-sequence.js";
import type { Sequence, Stripe } from "../sequence/sequence.js";
import { addTimes, MOST_WRITTEN_ENDS, type WrittenOrder } from "./written-order.js";

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
  /** What a column with two rows means: a misprint, or threads wound together in pairs, told with the upper row first. */
  readonly columnsOfTwo: "refused" | "wound in pairs";
}

const NAME = "sequenceFromColourRows";

/**
 * The sequence of a chart with a row for each colour and a column for each stripe.
 *
 * @throws StripeError for a column with no colour or too many, a pair of unlike counts, or brackets that overlap or leave the chart
 * @example
 * const rows = [{ colour: "red", ends: [2, 0] }, { colour: "tan", ends: [0, 4] }];
 * sequenceFromColourRows({ rows, brackets: [], readFrom: "left", columnsOfTwo: "refused" }).ends // 6
 */
export function sequenceFromColourRows<C>(input: SequenceFromColourRowsInput<C>): Sequence<C> {
  check(NAME, input, {
    rows: listOf(1, fields({ colour: anyColour, ends: listOf(1, whole(0)) })),
    brackets: listOf(0, fields({ from: whole(1), to: whole(1), times: whole(1) })),
    readFrom: oneOf("left", "right"),
    columnsOfTwo: oneOf("refused", "wound in pairs"),
  });
  const { rows, brackets, readFrom, columnsOfTwo } = input;
  const most = columnsOfTwo === "refused" ? 1 : 2;
  const columns = rows.reduce((most, { ends }) => Math.max(most, ends.length), 0);
  const stripes = Array.from({ length: columns }, (_, column) => stripesOf(rows, column, most));
  const written: WrittenOrder<C> = { stripes: [], ends: 0 };
  let column = 0;
  for (const { from, to, times } of [...brackets].sort((one, other) => one.from - other.from)) {
    if (from <= column || to < from || to > columns) outside(from, to, columns);
    addTimes(NAME, written, stripes.slice(column, from - 1).flat(), 1);
    addTimes(NAME, written, stripes.slice(from - 1, to).flat(), times);
    column = to;
  }
  addTimes(NAME, written, stripes.slice(column).flat(), 1);
  return madeSequence(NAME, readFrom === "left" ? written.stripes : written.stripes.reverse());
}

function outside(from: number, to: number, columns: number): never {
  return refuse(NAME, "out-of-range", ["brackets"], {
    expected: `brackets side by side within columns 1 to ${columns}`,
    received: `columns ${from} to ${to}`,
    remedy: "Count the columns from the left, from 1.",
  });
}

/** The stripe of a column, or the pairs of its two rows. */
function stripesOf<C>(rows: readonly ColourRow<C>[], column: number, most: 1 | 2): readonly Stripe<C>[] {
  const found = rows.flatMap(({ colour, ends }) => {
    const count = ends[column] ?? 0;
    return count > 0 ? [stripe(colour, count)] : [];
  });
  const [one, other] = found;
  if (one === undefined || found.length > most) {
    return refuse(NAME, "does-not-fit", ["rows"], {
      expected: most === 1 ? "ends in one row" : "ends in one row or in two",
      received: `ends in ${found.length} rows at column ${column + 1}`,
      remedy: "A column is one stripe: write 0 in its other rows.",
    });
  }
  if (other === undefined) return found;
  if (one.ends !== other.ends) {
    return refuse(NAME, "does-not-fit", ["rows"], {
      expected: "as many ends in both rows, wound in pairs",
      received: `${one.ends} and ${other.ends} ends at column ${column + 1}`,
      remedy: "Write what is not paired in a column of its own.",
    });
  }
  if (one.ends > MOST_WRITTEN_ENDS) refuseLength(NAME, 2 * one.ends, MOST_WRITTEN_ENDS);
  return Array.from({ length: one.ends }, () => [stripe(one.colour, 1), stripe(other.colour, 1)]).flat();
}
