import { describe, expect, it } from "vitest";
import { exportsOf, loadModules } from "./calls.js";

// Every table that the package exports is one object for all who use it: nobody can write into it.

const { objects } = exportsOf(await loadModules());

/** The places below an object that can be written into. Quantities are looked at too; a map or a set would need an eye of its own. */
const openPlaces = (value: unknown, at: string, seen: Set<unknown> = new Set()): readonly string[] => {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  const here =
    ArrayBuffer.isView(value) || value instanceof Map || value instanceof Set || !Object.isFrozen(value)
      ? [at]
      : [];
  return [
    ...here,
    ...Object.entries(value).flatMap(([key, inner]) => openPlaces(inner, `${at}.${key}`, seen)),
  ];
};

describe("what the package exports cannot be written into", () => {
  it.each([...objects])("%s", (name, object) => {
    expect(openPlaces(object, name)).toEqual([]);
  });

  it("finds an open place where there is one", () => {
    expect(openPlaces(Object.freeze({ sizes: [1], name: "a" }), "table")).toEqual(["table.sizes"]);
    expect(openPlaces(Object.freeze({ known: new Map() }), "table")).toEqual(["table.known"]);
  });
});
