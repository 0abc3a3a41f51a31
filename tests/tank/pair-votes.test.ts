import { describe, expect, test } from "vitest";
import { consensusOrder, type Formulation, ladders, pairVotes } from "../../src/tank/index.js";

/** Votes counted by hand from the twelve printed orders, apart from the code. */
const counted: readonly (readonly [Formulation, Formulation, number, number])[] = [
  ["packet", "WP", 4, 0],
  ["WP", "SC", 9, 0],
  ["SC", "EC", 10, 0],
  ["WG", "SC", 7, 1],
  ["EC", "surfactant", 10, 1],
  ["SL", "surfactant", 9, 0],
  ["conditioner", "WP", 8, 1],
  ["conditioner", "packet", 3, 2],
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

describe("votes of the published loading orders", () => {
  test.each(counted)("%s before %s: %i to %i", (first, second, yes, no) => {
    const votes = pairVotes(first, second);
    expect([votes.for.length, votes.against.length]).toEqual([yes, no]);
    const back = pairVotes(second, first);
    expect(back.for).toEqual(votes.against);
    expect(back.against).toEqual(votes.for);
    expect(back.standing).toBe(votes.standing);
  });

  test("names the dissenters", () => {
    expect(pairVotes("CS", "EC").against).toEqual(["south-dakota-state"]);
    expect(pairVotes("EC", "surfactant").against).toEqual(["us-core-manual"]);
    expect(pairVotes("conditioner", "WP").against).toEqual(["iowa-state-2021"]);
    expect(pairVotes("SL", "EC").for).toEqual([
      "manitoba-2013",
      "south-dakota-state",
      "oklahoma-state",
      "us-core-manual",
      "croplife-latin-america-2024",
    ]);
    expect(pairVotes("SL", "EC").same).toEqual(["iowa-state-2021"]);
  });

  test("grades the pairs that the notes on the sources call firm and open", () => {
    const firm: readonly (readonly [Formulation, Formulation])[] = [
      ["packet", "WP"],
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
    for (const [a, b] of firm) expect(pairVotes(a, b).standing, `${a} ${b}`).toBe("firm");
    const open: readonly (readonly [Formulation, Formulation])[] = [
      ["SL", "EC"],
      ["conditioner", "packet"],
      ["compatibility agent", "conditioner"],
      ["WG", "WP"],
      ["liquid fertilizer", "EC"],
      ["defoamer", "WP"],
      ["drift agent", "EC"],
    ];
    for (const [a, b] of open) expect(pairVotes(a, b).standing, `${a} ${b}`).toBe("open");
    expect(pairVotes("SC", "CS").standing).toBe("unopposed");
    expect(pairVotes("SC", "SC").standing).toBe("unsaid");
  });

  test("refuses a kind that does not exist", () => {
    expect(() => pairVotes("XY" as "WP", "EC")).toThrow("first: expected a kind of formulation");
  });

  test("the consensus order keeps as many votes as any order of fourteen kinds can", () => {
    const kinds: readonly Formulation[] = [
      "conditioner",
      "packet",
      "SG",
      "WP",
      "WG",
      "SC",
      "CS",
      "SE",
      "EW",
      "EC",
      "OD",
      "SL",
      "oil adjuvant",
      "surfactant",
    ];
    const votes = kinds.map((a) => kinds.map((b) => pairVotes(a, b).for.length));
    const at = (i: number, j: number): number => votes[i]?.[j] ?? 0;
    // most[m]: the most votes that an order of the set m can keep, over all sets: an exact search.
    const most = new Int32Array(2 ** kinds.length);
    for (let set = 1; set < most.length; set++) {
      let best = -1;
      for (let last = 0; last < kinds.length; last++) {
        if (!(set & (1 << last))) continue;
        const rest = set & ~(1 << last);
        let kept = most[rest] as number;
        for (let i = 0; i < kinds.length; i++) if (rest & (1 << i)) kept += at(i, last);
        best = Math.max(best, kept);
      }
      most[set] = best;
    }
    const order = consensusOrder.filter((kind) => kinds.includes(kind)).map((kind) => kinds.indexOf(kind));
    expect(order).toHaveLength(kinds.length);
    let kept = 0;
    order.forEach((a, i) => {
      for (const b of order.slice(i + 1)) kept += at(a, b);
    });
    expect(kept).toBe(most[most.length - 1]);
    // The other order of SL and EC keeps one vote less than this one, of the eleven cast.
    expect(at(kinds.indexOf("EC"), kinds.indexOf("SL"))).toBe(6);
  });

  test("twelve ladders, each with a source, no kind twice in one", () => {
    expect(ladders).toHaveLength(12);
    for (const ladder of ladders) {
      expect(ladder.source.publisher).not.toBe("");
      const kinds = ladder.steps.flat();
      expect(new Set(kinds).size, ladder.id).toBe(kinds.length);
    }
    expect(new Set(ladders.map(({ id }) => id)).size).toBe(12);
  });
});
