import { describe, expect, test } from "vitest";
import {
  naturalOrganic,
  polymerCoatedOnSurface,
  programFindings,
  quickRelease,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

// What a field trial is told to say of programs of coated urea.

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");

describe("findings about programs of coated urea", () => {
  const portion = (pounds: number, model: unknown) => ({ name: "N", nitrogen: n(pounds), model });
  const program = (name: unknown, pounds: readonly number[], ...models: readonly unknown[]) => ({
    ...(name === undefined ? {} : { name }),
    applications: pounds.map((each) => ({ portions: models.map((model) => portion(each, model)) })),
  });
  const found = (...programs: readonly unknown[]) => programFindings(programs as never);
  const source = {
    title: "Polymer coated urea in Kentucky bluegrass",
    publisher: "Brigham Young University (Buss, thesis)",
    year: 2016,
    where: "abstract",
    url: "https://scholarsarchive.byu.edu/etd/5669/",
  };

  test("say what was found, of which program, and where it is printed", () => {
    const note = { severity: "note", path: "programs[1]", source };
    const urea = program("urea", [1, 1, 1, 1], quickRelease);
    expect(found(urea, program("once", [2], polymerCoatedOnSurface))).toEqual([
      {
        ...note,
        code: "program/coated-once",
        params: { program: "once" },
        text: "Coated urea once a year gave a flush and then lost color in the one field comparison read.",
      },
      {
        ...note,
        code: "program/coated-short",
        params: { program: "once", share: 0.5 },
        text: "Coated urea matched monthly urea with three quarters of its nitrogen in the one field comparison read; with half it fell short. This program has less than three quarters.",
      },
    ]);
    expect(found(urea, program("often", [1, 1, 1, 1], polymerCoatedOnSurface))).toEqual([
      {
        ...note,
        code: "program/coated-often",
        params: { program: "often", applications: 4 },
        text: "Three applications of coated urea were no better than two in the one field comparison read.",
      },
    ]);
  });

  test("measure by the quick program with the most nitrogen, not by one that has slow nitrogen, nor by no program", () => {
    const codes = (...programs: readonly unknown[]) =>
      found(...programs).map(({ code, path }) => `${path} ${code}`);
    const coated = program("coated", [0.8, 0.8], polymerCoatedOnSurface);
    // 1.6 of 2 are 80 %; of 4, or of the 6 of the mixed one, less than three quarters.
    expect(codes(coated, program("urea", [1, 1], quickRelease))).toEqual([]);
    expect(
      codes(
        coated,
        program("urea", [1, 1], quickRelease),
        program("mixed", [1, 1, 1], quickRelease, naturalOrganic),
      ),
    ).toEqual([]);
    expect(codes(coated, program("urea", [2, 2], quickRelease), program("less", [1], quickRelease))).toEqual([
      "programs[0] program/coated-short",
    ]);
    expect(codes(coated)).toEqual([]);
    expect(codes(program("nothing", [0, 0], polymerCoatedOnSurface))).toEqual([]);
  });

  test("name a program that has a name, and no more of it than anybody reads", () => {
    const names = (name: unknown) =>
      found(program(name, [1], polymerCoatedOnSurface)).map(({ params }) => params.program);
    expect(names("x".repeat(300))).toEqual(["x".repeat(200)]);
    expect(names(undefined)).toEqual([""]);
    expect(names(7)).toEqual([""]);
  });

  test("are asked of as many programs as there may be", () => {
    expect(found(...Array(100).fill({ name: "a", applications: [] }))).toEqual([]);
    expect(complaints(() => found(7))).toEqual(["type programs[0]"]);
    expect(complaints(() => found({ name: "a", applications: [7] }))).toEqual([
      "type programs[0].applications[0]",
    ]);
  });
});
