// The tests as StrykerJS runs them, hundreds of times over: only its own report is written, and
// each file is a world of its own, without which it takes a mutant for unnoticed that it never switched on.
import type { ViteUserConfig } from "vitest/config";
import config from "../vitest.config.js";

const mutate: ViteUserConfig = {
  ...config,
  test: { ...config.test, include: ["**/*.test.ts"], reporters: [], isolate: true },
};

export default mutate;
