// When not to use a formula: read from its declaration, so that no page goes without.
import { calculations, maths } from "./handbook.mjs";
import { plain } from "./markdown.mjs";

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
