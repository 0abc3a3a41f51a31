import { describe, expect, it } from "vitest";
import {
  type ErrorCode,
  perSubstance,
  quantity,
  RatewrightError,
  timesSubstance,
} from "../../src/quantity/index.js";
import { drawn, pages } from "./docs-tables.js";
import { read } from "./sources.js";
// In this file, for both read the comments of all sources, which takes seconds.
import "./doc-comment-rules.js";

describe.each(pages)("%s", (page) => {
  it("shows what the library has: npm run docs:tables draws it", () => {
    const text = read(page);
    expect(text).toMatch(/<!-- table: /);
    expect(text).toBe(drawn(text));
  });
});

describe("docs/units.md", () => {
  it("states the algebra of substances as it is", () => {
    const rows = [
      ...read("docs/units.md").matchAll(/^\| `(\S+)` \| (times|per) \| `(\S+)` \| (?:`(\S+)`|refused) \|$/gm),
    ];
    expect(rows.length).toBe(9);
    for (const [row, a = "", how, b = "", result] of rows) {
      expect((how === "per" ? perSubstance : timesSubstance)(a, b), row).toBe(result);
    }
  });
});

describe("docs/errors.md", () => {
  it("quotes a message as it is", () => {
    let message = "";
    try {
      quantity(1, "lbs" as "lb");
    } catch (error) {
      if (error instanceof RatewrightError) message = error.message;
    }
    expect(message).not.toBe("");
    expect(read("docs/errors.md")).toContain(`\`${message}\``);
  });

  it("explains every error code", () => {
    // The compiler makes sure that the list is whole.
    const codes: Readonly<Record<ErrorCode, true>> = {
      "unit/unknown": true,
      "unit/ambiguous": true,
      "unit/mismatch": true,
      "substance/unknown": true,
      "substance/ambiguous": true,
      "substance/mismatch": true,
      "not-finite": true,
      range: true,
      missing: true,
      type: true,
      infeasible: true,
      date: true,
      text: true,
      duplicate: true,
      conflict: true,
    };
    const explained = [...read("docs/errors.md").matchAll(/^\| `([a-z/-]+)` \|/gm)].map(([, name]) => name);
    expect(explained.sort()).toEqual(Object.keys(codes).sort());
  });
});
