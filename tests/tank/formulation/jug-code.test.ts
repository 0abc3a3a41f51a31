import { describe, expect, test } from "vitest";
import { jugCode } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

describe("the code on a jug", () => {
  test.each([
    ["4F", "SC", "4 lb/gal of ai/product"],
    ["2EC", "EC", "2 lb/gal of ai/product"],
    ["3.3 EC", "EC", "3.3 lb/gal of ai/product"],
    ["75WDG", "WG", "75 % w/w of ai/product"],
    ["50wp", "WP", "50 % w/w of ai/product"],
    ["WSB", "water-soluble packet", undefined],
    ["SE", "SE", undefined],
  ] as const)("%s", (code, formulation, content) => {
    const found = jugCode(code);
    expect([found.formulation, found.content?.toString()]).toEqual([formulation, content]);
  });

  test.each([
    ["4L", "type"],
    ["120WP", "range"],
    ["500SC", "range"],
    ["2G", "infeasible"],
    ["", "type"],
    ["75", "type"],
    ["x".repeat(1e6), "type"],
  ] as const)("%s is refused", (code, wanted) => {
    expect(errorOf(() => jugCode(code)).code).toBe(wanted);
  });

  test("a number of g/L is read in an international code, and refused where it could count percent", () => {
    const label = { scheme: "international" } as const;
    expect(jugCode("500SC", label).content?.toString()).toBe("500 g/L of ai/product");
    expect(errorOf(() => jugCode("20SC", label))?.code).toBe("type");
    expect(errorOf(() => jugCode("500SC"))?.message).toContain("international");
  });
});
