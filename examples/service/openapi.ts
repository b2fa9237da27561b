// What does the service offer, for programs and for people? An OpenAPI document from the library's own JSON Schemas.
// Follows OpenAPI 3.1, whose schemas are JSON Schema, draft 2020-12.
import {
  assessInstallationResult,
  changeCodec,
  jsonSchemaOf,
  recordCodec,
  recordWords,
} from "hvac-install-math/wire";

const json = (schema: string, description: string) => ({
  description,
  content: { "application/json": { schema: { $ref: `#/components/schemas/${schema}` } } },
});
const problem = (description: string) => ({
  description,
  content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
});
const id = {
  name: "id",
  in: "path",
  required: true,
  schema: { type: "string", format: "uuid" },
} as const;
const choice = (name: string, words: readonly string[]) => ({
  name,
  in: "query",
  schema: { enum: words, default: words[0] },
});
const notFound = problem("No record of this id");
const etag = {
  ETag: { description: "The revision, for If-Match", schema: { type: "string" } },
} as const;

/** The document; made once. */
export const openApi = {
  openapi: "3.1.0",
  info: {
    title: "Records of installations",
    version: "1.0.0",
    description:
      "An example. A verdict judges a record, not the work: nameplate, manual, local code and licensed practice govern.",
  },
  paths: {
    "/records": {
      post: {
        summary: "Keep a record",
        requestBody: json("Record", "An installation record, in whatever state of filling"),
        responses: {
          "201": json("Kept", "Kept as revision 0"),
          "413": problem("Larger than the limit"),
          "422": problem("Not a record: each wrong field by its path"),
        },
      },
    },
    "/records/{id}": {
      get: {
        summary: "Read a record",
        parameters: [id],
        responses: {
          "200": { ...json("Record", "The latest revision, with its history"), headers: etag },
          "404": notFound,
        },
      },
    },
    "/records/{id}/changes": {
      post: {
        summary: "Amend a record; what stood there before stays in its history",
        parameters: [
          id,
          { name: "If-Match", in: "header", required: true, schema: { type: "string" } },
        ],
        requestBody: json("Change", "One change: where, what, who, when, why"),
        responses: {
          "200": json("Kept", "The new revision"),
          "404": notFound,
          "412": problem("Somebody else changed the record in between: read it again"),
          "422": problem("Not a change, or one that does not fit"),
          "428": problem("No If-Match"),
        },
      },
    },
    "/records/{id}/verdict": {
      get: {
        summary: "Judge a record",
        parameters: [id],
        responses: { "200": json("Verdict", "The verdict of each step"), "404": notFound },
      },
    },
    "/records/{id}/report": {
      get: {
        summary: "The report as a page to print",
        parameters: [
          id,
          choice("language", ["en", "es", "fr"]),
          choice("system", ["inch-pound", "SI"]),
        ],
        responses: {
          "200": { description: "The report", content: { "text/html": { schema: {} } } },
          "404": notFound,
        },
      },
    },
  },
  components: {
    schemas: {
      Record: jsonSchemaOf(recordCodec, recordWords),
      Change: jsonSchemaOf(changeCodec),
      Verdict: jsonSchemaOf(assessInstallationResult),
      Kept: {
        type: "object",
        properties: { id: { type: "string" }, revision: { type: "integer" } },
        required: ["id", "revision"],
      },
      Problem: {
        type: "object",
        properties: {
          title: { type: "string" },
          status: { type: "integer" },
          detail: { type: "string" },
          problems: {
            type: "array",
            items: {
              type: "object",
              properties: {
                argument: { type: "string" },
                value: { type: "string" },
                allowed: { type: "string" },
              },
            },
          },
        },
        required: ["title", "status", "detail"],
      },
    },
  },
} as const;

/** The same for people: one line for each thing that can be asked. */
export const page = (): string => `<!doctype html>
<html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${openApi.info.title}</title>
<h1>${openApi.info.title}</h1>
<p>${openApi.info.description}</p>
<table><thead><tr><th>Request<th>What it does<th>Answers</thead><tbody>
${Object.entries(openApi.paths)
  .flatMap(([path, methods]) =>
    Object.entries(methods).map(
      ([method, { summary, responses }]) =>
        `<tr><td><code>${method.toUpperCase()} ${path}</code><td>${summary}<td>${Object.keys(responses).join(", ")}`,
    ),
  )
  .join("\n")}
</tbody></table>
<p>As OpenAPI 3.1: <a href="/openapi.json">openapi.json</a></p>
</html>`;
