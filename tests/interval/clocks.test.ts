import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dailySeries } from "../../src/calendar/index.js";
import {
  annualBluegrassFlowering,
  degreeDayAmount,
  degreeDayModel,
  degreeDayWindowState,
  earliestBySeedingIntervals,
  earlyEntryObjections,
  eventWindows,
  firstRun,
  fractionRemaining,
  growthClass,
  growthPotential,
  halfLifeAt,
  interimRestrictedEntryHours,
  nitrogenForGrowth,
  persistenceClass,
  rainfastFrom,
  repeatedDose,
  restrictedEntryInterval,
  type SeedingInterval,
  signalWord,
  soilTemperatureThresholds,
  splitApplication,
  timeUntilRemaining,
  turfHalfLives,
} from "../../src/interval/index.js";
import { quantity } from "../../src/quantity/index.js";
import { complaints } from "../errors.js";

const d = (value: number) => quantity(value, "d");
const pct = (value: number) => quantity(value, "%");

describe("decay", () => {
  const positive = fc.double({ min: 0.5, max: 500, noNaN: true });
  test("what is left after two times is the product of what is left after each", () => {
    fc.assert(
      fc.property(positive, positive, positive, (h, a, b) => {
        const left = (t: number) => fractionRemaining({ halfLife: d(h), elapsed: d(t) }).in("%") / 100;
        expect(left(a + b)).toBeCloseTo(left(a) * left(b), 12);
      }),
    );
  });
  test("time and share turn each other round", () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 0.1, max: 100, noNaN: true }), (h, share) => {
        const elapsed = timeUntilRemaining({ halfLife: d(h), remaining: pct(share) });
        expect(fractionRemaining({ halfLife: d(h), elapsed }).in("%")).toBeCloseTo(share, 8);
      }),
    );
    expect(timeUntilRemaining({ halfLife: d(9), remaining: pct(100) }).in("d")).toBe(0);
    expect(complaints(() => timeUntilRemaining({ halfLife: d(9), remaining: pct(101) }))).toEqual([
      "range remaining",
    ]);
    expect(complaints(() => timeUntilRemaining({ halfLife: d(9), remaining: pct(0) }))).toEqual([
      "range remaining",
    ]);
  });
  test("repeated doses: the closed form is the sum dose by dose, and stays under its limit", () => {
    fc.assert(
      fc.property(positive, positive, fc.integer({ min: 1, max: 60 }), (i, h, count) => {
        const sum = repeatedDose({ dose: quantity(2, "kg/ha", "ai"), interval: d(i), halfLife: d(h), count });
        let there = 0;
        for (let n = 0; n < count; n++) there = there * 0.5 ** (i / h) + 2;
        expect(sum.afterLast.in("kg/ha") / there).toBeCloseTo(1, 9);
        expect(sum.beforeLast.in("kg/ha")).toBeCloseTo(there - 2, 6);
        expect(sum.limit.in("kg/ha")).toBeGreaterThanOrEqual(sum.afterLast.in("kg/ha") * (1 - 1e-12));
      }),
    );
  });
  test("formulas take what JSON left of a quantity", () => {
    const json = <T>(value: T): T => JSON.parse(JSON.stringify(value));
    const input = { dose: quantity(800, "g/ha", "ai"), interval: d(20), halfLife: d(20), count: 3 };
    // 800 + 400 + 200.
    expect(repeatedDose(json(input)).afterLast.in("g/ha")).toBe(1400);
    expect(complaints(() => repeatedDose({ ...input, dose: quantity(8, "ft") as never }))).toEqual([
      "unit/mismatch dose",
    ]);
  });
  test("a share that no time reaches, and two temperatures that differ by rounding only", () => {
    expect(complaints(() => timeUntilRemaining({ halfLife: d(9), remaining: pct(1e-320) }))).toEqual([
      "range remaining",
    ]);
    const stated = [
      { temperature: quantity(64, "°F"), halfLife: d(6.4) },
      { temperature: quantity(17.7777777778, "°C"), halfLife: d(3.1) },
    ] as const;
    expect(complaints(() => halfLifeAt({ stated, temperature: quantity(64, "°F") }))).toEqual([
      "conflict stated[1].temperature",
    ]);
    expect(
      complaints(() => halfLifeAt({ stated: [null as never, stated[1]], temperature: quantity(64, "°F") })),
    ).toEqual(["type stated[0]"]);
  });
  test("a half-life is not stretched beyond the temperatures at which it was found", () => {
    const stated = [
      { temperature: quantity(64, "°F"), halfLife: d(6.4) },
      { temperature: quantity(86, "°F"), halfLife: d(3.1) },
    ] as const;
    expect(complaints(() => halfLifeAt({ stated, temperature: quantity(90, "°F") }))).toEqual([
      "range temperature",
    ]);
    expect(halfLifeAt({ stated, temperature: quantity(75, "°F") }).in("d")).toBeCloseTo(
      Math.sqrt(6.4 * 3.1),
      9,
    );
    expect(
      complaints(() => halfLifeAt({ stated: [stated[0], stated[0]], temperature: quantity(64, "°F") })),
    ).toEqual(["conflict stated[1].temperature"]);
  });
  test("classes, and the records", () => {
    expect([15.9, 16, 59, 59.5, 60, 61].map((n) => persistenceClass(d(n)))).toEqual([
      "low",
      "moderate",
      "moderate",
      "not stated",
      "not stated",
      "high",
    ]);
    for (const {
      days: [a, b],
    } of turfHalfLives)
      expect(a).toBeLessThanOrEqual(b);
  });
});

