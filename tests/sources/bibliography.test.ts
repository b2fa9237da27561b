import { bibliography, type Source, type SourceId, sourceById } from "hvac-install-math/sources";
import { describe, expect, it } from "vitest";
import { citingModules } from "../../docs/generate/citing-modules.ts";

const entries = Object.entries(bibliography) as [SourceId, Source][];
/** Entries that stand for the lack of a single citable work. */
const collective = [
  "common-practice",
  "from-memory",
  "manufacturer-manuals",
  "municipal-code",
  "vacuum-handbook",
];

describe("the bibliography", () => {
  it.each(entries)("%s says what it is, which edition, and who publishes it", (id, source) => {
    expect(source.title.length).toBeGreaterThan(8);
    expect(typeof source.edition).toBe("string");
    expect(typeof source.publisher).toBe("string");
    if (!collective.includes(id)) {
      expect(source.edition).not.toBe("");
      expect(source.publisher).not.toBe("");
    }
    expect(["reproduction", "memory", "none"]).toContain(source.readAs);
    expect(Object.keys(source).sort()).toEqual(
      ["edition", "publisher", "readAs", "title", ...(source.doi ? ["doi"] : [])].sort(),
    );
    for (const text of [source.title, source.edition, source.publisher]) {
      expect(text).toBe(text.trim());
    }
  });

  it.each(entries.filter(([, { doi }]) => doi !== undefined))(
    "%s has a DOI, not a link",
    (_, { doi }) => {
      expect(doi).toMatch(/^10\.\d{4,9}\/[^\s"<>]+$/);
    },
  );

  it("holds no work that no module names", () => {
    const idle = [...citingModules()].filter(([, modules]) => modules.length === 0);
    expect(idle.map(([id]) => id)).toEqual([]);
  });

  it("names every work once, in kebab case, in the order of the alphabet", () => {
    const ids = entries.map(([id]) => id);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(ids).toEqual([...ids].sort());
    const works = entries.map(([, { title, edition }]) => `${title} ${edition}`);
    expect(new Set(works).size).toBe(works.length);
    const dois = entries.flatMap(([, { doi }]) => (doi ? [doi] : []));
    expect(new Set(dois).size).toBe(dois.length);
  });
});

describe("sourceById", () => {
  it("finds every work", () => {
    for (const [id, source] of entries) expect(sourceById(id)).toBe(source);
  });

  it.each<[unknown, string]>([
    ["nfpa-70-1999", 'id: the text "nfpa-70-1999" is not allowed; allowed: an id of bibliography'],
    ["constructor", 'id: the text "constructor"'],
    ["__proto__", 'id: the text "__proto__"'],
    ["", 'id: the text ""'],
    [undefined, "id: undefined"],
    [null, "id: null"],
    [3, "id: 3"],
    [Symbol("x"), "id: a symbol"],
    [{}, "id: an object"],
  ])("names the wrong id %s from JavaScript", (id, message) => {
    expect(() => sourceById(id as SourceId)).toThrow(message);
  });
});
