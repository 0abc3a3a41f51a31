import { all, type FirstThing, q, refused, works } from "./trial.js";

const lot = { purity: q(50, "%"), germination: q(80, "%") };
const hole = { diameter: q(0.5, "in"), measured: "outside" };
const grid = { along: q(2, "in"), across: q(2, "in") };

/** What people do first: seed, sod, mowing and coring. */
export const stand: readonly FirstThing[] = [
  refused(
    "a lot of bare numbers",
    () =>
      all.seedOrder?.({
        area: q(12000, "ft2"),
        rate: q(2, "lb/1000 ft2", "pure live seed"),
        lot: { purity: 50, germination: 80 },
      }),
    ["lot.purity", 'quantity(40, "%")'],
    () => all.seedOrder?.({ area: q(12000, "ft2"), rate: q(2, "lb/1000 ft2", "pure live seed"), lot }).seed,
    [60, "lb", "seed"],
  ),
  refused(
    "bulk seed with a lot beside it",
    () => all.seedOrder?.({ area: q(12000, "ft2"), rate: q(5, "lb/1000 ft2", "seed"), lot }),
    ["no lot, or a rate of pure live seed"],
    () => all.seedOrder?.({ area: q(12000, "ft2"), rate: q(5, "lb/1000 ft2", "seed") }).seed,
    [60, "lb", "seed"],
  ),
  works(
    "bulk seed for a rate of pure live seed",
    () => all.bulkSeed?.({ pureLiveSeed: q(2, "lb/1000 ft2", "pure live seed"), lot }),
    [5, "lb/1000 ft2", "seed"],
  ),
  refused(
    "seeds per pound as a bare number",
    () => all.seedsPerArea?.({ rate: q(2, "lb/1000 ft2", "pure live seed"), seedsPerMass: 600_000 }),
    ["a count per weight, such as 200000 count/lb", "quantity(600000, unit)"],
    () =>
      all.seedsPerArea?.({
        rate: q(2, "lb/1000 ft2", "pure live seed"),
        seedsPerMass: q(600_000, "count/lb"),
      }),
    [1200, "count/ft2"],
  ),
  works(
    "purity and germination as fractions",
    () => all.pureLiveSeed?.({ purity: q(0.98, "1"), germination: q(0.85, "1") }),
    [83.3, "% w/w"],
  ),
  works("growth by the week", () => all.mowingInterval?.({ cut: q(3, "in"), growth: q(2.1, "in/week") }), [
    5,
    "d",
  ]),
  refused(
    "the height of cut by position",
    () => all.mowAtHeight?.(q(3, "in")),
    ["{ cut: ... }"],
    () => all.mowAtHeight?.({ cut: q(3, "in") }),
    [4.5, "in"],
  ),
  refused(
    "cut and standing height the wrong way round",
    () => all.leafRemoved?.({ standing: q(3, "in"), cut: q(4.5, "in") }),
    ["4.5 in or more, which is the cut"],
    () => all.leafRemoved?.({ standing: q(4.5, "in"), cut: q(3, "in") }),
    [100 / 3, "%"],
  ),
  works(
    "tall grass in three cuts",
    () => all.cutsToHeight?.({ standing: q(9, "in"), cut: q(3, "in") }).length,
    3,
  ),
  refused(
    "one spacing of cores",
    () => all.coringImpact?.({ ...hole, spacing: q(2, "in") }),
    ["along, across"],
    () => all.coringImpact?.({ ...hole, spacing: grid }).share,
    [(100 * Math.PI) / 64, "%"],
  ),
  refused(
    "a tine without saying which diameter",
    () => all.coringImpact?.({ diameter: q(0.5, "in"), spacing: grid }),
    ['"inside", "outside"'],
    () => all.coringImpact?.({ ...hole, spacing: grid }).holesPerArea,
    [36, "count/ft2"],
  ),
  works(
    "an eighth of an inch of sand on 5000 ft2",
    () => all.topdressing?.({ depth: q(0.125, "in"), area: q(5000, "ft2") }).volume,
    [5000 / 96, "ft3"],
  ),
  refused(
    "sand by volume per area",
    () => all.topdressing?.({ volumePerArea: q(10, "ft3/1000 ft2"), area: q(5000, "ft2") }),
    ["perArea"],
    () => all.topdressing?.({ perArea: q(10, "ft3/1000 ft2"), area: q(5000, "ft2") }).volume,
    [50, "ft3"],
  ),
  refused(
    "waste of sod as a bare number",
    () =>
      all.sodOrder?.({ area: q(4000, "ft2"), waste: 5, piece: { length: q(6, "ft"), width: q(18, "in") } }),
    ["waste", 'quantity(40, "%")'],
    () =>
      all.sodOrder?.({
        area: q(4000, "ft2"),
        waste: q(5, "%"),
        piece: { length: q(6, "ft"), width: q(18, "in") },
      }).pieces,
    467,
  ),
  refused(
    "the core of a cup cutter as one length",
    () => all.pestDensity?.({ counts: [0, 2, 1, 0, 3, 1, 0, 1, 2, 0], core: q(4.25, "in") }),
    ["{ diameter: ... }"],
    () =>
      all.pestDensity?.({ counts: [0, 2, 1, 0, 3, 1, 0, 1, 2, 0], core: { diameter: q(4.25, "in") } })
        .density,
    [144 / ((Math.PI / 4) * 4.25 ** 2), "count/ft2"],
  ),
  refused(
    "rolls of a ball as numbers",
    () => all.greenSpeed?.({ up: [8, 8, 8], down: [12, 12, 12] }),
    ["up[0]", "length", "quantity(8, unit)"],
    () =>
      all.greenSpeed?.({ up: [8, 8, 8].map((x) => q(x, "ft")), down: [12, 12, 12].map((x) => q(x, "ft")) })
        .level,
    [9.6, "ft"],
  ),
  works(
    "revolutions of a reel as typed",
    () =>
      all.frequencyOfClip?.({ speed: q(6, "km/h"), blades: 10, reelSpeed: all.parseQuantity?.("2000 rpm") }),
    [5, "mm"],
  ),
  works("plugs per square foot", () => all.plantsPerArea?.({ pattern: "square", spacing: q(6, "in") }), [
    4,
    "count/ft2",
  ]),
];
