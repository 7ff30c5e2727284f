import type { RefusalCode } from "@thrum/maths";
import { refuse } from "./form.js";
import type { Form } from "./form.js";
import { unlike } from "../text/near-name.js";
import type { Node } from "./node.js";
import { opened, textOf } from "./node.js";

/** One of a few words; a number among them is the word of its digits. */
export function oneOf<const W extends string | number>(...words: readonly W[]): Form<W> {
  const expected = words.length === 1 ? String(words[0]) : `one of ${words.join(", ")}`;
  return {
    shape: { kind: "word", words },
    write: (word) => word,
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      const given = textOf(node)?.trim().replace(/\s+/gu, " ");
      const found = words.find((word) => (node.kind === "data" ? word === node.value : String(word) === given));
      const remedy = given === undefined ? `Write ${expected}.` : unlike(given, words.map(String));
      return found ?? refuse(at, node, { expected, remedy, code: "unknown-word", params: { candidates: words } });
    },
  };
}

/** What is wrong with what is no number that belongs here, as every package names it: of data, or of the text of a file. */
function codeOf(node: Node, ofNumbers: "not-whole" | "out-of-range"): RefusalCode {
  const text = textOf(node)?.trim();
  const given = node.kind === "data" ? node.value : text === undefined || text === "" ? text : Number(text);
  if (typeof given !== "number") return "wrong-kind";
  return Number.isFinite(given) ? ofNumbers : "not-a-number";
}

const limits = (least: number, most: number): string => `from ${String(least)} to ${String(most)}`;

/** A whole number in digits alone. */
export function whole(noun: string, least = 1, most = 20_000): Form<number> {
  const expected = `a whole number of ${noun}, ${limits(least, most)}`;
  return {
    shape: { kind: "number", whole: true, least, most },
    write: (value) => value,
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      const given = textOf(node)?.trim();
      const value =
        node.kind === "data" ? node.value : given !== undefined && /^\d{1,9}$/u.test(given) ? Number(given) : null;
      const params = { kind: "whole", atLeast: least, atMost: most };
      if (typeof value !== "number" || !Number.isInteger(value)) {
        const code = codeOf(node, "not-whole");
        return refuse(at, node, { expected, remedy: "Write the number in digits alone.", code, params });
      }
      const fits = value >= least && value <= most;
      return fits
        ? value
        : refuse(at, node, {
            expected,
            remedy: `Write a number ${limits(least, most)}.`,
            code: "out-of-range",
            params,
          });
    },
  };
}

const LEAST = 0.001;

/** A number that need not be whole. */
export function number(noun: string, most = 100_000): Form<number> {
  const expected = `a number of ${noun}, ${limits(LEAST, most)}`;
  return {
    shape: { kind: "number", whole: false, least: LEAST, most },
    write: (value) => value,
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      const data = node.kind === "data" ? node.value : undefined;
      const given = typeof data === "number" ? String(data) : (textOf(node)?.trim() ?? "");
      const value = /^\d{1,7}(?:\.\d{1,17})?$/u.test(given) ? Number(given) : 0;
      const remedy = "Write it in digits, with a point before decimals.";
      const params = { kind: "number", atLeast: LEAST, atMost: most };
      const code = codeOf(node, "out-of-range");
      return value >= LEAST && value <= most ? value : refuse(at, node, { expected, remedy, code, params });
    },
  };
}

/** Words as they were written; spaces run together. */
export function words(longest: number, keepsSpaces = false): Form<string> {
  const expected = `words, at most ${String(longest)} characters`;
  return {
    shape: { kind: "words", longest },
    write: (value) => value,
    read: (node, at) => {
      if (opened(node).kind === "nothing") return null;
      const given = node.kind === "data" ? node.value : textOf(node);
      if (typeof given !== "string") {
        const remedy = "A comma, a colon or a bracket in the words? Then put them in quotes.";
        return refuse(at, node, { expected, remedy, code: "wrong-kind" });
      }
      const value = keepsSpaces ? given : given.trim().replace(/\s+/gu, " ");
      if (/\p{Cs}/u.test(value)) return refuse(at, node, { expected, remedy: "Half of a character stands there." });
      return value.length <= longest ? value : refuse(at, node, { expected, remedy: "Write fewer.", code: "too-long" });
    },
  };
}

export const yesOrNo: Form<boolean> = {
  shape: { kind: "word", words: ["yes", "no"] },
  write: (value) => value,
  read: (node, at) => {
    if (opened(node).kind === "nothing") return null;
    const given = node.kind === "data" ? node.value : textOf(node);
    if (given === "yes" || given === "true" || given === true) return true;
    if (given === "no" || given === "false" || given === false) return false;
    return refuse(at, node, { expected: "yes or no", remedy: "Write yes or no.", code: "unknown-word" });
  },
};

/** Chooses between forms by what stands there; the values of both are told apart as data too. */
export function either<A, B>(
  first: Form<A>,
  second: Form<B>,
  isFirst: (node: Node) => boolean,
  holdsFirst: (value: A | B) => value is A,
): Form<A | B> {
  return {
    shape: { kind: "either", ways: [first, second] },
    read: (node, at) => (isFirst(node) ? first.read(node, at) : second.read(node, at)),
    write: (value) => {
      const isSecond = (one: A | B): one is B => !holdsFirst(one);
      if (holdsFirst(value)) return first.write(value);
      return isSecond(value) ? second.write(value) : "";
    },
  };
}
