import { growthBetweenMowings, leafRemoved, mowAtHeight, quantity } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const inches = (value: number) => quantity(value, "in");
const mowAt = (cut: number): number => mowAtHeight({ cut: inches(cut) }).in("in");
const growth = (cut: number): number => growthBetweenMowings({ cut: inches(cut) }).in("in");

/** Published examples of the one-third rule. */
export const mowingChecks: readonly PublishedCheck[] = [
  {
    entry: "interval-071",
    formulas: ["mowAtHeight"],
    source: {
      title: "How often should I mow my lawn?",
      publisher: "Iowa State University Extension",
      where: "answer",
      url: "https://hortnews.extension.iastate.edu/faq/how-often-should-i-mow-my-lawn",
    },
    reached: "read",
    given: "cut at 3 in",
    answers: [{ of: "in", printed: 4.5, to: 0.1 }],
    compute: () => [mowAt(3)],
  },
  {
    entry: "interval-072",
    formulas: ["growthBetweenMowings", "mowAtHeight"],
    source: {
      title: "The one-third rule (home gardening tips)",
      publisher: "Cornell University",
      where: "second tip",
      url: "http://www.gardening.cornell.edu/homegardening/tidbit_templatef758.html",
    },
    reached: "read",
    given: "cut at 1 1/2 in and at 3 in: growth; and the height to mow at for 1 1/2 in",
    answers: [
      { of: "in", printed: 0.75, to: 0.01 },
      { of: "in", printed: 1.5, to: 0.1 },
      { of: "in, printed as just over 2", printed: 2, to: 1, printing: "cut" },
    ],
    compute: () => [growth(1.5), growth(3), mowAt(1.5)],
  },
  {
    entry: "interval-073",
    formulas: ["mowAtHeight"],
    source: {
      title: "Mowing requirements",
      publisher: "Kentucky bluegrass turf management notes",
      year: 2010,
    },
    reached: "read",
    given: "cut at 2 in, mow before",
    answers: [{ of: "in", printed: 3, to: 1 }],
    compute: () => [mowAt(2)],
  },
  {
    entry: "interval-072",
    formulas: ["leafRemoved"],
    source: {
      title: "A misprint of the one-third rule: 3 in grown by one third",
      publisher: "worked by hand",
    },
    reached: "derived",
    given: "4 in cut at 3 in, and 4 1/2 in cut at 3 in",
    answers: [
      { of: "%", printed: 25, to: 1 },
      { of: "%", printed: 33.3, to: 0.1 },
    ],
    compute: () => [4, 4.5].map((h) => leafRemoved({ standing: inches(h), cut: inches(3) }).in("%")),
  },
];
