// A case of a calculation as code a reader can paste: its imports, the call, and what it gives.
import { isUnit, unitOf } from "./handbook.mjs";

/** A unit as code writes it, and what that imports. */
function unitCode(unit, used) {
  used.add(unit.dimension === "money" ? "currency" : unit.name);
  return unit.dimension === "money" ? `currency(${JSON.stringify(unit.name)})` : unit.name;
}

function expression(value, used) {
  if (Array.isArray(value)) return `[${value.map((one) => expression(one, used)).join(", ")}]`;
  if (isUnit(value)) {
    return unitCode(value, used);
  }
  if (typeof value === "object") {
    const unit = unitCode(unitOf(value), used);
    const number = String(Number(value.value));
    return `${unit}(${number === value.value ? number : JSON.stringify(value.value)})`;
  }
  return JSON.stringify(value);
}

/** What the code shows: a number as it is, or the beginning of a long one. */
function shown(value) {
  const text = JSON.stringify(value);
  return text.length > 10 && text.includes(".") && !text.includes("e") ? `${text.slice(0, 9)}…` : text;
}

export function codeSample({ name, calculation }, input) {
  const used = new Set([name]);
  const fields = Object.entries(input).map(([field, value]) => `  ${field}: ${expression(value, used)},`);
  const answer = calculation(input);
  const unit = typeof answer === "number" ? null : unitOf(answer);
  const read = unit === null ? "answer" : `answer.in(${unitCode(unit, used)})`;
  return [
    `import { ${[...used].sort((a, b) => a.localeCompare(b)).join(", ")} } from "@thrum/maths";`,
    "",
    `const answer = ${name}({`,
    ...fields,
    "});",
    `${read}; // ${shown(unit === null ? answer : answer.in(unit))}`,
  ].join("\n");
}
