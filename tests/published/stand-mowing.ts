import { growthBetweenMowings, leafRemoved, mowAtHeight, mowingInterval, quantity } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const inches = (value: number) => quantity(value, "in");
const mowAt = (cut: number): number => mowAtHeight({ cut: inches(cut) }).in("in");
const growth = (cut: number): number => growthBetweenMowings({ cut: inches(cut) }).in("in");

const days = (cut: number): number =>
  mowingInterval({ cut: inches(cut), growth: quantity(0.2, "in/d") }).in("d");

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
    formulas: ["mowingInterval"],
    source: {
      title: "The one-third rule (home gardening tips)",
      publisher: "Cornell University",
      where: "second tip",
      url: "http://www.gardening.cornell.edu/homegardening/tidbit_templatef758.html",
    },
    reached: "read",
    given: "cut at 3 in and at 1 1/2 in: how many times as much has to grow, and so how many times as long",
    answers: [{ of: "times", printed: 2, to: 1 }],
    compute: () => [days(3) / days(1.5)],
  },
  {
    entry: "stand-001",
    formulas: ["mowAtHeight", "leafRemoved"],
    source: {
      title: "The one-third rule (home gardening tips)",
      publisher: "Cornell University",
      where: "first tip",
      url: "http://www.gardening.cornell.edu/homegardening/tidbit_template1454.html",
    },
    reached: "read",
    given: "cut at 3 in: when to mow, and what goes then",
    answers: [
      { of: "in", printed: 4.5, to: 0.1 },
      { of: "leaf, parts of three", printed: 1, to: 1 },
    ],
    compute: () => [mowAt(3), leafRemoved({ standing: inches(4.5), cut: inches(3) }).in("1") * 3],
  },
  {
    entry: "stand-002",
    formulas: ["mowAtHeight", "leafRemoved"],
    source: {
      title: "Fact or fallacy: the lower you mow your lawn, the less often you have to mow",
      publisher: "advice page of a garden centre",
      url: "https://www.mendhamgardencenter.com/specials/fact-or-fallacy/",
    },
    reached: "read",
    given: "kept at 3 in, cut back from 4 in",
    answers: [
      {
        of: "in, when to mow",
        printed: 4,
        to: 0.1,
        wrong: {
          right: 4.5,
          why: "3 in is grown by a third of itself; a third of the leaf is cut from 4 1/2 in",
        },
      },
      {
        of: "leaf, parts of three",
        printed: 1,
        to: 0.01,
        wrong: { right: 0.75, why: "a quarter of 4 in is cut, not a third" },
      },
    ],
    compute: () => [mowAt(3), leafRemoved({ standing: inches(4), cut: inches(3) }).in("1") * 3],
  },
  {
    entry: "stand-003",
    formulas: ["leafRemoved"],
    source: {
      title: "What's the right mowing height for your lawn?",
      publisher: "advice page of a contractor",
      url: "https://shadesofgreenlawncare.com/blog/whats-the-right-mowing-height-for-your-lawn/",
    },
    reached: "read",
    given: "grass of 3 in: 1 in is a third of it",
    answers: [{ of: "leaf, parts of three", printed: 1, to: 0.01 }],
    compute: () => [leafRemoved({ standing: inches(3), cut: inches(2) }).in("1") * 3],
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
