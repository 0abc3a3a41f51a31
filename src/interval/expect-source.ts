import { described } from "../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectText,
  type FactSource,
  fail,
} from "../quantity/index.js";

/** Takes where something is stated: words, or a citation, of which it gives an own copy; or throws. */
export const expectSource = (
  input: unknown,
  path: string,
  wanted = "where it is stated: words, or a record with title and publisher",
): FactSource => {
  if (input === undefined || (typeof input === "string" && input.trim() === "")) {
    return fail("missing", path, input === undefined ? described("nothing") : input, wanted);
  }
  if (typeof input === "string") return input;
  const { title, publisher, year, where, url } = expectFields(
    input,
    ["title", "publisher", "year", "where", "url"],
    path,
    wanted,
  );
  const read = allOf({
    title: () => expectText(title, `${path}.title`, "the title"),
    publisher: () => expectText(publisher, `${path}.publisher`, "the publisher"),
    year: () => (year === undefined ? {} : { year: expectNumber(year, `${path}.year`) }),
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
