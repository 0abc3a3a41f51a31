import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arranged, type Placed } from "../../../src/tank/order/arranged.js";
import { errorOf } from "../../errors.js";
import { runs } from "../../properties.js";

// Where a product goes in by its place and by what labels say, apart from kinds and steps.

const at = (id: string, place: number, says: Partial<Pick<Placed, "before" | "after">> = {}): Placed => ({
  id,
  place,
  before: [],
  after: [],
  ...says,
});

const permutations = <T>(list: readonly T[]): readonly (readonly T[])[] =>
  list.length < 2
    ? [list]
    : list.flatMap((first) =>
        permutations(list.filter((one) => one !== first)).map((rest) => [first, ...rest]),
      );

const cases: readonly (readonly [why: string, products: readonly Placed[], order: string])[] = [
  ["by place, and of one place by id", [at("b", 0), at("a", 1), at("c", 1)], "bac"],
  // b belongs to the end, and its label puts it before a: it goes in right ahead of a, not first of all.
  ["right ahead of what its label names", [at("a", 0), at("b", 2, { before: ["a"] }), at("c", 0)], "bac"],
  ["ahead of what stands behind it anyway", [at("a", 2), at("b", 1, { before: ["c"] }), at("c", 4)], "bac"],
  ["right behind what its label names", [at("a", 1), at("b", 1), at("c", 0, { after: ["b"] })], "abc"],
  ["behind, with all between in between", [at("a", 4), at("b", 4), at("c", 3, { after: ["a"] })], "acb"],
  // Both labels say that c goes in before a: a waits for it, and b, of which no label speaks, does not.
  [
    "where both labels say the same the early one waits",
    [at("a", 0, { after: ["c"] }), at("b", 0), at("c", 4, { before: ["a"] })],
    "bca",
  ],
  [
    "and does so in front of what stands between",
    [at("a", 1, { before: ["b"] }), at("b", 0, { after: ["a"] }), at("c", 0)],
    "cab",
  ],
  // a and b are to be in before c, and b after a: all three stay together, ahead of d and e of the place of c.
  [
    "two that are put ahead of one go in with it",
    [
      at("a", 4, { before: ["c"] }),
      at("b", 1, { before: ["c"], after: ["a"] }),
      at("c", 3),
      at("d", 3),
      at("e", 3),
    ],
    "abcde",
  ],
];

describe("an order by places and labels", () => {
  test.each(cases)("%s", (_, products, order) => {
    for (const given of permutations(products)) expect(arranged(given).join("")).toBe(order);
  });

  test("a circle is named from the first id on, the shortest one, and of these the first by id", () => {
    const circle = (...products: readonly Placed[]): readonly string[] =>
      permutations(products).map((given) => errorOf(() => arranged(given)).got);
    const told = (...words: readonly string[]): readonly string[] =>
      words.map((word) => `instructions that go around in a circle: ${word}`);
    const found = circle(
      at("a", 0, { before: ["c", "b"] }),
      at("b", 0, { before: ["a"] }),
      at("c", 0, { before: ["a"] }),
    );
    expect([...new Set(found)]).toEqual(told("a before b before a"));
  });

  test("one label moves one product, and leaves the rest as they were", () => {
    const ids = fc.uniqueArray(fc.constantFrom("a", "b", "c", "d", "e", "f"), { minLength: 2 });
    const list = ids.chain((names) =>
      fc.tuple(
        ...names.map((id) => fc.record({ id: fc.constant(id), place: fc.integer({ min: 0, max: 4 }) })),
      ),
    );
    fc.assert(
      fc.property(list, fc.boolean(), (places, ahead) => {
        const products = places.map(({ id, place }) => at(id, place));
        const [speaker, named] = products as [Placed, Placed];
        const silent = arranged(products);
        const told = arranged([
          { ...speaker, [ahead ? "before" : "after"]: [named.id] },
          ...products.slice(1),
        ]);
        const kept = silent.indexOf(speaker.id) < silent.indexOf(named.id) === ahead;
        const rest = silent.filter((id) => id !== speaker.id);
        const to = rest.indexOf(named.id) + (ahead ? 0 : 1);
        expect(told).toEqual(kept ? silent : [...rest.slice(0, to), speaker.id, ...rest.slice(to)]);
      }),
      runs(200),
    );
  });
});
