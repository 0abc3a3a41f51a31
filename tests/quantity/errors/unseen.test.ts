import { describe, expect, it } from "vitest";
import { unseen } from "../../../src/quantity/errors/unseen.js";

/** What Unicode itself says, in an engine that knows its classes. */
const byUnicode = /[\p{Cc}\p{Cf}]/u;
/** Cf of a later Unicode than the engine's, if any: the standard only adds. */
const version = Number.parseFloat(process.versions.unicode ?? "0");

describe("marks that nobody sees", () => {
  it("are those that Unicode calls control and format, one by one", () => {
    const differing: string[] = [];
    for (let point = 0; point <= 0x10ffff; point++) {
      const text = String.fromCodePoint(point);
      if (unseen.test(text) !== byUnicode.test(text)) differing.push(point.toString(16));
    }
    expect(version).toBeGreaterThanOrEqual(15);
    expect(differing).toEqual([]);
  });

  it("are found within a text, and half of a pair is none", () => {
    expect(unseen.test("meadow\u200b")).toBe(true);
    expect(unseen.test("a\u{e0020}b")).toBe(true);
    expect(unseen.test("a\udb40b")).toBe(false);
    expect(unseen.test("Gr\u00fcnfl\u00e4che 12\u00a0m")).toBe(false);
    expect("a\u{1d173}\u0007b".split(unseen).join("")).toBe("ab");
  });
});
