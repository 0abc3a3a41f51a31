import { describe, expect, test } from "vitest";
import {
  type Formulation,
  type LoadingOrderInput,
  loadingOrder,
  type MixProduct,
} from "../../../src/tank/index.js";

// What decides where a product goes in, and what is told of it, pair by pair.

const mix = (...kinds: readonly Formulation[]): MixProduct[] =>
  kinds.map((formulation) => ({ id: formulation, formulation }));
const named = (...list: readonly (readonly [id: string, formulation: Formulation])[]): MixProduct[] =>
  list.map(([id, formulation]) => ({ id, formulation }));
const chosen = (mixingOrder: string): Partial<LoadingOrderInput> =>
  ({ mixingOrder }) as Partial<LoadingOrderInput>;
const michigan = "Michigan State University Extension";

describe("where a kind goes that the order which is followed does not name", () => {
  test("ahead of every named one where the consensus puts nothing before it", () => {
    expect(
      loadingOrder({ products: mix("conditioner", "WP", "defoamer"), ...chosen("missouri-dot") }).order,
    ).toEqual(["defoamer", "conditioner", "WP"]);
  });

  test("and what put it there is not that order", () => {
    // Six orders print WP before CS, and none the other way; Missouri names no CS.
    const { firm } = loadingOrder({ products: mix("WP", "CS"), ...chosen("missouri-dot") });
    expect(firm.map(({ first, second, resolvedBy }) => [first, second, resolvedBy])).toEqual([
      ["WP", "CS", "majority"],
    ]);
  });

  test("two of a kind stand by their ids, and no label is said to have put them so", () => {
    const { unsaid, order } = loadingOrder({ products: named(["b", "SC"], ["a", "SC"]) });
    expect(order).toEqual(["a", "b"]);
    expect(unsaid.map(({ resolvedBy }) => resolvedBy)).toEqual(["id"]);
  });
});

describe("two labels that say the same", () => {
  test("make the early one wait: what no label speaks of goes in before", () => {
    const products: MixProduct[] = [
      { id: "a", formulation: "WP", addAfter: ["c"] },
      { id: "b", formulation: "WP" },
      { id: "c", formulation: "EC", addBefore: ["a"] },
    ];
    const { order, firm, unsaid } = loadingOrder({ products });
    expect(order).toEqual(["b", "c", "a"]);
    const by = Object.fromEntries(
      [...firm, ...unsaid].map(({ first, second, resolvedBy }) => [first + second, resolvedBy]),
    );
    expect(by).toEqual({ bc: "majority", ba: "id", ca: "label" });
  });

  test("through a third product put the first before the last, and no label speaks of the pairs beside", () => {
    const products: MixProduct[] = [
      { id: "a", formulation: "SC", addBefore: ["b"] },
      { id: "b", formulation: "SC" },
      { id: "c", formulation: "SC", addAfter: ["b"] },
      { id: "d", formulation: "SC" },
    ];
    const { order, unsaid } = loadingOrder({ products });
    expect(order).toEqual(["a", "b", "c", "d"]);
    const by = Object.fromEntries(
      unsaid.map(({ first, second, resolvedBy }) => [first + second, resolvedBy]),
    );
    expect(by).toEqual({ ab: "label", ac: "label", bc: "label", ad: "id", bd: "id", cd: "id" });
  });
});

describe("what is found in an order", () => {
  const found = (products: readonly MixProduct[], more: Partial<LoadingOrderInput> = {}) =>
    loadingOrder({ products, ...more }).findings;
  const codes = (products: readonly MixProduct[]): readonly string[] =>
    found(products).map(({ code }) => code);
  const textOf = (products: readonly MixProduct[], code: string, more: Partial<LoadingOrderInput> = {}) =>
    found(products, more)
      .filter((one) => one.code === code)
      .map(({ text }) => text);

  test("a firm pair in its order is no finding", () => {
    expect(codes(mix("WP", "SC"))).toEqual(["jar-test"]);
  });

  test("putty is spoken of for an emulsion before a powder, and for no other liquid", () => {
    const turned = (formulation: Formulation) =>
      codes([
        { id: "liquid", formulation, addBefore: ["powder"] },
        { id: "powder", formulation: "WP" },
      ]);
    expect(turned("EC")).toContain("order/emulsion-before-powder");
    expect(turned("SL")).not.toContain("order/emulsion-before-powder");
  });

  test("an open pair is told with its own names, and without a step that no order has in common", () => {
    // Oklahoma prints the defoamer first, South Dakota and Iowa the conditioner, and no order both in one step.
    expect(textOf(named(["d", "defoamer"], ["c", "conditioner"], ["w", "WP"]), "order/open-pair")[0]).toBe(
      "Sources disagree on d (defoamer) before c (water conditioner (ammonium sulfate, pH adjuster, buffer)) (for: Oklahoma State; against: South Dakota State, Iowa State authors). Here d goes in first: the sequence that keeps the most published rankings has it so, though most sources on these two say the reverse. The labels decide.",
    );
    const three = textOf(named(["a", "WP"], ["b", "EC"], ["c", "SL"]), "order/open-pair");
    expect(three).toEqual([expect.stringMatching(/^Sources disagree on b \(.*Here b goes in first/)]);
  });

  test("a kind that none lists is told with its likes", () => {
    expect(textOf(named(["t", "ST"]), "order/by-analogy")).toEqual([
      "No published order lists a water soluble tablet, as t is; it is placed with similar formulations (SP, SG).",
    ]);
  });

  test("the jar test says whether objections stand beside it, and cites its source", () => {
    const advice =
      "Check every label for tank-mix restrictions, and do the jar test with water from the spray source.";
    const none = "No published objection is known. That does not mean they mix.";
    const some = "See the published objections to this mix or its order.";
    expect(textOf(mix("WP", "SC"), "jar-test")).toEqual([`${none} ${advice}`]);
    // A note about compatibility agents is no objection.
    expect(codes(mix("compatibility agent", "SC"))).toContain("mix/compatibility-agent");
    expect(textOf(mix("compatibility agent", "SC"), "jar-test")).toEqual([`${none} ${advice}`]);
    const turned: MixProduct[] = [
      { id: "oil", formulation: "EC", addBefore: ["powder"] },
      { id: "powder", formulation: "WP" },
    ];
    expect(textOf(turned, "jar-test")).toEqual([`${some} ${advice}`]);
    const source = { title: "Tank mixing spray partners", publisher: michigan };
    expect(found(mix("WP", "SC"))[0]?.source).toEqual({
      ...source,
      where: "physical incompatibility; a jar test shows the physical side only",
    });
    expect(found(turned).find(({ code }) => code === "order/emulsion-before-powder")?.source).toEqual({
      ...source,
      where: "physical incompatibility",
    });
  });
});