describe("growth potential", () => {
  test("the two sets of constants differ for warm-season grass: 28.4 against 24.9 % at 68 °F", () => {
    const at = (constants: "°C" | "°F") =>
      growthPotential({ mean: quantity(68, "°F"), season: "warm-season", constants }).in("%");
    // Worked by hand with an optimum of 88 °F; in °C it is 31 °C, 87.8 °F.
    expect(at("°F")).toBeCloseTo(24.9, 1);
    expect(at("°C")).toBeCloseTo(100 * Math.exp(-0.5 * (11 / 7) ** 2), 9);
  });
  test("warm-season grass is held above its optimum or falls, as asked; cool-season grass falls", () => {
    const at = (season: "cool-season" | "warm-season", more: object = {}) =>
      growthPotential({ mean: quantity(38, "°C"), season, ...more }).in("%");
    expect(at("warm-season")).toBe(100);
    expect(at("warm-season", { aboveOptimum: "falling" })).toBeCloseTo(60.65, 2);
    expect(at("cool-season")).toBeLessThan(1);
    expect(
      growthPotential({ mean: quantity(18, "°C"), season: "cool-season", optimum: quantity(18, "°C") }).in(
        "%",
      ),
    ).toBe(100);
  });
  test("words and nitrogen", () => {
    expect([100, 50, 49.9, 10.1, 10, 0].map((p) => growthClass(pct(p)))).toEqual([
      "good",
      "good",
      "stressed",
      "stressed",
      "extremely limited",
      "extremely limited",
    ]);
    const maximum = quantity(1, "lb/1000 ft2", "N");
    expect(complaints(() => nitrogenForGrowth({ maximum, potential: pct(101) }))).toEqual([
      "range potential",
    ]);
    expect(
      complaints(() =>
        nitrogenForGrowth({ maximum: quantity(1, "lb/acre", "P") as never, potential: pct(9) }),
      ),
    ).toEqual(["substance/mismatch maximum"]);
    expect(complaints(() => growthPotential({ mean: quantity(1, "°C"), season: "C3" as never }))).toEqual([
      "type season",
    ]);
    expect(complaints(() => growthPotential({ mean: quantity(-300, "°C"), season: "cool-season" }))).toEqual([
      "range mean",
    ]);
  });
});

