import {
  clippingMass,
  clippingVolumeFor,
  coringImpact,
  coringProgram,
  cutsToHeight,
  diameterForCover,
  frequencyOfClip,
  greenSpeed,
  growthRatio,
  mowingSpeedFor,
  passesForShare,
  pestDensity,
  plugsFromSod,
  quantity,
  reelSpeedFor,
  sandForOrganicMatter,
  sodForPlugs,
  topdressing,
} from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const inches = (value: number) => quantity(value, "in");
const percent = (value: number) => quantity(value, "%");

const outside = (diameter: number, along: number, across: number) =>
  coringImpact({
    diameter: inches(diameter),
    measured: "outside",
    spacing: { along: inches(along), across: inches(across) },
  });
const share = (diameter: number, along: number, across: number): number =>
  outside(diameter, along, across).share.in("%");

const trade = {
  title: "A closer look at frequency of clip: how is it calculated?",
  publisher: "Canadian groundskeeper's trade note",
  year: 2013,
  url: "http://www.canadiangroundskeeper.com/blog/2013/03/20/a-closer-look-at-frequency-of-clip-how-is-foc-calculated/",
};
const harvest = {
  title: "Turfgrass growth ratio, nitrogen harvest, and fertilizer adjustment",
  publisher: "Asian Turfgrass Center",
  where: "Estimating nitrogen harvest in clippings",
  url: "https://www.asianturfgrass.com/post/growth-ratio-nitrogen-harvest-and-fertilizer-adjustment/",
};

