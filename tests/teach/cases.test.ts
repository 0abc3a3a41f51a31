import { describe, expect, it } from "vitest";
import { teachCases } from "./cases.js";

describe("cases worked by hand", () => {
  it.each(teachCases)("$name", ({ faults }) => expect(faults()).toEqual([]));
});
