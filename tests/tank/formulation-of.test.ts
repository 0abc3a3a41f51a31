import { describe, expect, test } from "vitest";
import { RatewrightError } from "../../src/quantity/index.js";
import { formulationOf, internationalCodes, isFormulation } from "../../src/tank/index.js";

const errorOf = (run: () => unknown): RatewrightError => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
};

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
    ["WG-SB", "packet"],
    ["surfactant", "surfactant"],
  ])("%s without a scheme is %s", (code, kind) => {
    expect(formulationOf(code)).toBe(kind);
  });

  test("what is not mixed, and what is no code", () => {
    expect(errorOf(() => formulationOf("GR")).code).toBe("infeasible");
    expect(errorOf(() => formulationOf("RTU")).code).toBe("infeasible");
    expect(errorOf(() => formulationOf("QQ")).code).toBe("type");
    expect(errorOf(() => formulationOf("toString")).code).toBe("type");
    expect(errorOf(() => formulationOf(7 as never)).code).toBe("type");
    expect(errorOf(() => formulationOf("WP", { scheme: "UK" as never })).path).toBe("options.scheme");
  });
});
