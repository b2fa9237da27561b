import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

const config: ViteUserConfig = defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^hvac-install-math$/, replacement: `${root}src/index.ts` },
      { find: /^hvac-install-math\/(.+)$/, replacement: `${root}src/$1/index.ts` },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/studies/**"],
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"], tsconfig: "tsconfig.json" },
    testTimeout: 60_000,
  },
});

export default config;
