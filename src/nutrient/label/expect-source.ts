import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectText,
  type FactSource,
  fail,
  outOfRange,
} from "../../quantity/index.js";

/** The longest text that a record may carry, in characters. */
const longest = 2000;
/** The longest list of texts. */
const most = 200;

/** Takes a text that is not empty and at most 2000 characters long, or throws with its path. */
export const expectShortText = (input: unknown, path: string, expected: string): string => {
  const text = expectText(input, path, expected);
  return text.length > longest
    ? fail(
        "range",
        path,
        described(`a text of ${text.length} characters`),
        `${longest} characters or fewer`,
        {
          params: { max: longest, count: "characters" },
        },
      )
    : text;
};

/** Takes where a fact was printed, a citation or a text, as a copy of its own, or throws with its path. */
export const expectSource = (input: unknown, path: string): FactSource => {
  if (Object(input) !== input) return expectShortText(input, path, "a source");
  const { title, publisher, year, where, url } = expectFields(
    input,
    ["title", "publisher", "year", "where", "url"],
    path,
    "a source: a text, or { title, publisher }",
  );
  const optional = (name: string, given: unknown) =>
    given === undefined ? {} : { [name]: expectShortText(given, `${path}.${name}`, "a text") };
  const read = allOf({
    title: () => expectShortText(title, `${path}.title`, "a title"),
    publisher: () => expectShortText(publisher, `${path}.publisher`, "a publisher"),
    year: () =>
      year === undefined ? {} : { year: expectNumber(year, `${path}.year`, { min: 1, max: 9999 }) },
    where: () => optional("where", where),
    url: () => optional("url", url),
  });
  return { title: read.title, publisher: read.publisher, ...read.year, ...read.where, ...read.url };
};

/** Takes a list of texts, which may be empty, as a copy of its own, or throws with its path. */
export const expectTexts = (input: unknown, path: string): readonly string[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of texts");
  if (input.length > most) outOfRange(path, input, { max: most, count: "texts" });
  return Array.from(input, (text, i) => expectShortText(text, `${path}[${i}]`, "a text"));
};

/** Takes the path under which problems are told, which a caller may hand in, or throws. */
export const expectPath = (input: unknown): string =>
  typeof input === "string" && input.length <= longest ? input : fail("type", "path", input, "a path");
