import { all, type FirstThing, feed, fertilizer, parse, q, refused, works } from "./trial.js";

/** What people do first: nutrients. */
export const nutrients: readonly FirstThing[] = [
  works("reads 24-0-11", () => all.productRate?.(q(0.9, "lb/1000 ft2", "N"), feed), [
    3.75,
    "lb/1000 ft2",
    "product:feed-a",
  ]),
  works("reads 21-0-0-24S", () => all.analysis?.("21-0-0-24S").percent?.S, 24),
  works("reads 21-0-0 (24% S)", () => all.analysis?.("21-0-0 (24% S)").percent?.S, 24),
  works("reads 12-0-0 + 6% Fe", () => all.analysis?.("12-0-0 + 6% Fe").percent?.Fe, 6),
  works("reads 20-20-20+TE", () => all.analysis?.("20-20-20+TE").percent?.K2O, 20),
  works("reads 16:4:8", () => all.analysis?.("16:4:8").percent?.P2O5, 4),
  refused(
    "writes a decimal comma in a grade",
    () => all.analysis?.("24,5-0-11"),
    ['decimal: ","'],
    () => all.analysis?.("24,5-0-11", { decimal: "," }).percent?.N,
    24.5,
  ),
  refused(
    "writes a grade with blanks",
    () => all.analysis?.("24 0 11"),
    ["24-0-11"],
    () => all.analysis?.("24-0-11").percent?.K2O,
    11,
  ),
  refused(
    "leaves a number of the grade out",
    () => all.analysis?.("24-0"),
    ["24-0-11"],
    () => all.analysis?.("24-0-11").percent?.K2O,
    11,
  ),
  refused(
    "misspells the analysis",
    () => fertilizer({ id: "a", analisis: "24-0-11" }),
    ["did you mean analysis?"],
    () => fertilizer({ id: "a", analysis: "24-0-11" }).id,
    "a",
  ),
  refused(
    "calls the package a bag",
    () => fertilizer({ id: "a", analysis: "24-0-11", bag: q(50, "lb") }),
    ["did you mean package?"],
    () => fertilizer({ id: "a", analysis: "24-0-11", package: q(50, "lb") }).package,
    [50, "lb"],
  ),
  refused(
    "gives the package as text",
    () => fertilizer({ id: "a", analysis: "24-0-11", package: "50 lb" }),
    ["parseQuantity"],
    () => fertilizer({ id: "a", analysis: "24-0-11", package: parse("50 lb") }).package,
    [50, "lb"],
  ),
  refused(
    "gives the grade instead of the product",
    () => all.productRate?.(q(1, "lb/1000 ft2", "N"), "24-0-11"),
    ["fertilizer("],
    () => all.productRate?.(q(1, "lb/1000 ft2", "N"), feed),
    [100 / 24, "lb/1000 ft2"],
  ),
  refused(
    "gives a bare number as target",
    () => all.productRate?.(1, feed),
    ["quantity("],
    () => all.productRate?.(q(1, "lb/1000 ft2", "N"), feed),
    [100 / 24, "lb/1000 ft2"],
  ),
  refused(
    "forgets of what the target is",
    () => all.productRate?.(q(1, "lb/1000 ft2"), feed),
    ["a nutrient"],
    () => all.productRate?.(q(1, "lb/1000 ft2", "N"), feed),
    [100 / 24, "lb/1000 ft2"],
  ),
  refused(
    "asks phosphate of a bag without",
    () => all.productRate?.(q(1, "lb/1000 ft2", "P2O5"), feed),
    ["infeasible", "feed-a"],
    () => all.productRate?.(q(1, "lb/1000 ft2", "K2O"), feed),
    [100 / 11, "lb/1000 ft2"],
  ),
  works(
    "states a target in P",
    () => all.productRate?.(q(1, "lb/1000 ft2", "P"), fertilizer({ id: "b", analysis: "10-10-10" })),
    [(10 * 141.943) / 61.948, "lb/1000 ft2"],
  ),
  refused(
    "gives a weight as a rate",
    () => all.productRate?.(q(1, "lb", "N"), feed),
    ["a weight over an area, such as 1 lb/1000 ft2"],
    () => all.productMass?.(q(1, "lb", "N"), feed),
    [100 / 24, "lb"],
  ),
  works(
    "goes from target to field",
    () => all.productRate?.(q(0.9, "lb/1000 ft2", "N"), feed).times?.(q(12400, "ft2")),
    [46.5, "lb"],
  ),
  works(
    "counts the bags",
    () =>
      all.packagesFor?.(all.productRate?.(q(0.9, "lb/1000 ft2", "N"), feed).times?.(q(12400, "ft2")), feed)
        .count,
    1,
  ),
  refused(
    "counts bags for a rate",
    () => all.packagesFor?.(all.productRate?.(q(0.9, "lb/1000 ft2", "N"), feed), feed),
    ["rate.times("],
    () =>
      all.packagesFor?.(all.productRate?.(q(0.9, "lb/1000 ft2", "N"), feed).times?.(q(12400, "ft2")), feed)
        .count,
    1,
  ),
  refused(
    "counts bags for pounds of nothing",
    () => all.packagesFor?.(q(60, "lb"), feed),
    ['"product:feed-a"'],
    () => all.packagesFor?.(q(60, "lb", "product:feed-a"), feed).count,
    2,
  ),
  works("asks what is in a bag", () => all.packageContents?.(feed), [50, "lb", "product:feed-a"]),
  works(
    "asks what a bag brings to a field",
    () => all.nutrientsSupplied?.(all.packageContents?.(feed).per?.(q(5000, "ft2")), feed).N,
    [2.4, "lb/1000 ft2", "N"],
  ),
  works("turns P2O5 into P", () => all.inForm?.(q(1, "lb", "P2O5"), "P"), [61.948 / 141.943, "lb", "P"]),
  works(
    "asks how far a bag goes",
    () => all.areaCovered?.(q(50, "lb", "product"), q(4, "lb/1000 ft2", "product")),
    [12500, "ft2"],
  ),
];
