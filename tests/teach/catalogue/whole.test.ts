import { describe, expect, it } from "vitest";
import * as library from "../../../src/index.js";
import { catalogue } from "../../../src/teach/index.js";
import { reasons } from "./reasons.js";

const exported = Object.entries(library)
  .filter(
    ([, value]) =>
      typeof value === "function" && !/^class[\s{]/.test(Function.prototype.toString.call(value)),
  )
  .map(([name]) => name);
const entered = new Set(catalogue().map(({ name }) => name));
const excused = Object.values(reasons).flatMap((names) => names.split(" ").filter((name) => name !== ""));

describe("every exported function", () => {
  it("has an entry in the catalogue, or a reason why not", () => {
    const known = new Set(excused);
    expect(exported.filter((name) => !entered.has(name) && !known.has(name))).toEqual([]);
  });

  it("has a reason only where it needs one, and only one", () => {
    expect(excused.filter((name) => entered.has(name) || !exported.includes(name))).toEqual([]);
    expect(excused.filter((name, n) => excused.indexOf(name) !== n)).toEqual([]);
  });
});
