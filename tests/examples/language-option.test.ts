// Does npm start answer in the language that is asked for?
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { root } from "./run-copy.ts";

const folder = join(root, "examples/worked-install");

describe("npm start -- --language", () => {
  it.each([
    ["es", "Resultado global: **CUMPLE**", "Prevalece la versión en inglés"],
    ["es-ES", "placa de características", "Prevalece la versión en inglés"],
    ["fr", "**CONFORME**", "La version anglaise prévaut"],
    ["fr-FR", "liaison liquide", "La version anglaise prévaut"],
  ])("%s prints the report in it, with the standing of its words", (tag, ...texts) => {
    const { exitCode, output } = run(["report", folder, "--language", tag]);
    expect(exitCode).toBe(0);
    for (const text of texts) expect(output.toLowerCase()).toContain(text.toLowerCase());
    expect(output).not.toMatch(/\b(PASS|Overall|Hold points|What to do next|Cautions)\b/);
  });

  it("refuses a language that is not there", () => {
    const { exitCode, errors } = run([folder, "--language", "tlh"]);
    expect(exitCode).toBe(2);
    expect(errors).toContain('--language "tlh"');
  });
});
