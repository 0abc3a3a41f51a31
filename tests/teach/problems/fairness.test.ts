import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { problem, problemTopics, type QuizProblem } from "../../../src/teach/problems/index.js";
import { readAsk, readStory } from "./read-text.js";
import { solvers } from "./solvers.js";

// `npm run hunt` draws ten thousand seeds of each topic, `npm test` two hundred.
const seeds = Number(process.env.PROPERTY_HUNT ?? 0) > 0 ? 10_000 : 200;
const first = seeds > 200 ? 1_000_000 : 0;

/** The problems of a topic, posed once for all that looks at them. */
const posed = (topic: string, levels: readonly (1 | 2 | 3)[]): readonly QuizProblem[] => {
  const share = Math.ceil(seeds / (2 * levels.length));
  // seeds of their own: the same seed puts the answer in the same place at every level
  return levels.flatMap((level, nth) =>
    (["US", "metric"] as const).flatMap((units, half) =>
      Array.from({ length: share }, (_, i) =>
        problem({ topic, level, seed: first + (2 * nth + half) * share + i, units }),
      ),
    ),
  );
};

/** More than this of a unit, in a story or an answer, is no job in a park. */
const most: Readonly<Record<string, number>> = {
  lb: 1000,
  kg: 500,
  tons: 200,
  t: 120,
  bags: 40,
  ft: 800,
  m: 250,
  inches: 60,
  mm: 250,
  cm: 120,
  "sq ft": 300_000,
  "m²": 40_000,
  acres: 20,
  ha: 10,
  mph: 8,
  "km/h": 12,
  psi: 100,
  bar: 8,
  "fl oz": 600,
  mL: 6000,
  "lb per 1,000 sq ft": 130,
  "kg per ha": 6000,
  "gal per acre": 125,
  "L per ha": 1250,
  "lb per acre": 200,
  "fl oz per acre": 200,
  "cu yd": 150,
};

/** The wind blows faster than a machine runs, and a layer of soil outweighs what is spread on it. */
const mostOf: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  "weather/wind": { mph: 20 },
  "soil/layer": { lb: 226_600, "lb per acre": 1_000, "kg per ha": 100_000, "lb per 1,000 sq ft": 80_000 },
};

/** Every amount of a text with the words of its unit. */
const amounts = (text: string): [number, string][] =>
  [
    ...text.matchAll(
      /(\d[\d,]*(?:\.\d+)?) ([a-zA-Z][a-zA-Z²³/]*(?: (?:ft|oz|yd|per 1,000 sq ft|per [a-z]+))?)/g,
    ),
  ].map(([, digits = "", unit = ""]) => [Number(digits.replaceAll(",", "")), unit]);

describe.each(problemTopics)("problems of $topic", ({ topic, levels }) => {
  const all = posed(topic, levels);

  it("give the key to whoever reads the numbers of the text", () => {
    for (const p of all) {
      const ask = readAsk(p.text);
      const solved = (solvers[topic]?.(readStory(p.text, p.level)) ?? Number.NaN) / ask.factor;
      const place = 0.5 * 10 ** -ask.decimals;
      expect(ask.decimals, p.text).toBe(p.answer.decimals);
      const off = Math.abs(solved - p.answer.value);
      expect(off, p.text).toBeLessThanOrEqual(Math.max(1e-9 * p.answer.value, p.answer.tolerance - place));
    }
  });

  it("have four choices that differ, the right one among them, and none absurd", () => {
    for (const p of all) {
      const place = p.answer.tolerance;
      expect(p.choices.map(({ letter }) => letter)).toEqual(["A", "B", "C", "D"]);
      expect(p.choices.find(({ letter }) => letter === p.letter)).toEqual({
        letter: p.letter,
        text: p.answer.text,
      });
      expect(JSON.stringify(p)).not.toMatch(/NaN|Infinity|undefined|null/);
      const values = [p.answer.value, ...p.mistakes.map(({ value }) => value)];
      values.forEach((value, i) => {
        expect(value, p.text).toBeGreaterThan(0);
        for (const other of values.slice(0, i))
          expect(Math.abs(value - other), p.text).toBeGreaterThan(2 * place);
      });
      expect(new Set(p.choices.map(({ text }) => text)).size, p.text).toBe(4);
      for (const [value, unit] of amounts(`${p.text} ${p.answer.text}`)) {
        expect(value, `${unit}: ${p.text}`).toBeLessThanOrEqual(
          mostOf[topic]?.[unit] ?? most[unit] ?? Number.POSITIVE_INFINITY,
        );
      }
    }
  });

  it("show a working in which every sum comes to what it says", () => {
    for (const p of all) {
      expect(p.steps.length).toBeGreaterThan(0);
      expect(p.steps.length, p.text).toBeLessThanOrEqual(40);
      for (const line of p.steps) {
        const [, sum = "", shown = ""] = /: (.+) = [$€]?([\d,.]*\d)/.exec(line) ?? [];
        if (sum === "") continue;
        const figures = sum.replaceAll(",", "").replaceAll("×", "*").replaceAll("÷", "/");
        const value = Number(shown.replaceAll(",", ""));
        // money is shown to the cent
        const cents = /= [$€]/.test(line) ? 0.005 / value : 0;
        expect(Math.abs((evaluate(figures) as number) / value - 1), line).toBeLessThan(3e-5 + cents);
      }
    }
  });

  it("put the right answer as often in each place", () => {
    const letters = all.map(({ letter }) => letter);
    const expected = letters.length / 4;
    const off = ["A", "B", "C", "D"].map(
      (letter) => letters.filter((one) => one === letter).length - expected,
    );
    // chi-square, three degrees of freedom: 21.1 is passed by chance once in ten thousand
    expect(off.reduce((sum, each) => sum + (each * each) / expected, 0)).toBeLessThan(21.1);
  });
});

describe("the topics", () => {
  it("make 120 combinations of topic and level, or more, and ask every room", () => {
    const combinations = problemTopics.reduce((sum, { levels }) => sum + levels.length, 0);
    expect(combinations).toBeGreaterThanOrEqual(120);
    const rooms = new Set(problemTopics.map(({ topic }) => topic.split("/")[0]));
    expect([...rooms].sort()).toEqual([
      "calendar",
      "indicator",
      "interval",
      "ledger",
      "limits",
      "numeric",
      "nutrient",
      "pest",
      "plan",
      "price",
      "quantity",
      "site",
      "soil",
      "spray",
      "spread",
      "stand",
      "tank",
      "water",
      "weather",
    ]);
    expect(Object.keys(solvers).sort()).toEqual(problemTopics.map(({ topic }) => topic).sort());
  });
});