/** Published examples of coring, sand, reels, clippings, green speed and pest counts. */
export const turfWorkChecks: readonly PublishedCheck[] = [
  {
    entry: "stand-022",
    formulas: ["coringImpact"],
    source: {
      title: "Inside or outside diameter of the tine",
      publisher: "superintendents' forum",
      year: 2013,
      url: "https://test.gcsaa.org/community/forums/forum-groups/permalink/3LrDqp3P1UO1S-pkmVVm9A",
    },
    reached: "read",
    given: "tines of 5/8 in, 0.470 in inside, at 1.5 by 1.5 in",
    answers: [
      { of: "%, outside", printed: 13.63, to: 0.01, printing: "cut" },
      { of: "%, inside", printed: 7.71, to: 0.01 },
    ],
    compute: () => [share(0.625, 1.5, 1.5), share(0.47, 1.5, 1.5)],
  },
  {
    entry: "stand-023",
    formulas: ["coringImpact"],
    source: {
      title: "Greens aerification update",
      publisher: "notes of a golf course superintendent",
      year: 2012,
      url: "http://laurelcreeksuper.blogspot.com/2012/08/greens-aerification-update.html",
    },
    reached: "read",
    given: "tines of 1/4 in, 81 holes per ft2",
    answers: [{ of: "%", printed: 2.76, to: 0.01 }],
    compute: () => [
      coringImpact({
        diameter: inches(0.25),
        measured: "outside",
        holesPerArea: quantity(81, "count/ft2"),
      }).share.in("%"),
    ],
  },
  {
    entry: "stand-024",
    formulas: ["coringImpact"],
    source: {
      title: "Spring greens aerification",
      publisher: "notes of a golf course superintendent",
      year: 2012,
      url: "https://greystonelegacycourseoperations.blogspot.com/2012/03/spring-greens-aerification.html",
    },
    reached: "read",
    given: "tines of 0.5 in at 1.60 by 1.87 in, and at 2 by 2.5 in",
    answers: [
      {
        of: "%",
        printed: 6.59,
        to: 0.01,
        wrong: { right: 6.56, why: "0.19635 / (1.60 x 1.87) is 0.06563" },
      },
      { of: "%", printed: 3.93, to: 0.01 },
    ],
    compute: () => [share(0.5, 1.6, 1.87), share(0.5, 2, 2.5)],
  },
  {
    entry: "stand-025",
    formulas: ["coringImpact", "passesForShare"],
    source: {
      title: "Aerification percentages",
      publisher: "notes of a golf course superintendent",
      year: 2016,
      url: "http://highlandsccgolfmaintenance.blogspot.com/2016/09/aerification-percentages.html",
    },
    reached: "read",
    given: "3/4 in at 1.5 in and at 2 in; how often a year for 20 %, and with 1/4 in at 1.5 in",
    answers: [
      {
        of: "%",
        printed: 19.5,
        to: 0.1,
        wrong: { right: 19.6, why: "0.44179 / 2.25 is 0.1963" },
      },
      { of: "%", printed: 11, to: 1 },
      { of: "passes, 3/4 in at 2 in", printed: 2, to: 1 },
      { of: "passes, 1/4 in at 1.5 in", printed: 10, to: 1 },
    ],
    compute: () => [
      share(0.75, 1.5, 1.5),
      share(0.75, 2, 2),
      passesForShare({ target: percent(20), share: percent(share(0.75, 2, 2)) }),
      passesForShare({ target: percent(20), share: percent(share(0.25, 1.5, 1.5)) }),
    ],
  },
  {
    entry: "stand-026",
    formulas: ["coringImpact", "coringProgram"],
    source: {
      title: "Some pictures from aerification",
      publisher: "notes of a golf course superintendent",
      year: 2011,
      url: "http://woccgolfcoursemanagement.blogspot.com/2011/03/some-pictures-from-aerification.html",
    },
    reached: "read",
    given: "tines of 1/2 in at 1.5 by 1.33 in, then at 2 by 1.33 in",
    answers: [
      { of: "holes/ft2", printed: 72, to: 1 },
      { of: "holes/ft2", printed: 54, to: 1 },
      { of: "%", printed: 9.8, to: 0.1, printing: "cut" },
      { of: "%", printed: 7.3, to: 0.1, printing: "cut" },
      {
        of: "% in all",
        printed: 17.1,
        to: 0.1,
        wrong: { right: 17.2, why: "the two shares were cut before they were added" },
      },
    ],
    compute: () => {
      const hole = { diameter: inches(0.5), measured: "outside" } as const;
      const year = coringProgram({
        passes: [
          { ...hole, spacing: { along: inches(1.5), across: inches(1.33) } },
          { ...hole, spacing: { along: inches(2), across: inches(1.33) } },
        ],
        target: percent(20),
      });
      const holes = (along: number): number => outside(0.5, along, 1.33).holesPerArea.in("count/ft2");
      return [holes(1.5), holes(2), ...year.shares.map((one) => one.in("%")), year.sum.in("%")];
    },
  },
  {
    entry: "stand-027",
    formulas: ["coringImpact"],
    source: {
      title: "Cultivation goals",
      publisher: "Iowa State University, in a laboratory's newsletter",
      year: 2004,
      url: "http://turfdiag.com/core-aeration",
    },
    reached: "read",
    given: "passes on 3 in centers that take 50 % of the surface, by tines of 1/2 in and 3/4 in",
    answers: [
      { of: "passes, 1/2 in", printed: 22, to: 1, printing: "cut" },
      { of: "passes, 3/4 in", printed: 10, to: 1, printing: "cut" },
    ],
    compute: () => [50 / share(0.5, 3, 3), 50 / share(0.75, 3, 3)],
    note: "The tables cut to whole passes, which stop short of 50 %; passesForShare rounds up to 23 and 11.",
  },
  {
    entry: "stand-028",
    formulas: ["topdressing"],
    source: {
      title:
        "Sand topdressing of an annual bluegrass putting green, Table 1: sand topdressing rate unit conversions",
      publisher: "International Turfgrass Society Research Journal (figures and tables)",
      url: "https://maxapress.com/app/figure_table/6791b5eefa6c58500c8b732b",
    },
    reached: "read",
    given: "1 L/m2 of sand of 100 lb/ft3",
    answers: [
      { of: "ft3/1000 ft2", printed: 3.28, to: 0.01 },
      { of: "gal/1000 ft2", printed: 24.5, to: 0.1 },
      {
        of: "kg/m2",
        printed: 1.54,
        to: 0.01,
        wrong: { right: 1.6, why: "328 lb/1000 ft2, printed beside it, are 1.60 kg/m2" },
      },
      { of: "yd3/1000 ft2", printed: 0.122, to: 0.001 },
      { of: "lb/1000 ft2", printed: 328, to: 1 },
      { of: "short tons/acre", printed: 7.15, to: 0.01 },
      { of: "t/ha", printed: 16, to: 0.1 },
      { of: "in", printed: 0.0394, to: 0.0001 },
    ],
    compute: () => {
      const area = quantity(1000, "ft2");
      const sand = topdressing({
        area,
        perArea: quantity(1, "L/m2"),
        density: quantity(100, "lb/ft3"),
      });
      const weight = (sand.weight ?? quantity(0, "lb")).per(area);
      return [
        sand.perArea.in("ft3/1000 ft2"),
        sand.perArea.in("gal/1000 ft2"),
        weight.in("kg/m2"),
        sand.volume.in("yd3"),
        weight.in("lb/1000 ft2"),
        weight.in("US ton/acre"),
        weight.in("t/ha"),
        sand.depth.in("in"),
      ];
    },
  },
  {
    entry: "site-037",
    formulas: ["topdressing"],
    source: {
      title: "Too easy to take for granted",
      publisher: "USGA Green Section, regional update",
      year: 2014,
    },
    reached: "read",
    given: "sand of 0.005 and 0.020 in",
    answers: [
      {
        of: "ft3/1000 ft2",
        printed: 0.5,
        to: 0.1,
        wrong: { right: 0.4, why: "the text takes 0.01 in for 1 ft3/1000 ft2; it is 0.83" },
      },
      {
        of: "ft3/1000 ft2",
        printed: 2,
        to: 0.1,
        wrong: { right: 1.7, why: "the text takes 0.01 in for 1 ft3/1000 ft2; it is 0.83" },
      },
    ],
    compute: () =>
      [0.005, 0.02].map((depth) =>
        topdressing({ area: quantity(1000, "ft2"), depth: inches(depth) }).perArea.in("ft3/1000 ft2"),
      ),
  },
  {
    entry: "stand-029",
    formulas: ["frequencyOfClip", "reelSpeedFor", "mowingSpeedFor"],
    source: trade,
    reached: "read",
    given: "6 km/h (3.8 mph), 15 blades, 2200 turns a minute; and each of them from the clip in inches",
    answers: [
      {
        of: "mm",
        printed: 3.098,
        to: 0.001,
        wrong: { right: 3.03, why: "3.098 is 0.122 in turned into mm; 6 km/h make 3.030 mm" },
      },
      { of: "in", printed: 0.122, to: 0.001 },
      { of: "turns/min", printed: 2200, to: 100 },
      { of: "mph", printed: 3.8, to: 0.1 },
    ],
    compute: () => {
      const reelSpeed = quantity(2200, "1/min");
      const speed = quantity(3.8, "mi/h");
      const clip = inches(0.122);
      return [
        frequencyOfClip({ speed: quantity(6, "km/h"), blades: 15, reelSpeed }).in("mm"),
        frequencyOfClip({ speed, blades: 15, reelSpeed }).in("in"),
        reelSpeedFor({ speed, blades: 15, clip }).in("1/min"),
        mowingSpeedFor({ reelSpeed, blades: 15, clip }).in("mi/h"),
      ];
    },
  },
  {
    entry: "stand-030",
    formulas: ["clippingMass", "clippingVolumeFor"],
    source: harvest,
    reached: "read",
    given: "1000 cm3 of clippings, 4 % nitrogen; and the clippings that 1 g/m2 of nitrogen makes",
    answers: [
      { of: "g dry", printed: 60, to: 1 },
      { of: "g of nitrogen", printed: 2.4, to: 0.1 },
      { of: "mL/m2", printed: 420, to: 10 },
      { of: "g/m2 dry", printed: 25, to: 1 },
    ],
    compute: () => {
      const bucket = clippingMass({
        clippings: quantity(1, "L"),
        dryMass: quantity(0.06, "g/mL"),
        nitrogen: percent(4),
      });
      const volume = clippingVolumeFor({
        nitrogen: quantity(1, "g/m2", "N"),
        dryMass: "bentgrass",
        share: percent(4),
      });
      const green = clippingMass({ clippings: volume, dryMass: "bentgrass", nitrogen: percent(4) });
      return [bucket.dryMass.in("g"), bucket.nitrogen.in("g"), volume.in("mL/m2"), green.dryMass.in("g/m2")];
    },
  },
  {
    entry: "stand-031",
    formulas: ["clippingMass"],
    source: {
      title: "Converting clipping volume to dry weight",
      publisher: "Asian Turfgrass Center",
      url: "https://asianturfgrass.com/post/converting-clipping-volume-to-dry-weight",
    },
    reached: "read",
    kind: "transcription",
    given: "a liter of bentgrass, bermudagrass and manilagrass clippings",
    answers: [60, 60, 110].map((printed) => ({ of: "g dry", printed, to: 10 })),
    compute: () =>
      (["bentgrass", "bermudagrass", "manilagrass"] as const).map((dryMass) =>
        clippingMass({ clippings: quantity(1, "L"), dryMass, nitrogen: percent(4) }).dryMass.in("g"),
      ),
  },
  {
    entry: "stand-032",
    formulas: ["clippingMass"],
    source: {
      title: "Flipping things around",
      publisher: "Asian Turfgrass Center",
      url: "https://www.asianturfgrass.com/post/flipping-things-around/",
    },
    reached: "read",
    given: "45 L/100 m2 of creeping bentgrass in a month: nitrogen, printed as just over 1",
    answers: [{ of: "g/m2 of nitrogen", printed: 1, to: 1, printing: "cut" }],
    compute: () => [
      clippingMass({
        clippings: quantity(45, "L/100 m2"),
        dryMass: "bentgrass",
        nitrogen: percent(4),
      }).nitrogen.in("g/m2"),
    ],
  },
  {
    entry: "stand-033",
    formulas: ["growthRatio"],
    source: {
      title: "Clipping volume, green speed, and units",
      publisher: "Asian Turfgrass Center",
      year: 2018,
      url: "https://asianturfgrass.com/2018-03-25-clipping-volume-green-speed-and-units",
    },
    reached: "read",
    given: "1 L/100 m2 against 1 mL/m2, over one day each",
    answers: [{ of: "times", printed: 10, to: 1 }],
    compute: () => {
      const time = quantity(1, "d");
      const measured = { volume: quantity(1, "L/100 m2"), time };
      return [growthRatio({ measured, wanted: { volume: quantity(1, "mL/m2"), time } }).ratio];
    },
  },
  {
    entry: "stand-034",
    formulas: ["pestDensity"],
    source: {
      title: "White grubs: monitoring",
      publisher: "copy of an extension text",
      url: "https://userz.net/post/4a3cbe6d9f05f07105d63ec6344e0fff",
    },
    reached: "read",
    given: "a core of a cup cutter (4 1/4 in): its area, and what one grub a core stands for",
    answers: [
      { of: "ft2", printed: 0.1, to: 0.1 },
      { of: "per ft2", printed: 10, to: 1 },
    ],
    compute: () => {
      const counts = Array<number>(10).fill(1);
      const found = pestDensity({ counts, core: { diameter: inches(4.25) } });
      return [found.coreArea.in("ft2"), found.density.in("count/ft2")];
    },
  },
  {
    entry: "stand-035",
    formulas: ["greenSpeed"],
    source: {
      title: "Course rating manual",
      publisher: "USGA",
      where: "green speed corrected for green slope; the formula was read, the figures are worked by hand",
      url: "https://issuu.com/golf-iceland/docs/course-rating-manual/37",
    },
    reached: "derived",
    given: "8 ft uphill, 12 ft downhill",
    answers: [{ of: "ft", printed: 9.6, to: 0.1 }],
    compute: () => [greenSpeed({ up: [quantity(8, "ft")], down: [quantity(12, "ft")] }).level.in("ft")],
  },
  {
    entry: "stand-036",
    formulas: ["sandForOrganicMatter"],
    source: {
      title: "Sand topdressing to clipping volume ratios",
      publisher: "Asian Turfgrass Center",
      where: "the formula, read in a copy; the figure is worked by hand",
      year: 2026,
    },
    reached: "derived",
    given: "1 L/m2 of clippings, 6 % organic matter",
    answers: [{ of: "mm", printed: 1.66, to: 0.01 }],
    compute: () => [
      sandForOrganicMatter({ clippings: quantity(1, "L/m2"), organicMatter: percent(6) }).depth.in("mm"),
    ],
  },
  {
    entry: "interval-071",
    formulas: ["cutsToHeight"],
    source: {
      title: "How often should I mow my lawn?",
      publisher: "Iowa State University Extension",
      where: "answer: kept at 3 in, mown at 4 1/2 in",
      url: "https://hortnews.extension.iastate.edu/faq/how-often-should-i-mow-my-lawn",
    },
    reached: "read",
    given: "4 1/2 in cut down to 3 in by thirds: how many cuts, and to what",
    answers: [
      { of: "cuts", printed: 1, to: 1 },
      { of: "in", printed: 3, to: 1 },
    ],
    compute: () => {
      const heights = cutsToHeight({ standing: inches(4.5), cut: inches(3) });
      return [heights.length, heights[0]?.in("in") ?? 0];
    },
  },
  {
    entry: "site-052",
    formulas: ["plugsFromSod", "sodForPlugs"],
    source: { title: "Geometry of plugs", publisher: "worked by hand" },
    reached: "derived",
    given: "plugs of 2 and 4 in out of 1 ft2; sod for 4000 and 1000 plugs of 2 in",
    answers: [
      { of: "plugs", printed: 36, to: 1 },
      { of: "plugs", printed: 9, to: 1 },
      { of: "ft2", printed: 111.1, to: 0.1 },
      { of: "ft2", printed: 27.8, to: 0.1 },
    ],
    compute: () => {
      const piece = { length: inches(12), width: inches(12) };
      return [
        ...[2, 4].map((side) => plugsFromSod({ piece, plug: { side: inches(side) } })),
        ...[4000, 1000].map((plugs) => sodForPlugs({ plugs, plug: { side: inches(2) } }).in("ft2")),
      ];
    },
  },
  {
    entry: "stand-021",
    formulas: ["diameterForCover"],
    source: {
      title: "Circle packing: square and hexagonal packings",
      publisher: "teaching page on circle packing",
    },
    reached: "read",
    given: "circles at 12 in that cover 78.54 % (square) and 90.69 % (hexagonal): they just touch",
    answers: [
      { of: "in", printed: 12, to: 0.01 },
      { of: "in", printed: 12, to: 0.01 },
    ],
    compute: () => [
      diameterForCover({ pattern: "square", spacing: inches(12), cover: percent(78.54) }).in("in"),
      diameterForCover({ pattern: "triangular", spacing: inches(12), cover: percent(90.69) }).in("in"),
    ],
  },
  {
    entry: "stand-039",
    formulas: ["coringImpact"],
    source: {
      title: "Aeration figures, October 2013",
      publisher: "wgccturftrends (blog of a golf course superintendent)",
      year: 2013,
      where: "holes, share of the surface and sand of tines of 0.4 in",
    },
    reached: "read",
    given: "tines of 0.4 in, 2 by 1.33 in apart, 3 in deep",
    answers: [
      { of: "holes/ft2", printed: 54, to: 1 },
      { of: "%", printed: 4.72, to: 0.01 },
      {
        of: "ft3/1000 ft2",
        printed: 9.84,
        to: 0.01,
        wrong: { right: 11.81, why: "9.84 is the volume to 2.5 in" },
      },
    ],
    compute: () => {
      const pass = coringImpact({
        diameter: inches(0.4),
        measured: "outside",
        depth: inches(3),
        spacing: { along: inches(2), across: inches(1.33) },
      });
      return [
        pass.holesPerArea.in("count/ft2"),
        pass.share.in("%"),
        pass.volumePerArea?.in("ft3/1000 ft2") ?? Number.NaN,
      ];
    },
  },
];
