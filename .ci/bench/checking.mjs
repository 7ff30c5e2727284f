// A wrong claim judged, warm: every formula with one set of inputs made from its declaration; the slowest beside its working.
import { built } from "../support/built.mjs";
import { ratioAtMost, told } from "./row.mjs";
import { timesOf, timesTheFirst } from "./stopwatch.mjs";

function inputFor({ what, dimension, member, words, range }, unitOf) {
  if (member !== null) return [1, 2, 3].map(() => inputFor(member, unitOf));
  if (what === "word") return words[0];
  if (what === "unit") return unitOf(dimension);
  if (what === "quantity") return unitOf(dimension)(21);
  return Math.max(range.atLeast ?? 0, 21);
}

/** What a formula is asked and a claim no slip gives, so that every slip is looked through; null where it has no answer. */
function question(calculation, units) {
  const unitOf = (dimension) => units.find((unit) => unit.dimension === dimension);
  const { inputs } = calculation.declaration;
  const input = Object.fromEntries(Object.entries(inputs).map(([name, one]) => [name, inputFor(one, unitOf)]));
  try {
    const answer = calculation(input);
    const unit = units.find(({ dimension, name }) => dimension === answer.dimension && name === answer.unit) ?? null;
    return [calculation, input, { written: "123.4567", unit }];
  } catch (error) {
    if (error.name === "QuantityError") return null;
    throw error;
  }
}

export async function figures() {
  const maths = await built("maths");
  const functions = [...Object.values(maths), maths.currency("EUR")].filter((one) => typeof one === "function");
  const units = functions.filter((one) => "scale" in one);
  const asked = functions.filter((one) => "declaration" in one).map((one) => question(one, units));
  const questions = asked.filter((one) => one !== null);
  const times = timesOf(
    questions.map((one) => () => maths.check(...one).slips.length),
    { calls: 5 },
  );
  const worst = Math.max(...times);
  const slowest = questions[times.indexOf(worst)];
  const [calculation, input] = slowest;
  const works = [() => maths.explain(calculation, input).steps.length, () => maths.check(...slowest).slips.length];
  const [, check] = timesTheFirst(works, { calls: 20 });
  const [pairs] = timesOf([() => maths.check(...slowest).pairs().fitting], { calls: 1 });
  const { name } = slowest[0].declaration;
  return [
    ratioAtMost(`a check of the slowest of ${String(questions.length)} formulas (${name}), ÷ its working`, check, 20),
    told("the same, warm", worst / 1e6, "ms"),
    told("the pairs of slips of the same", pairs / 1e6, "ms"),
  ];
}
