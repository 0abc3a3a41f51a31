import { describe, expect, it } from "vitest";
import { expectName } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const what = "the name of a part";

describe("a name by which something is found again", () => {
  it.each(["meadow", "bowling green", "pitch 1 (north)", "Übungsplatz", "près de l'étang", "7"])(
    "is taken as it stands: %s",
    (name) => {
      expect(expectName(name.normalize("NFC"), "part", what)).toBe(name.normalize("NFC"));
    },
  );

  it.each([
    ["meadow ", "meadow"],
    [" meadow", "meadow"],
    ["bowling  green", "bowling green"],
    ["bowling\u00a0green", "bowling green"],
    ["bowling\ngreen", "bowling green"],
    ["mea\u200bdow", "meadow"],
    ["pr\u0065\u0300s", "pr\u00e8s"],
  ])("is refused where another text reads the same: %j", (name, plain) => {
    expect(problemsOf(() => expectName(name, "part", what))).toMatchObject([
      { code: "type", path: "part", suggestion: plain },
    ]);
    expect(expectName(plain, "part", what)).toBe(plain);
  });

  it.each([
    ["", "missing"],
    ["  ", "missing"],
    [3, "type"],
    [undefined, "missing"],
    ["\u200b", "type"],
  ])("is a text with something in it: %j", (name, code) => {
    expect(problemsOf(() => expectName(name, "part", what))).toMatchObject([{ code, path: "part" }]);
  });
});
