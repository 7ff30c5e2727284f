// When not to use a formula, and which others stand near it: read from the declarations, so that every page has both.
import { calculations, maths } from "./handbook.mjs";
import { capital, plain } from "./markdown.mjs";
import { chosenFor, steps } from "./order-of-work.mjs";

const COUNTS = {
  "length per mass": "an indirect count (cotton, linen, worsted, metric …)",
  "mass per length": "a direct count (tex, denier, jute)",
};
const OTHER = { "length per mass": "mass per length", "mass per length": "length per mass" };

const dimensionsOf = ({ dimension, orDimension, member }) =>
  [member?.dimension ?? dimension, orDimension].filter(Boolean);
const stem = (name) => name.replace(/ByAdding|Direct|ByLength|ByMass|ForSizes/gu, "");

const link = ({ name, kebab }) => `[${maths.inWords(name)}](./${kebab}.md)`;

/** The same sum for the other kind of count. */
function twinOf(one) {
  const dimensions = new Set(Object.values(one.declaration.inputs).flatMap(dimensionsOf));
  return calculations.find(
    (other) =>
      other !== one &&
      stem(other.name) === stem(one.name) &&
      Object.values(other.declaration.inputs).some((input) =>
        dimensionsOf(input).some((own) => OTHER[own] !== undefined && dimensions.has(OTHER[own])),
      ),
  );
}

function countLimits(one) {
  const found = Object.entries(one.declaration.inputs).find(
    ([, input]) => input.orDimension === undefined && dimensionsOf(input).some((own) => own in OTHER),
  );
  if (found === undefined) return [];
  const wrong = COUNTS[OTHER[dimensionsOf(found[1])[0]]];
  const twin = twinOf(one);
  return [`With ${wrong}: ${twin === undefined ? "convert the count first" : `use ${link(twin)}`}.`];
}

const named = (inputs, holds) =>
  Object.entries(inputs)
    .filter(([, input]) => holds(input))
    .map(([field]) => plain(maths.inWords(field)))
    .join(" and ");

const isOf = (dimension) => (input) => dimensionsOf(input).includes(dimension);

/** Where the formula does not hold, a sentence each. */
export function limitsOf(one) {
  const { inputs, formula, result } = one.declaration;
  const ofRule = [...Object.values(inputs), result].some(({ reckonedIn }) => reckonedIn !== undefined);
  const plainNumbers = named(inputs, ({ what, isCount }) => what === "number" && !isCount);
  const losses = named(inputs, isOf("loss"));
  const additions = named(inputs, isOf("addition"));
  return [
    ...countLimits(one),
    ...(losses
      ? [`With a percentage of what is left or what is added: ${losses} counts from what was there before.`]
      : []),
    ...(additions
      ? [`With a percentage of the whole it ends up in: ${additions} counts from what it is added to.`]
      : []),
    ...(ofRule
      ? ["As if it were exact: it is a rule of thumb, good only for yarns and cloths like those it was taken from."]
      : []),
    ...(plainNumbers && !ofRule
      ? [
          `As if it were exact: it is a rule of thumb in plain numbers (${plainNumbers}), good only for yarns and cloths like those it was taken from.`,
        ]
      : []),
    ...(/roundUp|roundDown|nearest/u.test(formula)
      ? ["In the middle of a longer sum that rounds again later: this one already rounds, as its lines say."]
      : []),
    ...(Object.values(inputs).some(({ what }) => what === "list")
      ? ["With lists in different orders: each place of one list belongs to the same place of the others."]
      : []),
  ];
}

/** Formulas near by: the same sum by another rule, and those whose answer goes in here or whose input this is. */
export function relatedTo(one) {
  const inputs = new Set(Object.keys(one.declaration.inputs));
  const answer = one.declaration.lines.at(-1)?.name;
  const scored = calculations
    .filter((other) => other !== one)
    .map((other) => {
      const theirs = Object.keys(other.declaration.inputs);
      const shared = theirs.filter((field) => inputs.has(field)).length / Math.max(inputs.size, theirs.length);
      const gives = inputs.has(other.name) || inputs.has(other.declaration.lines.at(-1)?.name) ? 0.8 : 0;
      const takes = theirs.includes(one.name) || theirs.includes(answer) ? 0.8 : 0;
      const same = stem(other.name) === stem(one.name) ? 1 : 0;
      const near = other.folder === one.folder ? 0.3 : 0;
      return { other, score: shared + gives + takes + same + near };
    })
    .filter(({ score }) => score > 0.3)
    .sort((a, b) => b.score - a.score || a.other.name.localeCompare(b.other.name));
  const chosen = chosenFor(one) ?? (scored.length > 0 ? scored.slice(0, 5).map(({ other }) => other) : besides(one));
  return chosen.map((other) => `[${capital(maths.inWords(other.name))}](./${other.kebab}.md)`);
}

/** Those beside it in its step of the work. */
function besides(one) {
  const { formulas } = steps.find((step) => step.formulas.includes(one));
  const at = formulas.indexOf(one);
  return formulas.filter((other, place) => other !== one && Math.abs(place - at) <= 2);
}
