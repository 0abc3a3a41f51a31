import { describe, expect, test } from "vitest";
import { nearWord } from "../../../src/quantity/errors/near-name.js";

describe("the word that another most likely means", () => {
  test.each<readonly [written: string, known: readonly string[], near: string | undefined]>([
    // the same but for capitals and blanks, however short
    ["Dry", ["dry", "wet"], "dry"],
    [" spread ", ["spread", "spray"], "spread"],
    // another form of it, with four letters or more in common
    ["spreading", ["spread", "tank"], "spread"],
    ["seeding", ["seed", "sod"], "seed"],
    ["sodding", ["seed", "sod"], undefined],
    ["broad", ["broadcast", "band"], "broadcast"],
    ["gran", ["granular", "liquid"], "granular"],
    ["gra", ["granular", "liquid"], undefined],
    ["cast", ["broadcast", "band"], undefined],
    // a whole word of it, however short, and what people say for it
    ["us", ["US customary", "metric"], "US customary"],
    ["herbicide", ["pre-emergent herbicide", "post-emergent herbicide"], undefined],
    ["regulator", ["growth regulator", "other"], "growth regulator"],
    ["PGR", ["growth regulator", "other"], "growth regulator"],
    ["granular", ["dry", "liquid"], "dry"],
    ["broadcast", ["spread", "spray"], "spread"],
    // two that would do are neither
    ["spre", ["spread", "spreader"], undefined],
    // a slip of the pen; the nearer of two
    ["bnad", ["band", "spot"], "band"],
    ["ban", ["bin", "spot"], undefined],
    ["meadw", ["meadow", "medal"], "meadow"],
    ["meadw", ["medal", "meadow"], "meadow"],
    ["MEADW", ["Medal", "Meadow"], "Meadow"],
    ["sprang", ["spring", "sprung"], undefined],
    ["nothing", ["band", "spot"], undefined],
    ["a".repeat(64), ["a".repeat(63)], "a".repeat(63)],
    ["a".repeat(65), ["a".repeat(64)], undefined],
  ])("%s of %j is %s", (written, known, near) => {
    expect(nearWord(written, known)).toBe(near);
  });
});
