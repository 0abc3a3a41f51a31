import { describe, expect, test } from "vitest";
import { type Formulation, formulations, loadingOrder, mixingOrders } from "../../../src/tank/index.js";

// Where a kind goes in that no published order names: where the kind of the same physical form does.

describe("kinds that no mixing order names", () => {
  /** As what each is looked up: the kind of the same physical form. */
  const like: readonly (readonly [kind: Formulation, as: Formulation])[] = [
    ["WT", "WG"],
    ["EG", "WG"],
    ["EP", "WP"],
    ["ST", "SP"],
    ["ZC", "CS"],
    ["ZE", "SE"],
    ["ZW", "EW"],
    ["ME", "EW"],
    ["DC", "EC"],
    ["GL", "EC"],
    ["GW", "SL"],
  ];

  const numberIn = (kind: Formulation, mixingOrder: (typeof mixingOrders)[number]["id"]): string => {
    const { steps } = loadingOrder({ products: [{ id: "a", formulation: kind }], mixingOrder });
    return steps.find(({ action }) => action === "add")?.reason ?? "";
  };

  test.each(like)("%s stands where %s stands, in every order that names that", (kind, as) => {
    let named = 0;
    for (const { id, steps } of mixingOrders) {
      const step = steps.findIndex((kinds) => kinds.includes(as));
      if (step < 0) continue;
      named += 1;
      expect(numberIn(kind, id)).toContain(`lists it as number ${step + 1} of ${steps.length}.`);
    }
    expect(named).toBeGreaterThan(0);
  });

  test.each(like)("%s is told to stand there by analogy with %s", (kind, as) => {
    const { findings } = loadingOrder({ products: [{ id: "a", formulation: kind }] });
    const found = findings.find(({ code }) => code === "order/by-analogy");
    expect(found?.text).toContain("it is placed with similar formulations (");
    expect(found?.text).toContain(as);
    expect(found?.params).toMatchObject({ product: "a", formulation: kind });
    expect(found?.params.like).toEqual(expect.arrayContaining([as]));
    expect(found?.source).toBe("common practice, no source");
  });

  test("a soluble granule and a soluble powder stand for one another, and that is no analogy", () => {
    for (const { id, steps } of mixingOrders) {
      const names = (kind: Formulation): boolean => steps.flat().includes(kind);
      if (names("SG") === names("SP")) continue;
      expect(numberIn("SG", id), id).toBe(numberIn("SP", id));
      expect(numberIn("SG", id)).toContain("lists it as number");
    }
    for (const kind of ["SG", "SP"] as const) {
      const { findings } = loadingOrder({ products: [{ id: "a", formulation: kind }] });
      expect(findings.map(({ code }) => code)).not.toContain("order/by-analogy");
    }
  });

  test("every other kind is named by an order, so that nothing is placed by guess", () => {
    const named = new Set<string>(mixingOrders.flatMap(({ steps }) => steps.flat()));
    for (const [kind] of like) expect([kind, named.has(kind)]).toEqual([kind, false]);
    const known = new Set<string>([...named, ...like.map(([kind]) => kind), "SG", "SP"]);
    expect(Object.keys(formulations).filter((kind) => !known.has(kind))).toEqual([]);
  });
});
