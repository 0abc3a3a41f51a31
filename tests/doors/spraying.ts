import { all, type FirstThing, q, refused, works } from "./trial.js";

/** What people do first: spraying. */
export const spraying: readonly FirstThing[] = [
  works("reads 4F on the jug", () => all.jugCode?.("4F").content, [4, "lb/gal", "ai/product"]),
  works("reads 2EC on the jug", () => all.jugCode?.("2EC").formulation, "EC"),
  works("reads 75WDG on the jug", () => all.jugCode?.("75WDG").content, [75, "% w/w"]),
  works("reads 50WP on the jug", () => all.jugCode?.("50WP").formulation, "WP"),
  works("reads WSB on the jug", () => all.jugCode?.("WSB").formulation, "water-soluble packet"),
  refused(
    "reads a code that is none",
    () => all.jugCode?.("XYZ"),
    ["WP, WG, SC"],
    () => all.jugCode?.("80WP").content,
    [80, "% w/w"],
  ),
  refused(
    "asks what WG stands for",
    () => all.formulationOf?.("WG"),
    ["water dispersible granule"],
    () => all.jugCode?.("75WG").content,
    [75, "% w/w"],
  ),
  works("reads 11004 on a tip", () => all.readTip?.("11004").flow, [0.4, "gal/min"]),
  works("reads 8004 on a tip", () => all.readTip?.("8004").angle, [80, "deg"]),
  works("reads 0067 on a tip", () => all.readTip?.("0067").flow, [0.067, "gal/min"]),
  works("reads 035 on a tip", () => all.readTip?.("035").flow, [0.35, "gal/min"]),
  works(
    "calibrates from flow, speed and spacing",
    () =>
      all.applicationVolume?.({
        flow: q(0.4, "gal/min", "spray"),
        speed: q(4, "mi/h"),
        width: q(20, "in"),
      }),
    [29.7, "gal/acre", "spray"],
  ),
  works(
    "the same with water",
    () =>
      all.applicationVolume?.({
        flow: q(0.4, "gal/min", "water"),
        speed: q(4, "mi/h"),
        width: q(20, "in"),
      }),
    [29.7, "gal/acre", "water"],
  ),
  refused(
    "calls the width a spacing",
    () =>
      all.applicationVolume?.({
        flow: q(0.4, "gal/min", "spray"),
        speed: q(4, "mi/h"),
        spacing: q(20, "in"),
      }),
    ["did you mean width?"],
    () =>
      all.applicationVolume?.({
        flow: q(0.4, "gal/min", "spray"),
        speed: q(4, "mi/h"),
        width: q(20, "in"),
      }),
    [29.7, "gal/acre"],
  ),
  refused(
    "calls the application volume a volume",
    () => all.nozzleFlow?.({ volume: q(20, "gal/acre", "spray"), speed: q(4, "mi/h"), width: q(20, "in") }),
    ["did you mean applicationVolume?"],
    () =>
      all.nozzleFlow?.({
        applicationVolume: q(20, "gal/acre", "spray"),
        speed: q(4, "mi/h"),
        width: q(20, "in"),
      }),
    [(20 * 4 * 20) / 5940, "gal/min"],
  ),
  works(
    "catches on the 1/128-acre course",
    () =>
      all.calibrationByCatch?.({
        catches: [q(40, "fl oz", "water")],
        course: q(204.1875, "ft"),
        width: q(20, "in"),
      }).rate,
    [40, "gal/acre"],
  ),
  refused(
    "catches bare numbers",
    () => all.calibrationByCatch?.({ catches: [40, 41], course: q(204.1875, "ft"), width: q(20, "in") }),
    ["catches[1]", "quantity("],
    () =>
      all.calibrationByCatch?.({
        catches: [q(40, "fl oz", "water")],
        course: q(204.1875, "ft"),
        width: q(20, "in"),
      }).rate,
    [40, "gal/acre"],
  ),
  refused(
    "catches by weight",
    () =>
      all.calibrationByCatch?.({
        catches: [q(40, "oz", "water")],
        course: q(204.1875, "ft"),
        width: q(20, "in"),
      }),
    ["a volume, such as 2 gal or 8 L"],
    () =>
      all.calibrationByCatch?.({
        catches: [
          all.weighedCatch?.({
            full: q(3, "lb", "water"),
            tare: q(0.5, "lb"),
            density: q(8, "lb/gal"),
          }),
        ],
        course: q(204.1875, "ft"),
        width: q(20, "in"),
      }).rate,
    [40, "gal/acre"],
  ),
  works(
    "goes from water to loads",
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        applicationVolume: q(40, "gal/acre", "water"),
        capacity: q(50, "gal", "spray"),
      }).count,
    2,
  ),
  refused(
    "calls the capacity a tank",
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        applicationVolume: q(40, "gal/acre", "spray"),
        tank: q(50, "gal", "spray"),
      }),
    ["did you mean capacity?"],
    () =>
      all.areaPerTank?.({
        capacity: q(50, "gal", "spray"),
        applicationVolume: q(40, "gal/acre", "spray"),
      }),
    [1.25, "acre"],
  ),
  refused(
    "calls it carrier volume",
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        carrierVolume: q(40, "gal/acre", "spray"),
        capacity: q(50, "gal", "spray"),
      }),
    ["did you mean applicationVolume?"],
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        applicationVolume: q(25, "gal/acre", "spray"),
        capacity: q(50, "gal", "spray"),
      }).count,
    1,
  ),
  refused(
    "forgets of what the tank is full",
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        applicationVolume: q(40, "gal/acre"),
        capacity: q(50, "gal"),
      }),
    ['quantity(50, "gal", "spray")'],
    () =>
      all.tankLoads?.({
        area: q(2, "acre"),
        applicationVolume: q(25, "gal/acre", "spray"),
        capacity: q(50, "gal", "spray"),
      }).count,
    1,
  ),
  refused(
    "asks an amount by position",
    () => all.amountFor?.(q(2, "fl oz/1000 ft2", "product"), q(5000, "ft2")),
    ["a record with rate"],
    () => all.amountFor?.({ rate: q(2, "fl oz/1000 ft2", "product"), form: "liquid", area: q(5000, "ft2") }),
    [10, "fl oz"],
  ),
  refused(
    "does not say dry or liquid",
    () => all.amountFor?.({ rate: q(2, "fl oz/1000 ft2", "product"), area: q(5000, "ft2") }),
    ['"dry"', '"liquid"'],
    () => all.amountFor?.({ rate: q(2, "fl oz/1000 ft2", "product"), form: "liquid", area: q(5000, "ft2") }),
    [10, "fl oz"],
  ),
  refused(
    "mixes up ounces of a liquid",
    () => all.amountFor?.({ rate: q(2, "oz/1000 ft2", "product"), form: "liquid", area: q(5000, "ft2") }),
    ["a density", "the product is liquid"],
    () => all.amountFor?.({ rate: q(2, "oz/1000 ft2", "product"), form: "dry", area: q(5000, "ft2") }),
    [10, "oz"],
  ),
  works("2 pt per 100 gal", () => all.perVolume?.(q(2, "pt", "product"), q(100, "gal", "spray")), [
    0.02,
    "pt/gal",
  ]),
  refused(
    "calls the label range least and most",
    () =>
      all.labelRate?.({
        least: q(0.5, "fl oz/1000 ft2", "product"),
        most: q(1, "fl oz/1000 ft2", "product"),
      }),
    ["did you mean min?", "did you mean max?"],
    () =>
      all.labelRate?.({
        min: q(0.5, "fl oz/1000 ft2", "product"),
        max: q(1, "fl oz/1000 ft2", "product"),
      }).max,
    [1, "fl oz/1000 ft2"],
  ),
  refused(
    "calls the formulation a kind",
    () => all.loadingOrder?.({ products: [{ id: "a", kind: "WG" }] }),
    ["did you mean formulation?"],
    () => all.loadingOrder?.({ products: [{ id: "a", formulation: "WG" }] }).type,
    "loading-order",
  ),
  refused(
    "calls the products partners",
    () => all.loadingOrder?.({ partners: [{ id: "a", formulation: "WG" }] }),
    ["did you mean products?"],
    () => all.loadingOrder?.({ products: [{ id: "a", formulation: "WG" }] }).type,
    "loading-order",
  ),
  refused(
    "names calcium in full",
    () => all.ammoniumSulfateMinimum?.({ calcium: q(100, "mg/L", "Ca") }),
    ["did you mean Ca?"],
    () => all.hardnessFromIons?.({ Ca: q(100, "mg/L", "Ca"), Mg: q(0, "mg/L", "Mg") }).type === undefined,
    true,
  ),
  refused(
    "measures speed over a distance",
    () => all.groundSpeed?.({ distance: q(88, "ft"), times: [q(20, "s")] }),
    ["did you mean course?"],
    () => all.groundSpeed?.({ course: q(88, "ft"), times: [q(20, "s")] }),
    [3, "mi/h"],
  ),
  refused(
    "measures one time",
    () => all.groundSpeed?.({ course: q(88, "ft"), time: q(20, "s") }),
    ["did you mean times?"],
    () => all.groundSpeed?.({ course: q(88, "ft"), times: [q(20, "s")] }),
    [3, "mi/h"],
  ),
];
