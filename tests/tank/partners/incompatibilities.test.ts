import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Formulation,
  formulations,
  incompatibilities,
  loadingOrder,
  type MixProduct,
  mixIngredients,
} from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const codes = (products: readonly MixProduct[], more: object = {}) =>
  incompatibilities({ products, ...more }).findings.map(({ code, severity }) => `${code} ${severity}`);

describe("incompatibilities", () => {
  test("iron sulfate with an amine phenoxy curdles, in either order", () => {
    const amine: MixProduct = { id: "amine", formulation: "SL", contains: ["amine phenoxy"] };
    const iron: MixProduct = { id: "iron", formulation: "SP", contains: ["iron sulfate"] };
    expect(codes([amine, iron])).toEqual(["mix/iron-and-amine warning"]);
    expect(codes([iron, amine])).toEqual(["mix/iron-and-amine warning"]);
    expect(codes([iron, { ...amine, contains: [] }])).toEqual([]);
  });

  test("ammonium sulfate: a caution before the amine, a warning after it", () => {
    const amine: MixProduct = { id: "amine", formulation: "SL", contains: ["amine phenoxy"] };
    const ams: MixProduct = { id: "ams", formulation: "conditioner", contains: ["ammonium sulfate"] };
    expect(codes([ams, amine])).toEqual(["mix/undissolved-sulfate-and-amine caution"]);
    expect(codes([amine, ams])).toEqual(["mix/undissolved-sulfate-and-amine warning"]);
    // The loading order puts it first, so the warning does not arise there.
    const order = loadingOrder({ products: [amine, ams] });
    expect(order.order).toEqual(["ams", "amine"]);
    expect(order.findings.find(({ code }) => code.startsWith("mix/undissolved"))?.severity).toBe("caution");
    expect(order.findings[0]?.params.publishedObjection).toBe("yes");
  });

  test("ammonium thiosulfate goes last", () => {
    const ats: MixProduct = {
      id: "ats",
      formulation: "liquid fertilizer",
      contains: ["ammonium thiosulfate"],
    };
    const herbicide: MixProduct = { id: "h", formulation: "EC", contains: [] };
    const wetter: MixProduct = { id: "w", formulation: "surfactant", contains: [] };
    expect(codes([ats, herbicide])).toEqual(["mix/thiosulfate-last warning"]);
    expect(codes([herbicide, ats, wetter])).toEqual(["mix/thiosulfate-last caution"]);
  });

  test("packets before fertilizers and solvents", () => {
    const packet: MixProduct = { id: "p", formulation: "water-soluble packet" };
    const feed: MixProduct = { id: "f", formulation: "liquid fertilizer" };
    const solvent: MixProduct = { id: "s", formulation: "EC", contains: ["organic solvent"] };
    expect(codes([packet, feed])).toEqual(["mix/film-hindered caution"]);
    expect(codes([feed, packet])).toEqual(["mix/film-hindered warning"]);
    expect(codes([solvent, packet])).toEqual(["mix/film-hindered warning"]);
    expect(codes([packet, { id: "x", formulation: "SC" }])).toEqual([]);
  });

  test("groups by country, unless a label names the partner", () => {
    const one: MixProduct = { id: "one", formulation: "WG", groups: ["ALS"] };
    const two: MixProduct = { id: "two", formulation: "SL", groups: ["ALS"] };
    expect(codes([one, two])).toEqual([]);
    expect(incompatibilities({ products: [one, two] }).notChecked.join()).toContain("none is named");
    expect(codes([one, two], { country: "UK" })).toEqual(["mix/two-of-a-group warning"]);
    expect(codes([one, { ...two, labelNames: ["one"] }], { country: "UK" })).toEqual([]);
    expect(codes([one, { ...two, groups: ["anticholinesterase"] }], { country: "UK" })).toEqual([]);
  });

  test("a country's rules are not checked for the products whose groups are not stated, which are named", () => {
    const stated: MixProduct = { id: "one", formulation: "WG", groups: ["ALS"] };
    const bare: MixProduct = { id: "two", name: "Two", formulation: "SL" };
    const groupLines = (products: readonly MixProduct[], country?: "UK") =>
      incompatibilities({ products, ...(country && { country }) }).notChecked.filter((line) =>
        line.includes("groups of active ingredients"),
      );
    expect(groupLines([stated, bare], "UK")).toEqual([
      'rules on groups of active ingredients, for Two: "groups" is not stated',
    ]);
    expect(groupLines([stated, { ...bare, groups: [] }], "UK")).toEqual([]);
    expect(groupLines([stated, bare])).toEqual([
      "rules of a country on groups of active ingredients: none is named",
    ]);
  });

  test("what a label refuses, by product and by group", () => {
    const one: MixProduct = { id: "one", formulation: "WG", labelProhibits: ["two", "copper"] };
    expect(codes([one, { id: "two", formulation: "SL" }])).toEqual(["mix/label-prohibits warning"]);
    expect(codes([{ id: "c", formulation: "SC", groups: ["copper"] }, one])).toEqual([
      "mix/label-prohibits warning",
    ]);
    expect(codes([one, { id: "three", formulation: "SL" }])).toEqual([]);
  });

  test("more than three partners; adjuvants and conditioners are none", () => {
    const list: MixProduct[] = ["a", "b", "c"].map((id) => ({ id, formulation: "SC" }));
    const helper: MixProduct = { id: "w", formulation: "surfactant" };
    expect(codes([...list, helper])).toEqual([]);
    expect(codes([...list, helper, { id: "d", formulation: "SL" }])).toEqual(["mix/many-partners caution"]);
  });

  test("notes are no objection, and the answer never says that products mix", () => {
    const notes = incompatibilities({
      products: [
        { id: "agent", formulation: "compatibility agent" },
        { id: "micro", formulation: "micronutrient" },
      ],
    });
    expect(notes.findings.map(({ severity }) => severity)).toEqual(["note", "note"]);
    expect(notes.answer).toBe("no published objection known; jar-test it");
    const kinds = Object.keys(formulations) as Formulation[];
    fc.assert(
      fc.property(
        fc.uniqueArray(
          fc.record({
            id: fc.constantFrom("a", "b", "c", "d", "e"),
            formulation: fc.constantFrom(...kinds),
            contains: fc.subarray([...mixIngredients]),
          }),
          { minLength: 1, selector: ({ id }) => id },
        ),
        (products) => {
          const { answer, findings, notChecked } = incompatibilities({ products });
          expect(answer.startsWith("no published objection known") === false).toBe(
            findings.some(({ severity }) => severity !== "note"),
          );
          expect(notChecked.join()).toContain("jar-test");
          for (const { source } of findings) expect(source).toBeDefined();
        },
      ),
    );
  });

  test("what is wrong is named", () => {
    const a: MixProduct = { id: "a", formulation: "SC" };
    const cases: readonly (readonly [object, string, string])[] = [
      [{ contains: ["boron"] }, "type", "products[0].contains[0]"],
      [{ contains: "iron sulfate" }, "type", "products[0].contains"],
      [{ groups: [1] }, "type", "products[0].groups[0]"],
      [{ labelNote: "x".repeat(2001) }, "range", "products[0].labelNote"],
      [{ labelProhibits: "b" }, "type", "products[0].labelProhibits"],
      [{ labelNames: ["b"] }, "missing", "products[0].labelNames[0]"],
    ];
    for (const [change, code, path] of cases) {
      const error = errorOf(() => incompatibilities({ products: [{ ...a, ...change } as never] }));
      expect([error.code, error.path]).toEqual([code, path]);
    }
    expect(errorOf(() => incompatibilities({ products: [a], country: "XX" as never })).path).toBe("country");
    expect(errorOf(() => incompatibilities({ products: [] })).path).toBe("products");
  });
});
