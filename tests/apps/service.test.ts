// The example service: what it keeps, what it refuses, and whether a hostile client can take it down.
import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { createApp } from "../../examples/service/app.ts";
import { openStore, type Store } from "../../examples/service/store.ts";

const text = readFileSync("examples/three-heads/record.json", "utf8");
const type = { "content-type": "application/json" };

let store: Store;
let app: ReturnType<typeof createApp>;
beforeEach(() => {
  store = openStore(":memory:");
  app = createApp(store);
});
afterEach(() => store.close());

const send = (path: string, body: string, headers: Record<string, string> = type) =>
  app.request(path, { method: "POST", body, headers });
const kept = async (body = text): Promise<string> =>
  ((await (await send("/records", body)).json()) as { id: string }).id;
const change = (value: string) =>
  JSON.stringify({ path: "name", value, by: "N. N.", at: "2026-11-01", reason: "misspelt" });

describe("a record", () => {
  it("is kept, read again as it was written, judged and printed in each language", async () => {
    const answer = await send("/records", text);
    expect(answer.status).toBe(201);
    const { id, revision } = (await answer.json()) as { id: string; revision: number };
    expect(revision).toBe(0);
    expect(answer.headers.get("location")).toBe(`/records/${id}`);
    const read = await app.request(`/records/${id}`);
    expect(JSON.parse(await read.text())).toEqual(JSON.parse(text));
    const verdict = (await (await app.request(`/records/${id}/verdict`)).json()) as object;
    expect(verdict).toMatchObject({ outcome: "pass" });
    const lang = { en: "en-US", es: "es-419", fr: "fr-CA" };
    for (const [language, locale] of Object.entries(lang)) {
      const report = await app.request(`/records/${id}/report?language=${language}&system=SI`);
      expect(report.headers.get("content-security-policy")).toContain("default-src 'none'");
      expect(await report.text()).toContain(`<html lang="${locale}">`);
    }
  });

  it("is amended from the revision that was read, and by one of two at a time", async () => {
    const id = await kept();
    const path = `/records/${id}/changes`;
    expect((await send(path, change("A"))).status).toBe(428);
    expect((await send(path, change("A"), { ...type, "if-match": '"3"' })).status).toBe(412);
    const both = await Promise.all(
      ["A", "B"].map((name) => send(path, change(name), { ...type, "if-match": '"0"' })),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 412]);
    const now = await app.request(`/records/${id}`);
    expect(now.headers.get("etag")).toBe('"1"');
    const { history, name } = (await now.json()) as {
      history: { previous: string }[];
      name: string;
    };
    expect(["A", "B"]).toContain(name);
    expect(history.at(-1)?.previous).toBe((JSON.parse(text) as { name: string }).name);
  });
});

describe("what is wrong is named, and changes nothing", () => {
  it("each field by its path", async () => {
    const answer = await send("/records", '{"version":2,"odd":1,"runs":[{"tubing":{"length":3}}]}');
    expect(answer.status).toBe(422);
    expect(answer.headers.get("content-type")).toBe("application/problem+json");
    const { problems } = (await answer.json()) as { problems: { argument: string }[] };
    expect(problems.map(({ argument }) => argument)).toEqual(["odd", "runs[0].tubing.length"]);
  });

  it.each([
    ["no JSON", "{", 422],
    ["nothing", "", 422],
    ["another type", "null", 422],
    ["a newer version", '{"version":3}', 422],
    ["a field that stands twice", '{"version":2,"version":2}', 422],
    ["a prototype", '{"version":2,"__proto__":{}}', 422],
    ["nested too deep", `{"version":2,"name":${"[".repeat(50_000)}${"]".repeat(50_000)}}`, 422],
    ["2 MB", `{"version":2,"name":"${"x".repeat(2_000_000)}"}`, 413],
  ])("%s", async (_, body, status) => {
    expect((await send("/records", body)).status).toBe(status);
    expect(store.list(10)).toEqual([]);
  });

  it("a change that does not fit", async () => {
    const id = await kept();
    const odd = JSON.stringify({
      path: "runs[0].nothing",
      value: 1,
      by: "N. N.",
      at: "2026-11-01",
      reason: "odd",
    });
    const answer = await send(`/records/${id}/changes`, odd, { ...type, "if-match": '"0"' });
    expect(answer.status).toBe(422);
    expect(store.get(id)?.revision).toBe(0);
  });

  it("a body that is not said to be JSON, no such record, no such page, no such language", async () => {
    expect((await send("/records", text, { "content-type": "text/plain" })).status).toBe(415);
    expect((await app.request("/records/nothing/verdict")).status).toBe(404);
    expect((await app.request("/nothing")).status).toBe(404);
    const id = await kept();
    expect((await app.request(`/records/${id}/report?language=__proto__`)).status).toBe(400);
    expect((await app.request(`/records/${id}/report?system=mks`)).status).toBe(400);
  });
});

describe("a hostile client", () => {
  it("does not take it down with many large requests at once", async () => {
    const large = `{"version":2,"name":"${"x".repeat(1_900_000)}"}`;
    const all = await Promise.all(Array.from({ length: 100 }, () => send("/records", large)));
    const seen = new Set(all.map(({ status }) => status));
    expect([...seen].every((status) => status === 422 || status === 503)).toBe(true);
    expect((await app.request("/openapi.json")).status).toBe(200);
  });

  it("finds its own text as text in the report", async () => {
    const id = await kept('{"version":2,"name":"<script>alert(1)</script>"}');
    expect(await (await app.request(`/records/${id}/report`)).text()).not.toContain("<script");
  });
});

it("shows what it offers, with the library's own schemas", async () => {
  const document = (await (await app.request("/openapi.json")).json()) as {
    openapi: string;
    components: { schemas: Record<string, { $id?: string }> };
  };
  expect(document.openapi).toBe("3.1.0");
  expect(document.components.schemas.Record?.$id).toBe("urn:hvac-install-math:record-2");
  expect(await (await app.request("/")).text()).toContain("POST /records/{id}/changes");
});
