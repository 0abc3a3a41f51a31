import { describe, expect, test } from "vitest";
import type { RatewrightError } from "../../../src/quantity/index.js";
import {
  codeMeanings,
  formulationOf,
  internationalCodes,
  isFormulation,
  labelAbbreviations,
} from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

describe("formulationOf", () => {
  test("the monograph's list has 65 codes, and what is mixed with water reads as itself", () => {
    expect(Object.keys(internationalCodes)).toHaveLength(65);
    for (const code of Object.keys(internationalCodes)) {
      if (isFormulation(code)) expect(formulationOf(code, { scheme: "international" })).toBe(code);
      else expect(errorOf(() => formulationOf(code, { scheme: "international" })).code).toBe("infeasible");
    }
  });

  test.each(["SL", "SC", "ME", "WSP", "WG", "S", "L", "SD", "GL", "P"])(
    "%s is refused with its choices where no scheme is named",
    (code) => {
      const error = errorOf(() => formulationOf(code));
      expect(error.code).toBe("type");
      expect(error.path).toBe("code");
      expect(error.problems[0]?.choices?.length).toBeGreaterThan(1);
    },
  );

  test("the same letters, two meanings", () => {
    expect(formulationOf("ME", { scheme: "international" })).toBe("ME");
    expect(formulationOf("ME", { scheme: "US label" })).toBe("CS");
    expect(formulationOf("SC", { scheme: "international" })).toBe("SC");
    expect(formulationOf("sl", { scheme: "US label" })).toBe("SL");
  });

  test("codes on which US sources disagree stay refused with the scheme", () => {
    for (const code of ["WSP", "S", "L", "LC", "GL"]) {
      expect(errorOf(() => formulationOf(code, { scheme: "US label" })).problems[0]?.choices).toBeDefined();
    }
  });

  test.each([
    ["WDG", "WG"],
    ["DF", "WG"],
    ["F", "SC"],
    ["FL", "SC"],
    ["E", "EC"],
    ["W", "WP"],
    ["W/SL", "SL"],
    ["WP", "WP"],
    ["EC", "EC"],
    ["CS", "CS"],
    ["MSO", "oil adjuvant"],
    ["WG-SB", "water-soluble packet"],
    ["surfactant", "surfactant"],
  ])("%s without a scheme is %s", (code, kind) => {
    expect(formulationOf(code)).toBe(kind);
  });

  test("the lists of the United States, each as printed", () => {
    const lists = Object.entries(labelAbbreviations).map(([id, { meanings }]) => [
      id,
      Object.keys(meanings).length,
    ]);
    expect(lists).toEqual([
      ["New England", 22],
      ["Washington", 12],
      ["study list", 20],
    ]);
    expect(formulationOf("S", { scheme: "Washington" })).toBe("SP");
    expect(formulationOf("W/SL", { scheme: "New England" })).toBe("SL");
    for (const [code, scheme] of [
      ["SL", "New England"],
      ["SC", "New England"],
      ["SC", "Washington"],
      ["WSP", "New England"],
      ["L", "Washington"],
    ] as const) {
      expect(errorOf(() => formulationOf(code, { scheme })).problems[0]?.choices, code).toBeDefined();
    }
    // Every letter of a list is read, one way or the other, by its own scheme.
    for (const [list, scheme] of [
      ["New England", "New England"],
      ["Washington", "Washington"],
      ["study list", "US label"],
    ] as const) {
      for (const code of Object.keys(labelAbbreviations[list].meanings)) {
        const error = ((): RatewrightError | undefined => {
          try {
            formulationOf(code, { scheme });
            return undefined;
          } catch (thrown) {
            return thrown as RatewrightError;
          }
        })();
        expect(error?.expected ?? "", code).not.toContain("a formulation code, such as");
      }
    }
  });

  test("the meanings side by side", () => {
    expect(codeMeanings("sc").map(({ scheme }) => scheme)).toEqual([
      "international",
      "New England",
      "Washington",
    ]);
    expect(codeMeanings("toString")).toEqual([]);
  });

  test("what is not mixed, and what is no code", () => {
    expect(errorOf(() => formulationOf("GR")).code).toBe("infeasible");
    expect(errorOf(() => formulationOf("RTU")).code).toBe("infeasible");
    expect(errorOf(() => formulationOf("QQ")).code).toBe("type");
    expect(errorOf(() => formulationOf("QQ-SB", { scheme: "international" })).code).toBe("type");
    expect(formulationOf("WP SB", { scheme: "international" })).toBe("water-soluble packet");
    expect(errorOf(() => formulationOf("toString")).code).toBe("type");
    expect(errorOf(() => formulationOf(7 as never)).code).toBe("type");
    expect(errorOf(() => formulationOf("WP", { scheme: "UK" as never })).path).toBe("options.scheme");
  });
});
