// The script of the search page: looks up what is typed in the index that was built with the site.
import MiniSearch, { type SearchResult } from "minisearch";
import { type Found, type Indexed, indexOptions, searchOptions } from "./search-options.js";

// The index is a script of its own, so that the page also works from a folder, without a server.
const index = MiniSearch.loadJSON<Indexed>(
  (globalThis as unknown as { searchIndex: string }).searchIndex,
  indexOptions,
);

const most = 30;
const input = document.getElementById("search") as HTMLInputElement;
const list = document.getElementById("found") as HTMLOListElement;
const count = document.getElementById("count") as HTMLElement;

const line = (result: SearchResult & Partial<Found>): HTMLLIElement => {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = String(result.id);
  link.textContent = result.title ?? "";
  const kind = document.createElement("span");
  kind.className = "kind";
  kind.textContent = result.kind ?? "";
  const what = document.createElement("p");
  what.textContent = result.line ?? "";
  item.append(link, " ", kind, what);
  return item;
};

const look = (): void => {
  const words = input.value.slice(0, 200);
  // What has all words comes first; where nothing has, what has some of them.
  const all = index.search(words, { ...searchOptions, combineWith: "AND" });
  const results = all.length > 0 ? all : index.search(words, searchOptions);
  list.replaceChildren(...results.slice(0, most).map(line));
  const found = results.length === 1 ? "1 page" : `${results.length} pages`;
  count.textContent =
    words.trim() === ""
      ? ""
      : results.length > most
        ? `${found}; the first ${most} are listed.`
        : `${found}.`;
};

const address = (): void => {
  const query = input.value.trim() === "" ? "" : `?${new URLSearchParams({ q: input.value }).toString()}`;
  history.replaceState(null, "", location.pathname + query);
};

let later: ReturnType<typeof setTimeout> | undefined;
input.addEventListener("input", () => {
  look();
  clearTimeout(later);
  later = setTimeout(address, 300);
});
document.getElementById("search-form")?.addEventListener("submit", (event) => {
  event.preventDefault();
  look();
  address();
});
input.value = new URLSearchParams(location.search).get("q") ?? "";
look();
