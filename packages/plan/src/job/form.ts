import { QuantityError } from "@thrum/maths";
import type { RefusalCode } from "@thrum/maths";
import type { Fault, FaultPath } from "./fault.js";
import { Unreadable } from "./fault.js";
import type { Node } from "./node.js";
import { opened, receivedText } from "./node.js";
import { sameData } from "./same-data.js";

/** What a form writes: a number and a word stand as they are, a text in quotes where it would be read as something else. */
export type Tree =
  string | number | boolean | { readonly list: readonly Tree[] } | { readonly group: readonly Branch[] };
/** A key and what stands behind it. */
export type Branch = readonly [key: string, value: Tree];

/** Where a form reads, and who is told what is wrong there. */
export interface At {
  readonly path: FaultPath;
  readonly tell: (fault: Omit<Fault, "function">) => void;
}

/** What a form is made of, for all that reads forms and no job: the schema, the path of a need. */
export type Shape =
  | { readonly kind: "text"; readonly noun: string; readonly example: string }
  | { readonly kind: "words"; readonly longest: number }
  | { readonly kind: "word"; readonly words: readonly (string | number)[] }
  | { readonly kind: "number"; readonly whole: boolean; readonly least: number; readonly most: number }
  | {
      readonly kind: "group";
      readonly keys: Readonly<Record<string, Form<unknown>>>;
      readonly required: readonly string[];
    }
  | { readonly kind: "list"; readonly of: Form<unknown>; readonly alone: boolean }
  | { readonly kind: "byName"; readonly of: Form<unknown>; readonly noun: string }
  /** One of several; as data a group with a key for each, which is not written. */
  | { readonly kind: "shapes"; readonly ways: Readonly<Record<string, Form<unknown>>> }
  /** One of several that are told apart as data too. */
  | { readonly kind: "either"; readonly ways: readonly Form<unknown>[] }
  | { readonly kind: "runs"; readonly run: Form<unknown> };

/** Reads a value, writes it, and says what it is made of. */
export interface Form<T> {
  readonly shape: Shape;
  /** Null where nothing stands, and where what stands there cannot be read: then it is told. */
  read(node: Node, at: At): T | null;
  write(value: T): Tree;
}

export interface Refusal {
  readonly expected: string;
  readonly received?: string | undefined;
  readonly remedy: string;
  readonly code?: RefusalCode | undefined;
  readonly params?: Fault["params"];
}

/** Tells that this is not what belongs here. */
export function refuse(at: At, node: Node, { expected, received, remedy, code, params }: Refusal): null {
  const { line } = node;
  const isNothing = node.kind === "data" && node.value === null;
  const fault = {
    code: isNothing ? "missing" : (code ?? "unreadable"),
    path: at.path,
    expected,
    remedy,
    params: params ?? {},
  };
  at.tell({ ...fault, received: received ?? receivedText(node), ...(line === undefined ? {} : { line }) });
  return null;
}

export function inside(at: At, ...steps: FaultPath): At {
  return { path: [...at.path, ...steps], tell: at.tell };
}

/** How a value stands in one text. */
export interface Notation<T> {
  /** @throws Unreadable for what it is not */
  read(text: string): T;
  write(value: T): string;
}

/** Data are right where they are what their own text reads as; what is no such data can come to anything when it is written. */
function fromData(notation: Notation<unknown>, data: unknown): unknown {
  try {
    const read = notation.read(notation.write(data));
    return sameData(read, data) ? read : undefined;
  } catch {
    return undefined;
  }
}

/** A value that stands in one text: `16 in`, `2-ply of 8 cotton`. */
export function text<T>(noun: string, example: string, notation: Notation<T>): Form<T> {
  const isRead = (value: unknown): value is T => value !== undefined;
  const remedy = `Write it such as ${example}.`;
  return {
    shape: { kind: "text", noun, example },
    write: (value) => notation.write(value),
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      if (node.kind === "data") {
        const value = fromData(notation, node.value);
        const asData = `Give what readJob gives for "${example}".`;
        return isRead(value)
          ? value
          : refuse(at, node, { expected: `${noun}, as data`, remedy: asData, code: "wrong-kind" });
      }
      if (node.kind !== "text") {
        const colon = node.kind === "group" ? "A colon makes it a group: write it in quotes, or without. " : "";
        return refuse(at, node, { expected: noun, remedy: `${colon}${remedy}`, code: "wrong-kind" });
      }
      try {
        return notation.read(node.text.trim().replace(/\s+/gu, " "));
      } catch (error) {
        if (error instanceof Unreadable) {
          const { code, received } = error;
          return refuse(at, node, { expected: error.expected ?? noun, received, remedy: error.remedy || remedy, code });
        }
        if (error instanceof QuantityError) return refuse(at, node, { expected: noun, remedy, code: error.code });
        throw error;
      }
    },
  };
}
