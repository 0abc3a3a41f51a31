// What a job says of its log, its water and its edges that is wrong, and what its writer reads.
import { describe, expect, test } from "vitest";
import { parkJob } from "../helpers.js";
import { check, problemsAt, type Row, withAt } from "./refused.js";

describe("a log, water and edges that are refused", () => {
  test.each<Row>([
    ["missing log[0].rate", "log[0].rate", undefined, "the rate of the product", "nothing"],
    ["missing log[0].product", "log[0].product", undefined, "the product of the rate", "nothing"],
    [
      "conflict log[0]",
      "log[0].nutrients",
      [{ value: 1, unit: "lb/1000 ft2", of: "N" }],
      "only one of them: both would count twice",
      "product and nutrients",
    ],
    [
      "missing log[1]",
      "log[1].nutrients",
      undefined,
      "a product with its rate, nutrients, or a treatment",
      "only a date",
    ],
    ["date log[0].date", "log[0].date", "2015-06-09", "a date up to the visit of 2015-06-08", "2015-06-09"],
    ["type log[0]", "log[0]", 5, "an entry of the log"],
    ["type log[1].note", "log[1].note", 5, "text"],
    ["type log[1].treatment", "log[1].treatment", 5, "the name of a treatment"],
    ["type water", "water", 5, "rain and irrigation after the work"],
    [
      "missing water.events",
      "water.events",
      undefined,
      "a list of rain and irrigation, empty if there is none",
      "nothing",
    ],
    [
      "type water.events",
      "water.events",
      "none",
      "a list of rain and irrigation, empty if there is none",
      '"none"',
    ],
    ["type water.events[0]", "water.events[0]", 5, "an irrigation or a rain"],
    [
      "missing water.until",
      "water.until",
      undefined,
      'a date and time, such as "2026-06-08T15:30-05:00"',
      "nothing",
    ],
    [
      "conflict water.events[0].known",
      "water.events[0].known",
      "planned",
      '"forecast" or "observed": rain is not planned',
      '"planned"',
    ],
    [
      "conflict water.events[0].known",
      "water.events[0].by",
      "irrigation",
      '"planned" or "observed": only rain is forecast',
      '"forecast"',
    ],
    ["range water.events[0].depth", "water.events[0].depth.value", -1, "zero or more"],
    [
      "missing water.events[0].parts[0]",
      "water.events[0].parts",
      ["moon"],
      "the name of a part of the site",
      '"moon"',
    ],
    [
      "range water.events",
      "water.events",
      Array.from({ length: 1001 }, () => parkJob().water?.events[0]),
      expect.stringMatching(/1,?000 events/),
    ],
    [
      "missing facts.edges[0].part",
      "facts",
      { edges: [{ part: "moon", from: "water", away: { value: 3, unit: "ft" } }] },
      "the name of a part of the site",
      '"moon"',
    ],
    [
      "missing facts.edges[0].part",
      "facts",
      { edges: [{ from: "water", away: { value: 3, unit: "ft" }, edges: [0] }] },
      "the part these edges belong to",
      "nothing",
    ],
    [
      "range facts.edges[0].edges[1]",
      "facts",
      { edges: [{ part: "north pitch", from: "water", away: { value: 3, unit: "ft" }, edges: [3, 4] }] },
      expect.stringMatching(/0 to 3/),
    ],
    [
      "conflict facts.edges[0].edges",
      "facts",
      { edges: [{ part: "south pitch", from: "water", away: { value: 3, unit: "ft" }, edges: [0] }] },
      "along: how long the edge is, for a part of this shape",
    ],
  ])("%s", (...row: readonly unknown[]) => check(row as Row));

  test("the log may name a day up to the visit itself, and water may come where there is none of it", () => {
    expect(problemsAt(withAt("log[0].date", "2015-06-08"))).toEqual([]);
    expect(problemsAt(withAt("log", undefined))).toEqual([]);
    expect(problemsAt(withAt("water.events", []))).toEqual([]);
    expect(problemsAt(withAt("water.events[0].depth.value", 0))).toEqual([]);
    const most = Array.from({ length: 1000 }, () => parkJob().water?.events[0]);
    expect(problemsAt(withAt("water.events", most))).toEqual([]);
    expect(problemsAt(withAt("treatments[0].end", "2015-06-08T00:00-07:00"))).toEqual([]);
  });
});