describe("entry", () => {
  const end = "2026-06-03T15:30-05:00" as const;
  test("a label figure comes before the interim rule, the longest of all products decides", () => {
    const entry = restrictedEntryInterval({
      end,
      products: [
        { product: "a", label: quantity(4, "h"), actives: [{ dermal: 1, eye: 1, skin: 1 }] },
        { product: "b", label: quantity(1, "d") },
        { product: "c", label: quantity(24, "h"), until: "until the spray has dried" },
        { product: "d" },
      ],
    });
    expect(entry).toMatchObject({
      hours: 24,
      until: "2026-06-04T15:30-05:00",
      decidedBy: ["b", "c"],
      conditions: [{ product: "c", until: "until the spray has dried" }],
    });
    expect(entry.notChecked.some((text) => text.startsWith("d:"))).toBe(true);
    expect(entry.notChecked.some((text) => text.startsWith("Posting"))).toBe(true);
  });
  test("posting may be longer, and without any figure there is no time", () => {
    const posted = restrictedEntryInterval({
      end,
      products: [{ product: "a", label: quantity(4, "h") }],
      posting: { hours: 48, source: "city ordinance" },
    });
    expect(posted).toMatchObject({ hours: 48, decidedBy: ["posting"] });
    expect(restrictedEntryInterval({ end, products: [{ product: "a" }] })).toMatchObject({
      hours: null,
      until: null,
    });
    expect(complaints(() => restrictedEntryInterval({ end, products: [] }))).toEqual(["missing products"]);
    expect(
      complaints(() =>
        restrictedEntryInterval({ end: "2026-06-03T15:30" as never, products: [{ product: "a" }] }),
      ),
    ).toEqual(["date end"]);
    expect(
      complaints(() =>
        restrictedEntryInterval({
          end,
          products: [{ product: "a", actives: [{ dermal: 5, eye: 1, skin: 1 } as never] }],
        }),
      ),
    ).toEqual(["range products[0].actives[0].dermal"]);
  });
  test("what is wrong is told together, each with its path", () => {
    expect(
      complaints(() =>
        restrictedEntryInterval({
          end,
          products: [
            {
              product: "a",
              actives: [{ dermal: 1, eye: 1, skin: 1 }, { dermal: 0, eye: 1, skin: 1 } as never],
            },
            { product: "b", label: quantity(3, "lb") as never },
            null as never,
            { product: "", until: "" },
            { product: "d", actives: "none" as never },
          ],
          posting: { hours: 48 } as never,
        }),
      ),
    ).toEqual([
      "range products[0].actives[1].dermal",
      "unit/mismatch products[1].label",
      "type products[2]",
      "missing products[3].product",
      "missing products[3].until",
      "type products[4].actives",
      "missing posting.source",
    ]);
    expect(
      complaints(() =>
        restrictedEntryInterval({ end, products: [{ product: "a" }], posting: null as never }),
      ),
    ).toEqual(["type posting"]);
  });
  test("the interim rule names where it does not hold; a label figure needs no such note", () => {
    const notes = (product: object) =>
      restrictedEntryInterval({ end, products: [{ product: "a", ...product }] }).notChecked.join(" ");
    const interim = notes({ actives: [{ dermal: 1, eye: 1, skin: 1 }] });
    expect(interim).toContain("parks, landscaping and lawns");
    expect(interim).toContain("72 hours");
    expect(notes({ label: quantity(4, "h") })).not.toContain("interim");
  });
  test("low risk does not shorten 24 or 48 hours", () => {
    expect(
      complaints(() => interimRestrictedEntryHours({ dermal: 2, eye: 4, skin: 4, lowRisk: true })),
    ).toEqual(["conflict lowRisk"]);
    expect(complaints(() => interimRestrictedEntryHours({ dermal: 2.5 as never, eye: 4, skin: 4 }))).toEqual([
      "range dermal",
    ]);
  });
  test("early entry: each rule objects on its own", () => {
    const of = (hoursSinceEnd: number, minutesInDay: number, handLabor = false) =>
      earlyEntryObjections({ hoursSinceEnd, minutesInDay, handLabor }).length;
    expect([of(3.99, 60), of(4, 60), of(4, 61), of(0, 90, true)]).toEqual([1, 0, 1, 3]);
  });
  test("an eye irritant is DANGER without the skull; an active's category is not the product's", () => {
    expect(signalWord({ oral: 4, dermal: 4, inhalation: 4, eye: 1, skin: 4 })).toEqual({
      word: "DANGER",
      poison: false,
    });
    expect(
      complaints(() => signalWord({ oral: 0 as never, dermal: 4, inhalation: 4, eye: 1, skin: 4 })),
    ).toEqual(["range oral"]);
  });
});

