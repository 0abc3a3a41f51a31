import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Formulation, mixingOrders, mixingOrderTable, pairOrder } from "../../../src/tank/index.js";
import { bestOrders } from "../../../src/tank/published-orders/best-orders.js";
import { runs } from "../../properties.js";

/** Votes counted by hand from the twelve printed orders, apart from the code. */
const counted: readonly (readonly [Formulation, Formulation, number, number])[] = [
  ["water-soluble packet", "WP", 4, 0],
  ["WP", "SC", 9, 0],
  ["SC", "EC", 10, 0],
  ["WG", "SC", 7, 1],
  ["EC", "surfactant", 10, 1],
  ["SL", "surfactant", 9, 0],
  ["conditioner", "WP", 8, 1],
  ["conditioner", "water-soluble packet", 3, 2],
  ["compatibility agent", "WP", 3, 1],
  ["SL", "EC", 5, 6],
  ["SC", "SL", 9, 1],
  ["WP", "SL", 11, 1],
  ["SG", "WP", 4, 1],
  ["SP", "SC", 5, 0],
  ["CS", "EC", 5, 1],
  ["SC", "CS", 2, 0],
  ["EW", "EC", 3, 0],
  ["liquid fertilizer", "EC", 1, 3],
  ["WG", "WP", 1, 2],
];

describe("rankings of the published loading orders", () => {
  test.each(counted)("%s before %s: %i to %i", (first, second, yes, no) => {
    const counts = pairOrder(first, second);
    expect([counts.for.length, counts.against.length]).toEqual([yes, no]);
    const back = pairOrder(second, first);
    expect(back.for).toEqual(counts.against);
    expect(back.against).toEqual(counts.for);
    expect(back.standing).toBe(counts.standing);
  });

  test("names the dissenters", () => {
    expect(pairOrder("CS", "EC").against).toEqual(["south-dakota-state"]);
    expect(pairOrder("EC", "surfactant").against).toEqual(["us-core-manual"]);
    expect(pairOrder("conditioner", "WP").against).toEqual(["iowa-state-2021"]);
    expect(pairOrder("SL", "EC").for).toEqual([
      "manitoba-2013",
      "south-dakota-state",
      "oklahoma-state",
      "us-core-manual",
      "croplife-latin-america-2024",
    ]);
    expect(pairOrder("SL", "EC").same).toEqual(["iowa-state-2021"]);
  });

  test("grades the pairs that the notes on the sources call firm and open", () => {
    const firm: readonly (readonly [Formulation, Formulation])[] = [
      ["water-soluble packet", "WP"],
      ["WP", "SC"],
      ["SC", "EC"],
      ["SG", "SC"],
      ["SL", "surfactant"],
      ["SC", "SL"],
      ["WP", "SL"],
      ["EC", "surfactant"],
      ["conditioner", "WP"],
      ["CS", "EC"],
    ];
    for (const [a, b] of firm) expect(pairOrder(a, b).standing, `${a} ${b}`).toBe("firm");
    const open: readonly (readonly [Formulation, Formulation])[] = [
      ["SL", "EC"],
      ["conditioner", "water-soluble packet"],
      ["compatibility agent", "conditioner"],
      ["WG", "WP"],
      ["liquid fertilizer", "EC"],
      ["defoamer", "WP"],
      ["drift agent", "EC"],
    ];
    for (const [a, b] of open) expect(pairOrder(a, b).standing, `${a} ${b}`).toBe("open");
    expect(pairOrder("SC", "CS").standing).toBe("unopposed");
    expect(pairOrder("SC", "SC").standing).toBe("unsaid");
  });

  test("refuses a kind that does not exist", () => {
    expect(() => pairOrder("XY" as "WP", "EC")).toThrow("first: expected a kind of formulation");
  });

  test("the table of votes: 422 of 448 are kept, and no order keeps more", () => {
    const table = mixingOrderTable();
    // Counted once by hand from the twelve printed orders, and again here by another way: over the mixing orders.
    let total = 0;
    let kept = 0;
    for (const mixingOrder of mixingOrders) {
      const places = new Map<string, number>();
      mixingOrder.steps.forEach((step, i) => {
        for (const kind of step) places.set(kind === "SP" ? "SG" : kind, i);
      });
      for (const [i, a] of table.order.entries()) {
        for (const b of table.order.slice(i + 1)) {
          const [x, y] = [places.get(a), places.get(b)];
          if (x === undefined || y === undefined || x === y) continue;
          total += 1;
          if (x < y) kept += 1;
        }
      }
    }
    expect([kept, total]).toEqual([422, 448]);
    expect([table.kept, table.best, table.total]).toEqual([422, 422, 448]);
    expect(table.order).toEqual(
      "conditioner,water-soluble packet,SG,WP,WG,SC,CS,SE,EW,EC,OD,SL,oil adjuvant,surfactant".split(","),
    );
    expect(table.counts[table.kinds.indexOf("EC")]?.[table.kinds.indexOf("SL")]).toBe(6);
  });

  test("the runner-up keeps one vote less, and is no order of the best score", () => {
    const { runnerUp, counts, kinds, best } = mixingOrderTable();
    const at = (a: Formulation, b: Formulation): number => counts[kinds.indexOf(a)]?.[kinds.indexOf(b)] ?? 0;
    let kept = 0;
    runnerUp.order.forEach((a, i) => {
      for (const b of runnerUp.order.slice(i + 1)) kept += at(a, b);
    });
    expect([...runnerUp.order].sort()).toEqual([...kinds].sort());
    expect([kept, runnerUp.kept, best]).toEqual([421, 421, 422]);
  });

  test("the search agrees with trying every order of small tables", () => {
    const orders = (list: readonly number[]): number[][] =>
      list.length === 0
        ? [[]]
        : list.flatMap((first) => orders(list.filter((x) => x !== first)).map((rest) => [first, ...rest]));
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.nat({ max: 4 }), { minLength: 5, maxLength: 5 }), {
          minLength: 5,
          maxLength: 5,
        }),
        (counts) => {
          const scores = orders([0, 1, 2, 3, 4]).map((order) =>
            order.reduce(
              (sum, a, i) => sum + order.slice(i + 1).reduce((more, b) => more + (counts[a]?.[b] ?? 0), 0),
              0,
            ),
          );
          const best = Math.max(...scores);
          const next = Math.max(...scores.filter((score) => score < best), -1);
          const found = bestOrders(counts);
          expect(found.best).toBe(best);
          expect(found.count).toBe(scores.filter((score) => score === best).length);
          expect(found.next?.kept ?? -1).toBe(next);
        },
      ),
      runs(40),
    );
  });

  test("twelve mixingOrders, each with a source, no kind twice in one", () => {
    expect(mixingOrders).toHaveLength(12);
    for (const mixingOrder of mixingOrders) {
      expect(mixingOrder.source.publisher).not.toBe("");
      const kinds = mixingOrder.steps.flat();
      expect(new Set(kinds).size, mixingOrder.id).toBe(kinds.length);
    }
    expect(new Set(mixingOrders.map(({ id }) => id)).size).toBe(12);
  });
});
