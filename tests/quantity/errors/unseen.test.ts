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

  it("are the first and the last of each run, and not what stands beside it", () => {
    const has = (points: string): readonly boolean[] =>
      points.split(" ").map((point) => unseen.test(String.fromCodePoint(Number.parseInt(point, 16))));
    const marks =
      "0 1f 7f 9f ad 600 605 61c 6dd 70f 890 891 8e2 180e 200b 200f 202a 202e 2060 2064 2066 206f feff fff9 fffb " +
      "110bd 110cd 13430 1343f 1bca0 1bca3 1d173 1d17a e0001 e0020 e007f";
    const letters =
      "20 7e a0 ac ae 5ff 606 61b 6dc 70e 88f 892 8e1 180f 200a 2010 2029 202f 205f 2065 2070 fefe fff8 fffc " +
      "110bc 110ce 1342f 13440 1bc9f 1bca4 1d172 1d17b e0000 e001f e0080";
    expect(has(marks)).not.toContain(false);
    expect(has(letters)).not.toContain(true);
  });

  it("are found within a text, and half of a pair is none", () => {
    expect(unseen.test("meadow\u200b")).toBe(true);
    expect(unseen.test("a\u{e0020}b")).toBe(true);
    expect(unseen.test("a\udb40b")).toBe(false);
    expect(unseen.test("Gr\u00fcnfl\u00e4che 12\u00a0m")).toBe(false);
    expect("a\u{1d173}\u0007b".split(unseen).join("")).toBe("ab");
  });
});
