import { deicingRate, pumpCapacity, quantity } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const pump = (boom: Parameters<typeof pumpCapacity>[0]) => pumpCapacity(boom);
const none = quantity(0, "%");

/** The pump of a sprayer. */
export const pumpChecks: readonly PublishedCheck[] = [
  {
    entry: "pump-001",
    formulas: ["pumpCapacity"],
    source: {
      title: "Sprayer pumps",
      publisher: "University of Missouri, Integrated Pest & Crop Management 15(5)",
      year: 2005,
      where: "article 6, example of a medium sprayer",
      url: "http://ppp.missouri.edu/newsletters/ipcm/archives/v15n5/ipmltr6.htm",
    },
    reached: "read",
    given: "60 ft, 8 mph, 20 gal/acre; approximately 20 gal/min",
    answers: [{ of: "gal/min to the boom", printed: 20, to: 2 }],
    compute: () => [
      pump({
        applicationVolume: quantity(20, "gal/acre", "spray"),
        speed: quantity(8, "mi/h"),
        swath: quantity(60, "ft"),
        tank: quantity(500, "gal"),
        agitation: none,
        reserve: none,
      }).boom.in("gal/min"),
    ],
  },
  {
    entry: "pump-002",
    formulas: ["pumpCapacity"],
    source: {
      title: "Spray application manual: pumps and agitation (video, as written down)",
      publisher: "Grains Research and Development Corporation",
      where: "boom of 36 m with 72 nozzles and a tank of 6,500 L",
      url: "https://grdc.com.au/resources-and-publications/grownotes/technical-manuals/spray-application-manual/spray-manual-videos",
    },
    reached: "read",
    given: "72 nozzles at 1 L/min, a tank of 6,500 L of which agitation moves 3 % a minute; about 200 L/min",
    answers: [
      { of: "L/min for agitation", printed: 200, to: 10 },
      { of: "L/min to the boom", printed: 70, to: 10 },
    ],
    compute: () => {
      const { agitation, boom } = pump({
        boom: quantity(72, "L/min", "spray"),
        tank: quantity(6500, "L"),
        agitation: quantity(3, "%"),
        reserve: none,
      });
      return [agitation.in("L/min"), boom.in("L/min")];
    },
  },
];

/** Salt on walks. */
export const deicingChecks: readonly PublishedCheck[] = [
  {
    entry: "ice-001",
    formulas: ["deicingRate"],
    source: {
      title: "Parking lot and sidewalk deicing: application rates by pavement temperature",
      publisher: "DuPage River Salt Creek Workgroup",
      where: "table, read as an excerpt; title paraphrased",
    },
    reached: "read",
    kind: "transcription",
    given: "pavement of 32, 27, 22, 17 and 10 °F",
    answers: [3, 5, 6, 7, 8].map((printed) => ({ of: "lb/1000 ft2", printed, to: 1 })),
    compute: () =>
      [32, 27, 22, 17, 10].map(
        (pavement) =>
          deicingRate({ pavement: quantity(pavement, "°F") }).rate?.in("lb/1000 ft2") ?? Number.NaN,
      ),
  },
];
