// How does the docs search find a page? MiniSearch over titles, trade words, questions, summaries, headings and text,
// with typing errors allowed for. The same for the index that docs/plugins/search-index.mjs writes, for the browser and
// for the tests. Does not cover the dialog: docs/search/dialog.mjs.
import MiniSearch from "minisearch";

/** Words that say nothing of the subject, in the three languages. */
const stopWords = new Set(
  "a an and are as at be by do does can for from has have how i if in is it me much my no not of on or so system systems that the there this to was what when where which who why will with you your el la los las un una de del que en es y o por para con se le les des du et un une est dans pour que qui au aux sur".split(
    " ",
  ),
);

/** Letters without their accents; a name in camel case as its words and as a whole; no plural s. */
function words(text) {
  const apart = text
    .replaceAll(/([a-z])([A-Z])/g, "$1 $2")
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase();
  return apart.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

const stem = (word) => (word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word);

/** What MiniSearch has to know for writing an index and for reading it. */
export const options = {
  fields: ["title", "words", "asks", "summary", "headings", "text"],
  storeFields: ["title", "url", "kind", "module", "about"],
  tokenize: words,
  processTerm: (word) => (stopWords.has(word) ? null : stem(word)),
};

const boost = { title: 4, words: 6, asks: 2.5, summary: 1.5, headings: 1.5, text: 0.5 };

/** How much a page of a kind is worth beside the others that have the same words. */
const worth = {
  main: 2.2,
  function: 1.6,
  guide: 1.5,
  ask: 0.9,
  page: 0.9,
  method: 0.7,
  module: 0.8,
  variable: 0.9,
  type: 0.5,
  record: 0.25,
};

/** Up to ten pages for what was typed, the best first. */
export function find(index, typed, most = 10) {
  const asked = words(typed).filter((word) => !stopWords.has(word)).length;
  const query = {
    boost,
    fuzzy: (term) => (term.length > 7 ? 2 : term.length > 3 ? 1 : false),
    prefix: (term) => term.length > 2,
    weights: { fuzzy: 0.3, prefix: 0.4 },
    boostDocument: (_, __, stored) => worth[stored.kind] ?? 1,
  };
  // A page with every word of the question comes before pages with one of them.
  const found = index.search(typed, query).map((one) => ({
    ...one,
    score: one.score * (new Set(one.queryTerms).size / Math.max(asked, 1)) ** 1.5,
  }));
  return found.sort((one, other) => other.score - one.score).slice(0, most);
}

/** The index as the file has it. */
export const indexFrom = (json) => MiniSearch.loadJSON(json, options);
