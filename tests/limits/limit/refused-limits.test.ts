import { describe, expect, test } from "vitest";
import {
  type ApplicationFacts,
  checkLimits,
  floridaLimits,
  type Limit,
  limit,
} from "../../../src/limits/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const source = "label (invented)";
const ft = (value: number) => ({ value, unit: "ft" });
const amount = { amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: "application", source } as const;
const rule = (input: object) => limit({ source, ...input } as never);
const _withFacts = (facts: object) =>
  checkLimits({ proposal: { date: "2026-06-08", facts: facts as ApplicationFacts }, limits: [amount] });

describe("a limit that cannot be read says what it should be", () => {
  test("the whole of it", () => {
    expectRefusals([
      [() => limit(7 as never), "type", "limit", /a limit/],
      [() => limit(null as never), "type", "limit", /a limit/],
      [() => rule({ kind: "amounts" }), "type", "limit.kind", /amount.*count.*interval.*rotation/],
      [() => rule({ ...amount, id: "" }), "missing", "limit.id", /a short name/],
      [() => rule({ ...amount, id: 3 }), "type", "limit.id", /a short name/],
      [() => rule({ ...amount, source: "" }), "missing", "limit.source", /where it is stated, and when/],
      [() => rule({ ...amount, source: { title: "a" } }), "missing", "limit.source.publisher", /a publisher/],
      [() => rule({ ...amount, readOn: "yesterday" }), "date", "limit.readOn", /2026-\d\d-\d\d|YYYY/],
      [() => rule({ ...amount, exemptIf: [] }), "missing", "limit.exemptIf", /condition/],
      [() => rule({ ...amount, exemptIf: {} }), "type", "limit.exemptIf", /condition/],
      [() => rule({ ...amount, scope: 3 }), "type", "limit.scope", /a condition/],
      [() => rule({ ...amount, exemptIf: [3] }), "type", "limit.exemptIf[0]", /a condition/],
      [() => limit(amount, 3 as never), "type", "path", /a path/],
    ]);
    expect(complaints(() => limit({ ...amount, id: "" }, "limits[3]"))).toEqual(["missing limits[3].id"]);
    expect(complaints(() => rule({ ...amount, fuss: 1 }))).toEqual(["type limit.fuss"]);
  });

  test("a list of them", () => {
    const all = (limits: unknown) =>
      checkLimits({ proposal: { date: "2026-06-08" }, limits: limits as readonly Limit[] });
    expectRefusals([
      [() => all(undefined), "missing", "limits", /a list of limits/],
      [() => all("yearly"), "type", "limits", /a list of limits/],
      [() => all([amount, 3]), "type", "limits[1]", /a limit/],
      // a whole set, alone or among limits
      [() => all(floridaLimits), "type", "limits", /those of the set, its field limits/],
      [() => all([amount, floridaLimits]), "type", "limits[1]", /of a whole set, each of its field limits/],
      [() => all(Array.from({ length: 10_001 }, () => amount)), "range", "limits", /10.?000.*limits/],
    ]);
    expect(() => all(Array.from({ length: 20 }, () => amount))).not.toThrow();
  });

  test("its period", () => {
    const per = (input: unknown) => rule({ ...amount, per: input });
    const choices = /"application", "calendar year", a season \{ from, to \}, \{ days \} or \{ months \}/;
    const suggestionOf = (input: string) => problemsOf(() => per(input))[0];
    expectRefusals([
      [() => per(undefined), "missing", "limit.per", choices],
      [() => per("weekly"), "type", "limit.per", choices],
      [() => per(30), "type", "limit.per", choices],
      [() => per({}), "type", "limit.per", choices],
      [() => per({ days: 3, months: 1 }), "type", "limit.per", choices],
      [() => per({ from: "01-01" }), "type", "limit.per", choices],
      [() => per({ from: "01-01", until: "02-01" }), "type", "limit.per", choices],
      [() => per({ days: 0 }), "range", "limit.per.days", /1.*3660/],
      [() => per({ days: 3661 }), "range", "limit.per.days", /3660/],
      [() => per({ days: 1.5 }), "range", "limit.per.days", /1/],
      [() => per({ months: 121 }), "range", "limit.per.months", /120/],
      [() => per({ months: 0 }), "range", "limit.per.months", /1/],
      [() => per({ from: "13-01", to: "02-01" }), "date", "limit.per.from", /./],
      [() => per({ from: "01-01", to: "02-31" }), "date", "limit.per.to", /./],
    ]);
    for (const good of [{ days: 1 }, { days: 3660 }, { months: 1 }, { months: 120 }]) per(good);
    expect(suggestionOf("30 days")?.suggestion).toBe('{ "days": 30 }');
    expect(suggestionOf("day")?.suggestion).toBe('{ "days": 1 }');
    expect(suggestionOf(" 6 Months")?.suggestion).toBe('{ "months": 6 }');
    for (const text of ["year", "1 yr", "annual"])
      expect(suggestionOf(text)?.choices).toEqual(["calendar year", '{ "months": 12 }']);
    expect([suggestionOf("weekly")?.suggestion, suggestionOf("weekly")?.choices]).toEqual([
      undefined,
      undefined,
    ]);
  });

  test("what each kind states", () => {
    const kind = (name: string, more: object) => rule({ kind: name, of: "N", ...more });
    const blackout = (from: unknown, to: unknown) =>
      kind("blackout dates", { of: "any", blackout: { from, to } });
    expectRefusals([
      [() => kind("count", { atMost: -1, per: "calendar year" }), "range", "limit.atMost", /0.*1000/],
      [() => kind("count", { atMost: 1001, per: "calendar year" }), "range", "limit.atMost", /1000/],
      [
        () => kind("count", { atMost: 1, per: "calendar year", of: "x y" }),
        "substance/mismatch",
        "limit.of",
        /./,
      ],
      [() => kind("interval", { atLeastDays: 0 }), "range", "limit.atLeastDays", /1.*3660/],
      [() => kind("interval", { atLeastDays: 3661 }), "range", "limit.atLeastDays", /3660/],
      [() => rule({ kind: "slow share", atLeastPercentOfN: 101 }), "range", "limit.atLeastPercentOfN", /100/],
      [() => rule({ kind: "slow share", atLeastPercentOfN: -1 }), "range", "limit.atLeastPercentOfN", /0/],
      [() => kind("content", { atMostPercent: 101 }), "range", "limit.atMostPercent", /100/],
      [() => blackout("13-01", "02-01"), "date", "limit.blackout.from", /./],
      [() => blackout("01-01", "1 Feb"), "date", "limit.blackout.to", /./],
      [
        () => kind("blackout dates", { of: "any", blackout: 3 }),
        "type",
        "limit.blackout",
        /a part of the year, from and to/,
      ],
      [
        () => kind("blackout dates", { of: [], blackout: { from: "01-01", to: "02-01" } }),
        "missing",
        "limit.of",
        /substance/,
      ],
      [() => kind("setback", { of: ["N", "x y"], atLeast: ft(3) }), "substance/mismatch", "limit.of[1]", /./],
      [() => kind("setback", { of: "any", atLeast: ft(0) }), "range", "limit.atLeast", /0/],
      [() => kind("ground", { of: "any", not: [] }), "missing", "limit.not", /kind of ground/],
      [
        () => kind("ground", { of: "any", not: ["frozen", "wet"] }),
        "type",
        "limit.not[1]",
        /frozen.*snow-covered.*saturated/,
      ],
      [
        () => kind("runoff points", { of: "any", atLeastPoints: 51 }),
        "range",
        "limit.atLeastPoints",
        /0.*50/,
      ],
    ]);
    expect(kind("interval", { atLeastDays: 3660 })).toBeDefined();
    expect(kind("runoff points", { of: "any", atLeastPoints: 50, menu: "US EPA" })).toBeDefined();
  });

  test("a rotation", () => {
    const rotation = (more: object) =>
      rule({ kind: "rotation", group: "FRAC 11", of: ["ai:azoxystrobin"], atMostInARow: 1, ...more });
    expectRefusals([
      [
        () => rotation({ group: "" }),
        "missing",
        "limit.group",
        /a group as the label prints it, such as FRAC 11/,
      ],
      [() => rotation({ of: [] }), "missing", "limit.of", /active ingredient/],
      [
        () => rotation({ of: ["ai:azoxystrobin", "N"] }),
        "substance/mismatch",
        "limit.of[1]",
        /such as ai:azoxystrobin/,
      ],
      [() => rotation({ among: ["N"] }), "substance/mismatch", "limit.among[0]", /an active ingredient/],
      [() => rotation({ atMostInARow: 1001 }), "range", "limit.atMostInARow", /1.*1000/],
      [() => rotation({ atMost: 1 }), "missing", "limit.per", /application/],
      [() => rotation({ atMost: -1, per: "calendar year" }), "range", "limit.atMost", /0/],
    ]);
    expect(
      rule({ kind: "rotation", group: "x", of: ["ae:2,4-D"], atMost: 0, per: "calendar year" }),
    ).toBeDefined();
  });

  test("a buffer and a menu", () => {
    const buffer = (more: object) =>
      rule({ kind: "buffer", of: "any", from: "water", atLeast: ft(50), ...more });
    const reductions = (list: unknown) => buffer({ reductions: list, together: "sum" });
    const menu = (list: unknown) => rule({ kind: "runoff points", of: "any", atLeastPoints: 3, menu: list });
    const many = Array.from({ length: 201 }, (_, n) => ({ measure: `m${n}`, percent: 1 }));
    expectRefusals([
      [() => buffer({ from: undefined }), "missing", "limit.from", /what it is kept from, such as "water"/],
      [() => buffer({ atLeast: undefined }), "missing", "limit.atLeast", /a distance, such as/],
      [() => buffer({ floor: ft(-1) }), "range", "limit.floor", /0/],
      [() => buffer({ floor: ft(51) }), "range", "limit.floor", /50.*the buffer itself/],
      [
        () => buffer({ reductions: [{ measure: "a", percent: 3 }] }),
        "missing",
        "limit.together",
        /sum.*in turn/,
      ],
      [() => reductions([]), "missing", "limit.reductions", /measure/],
      [() => reductions(many), "range", "limit.reductions", /200.*measures/],
      [() => reductions([3]), "type", "limit.reductions[0]", /a measure and its percent/],
      [
        () => reductions([{ measure: "", percent: 1 }]),
        "missing",
        "limit.reductions[0].measure",
        /as the label words it/,
      ],
      [() => reductions([{ measure: "a", percent: -1 }]), "range", "limit.reductions[0].percent", /0.*100/],
      [
        () =>
          reductions([
            { measure: "a", percent: 1 },
            { measure: " A", percent: 1 },
          ]),
        "duplicate",
        "limit.reductions[1].measure",
        /each measure once/,
      ],
      [() => menu("EPA"), "type", "limit.menu", /US EPA/],
      [() => menu([3]), "type", "limit.menu[0]", /a measure and its points/],
      [() => menu([{ measure: "", points: 1 }]), "missing", "limit.menu[0].measure", /as the menu words it/],
      [() => menu([{ measure: "a", points: 51 }]), "range", "limit.menu[0].points", /0.*50/],
    ]);
    expect(
      complaints(() =>
        reductions([
          { measure: "", percent: -1 },
          { measure: "a", percent: 300 },
        ]),
      ),
    ).toEqual(["missing limit.reductions[0].measure", "range limit.reductions[1].percent"]);
    reductions(many.slice(1));
    buffer({ floor: ft(0) });
  });
});