describe("gaps and split applications", () => {
  const rules: SeedingInterval[] = [
    { from: "spray", to: "seeding", minimumDays: 14, about: "flurprimidol", source: "label" },
    { from: "spray", to: "seeding", minimumDays: 90, about: "prodiamine", source: "label" },
    { from: "emergence", to: "spray", minimumDays: 28, about: "quinclorac", source: "label" },
  ];
  test("the last day counts, the longest gap decides, and a rule without a date is named", () => {
    const found = earliestBySeedingIntervals({
      rules,
      happened: [
        { event: "spray", date: "2026-05-01", about: "prodiamine" },
        { event: "spray", date: "2026-07-25", about: "flurprimidol" },
        { event: "spray", date: "2026-07-20", about: "flurprimidol" },
      ],
      next: "seeding",
    });
    expect(found.earliestByStatedRules).toBe("2026-08-08");
    expect(found.reasons.map(({ date }) => date)).toEqual(["2026-08-08", "2026-07-30"]);
    const none = earliestBySeedingIntervals({ rules, happened: [], next: "spray" });
    expect(none).toMatchObject({ earliestByStatedRules: null, notChecked: [{ about: "quinclorac" }] });
  });
  test("an unnamed spray counts for every rule", () => {
    const found = earliestBySeedingIntervals({
      rules,
      happened: [{ event: "spray", date: "2026-05-01" }],
      next: "seeding",
    });
    expect(found.earliestByStatedRules).toBe("2026-07-30");
  });
  test("reports all that is wrong", () => {
    const bad = [{ ...rules[0], minimumDays: -1 } as SeedingInterval, { ...rules[0], from: "rain" } as never];
    expect(
      complaints(() =>
        earliestBySeedingIntervals({
          rules: bad,
          happened: [{ event: "spray", date: "x" as never }],
          next: "seeding",
        }),
      ),
    ).toEqual(["range rules[0].minimumDays", "type rules[1].from", "date happened[0].date"]);
    // A misspelt event would make the rule look as if nothing had happened.
    expect(
      complaints(() =>
        earliestBySeedingIntervals({
          rules: [null as never, { ...rules[0], minimumDays: 1.5, about: "" } as SeedingInterval],
          happened: [null as never, { event: "sprayed" as never, date: "2026-08-20" }],
          next: "seeding",
        }),
      ),
    ).toEqual([
      "type rules[0]",
      "range rules[1].minimumDays",
      "missing rules[1].about",
      "type happened[0]",
      "type happened[1].event",
    ]);
  });
  test("a name in capitals is the same name", () => {
    const found = earliestBySeedingIntervals({
      rules,
      happened: [{ event: "spray", date: "2026-05-01", about: "Prodiamine " }],
      next: "seeding",
    });
    // 1 May and 90 days: 30 in May, 30 in June, 30 in July.
    expect(found.earliestByStatedRules).toBe("2026-07-30");
  });
  test("a split leaves what the maximum leaves", () => {
    const lb = (value: number) => quantity(value, "lb/acre", "ai:prodiamine");
    const split = (amount: number) =>
      splitApplication({
        first: "2024-02-20",
        amount: lb(amount),
        maximum: lb(1.5),
        afterDays: { min: 60, max: 60 },
      });
    expect(split(0.75)).toMatchObject({ second: { from: "2024-04-20", to: "2024-04-20" } });
    expect(split(0.75).largestSecond.in("lb/acre")).toBe(0.75);
    expect(split(1.5).largestSecond.in("lb/acre")).toBe(0);
    const noise = splitApplication({
      first: "2026-01-01",
      amount: lb(0.3),
      maximum: lb(0.1 + 0.2),
      afterDays: { min: 1, max: 1 },
    });
    expect(noise.largestSecond.value).toBe(0);
    expect(complaints(() => split(1.6))).toEqual(["conflict amount"]);
  });
});

