// Makes the search's index with MiniSearch itself and tells whether the builder's is the same; then
// searches the builder's. The input holds the entries, the index and the words to search for.
import { readFileSync } from "node:fs";
import MiniSearch from "minisearch";
import { isDeepStrictEqual } from "node:util";

const { entries, index, words } = JSON.parse(readFileSync(0, "utf8"));
const options = {
  fields: ["title", "text"],
  storeFields: ["address", "page", "heading", "excerpt"],
  tokenize: (text) => text.toLowerCase().match(/[\p{Alphabetic}\p{N}]+/gu) ?? [],
  processTerm: (term) => term,
};
const own = new MiniSearch(options);
own.addAll(entries.map((entry, id) => ({ id, ...entry })));
const sorted = (data) => ({
  ...data,
  index: [...data.index].sort(([a], [b]) => (a < b ? -1 : 1)),
});
const theirs = sorted(JSON.parse(JSON.stringify(own)));
const same = isDeepStrictEqual(theirs, sorted(index));
const found = MiniSearch.loadJSON(JSON.stringify(index), options).search(words, { prefix: true });
console.log(JSON.stringify({ same, terms: theirs.index.length, found: found.map(({ address }) => address) }));
