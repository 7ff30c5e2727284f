import type { Path } from "../core/source.js";
import type { Block, Line, Table, TableRow } from "./block.js";
import { shownAs } from "./view.js";
import type { At, Hole, Template } from "./view.js";

export interface TableOptions {
  readonly caption: string;
  readonly read?: Table["read"];
  readonly ticked?: boolean;
}

const NONE_HERE: Line = ["–"];

/** A row for each row of a scope, a column for each figure; a column that waits in every row is left out and told. */
export function table(
  scope: string,
  options: TableOptions,
  ...columns: readonly (readonly [head: string, hole: Hole])[]
): Template {
  const holes = columns.map(([head, hole]) => ({
    head,
    hole: shownAs(hole),
    isFigure: !("say" in hole) || hole.reads.length > 0,
  }));
  return {
    reads: holes.flatMap(({ hole }) => hole.reads),
    build: (at) => {
      const found = at.rows(scope);
      if (found.is !== "there") return { blocks: [], needs: found.is === "waiting" ? found.needs : [], isOfJob: false };
      const rows = found.value.map((row) => ({ ...at, row }));
      const seen = holes.map(({ head, hole, isFigure }) => ({
        head,
        isFigure,
        cells: rows.map((one) => hole.say(one)),
      }));
      const there = seen.filter(({ cells }) => cells.some(({ is }) => is === "there"));
      const all = seen.flatMap(({ cells }) => cells);
      const needs: readonly Path[] = all.flatMap((cell) => (cell.is === "waiting" ? cell.needs : []));
      const isOfJob =
        rows.length > 0 && there.some(({ isFigure, cells }) => isFigure && cells.some(({ is }) => is === "there"));
      if (!isOfJob) return { blocks: [], needs, isOfJob: false };
      const made = tableOf(
        options,
        there.map(({ head }) => head),
        rows.map((_, index) => ({
          cells: there.map(({ cells }) => {
            const cell = cells[index];
            return cell?.is === "there" ? cell.value : NONE_HERE;
          }),
        })),
      );
      const reasons = rows.flatMap(({ row }, index) =>
        reasonsOf(
          row.name,
          seen.flatMap(({ head, cells }) => {
            const cell = cells[index];
            return cell?.is === "none" ? [{ head, why: cell.why }] : [];
          }),
        ),
      );
      return { blocks: [made, ...reasons], needs, isOfJob };
    },
  };
}

/** Why a row has no answer, each reason once. */
function reasonsOf(name: string, none: readonly { readonly head: string; readonly why: string }[]): readonly Block[] {
  const whys = [...new Set(none.map(({ why }) => why))];
  return whys.map((why): Block => {
    const heads = none.filter((one) => one.why === why).map(({ head }) => head);
    return { is: "says", as: "note", says: [`${name}, ${heads.join(", ")}: ${why}.`] };
  });
}

/** A column of a list: what a row of the part prints of itself; nothing where it is not known. */
export type Column<T> = readonly [head: string, cell: (row: T, at: At) => Line | string | number | null];

/** What a row is besides its cells. */
export interface RowMarks<T> {
  readonly isEdge?: (row: T) => boolean;
  readonly note?: (row: T) => string | null;
}

/** The rows of a part under each other; a column that is nothing in every row is left out. */
export function listOf<T>(
  options: TableOptions,
  rows: readonly T[],
  columns: readonly Column<T>[],
  at: At,
  { isEdge, note }: RowMarks<T> = {},
): readonly Block[] {
  if (rows.length === 0) return [];
  const cells = columns.map(([, cell]) => rows.map((row) => cell(row, at)));
  const kept = columns.flatMap(([head], index) =>
    cells[index]?.some((cell) => cell !== null) === true ? [{ head, cells: cells[index] }] : [],
  );
  const line = (cell: Line | string | number | null | undefined): Line =>
    cell === null || cell === undefined ? NONE_HERE : typeof cell === "object" ? cell : [cell];
  return [
    tableOf(
      options,
      kept.map(({ head }) => head),
      rows.map((row, index) => ({
        cells: kept.map((column) => line(column.cells[index])),
        isEdge: isEdge?.(row) ?? false,
        note: note?.(row) ?? null,
      })),
    ),
  ];
}

function tableOf(
  { caption, read = "table", ticked = false }: TableOptions,
  heads: readonly string[],
  rows: readonly (Pick<TableRow, "cells"> & Partial<TableRow>)[],
): Table {
  return {
    is: "table",
    caption,
    read,
    ticked,
    heads,
    rows: rows.map((row) => ({ isEdge: false, note: null, ...row })),
  };
}
