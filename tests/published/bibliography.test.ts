import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bibliographyPage, type Work, works } from "./bibliography.js";

/** Titles that different works share. */
const sharedTitles = [
  "How to measure",
  "How to calibrate a drop spreader",
  "Pure live seed",
  "What is the hardness of my water?",
];

/** Addresses at which more than one work stands: a manual with its parts, a code and a summary of it. */
const sharedAddresses: readonly string[] = [
  "https://pested.unl.edu/math",
  "http://agriculture.vermont.gov/node/122",
];

const groupsOf = (all: readonly Work[], keysOf: (work: Work) => readonly string[]): readonly string[] => {
  const groups = new Map<string, string[]>();
  for (const work of all)
    for (const key of keysOf(work))
      groups.set(key, [...(groups.get(key) ?? []), `${work.publisher}: ${work.title}`]);
  return [...groups]
    .filter(([, list]) => list.length > 1)
    .map(([key, list]) => `${key}: ${list.join(" | ")}`);
};

describe("the bibliography", () => {
  const all = works();

  it("is up to date: npm run evidence writes it", () => {
    const page = readFileSync(new URL("../../docs/bibliography.md", import.meta.url), "utf8");
    expect(bibliographyPage()).toBe(page);
  });

  it("has a key for each work, once", () => {
    expect(new Set(all.map(({ key }) => key)).size).toBe(all.length);
    expect(all.filter(({ key }) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(key))).toEqual([]);
  });

  it("says who cites each work", () => {
    expect(
      all.filter(({ code, formulas, checks }) => code.length + formulas.length + checks.length === 0),
    ).toEqual([]);
  });

  it("calls a work by one name: no title under two publishers", () => {
    const shared = groupsOf(all, ({ title }) => (sharedTitles.includes(title) ? [] : [title.toLowerCase()]));
    expect(shared).toEqual([]);
  });

  it("calls a work by one name: no title with other words in brackets or other points", () => {
    const plain = (title: string): string =>
      title
        .replace(/\([^)]*\)/g, " ")
        .toLowerCase()
        .replace(/\b(?:the|an?|and|of|for|no)\b/g, " ")
        .replace(/[^a-z0-9]+/g, " ")
        .trim();
    const shared = groupsOf(all, ({ title, publisher }) => [
      `${publisher.slice(0, 12).toLowerCase()}: ${plain(title)}`,
    ]);
    expect(shared).toEqual([]);
  });

  it("calls a work by one name: no address under two titles", () => {
    const shared = groupsOf(all, ({ urls }) => urls.filter((url) => !sharedAddresses.includes(url)));
    expect(shared).toEqual([]);
  });
});
