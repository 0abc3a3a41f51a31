import { describe, expect, it } from "vitest";
import { type ExportedFunction, exportedDocs } from "./doc-comments.js";
import {
  roomsWithoutFacts,
  withoutExample,
  withoutSource,
  withoutThrows,
} from "./doc-comments-exceptions.js";

const named = (list: readonly ExportedFunction[]): readonly string[] =>
  list.map(({ room, name }) => `${room}/${name}`);

/** The comment with its tags, for the source stands behind them. */
const whole = ({ text, tags }: ExportedFunction): string => [text, ...tags.map((tag) => tag.text)].join("\n");

/** "Source: ...", "Source of the form: ...", "Sources disagree: ...", or in a line of another kind that there is none. */
const statesSource = (all: ExportedFunction): boolean =>
  /\bSources?\b[^.\n]{0,60}:|no source|source and errors: see/.test(whole(all));

describe("every exported function", { timeout: 60_000 }, () => {
  const functions = exportedDocs();

  it("is found", () => {
    expect(functions.length).toBeGreaterThan(600);
  });

  it("says what it does, in a sentence to begin with", () => {
    const first = /^(?:[A-Z`{]|-1, 0 or 1)[\s\S]*?[.:](?:\s|$)/;
    expect(named(functions.filter(({ text }) => !first.test(text.trim())))).toEqual([]);
  });

  it("has a worked example with a checked result", () => {
    const without = functions.filter(({ examples }) => !examples.some((text) => /\/\/ ?=>/.test(text)));
    expect(named(without)).toEqual(Object.keys(withoutExample));
  });

  it("explains each parameter, and each field of a record that it spells out", () => {
    expect(
      functions.flatMap(({ room, name, unexplained }) =>
        unexplained.map((what) => `${room}/${name}: ${what}`),
      ),
    ).toEqual([]);
  });

  it("says what it throws, where it can", () => {
    const silent = functions.filter(
      ({ throws, tags }) => throws && !tags.some(({ name }) => name === "throws"),
    );
    expect([...named(silent)].sort()).toEqual(Object.keys(withoutThrows).sort());
  });

  it("names its source, or says that there is none, where it computes a fact of the trade", () => {
    const without = functions.filter((one) => !roomsWithoutFacts.has(one.room) && !statesSource(one));
    expect([...named(without)].sort()).toEqual(Object.keys(withoutSource).sort());
  });
});
