import { all, type FirstThing, q, refused } from "./trial.js";

const greenLayer = { depth: q(10, "cm"), bulkDensity: q(1.5, "g/mL", "soil") };

/** What people do first: the soil report, lime, irrigation water and compost. */
export const soil: readonly FirstThing[] = [
  refused(
    "ppm of potassium as typed",
    () => all.parseQuantity?.("50 ppm K"),
    ["ppm w/w", "mg/L"],
    () => all.amountInSoil?.(q(50, "ppm w/w", "K/soil"), greenLayer),
    [7.5, "g/m2", "K"],
  ),
  refused(
    "a content that does not say of the soil",
    () => all.amountInSoil?.(q(50, "mg/kg", "K"), greenLayer),
    ['"K/soil"'],
    () => all.amountInSoil?.(q(50, "mg/kg", "K/soil"), greenLayer),
    [7.5, "g/m2", "K"],
  ),
  refused(
    "a bulk density of nothing",
    () => all.amountInSoil?.(q(50, "mg/kg", "K/soil"), { depth: q(10, "cm"), bulkDensity: q(1.5, "g/mL") }),
    ['"soil"'],
    () => all.amountInSoil?.(q(50, "mg/kg", "K/soil"), greenLayer),
    [7.5, "g/m2", "K"],
  ),
  refused(
    "a bulk density three times that of quartz",
    () => all.soilMass?.({ depth: q(10, "cm"), bulkDensity: q(7.5, "g/mL", "soil") }),
    ["0.05 to 2.65 g/mL"],
    () => all.soilMass?.(greenLayer),
    [150, "kg/m2"],
  ),
  refused(
    "a layer that is a depth alone",
    () => all.amountInSoil?.(q(50, "mg/kg", "K/soil"), q(6, "in")),
    ["depth, bulkDensity, assumed"],
    () => all.amountInSoil?.(q(50, "mg/kg", "K/soil"), { assumed: "2,000,000 lb/acre" }),
    [100, "lb/acre", "K"],
  ),
  refused(
    "lime as a rate of product",
    () =>
      all.limeProductRate?.({
        rate: q(75, "lb/1000 ft2", "product"),
        measure: "CCE",
        quality: all.limeQuality?.({ CCE: 80 }),
        id: "lime-a",
      }),
    ["CaCO3 equivalent"],
    () =>
      all.limeProductRate?.({
        rate: q(75, "lb/1000 ft2", "CaCO3 equivalent"),
        measure: "CCE",
        quality: all.limeQuality?.({ CCE: 80 }),
        id: "lime-a",
      }).rate,
    [93.75, "lb/1000 ft2"],
  ),
  refused(
    "ions by names in small letters",
    () =>
      all.sodiumAdsorptionRatio?.({
        na: q(10, "meq/L", "Na"),
        ca: q(10, "meq/L", "Ca"),
        mg: q(10, "meq/L", "Mg"),
      }),
    ["did you mean Na?", "did you mean Ca?"],
    () =>
      all.sodiumAdsorptionRatio?.({
        Na: q(10, "meq/L", "Na"),
        Ca: q(10, "meq/L", "Ca"),
        Mg: q(10, "meq/L", "Mg"),
      }),
    Math.sqrt(10),
  ),
  refused(
    "conductivities as numbers",
    () => all.leachingRequirement?.({ method: "drainage water", water: 1, drainage: 4 }),
    ["conductivity", "quantity(1, unit)"],
    () =>
      all.leachingRequirement?.({ method: "drainage water", water: q(1, "dS/m"), drainage: q(4, "dS/m") })
        .share,
    [25, "%"],
  ),
  refused(
    "a soil test in pounds an acre",
    () =>
      all.soilTestReading?.({
        nutrient: "P",
        content: q(80, "lb/acre", "P"),
        extractant: "Mehlich 3",
        guideline: "minimum levels, Mehlich 3",
      }),
    ["contentInSoil"],
    () => all.contentInSoil?.(q(80, "lb/acre", "P"), { assumed: "2,000,000 lb/acre" }),
    [40, "mg/kg", "P/soil"],
  ),
  refused(
    "iron by the fluid ounce",
    () =>
      all.foliarMicronutrient?.({ product: q(4, "fl oz/1000 ft2", "product"), element: "Fe", percent: 20 }),
    ["density of the jug"],
    () =>
      all.foliarMicronutrient?.({
        product: q(4, "fl oz/1000 ft2", "product").times?.(q(12, "lb/gal")),
        element: "Fe",
        percent: 20,
      }).element,
    [(4 / 128) * 12 * 0.2, "lb/1000 ft2", "Fe"],
  ),
  refused(
    "compost of a density of nothing",
    () =>
      all.compostAmount?.({
        area: q(32400, "ft2"),
        depth: q(0.25, "in"),
        bulkDensity: q(1000, "lb/yd3"),
        moisture: 40,
      }),
    ['"product"'],
    () =>
      all.compostAmount?.({
        area: q(32400, "ft2"),
        depth: q(0.25, "in"),
        bulkDensity: q(1000, "lb/yd3", "product"),
        moisture: 40,
      }).volume,
    [25, "yd3"],
  ),
  refused(
    "shares of two waters that leave some over",
    () =>
      all.blendWaters?.([
        { share: q(70, "%"), water: { Na: q(10, "mg/L", "Na") } },
        { share: q(20, "%"), water: { Na: q(50, "mg/L", "Na") } },
      ]),
    ["add up to 100 %", "90 %"],
    () =>
      all.blendWaters?.([
        { share: q(70, "%"), water: { Na: q(10, "mg/L", "Na") } },
        { share: q(30, "%"), water: { Na: q(50, "mg/L", "Na") } },
      ]).water?.Na?.value,
    22,
  ),
  refused(
    "a first date as it is written in America",
    () =>
      all.splitAmendment?.({
        total: q(180, "lb/1000 ft2", "product:lime-a"),
        most: q(100, "lb/1000 ft2", "product:lime-a"),
        source: "the report",
        first: "10/1/2026",
        monthsApart: 6,
      }),
    ["2026-10-01", "2026-01-10"],
    () =>
      all.splitAmendment?.({
        total: q(180, "lb/1000 ft2", "product:lime-a"),
        most: q(100, "lb/1000 ft2", "product:lime-a"),
        source: "the report",
        first: "2026-10-01",
        monthsApart: 6,
      }).applications?.[1]?.date,
    "2027-04-01",
  ),
  refused(
    "lime for half the depth by position",
    () => all.limeForDepth?.(q(2, "US ton/acre", "CaCO3 equivalent"), q(4, "in")),
    ["rate, from, to"],
    () =>
      all.limeForDepth?.({ rate: q(2, "US ton/acre", "CaCO3 equivalent"), from: q(8, "in"), to: q(4, "in") }),
    [1, "US ton/acre"],
  ),
];
