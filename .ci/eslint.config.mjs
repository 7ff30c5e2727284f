import { fileURLToPath } from "node:url";
import vue from "eslint-plugin-vue";
import tseslint from "typescript-eslint";
import vueParser from "vue-eslint-parser";
import { sumsPlugin } from "./lint/eslint-sums.mjs";
import { BEGINS_LEANING } from "./support/leaning.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const tests = ["**/*.test.ts", "**/*.test-d.ts"];

const sortWithoutOrder = {
  selector: "CallExpression[arguments.length=0] > MemberExpression.callee[property.name=/^(sort|toSorted)$/]",
  message: "Say by what: without a comparator, 10 sorts before 9 and quantities come out in any order.",
};
const spreadOfFields = {
  selector: "ObjectExpression > SpreadElement > ObjectExpression",
  message: "Write the fields where they stand.",
};
const everywhere = [sortWithoutOrder, spreadOfFields];
const refusalUnsaid = [
  {
    selector:
      "CallExpression[arguments.length=0][callee.property.name=/^toThrow(Error)?$/]:not([callee.object.property.name='not'])",
    message: "Say which refusal: the part of the sentence that matters, or its code.",
  },
  {
    selector:
      "CallExpression[callee.property.name=/^toThrow(Error)?$/] > Identifier.arguments[name=/^[A-Z][A-Za-z]*[a-z]$/]",
    message: "Say which refusal, not only its class: the part of the sentence that matters, or its code.",
  },
];
/** What a test may not lean on: the row before, a second try, the hour, chance without a seed, how busy the machine is. */
const inTests = [
  {
    selector: `CallExpression[callee.property.name=/^(?:each|for)$/] > ArrayExpression > ArrayExpression > Literal.elements:first-child[value=/${BEGINS_LEANING}/i]`,
    message: "A title stands alone: say what is tried, not that it is like the row before.",
  },
  { selector: "Property[key.name='retry']", message: "A test that may fail once may fail: take away what sways it." },
];
const sway = [
  ["performance", "now", "Take processor time, of #ci/processor-time.js: on a busy machine work waits longer."],
  ["Math", "random", "Chance takes a seed, so that a failure can be had again."],
].map(([object, property, message]) => ({ object, property, message }));
const clock = {
  selector: "NewExpression[callee.name='Date'][arguments.length=0]",
  message: "The packages know no clock.",
};

const app = "examples/at-the-loom/src";
const notPublic = { regex: "^@thrum/[a-z]+/", message: "Only what a package exports at its root." };
/** The app of the examples: what it may import, and its screens. */
const appRules = [
  ...vue.configs["flat/recommended"].map((one) => ({ ...one, files: [`${app}/**/*.vue`] })),
  {
    files: [`${app}/**/*.vue`],
    languageOptions: { parser: vueParser, parserOptions: { parser: tseslint.parser, sourceType: "module" } },
    rules: {
      ...tseslint.configs.disableTypeChecked.rules,
      "vue/multi-word-component-names": "off",
      // Prettier lays out the templates.
      "vue/html-indent": "off",
      "vue/html-self-closing": "off",
      "vue/max-attributes-per-line": "off",
      "vue/singleline-html-element-content-newline": "off",
      "vue/multiline-html-element-content-newline": "off",
      "vue/html-closing-bracket-newline": "off",
      "vue/no-v-html": "error",
    },
  },
  {
    files: [`${app}/**/*.{ts,vue}`],
    rules: {
      "max-lines": ["error", 200],
      "@typescript-eslint/no-restricted-imports": [
        "error",
        {
          patterns: [
            notPublic,
            { regex: "^@thrum/", allowTypeImports: true, message: "The packages are asked through reckon/ or draft/." },
            { regex: "packages/", message: "The packages are imported by their names." },
          ],
        },
      ],
    },
  },
  {
    files: [`${app}/{reckon,draft,work}/**/*.ts`],
    rules: { "@typescript-eslint/no-restricted-imports": ["error", { patterns: [notPublic] }] },
  },
];

export default tseslint.config(
  {
    ignores: [
      ...["**/dist/", "reports/", "**/*.bundled_*.mjs"],
      ...["docs/*", "!docs/.vitepress/", "docs/.vitepress/*", "!docs/.vitepress/pages/"],
    ],
  },
  { linterOptions: { noInlineConfig: true } },
  tseslint.configs.strictTypeChecked,
  tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: root, extraFileExtensions: [".vue"] },
    },
    rules: {
      eqeqeq: "error",
      "no-restricted-syntax": ["error", ...everywhere, ...refusalUnsaid],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "separate-type-imports" }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      // A kind is an interface of one name so that a compile error can name it.
      "@typescript-eslint/no-empty-object-type": ["error", { allowInterfaces: "with-single-extends" }],
      // Names of inputs that come from data are read with ["name"]: the compiler asks for it.
      "@typescript-eslint/dot-notation": "off",
    },
  },
  {
    files: tests,
    rules: {
      "no-restricted-syntax": ["error", ...everywhere, ...refusalUnsaid, ...inTests],
      "no-restricted-properties": ["error", ...sway],
    },
  },
  {
    files: ["{packages,.ci}/**/*.test.ts"],
    rules: {
      "no-restricted-syntax": ["error", ...everywhere, ...refusalUnsaid, ...inTests, clock],
      "no-restricted-properties": [
        "error",
        ...sway,
        { object: "Date", property: "now", message: "A test draws nothing from the clock." },
      ],
    },
  },
  {
    files: ["packages/*/src/**/*.ts"],
    ignores: tests,
    plugins: { sums: sumsPlugin },
    rules: { "sums/no-rounded-reading": "error" },
  },
  {
    files: ["packages/plan/src/{figures,views,data}/**/*.ts"],
    ignores: tests,
    rules: { "sums/no-sums": "error" },
  },
  {
    // What a node gives is known where it is made: this is the one place that says so to the compiler.
    files: ["packages/plan/src/core/source.ts"],
    rules: { "@typescript-eslint/no-unnecessary-type-parameters": "off" },
  },
  {
    // The compiler tells a wrong wiring in fewer words of a mapped type than of a record.
    files: ["packages/plan/src/core/worked.ts"],
    rules: { "@typescript-eslint/consistent-indexed-object-style": "off" },
  },
  {
    files: ["packages/*/src/**/*.ts"],
    ignores: tests,
    rules: {
      "no-restricted-syntax": ["error", ...everywhere, clock],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "Chance takes a seed, so that a warp can be made again." },
        { object: "Date", property: "now", message: "The packages know no clock." },
      ],
      "no-console": "error",
    },
  },
  {
    files: ["packages/{maths,stripes}/src/**/*.ts"],
    ignores: tests,
    rules: { "no-restricted-globals": ["error", "process", "Buffer", "window", "document"] },
  },
  {
    files: ["packages/*/src/**/*.ts"],
    ignores: [
      ...tests,
      "packages/maths/src/{sources,units,verification}/**",
      "packages/maths/src/catalogue/{all-units,loaders}.ts",
    ],
    rules: { "max-lines": ["error", 150] },
  },
  {
    // Loops over typed arrays: the index is the loop's own, and a fallback would cost a branch at every row.
    files: ["packages/maths/src/engine/columns/*.ts"],
    rules: { "@typescript-eslint/no-non-null-assertion": "off" },
  },
  { files: ["**/*.{js,mjs}"], ...tseslint.configs.disableTypeChecked },
  ...appRules,
);
