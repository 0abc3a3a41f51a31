import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectText,
  type FactSource,
} from "../quantity/index.js";

/** Takes where something is stated, words or a citation, as a copy of its own; or throws. */
export const expectSource = (input: unknown, path: string): FactSource => {
  if (typeof input !== "object" || input === null)
    return expectText(input, path, "where it is stated, and when that was read");
  const { title, publisher, year, where, url } = expectFields(
    input,
    ["title", "publisher", "year", "where", "url"],
    path,
    "a citation with title and publisher",
  );
  const read = allOf({
    title: () => expectText(title, `${path}.title`, "a title"),
    publisher: () => expectText(publisher, `${path}.publisher`, "a publisher"),
    year: () =>
      year === undefined ? {} : { year: expectNumber(year, `${path}.year`, { min: 1, max: 9999 }) },
    where: () =>
      where === undefined ? {} : { where: expectText(where, `${path}.where`, "the place in it") },
    url: () => (url === undefined ? {} : { url: expectText(url, `${path}.url`, "an address") }),
  });
  const citation: Citation = {
    title: read.title,
    publisher: read.publisher,
    ...read.year,
    ...read.where,
    ...read.url,
  };
  return citation;
};
