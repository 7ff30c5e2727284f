// A case of a calculation as code a reader can paste: its imports, the call, and what it gives.
import { isUnit, maths } from "./handbook.mjs";

function expression(value, used) {
  if (Array.isArray(value)) return `[${value.map((one) => expression(one, used)).join(", ")}]`;
  if (isUnit(value)) {
    used.add(value.name);
    return value.name;
  }
  if (typeof value === "object") {
    used.add(value.unit);
    const number = String(Number(value.value));
    return `${value.unit}(${number === value.value ? number : JSON.stringify(value.value)})`;
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
  const unit = typeof answer === "number" ? null : maths[answer.unit];
  if (unit !== null) used.add(unit.name);
  const read = unit === null ? "answer" : `answer.in(${unit.name})`;
  return [
    `import { ${[...used].sort((a, b) => a.localeCompare(b)).join(", ")} } from "@thrum/maths";`,
    "",
    `const answer = ${name}({`,
    ...fields,
    "});",
    `${read}; // ${shown(unit === null ? answer : answer.in(unit))}`,
  ].join("\n");
}
