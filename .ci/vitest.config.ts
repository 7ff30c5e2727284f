import { fileURLToPath } from "node:url";
import type { ViteUserConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const source = (path: string): string => `${root}packages/${path}`;

const config: ViteUserConfig = {
  root,
  cacheDir: "node_modules/.vite",
  resolve: {
    alias: [
      { find: /^#ci\//, replacement: `${root}.ci/support/` },
      { find: /^@thrum\/maths\/verification$/, replacement: source("maths/src/verification/index.ts") },
      { find: /^@thrum\/maths\/catalogue$/, replacement: source("maths/src/catalogue/index.ts") },
      { find: /^@thrum\/maths\/define$/, replacement: source("maths/src/define/index.ts") },
      { find: /^@thrum\/plan\/files$/, replacement: source("plan/src/files/index.ts") },
      { find: /^@thrum\/sheets\/functions$/, replacement: source("sheets/src/functions/index.ts") },
      { find: /^@thrum\/([a-z]+)$/, replacement: source("$1/src/index.ts") },
    ],
  },
  test: {
    include: ["packages/*/src/**/*.test.ts", ".ci/**/*.test.ts", "examples/**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**"],
    setupFiles: [".ci/support/fast-check.setup.ts"],
    isolate: false,
    // Vitest takes one worker fewer than there are cores; most of the long tests wait for another program.
    maxWorkers: 2,
    // Some tests start a compiler or another program, on machines that may be busy.
    testTimeout: 60_000,
    reporters: ["default", "json"],
    outputFile: { json: "reports/vitest.json" },
  },
};

export default config;
