// The projects whose types are checked, each with its compiler: everything together with its tests, what the packages
// publish, the engine alone, the small apps, which know a browser, and the app with the templates of its screens.
const tsc = "node_modules/typescript/bin/tsc";
const app = "examples/at-the-loom";

export const typedProjects = [
  [".ci", tsc],
  [app, `${app}/node_modules/vue-tsc/bin/vue-tsc.js`],
  [".ci/lint/tsconfig.packages.json", tsc],
  [".ci/lint/tsconfig.engine.json", tsc],
  ["examples/small-apps", tsc],
];