describe("a condition that cannot be read", () => {
  const scope = (input: object) => rule({ ...amount, scope: input });
  const words = (field: string) => (list: unknown) => scope({ [field]: list });

  test.each(["grass", "applicator", "place", "turf", "productKind", "equipment"])(
    "%s is a list of words",
    (field) => {
      expectRefusals([
        [() => words(field)([]), "missing", `limit.scope.${field}`, /word/],
        [() => words(field)("x"), "type", `limit.scope.${field}`, /word/],
        [() => words(field)([3]), "type", `limit.scope.${field}[0]`, /./],
      ]);
    },
  );

  test("its other fields", () => {
    const soilTest = (months: unknown, shortOf: unknown) => scope({ soilTest: { months, shortOf } });
    expectRefusals([
      [() => words("grass")(["bermudagrass", ""]), "missing", "limit.scope.grass[1]", /a word/],
      [
        () => words("turf")(["established", "old"]),
        "type",
        "limit.scope.turf[1]",
        /established.*being established.*repair/,
      ],
      [
        () => words("equipment")(["plow"]),
        "type",
        "limit.scope.equipment[0]",
        /drop spreader.*rotary spreader with deflector.*targeted spray.*broadcast spray/,
      ],
      [
        () => words("productKind")(["slow"]),
        "type",
        "limit.scope.productKind[0]",
        /conventional.*enhanced-efficiency nitrogen.*enhanced-efficiency phosphorus.*organic/,
      ],
      [() => scope({ growingSeasonAtMost: 0 }), "range", "limit.scope.growingSeasonAtMost", /1.*1200/],
      [() => scope({ growingSeasonAtMost: 1.5 }), "range", "limit.scope.growingSeasonAtMost", /1/],
      [() => scope({ soilTest: 3 }), "type", "limit.scope.soilTest", /a soil test/],
      [() => soilTest(0, "P"), "range", "limit.scope.soilTest.months", /1.*1200/],
      [
        () => soilTest(36, "x y"),
        "substance/unknown",
        "limit.scope.soilTest.shortOf",
        /a substance, such as P/,
      ],
      [() => soilTest(36, 3), "substance/unknown", "limit.scope.soilTest.shortOf", /a substance, such as P/],
      [() => scope({ slowShareAtLeast: 101 }), "range", "limit.scope.slowShareAtLeast", /0.*100/],
      [() => scope({ slowShareAtLeast: -1 }), "range", "limit.scope.slowShareAtLeast", /0.*100/],
      [() => scope({ bufferAtLeast: ft(-1) }), "range", "limit.scope.bufferAtLeast", /0/],
      [
        () => scope({ bufferAtLeast: { value: 1, unit: "lb" } }),
        "unit/mismatch",
        "limit.scope.bufferAtLeast",
        /length|ft|m/,
      ],
      [() => scope({ season: 3 }), "type", "limit.scope.season", /a part of the year/],
      [() => scope({ season: { from: "13-01", to: "02-01" } }), "date", "limit.scope.season.from", /./],
      [() => scope({ season: { from: "01-01", to: "02-31" } }), "date", "limit.scope.season.to", /./],
    ]);
    soilTest(1200, "P");
    expect(complaints(() => scope({ gras: ["x"] }))).toEqual(["type limit.scope.gras"]);
  });
});
