// Builds the app, and the service worker with the list of everything that was built.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin, type UserConfig } from "vite";

/** Writes service-worker.js: the app works without network because each of these files is kept on the phone. */
function serviceWorker(): Plugin {
  return {
    name: "service-worker",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      const page = bundle["index.html"];
      const built = Object.keys(bundle).filter((file) => file !== "index.html");
      const files = ["./", ...built, "manifest.webmanifest", "icon.svg"];
      const version = createHash("sha256")
        .update(JSON.stringify([files, page?.type === "asset" && String(page.source)]))
        .digest("hex");
      const code = readFileSync(join(import.meta.dirname, "src/service-worker.js"), "utf8");
      this.emitFile({
        type: "asset",
        fileName: "service-worker.js",
        source: `const files = ${JSON.stringify(files)};\nconst version = "${version.slice(0, 12)}";\n${code}`,
      });
    },
  };
}

const config: UserConfig = defineConfig({
  base: "./", // it may stand in any folder of a server
  plugins: [react(), serviceWorker()],
  build: { target: "es2022" },
});

export default config;
