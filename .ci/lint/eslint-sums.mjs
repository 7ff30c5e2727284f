// ESLint rules that keep sums where they are data: no sum of amounts by hand in the plan, no double rounded to be a count.
const SUMS = new Set(["sum", "difference", "times", "ratio"]);
const ROUNDING = new Set(["floor", "ceil", "round"]);
const { isArray } = Array;

/** The sums of the maths, wherever they are imported from it. */
const noSums = {
  create(context) {
    return {
      ImportDeclaration(node) {
        if (node.source.value !== "@thrum/maths") return;
        const found = node.specifiers.filter(({ imported }) => SUMS.has(imported?.name ?? imported?.value));
        for (const one of found) {
          context.report({
            node: one,
            message: `${one.imported.name ?? one.imported.value}: a sum of the plan is a formula of the handbook, so that it can be shown and checked`,
          });
        }
      },
    };
  },
};

const isCallOf = (node, holds) =>
  node.type === "CallExpression" && node.callee.type === "MemberExpression" && holds(node.callee);
const isIn = ({ property, computed }) => !computed && property.name === "in";

/** Whether `.in(…)` is called anywhere in the expression, not counting functions within it. */
function readsAmount(node) {
  if (node === null || typeof node !== "object" || typeof node.type !== "string") return false;
  if (/Function/u.test(node.type)) return false;
  if (isCallOf(node, isIn)) return true;
  return Object.entries(node).some(
    ([key, value]) => key !== "parent" && (isArray(value) ? value : [value]).some(readsAmount),
  );
}

/** The value that a name was given where it was declared, if it was declared once for all. */
function declaredAs(context, node) {
  if (node.type !== "Identifier") return node;
  for (let scope = context.sourceCode.getScope(node); scope !== null; scope = scope.upper) {
    const [definition] = scope.set.get(node.name)?.defs ?? [];
    if (definition === undefined) continue;
    const { type, id, init } = definition.node;
    return type === "VariableDeclarator" && id.type === "Identifier" && init !== null ? init : node;
  }
  return node;
}

/** An exact amount read as a double and then rounded: 3 packages exactly may come out as 4. */
const noRoundedReading = {
  create(context) {
    return {
      CallExpression(node) {
        const isRounding = isCallOf(
          node,
          ({ object, property }) => object.name === "Math" && ROUNDING.has(property.name),
        );
        if (!isRounding || !node.arguments.some((one) => readsAmount(declaredAs(context, one)))) return;
        context.report({
          node,
          message: "An amount is rounded before it is read: by a formula, or by asText with its step.",
        });
      },
    };
  },
};

export const sumsPlugin = { rules: { "no-sums": noSums, "no-rounded-reading": noRoundedReading } };
