import type { Line, Operator, Tree, Unary } from "./tree.js";

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|([A-Za-z][A-Za-z0-9]*(?:\.[a-z]+)?)|([+−×÷√Σ()]))/uy;
const FUNCTIONS: readonly string[] = ["roundUp", "roundDown", "nearest", "orNothing"];

/** Splits one right-hand side; a stray character is a fault of our own source, never of a user. */
function tokensOf(text: string): string[] {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  const trimmed = text.trim();
  while (TOKEN.lastIndex < trimmed.length) {
    const at = TOKEN.lastIndex;
    const token = TOKEN.exec(trimmed)?.[0].trim();
    if (token === undefined) throw new SyntaxError(`formula "${trimmed}": cannot read on from position ${String(at)}`);
    tokens.push(token);
  }
  return tokens;
}

/** Reads one expression: sums of products of signed parts, brackets, √, Σ, the named roundings and orNothing. */
export function parseTree(text: string): Tree {
  const tokens = tokensOf(text);
  let at = 0;
  const fail = (token = tokens[at] ?? "end"): never => {
    throw new SyntaxError(`formula "${text.trim()}": unexpected ${token}`);
  };
  const expectToken = (token: string): void => {
    if (tokens[at] !== token) fail();
    at += 1;
  };
  const part = (): Tree => {
    const token = tokens[at] ?? fail();
    at += 1;
    if (token === "(") {
      const inside = level(0);
      expectToken(")");
      return inside;
    }
    if (token === "√" || token === "Σ") return { op: token, of: part() };
    if (FUNCTIONS.includes(token) && tokens[at] === "(") return { op: token as Unary, of: part() };
    if (/^\d/u.test(token)) return { op: "number", text: token };
    return /^[A-Za-z]/u.test(token) ? { op: "name", name: token } : fail(token);
  };
  const operators: readonly (readonly string[])[] = [
    ["+", "−"],
    ["×", "÷"],
  ];
  const level = (depth: number): Tree => {
    const signs = operators[depth];
    if (signs === undefined) return part();
    let tree = level(depth + 1);
    for (let sign = tokens[at]; sign !== undefined && signs.includes(sign); sign = tokens[at]) {
      at += 1;
      tree = { op: sign as Operator, left: tree, right: level(depth + 1) };
    }
    return tree;
  };
  const tree = level(0);
  return at === tokens.length ? tree : fail();
}

/** Reads a formula: lines of `name = expression`. */
export function parseLines(text: string): readonly Line[] {
  return text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => {
      const [name = "", expression = "", ...more] = line.split("=");
      if (more.length > 0) throw new SyntaxError(`formula "${line.trim()}": one = stands in a line`);
      return { name: name.trim(), tree: parseTree(expression) };
    });
}