describe("rain", () => {
  test("rainfast by the label", () => {
    expect(rainfastFrom({ end: "2026-06-03T22:30-05:00", label: quantity(90, "min") })).toBe(
      "2026-06-04T00:00-05:00",
    );
  });
});

describe("windows", () => {
  const model = degreeDayModel({ method: "simple average", base: { value: 50, unit: "°F" }, sensor: "air" });
  const heat = (value: number) => degreeDayAmount({ value, unit: "°F d", model });
  test("event lookup as published: stages reached at six sites", () => {
    const smooth = eventWindows.find(({ id }) => id === "smooth crabgrass, Ohio")?.from ?? 0;
    const large = eventWindows.find(({ id }) => id === "large crabgrass, Ohio")?.from ?? 0;
    const reached = (total: number) =>
      [smooth, large].map(
        (from) => degreeDayWindowState({ total: heat(total), from: heat(from) }) === "within",
      );
    expect([124, 130, 182, 206, 221, 256].map(reached)).toEqual([
      [false, false],
      [false, false],
      [true, false],
      [true, false],
      [true, true],
      [true, true],
    ]);
  });
  test("a window of another model is refused", () => {
    const other = degreeDayModel({
      method: "simple average",
      base: { value: 32, unit: "°F" },
      sensor: "air",
    });
    const from = degreeDayAmount({ value: 250, unit: "°F d", model: other });
    expect(complaints(() => degreeDayWindowState({ total: heat(9), from: from as never }))).toEqual([
      "substance/mismatch from",
    ]);
    expect(
      complaints(() => degreeDayWindowState({ total: heat(9), from: heat(500), to: heat(250) })),
    ).toEqual(["conflict from"]);
  });
  test("runs of warm nights, broken by a gap", () => {
    const series = (values: (number | null)[]) =>
      dailySeries({ start: "2026-04-01", unit: "°C", what: "soil", source: "probe", values });
    const run = (values: (number | null)[]) =>
      firstRun({ series: series(values), threshold: quantity(50, "°F"), days: 3 });
    expect(run([10, 10, 10])).toBe("2026-04-03");
    expect(run([11, 11, null, 11, 11])).toBeNull();
    expect(run([11, 9.9, 11, 11, 11])).toBe("2026-04-05");
    const bad = { ...series([1]), values: [] };
    const threshold = quantity(50, "°F");
    expect(complaints(() => firstRun({ series: bad, threshold, days: 3 }))).toEqual([
      "missing series.values",
    ]);
    // Also where every day is a gap: rain is no temperature.
    const rain = { ...series([null]), unit: "mm" };
    expect(complaints(() => firstRun({ series: rain, threshold, days: 3 }))).toEqual([
      "unit/mismatch series",
    ]);
  });
  test("records are in order, and flowering is never negative", () => {
    for (const { from, to } of eventWindows) if (to !== null) expect(from).toBeLessThan(to);
    for (const {
      temperature: [a, b],
    } of soilTemperatureThresholds)
      expect(a).toBeLessThanOrEqual(b);
    expect([0, 555, 1537, 5000].map(annualBluegrassFlowering)).toEqual([0, 0, 0, 0]);
    expect(annualBluegrassFlowering(1045.9)).toBeCloseTo(0.802, 3);
  });
});
