import { describe, expect, test } from "vitest";
import { checkLimits, floridaLimits, type Limit, ledger, limit, type Proposal } from "../../src/index.js";
import { complaints } from "../errors.js";

const source = "label (invented)";
const pounds = (value: number, of: string) => ({ value, unit: "lb/acre", of });
const check = (
  limits: readonly Limit[],
  proposal: Omit<Proposal, "date">,
  entries: Parameters<typeof ledger>[0] = [],
) => checkLimits({ ledger: ledger(entries), limits, proposal: { date: "2026-06-08", ...proposal } });

describe("what an entry names in words alone", () => {
  const named = {
    id: "a",
    date: "2026-04-04",
    product: "feed-and-herbicide",
    analysis: "24-0-11",
    activeIngredient: "Prodiamine 0.38%",
    area: { value: 1000, unit: "ft2" },
    amount: { value: 4, unit: "lb" },
  } as const;
  const count = (of: string): Limit => ({ kind: "count", of, atMost: 1, per: "calendar year", source });

  test("counts for that ingredient, and for no other and no nutrient", () => {
    const names = ["ai:prodiamine", "ae:prodiamine", "ai:dithiopyr", "P2O5", "N"];
    const { uses } = check(names.map(count), { supplies: [pounds(1, "K2O")] }, [named]);
    expect(uses.map(({ before }) => before.value)).toEqual([1, 1, 0, 0, 1]);
  });
});

describe("a limit on a product", () => {
  const rate = { value: 2, unit: "lb/1000 ft2", of: "product" };
  const rule: Limit = { kind: "interval", of: "product:a", atLeastDays: 21, source };
  const of = (before: object) =>
    check([rule], { product: "a", form: "dry", rate }, [{ id: "x", date: "2026-05-22", ...before } as never])
      .tests[0];

  test("finds an application of it, and none where another product is named", () => {
    // 22 May and 21 days is 12 June.
    expect(of({ product: "a", form: "dry", rate })).toMatchObject({
      violated: true,
      earliestByStatedLimit: "2026-06-12",
    });
    expect(of({ product: "b", form: "dry", rate })).toMatchObject({
      violated: false,
      earliestByStatedLimit: "2026-06-08",
    });
    expect(of({ note: "something went down" })?.violated).toBeNull();
  });
});

describe("the first day within a limit", () => {
  test("is the day itself where the limit is kept on it", () => {
    const yearly: Limit = { amount: pounds(3, "N"), per: "calendar year", source };
    const { uses, earliestByStatedRules } = check([yearly], { supplies: [pounds(1, "N")] }, [
      { id: "a", date: "2026-03-01", supplies: [pounds(1, "N")] },
    ]);
    expect([uses[0]?.earliestByStatedLimit, earliestByStatedRules]).toEqual(["2026-06-08", "2026-06-08"]);
  });
});

describe("a rotation", () => {
  const once = {
    kind: "rotation",
    group: "FRAC 11",
    of: ["ai:azoxystrobin"],
    atMostInARow: 1,
    source,
  } as const;
  const strobilurin = { supplies: [pounds(0.3, "ai:azoxystrobin")] };
  const beside = (...rows: readonly object[]) =>
    check(
      [once],
      strobilurin,
      rows.map((row, i) => ({ id: `e${i}`, date: "2026-05-15", ...row }) as never),
    ).tests[0]?.violated;

  test("a day that holds the group holds it whatever else went down, in either order", () => {
    expect([beside(strobilurin, {}), beside({}, strobilurin), beside({})]).toEqual([true, true, null]);
  });
});

describe("ground", () => {
  const frozen: Limit = { kind: "ground", of: "any", not: ["frozen", "saturated"], source };
  const found = (ground: NonNullable<Proposal["facts"]>["ground"]) =>
    check([frozen], { supplies: [pounds(1, "N")], facts: { ground: ground ?? [] } }).tests[0]?.found;

  test("says which of the states was found", () => {
    expect([found(["saturated"]), found(["saturated", "frozen"]), found([])]).toEqual([
      "saturated",
      "saturated, frozen",
      "none of these",
    ]);
  });
});

describe("the floor of a buffer", () => {
  const rule = (floor: number, buffer: object = { atLeast: { value: 50, unit: "ft" } }) =>
    limit({
      kind: "buffer",
      of: "any",
      from: "water",
      ...buffer,
      floor: { value: floor, unit: "ft" },
      source,
    } as never);

  test("is the buffer at most", () => {
    expect(complaints(() => rule(50))).toEqual([]);
    expect(complaints(() => rule(51))).toEqual(["range limit.floor"]);
    // Without a buffer there is nothing to hold the floor against.
    expect(complaints(() => rule(51, {})).map((one) => one.split(" ")[1])).toEqual(["limit.atLeast"]);
  });
});

describe("Florida's rule for home lawns", () => {
  test("says nothing of another place", () => {
    const { uses, tests } = check(floridaLimits.limits, {
      supplies: [pounds(400, "N"), pounds(90, "P2O5")],
      facts: { place: "park" },
    });
    expect([uses, tests]).toEqual([[], []]);
  });
});

describe("a proposal that states nothing", () => {
  test("is told", () => {
    expect(check([], { productName: "unknown" }).notChecked.join("\n")).toMatch(
      /states no analysis, contents or supplies/,
    );
    expect(check([], { supplies: [pounds(1, "N")] }).notChecked.join("\n")).not.toMatch(/states no analysis/);
  });
});
