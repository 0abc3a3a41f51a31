import { describe, expect, test } from "vitest";
import {
  consensusOrder,
  type Formulation,
  loadingOrder,
  type MixProduct,
  mixingOrders,
} from "../../../src/tank/index.js";

// What decides an order, a reason and a caution, each seen from both sides.

const mix = (...kinds: readonly Formulation[]): MixProduct[] =>
  kinds.map((formulation) => ({ id: formulation, formulation }));
const codesOf = (...kinds: readonly Formulation[]): readonly string[] =>
  loadingOrder({ products: mix(...kinds) }).cautions.map(({ code }) => code);

describe("a kind that a mixing order does not name", () => {
  test("Missouri DOT names no capsule suspension: it goes in after SC and WG, before EC and SL", () => {
    // Its list: conditioner, WP, SC, other dry (WG), EC, SL, surfactant. The consensus has CS after SC and before EC.
    const { order } = loadingOrder({
      products: mix("SL", "CS", "EC", "WG", "SC"),
      mixingOrder: "missouri-dot",
    });
    expect(order).toEqual(["SC", "WG", "CS", "EC", "SL"]);
  });

  test("goes in after every named kind that the consensus has before it, in every mixing order", () => {
    let met = 0;
    for (const { id, steps } of mixingOrders) {
      const named = steps.flat();
      const firstOf = (kind: Formulation): number => steps.findIndex((kinds) => kinds.includes(kind));
      for (const kind of consensusOrder) {
        const alone = loadingOrder({ products: mix(kind), mixingOrder: id });
        if (!alone.findings.some(({ code }) => code === "order/not-in-mixing-order")) continue;
        const place = consensusOrder.indexOf(kind);
        const earlier = named.filter((other) => {
          const at = consensusOrder.indexOf(other);
          return at >= 0 && at < place;
        });
        const last = Math.max(-1, ...earlier.map(firstOf));
        for (const other of named.filter((one) => consensusOrder.includes(one))) {
          met += 1;
          const before = firstOf(other) <= last && consensusOrder.indexOf(other) < place;
          if (!before && firstOf(other) <= last) continue; // the mixing order and the consensus pull two ways
          const { order } = loadingOrder({ products: mix(kind, other), mixingOrder: id });
          expect(order, `${id}: ${kind} and ${other}`).toEqual(before ? [other, kind] : [kind, other]);
        }
      }
    }
    expect(met).toBeGreaterThan(100);
  });
});

describe("a product that a label puts ahead of another", () => {
  test("goes in right ahead of it, and not before what holds that one up for a reason of its own", () => {
    // The powder waits for the EC, the EC for the SL, by labels of their own. The surfactant belongs to the end by
    // its kind and asks only to be in before the powder: it goes in after the EC, not first of all.
    const { order } = loadingOrder({
      products: [
        { id: "powder", formulation: "WP", addAfter: ["oil"] },
        { id: "oil", formulation: "EC", addAfter: ["salt"] },
        { id: "salt", formulation: "SL" },
        { id: "wetter", formulation: "surfactant", addBefore: ["powder"] },
      ],
    });
    expect(order).toEqual(["salt", "oil", "wetter", "powder"]);
  });
});

describe("cautions of a mix", () => {
  test("dust is spoken of where something dry is poured, and not for two liquids", () => {
    expect(codesOf("WP", "SL")).toContain("caution/dry-powder");
    expect(codesOf("EC", "SL")).not.toContain("caution/dry-powder");
  });

  test("packets are spoken of where there are packets, and not for a powder", () => {
    expect(codesOf("water-soluble packet", "SL")).toContain("caution/water-soluble-packet");
    expect(codesOf("WP", "SL")).not.toContain("caution/water-soluble-packet");
  });

  test("everything else is said of every mix", () => {
    for (const code of ["caution/label-first", "caution/backflow", "caution/empty-tank", "caution/emergency"])
      for (const kind of ["EC", "WP", "water-soluble packet"] as const) expect(codesOf(kind)).toContain(code);
  });
});

describe("the reason of a place", () => {
  const reasons = (products: readonly MixProduct[]): Readonly<Record<string, string>> =>
    Object.fromEntries(
      loadingOrder({ products }).steps.flatMap(({ action, productId, reason }) =>
        action === "add" && productId !== undefined ? [[productId, reason]] : [],
      ),
    );

  test("is the label for the product whose label speaks, and only for that one", () => {
    const ahead = reasons([
      { id: "ester", formulation: "EC", addBefore: ["powder"] },
      { id: "powder", formulation: "WP" },
    ]);
    expect(ahead.ester).toMatch(/^A label puts it here/);
    expect(ahead.powder).not.toMatch(/label/i);
    const behind = reasons([
      { id: "powder", formulation: "WP", addAfter: ["amine"] },
      { id: "amine", formulation: "SL" },
    ]);
    expect(behind.powder).toMatch(/^A label puts it here/);
    expect(behind.amine).not.toMatch(/label/i);
  });

  test("is no label where none speaks, nor where a list of instructions is empty", () => {
    const silent = reasons([
      { id: "powder", formulation: "WP", addBefore: [], addAfter: [] },
      { id: "amine", formulation: "SL" },
    ]);
    expect(Object.values(silent).join(" ")).not.toMatch(/label puts/i);
  });
});

describe("a country's rules", () => {
  const products = mix("SC", "SL");
  const rules = "rules of the UK on groups of active ingredients";

  test("are listed as checked where the country is stated, and only there", () => {
    expect(loadingOrder({ products, country: "UK" }).checked).toContain(rules);
    expect(loadingOrder({ products }).checked).toHaveLength(3);
    expect(loadingOrder({ products }).checked.join(" ")).not.toMatch(/rules of the/);
  });

  test("are held against the groups that are stated", () => {
    const two = products.map((product) => ({ ...product, groups: ["anticholinesterase"] as const }));
    const codes = (country: "UK" | undefined): readonly string[] =>
      loadingOrder({ products: two, ...(country === undefined ? {} : { country }) }).findings.map(
        ({ code }) => code,
      );
    const extra = codes("UK").filter((code) => !codes(undefined).includes(code));
    expect(extra).toHaveLength(1);
  });
});

describe("what is said to be checked and not checked", () => {
  test("names what is left to the person at the tank", () => {
    const { notChecked, checked } = loadingOrder({ products: mix("WP", "SL") });
    expect(checked.join("; ")).toContain(`${mixingOrders.length} published loading orders`);
    for (const word of ["labels", "reactions", "jar-test"]) expect(notChecked.join("; ")).toContain(word);
    for (const line of [...checked, ...notChecked]) expect(line).not.toBe("");
  });
});
