/**
 * The park's meadow from plugs: covered by when; and the watering of one week in July.
 *
 * The daily temperatures and rain are those of Seattle, 2012 to 2015, from the daily summaries of the United States
 * National Oceanic and Atmospheric Administration (NOAA), as the npm package `vega-datasets` carries them in
 * `data/seattle-weather.csv`. The park, its plugs, its covers and its watering days are invented.
 */
import { readFileSync } from "node:fs";
import {
  addDays,
  coverOverTime,
  cycleAndSoak,
  dailyTemperatures,
  effectiveRain,
  hargreavesSeries,
  quantity,
  soilIntake,
  spacingForCover,
  spreadRateFromCover,
  sum,
  turfCoefficient,
  turfUse,
  wateringWeek,
} from "ratewright";

const here = new URL(".", import.meta.url);
const csv = readFileSync(new URL("../../node_modules/vega-datasets/data/seattle-weather.csv", here), "utf8");
const [header, ...rows] = csv.trim().split("\n");
const columns = (header as string).split(",");
const year = rows
  .map((row) => row.split(","))
  .filter(([date]) => date?.startsWith("2015-"))
  .map((cells) => (name: string) => Number(cells[columns.indexOf(name)]));

const source = "NOAA daily summaries, Seattle, in vega-datasets seattle-weather.csv";
const temperatures = dailyTemperatures({
  start: "2015-01-01",
  unit: "°C",
  sensor: "air",
  min: year.map((day) => day("temp_min")),
  max: year.map((day) => day("temp_max")),
  source,
});

// The meadow: 2 in plugs, 12 in apart in a square, at 4 % cover on June 1 and at 18 % on July 6.
const pattern = { pattern: "square", spacing: quantity(12, "in") } as const;
const seen = spreadRateFromCover({
  ...pattern,
  before: quantity(4, "%"),
  after: quantity(18, "%"),
  time: quantity(35, "d"),
  potential: quantity(80, "%"),
});
const conditions = {
  spread: {
    low: seen.times(0.8),
    mid: seen,
    high: seen.times(1.2),
    source: "cover counted on June 1 and July 6",
  },
  factors: { regulator: { share: quantity(100, "%"), source: "none in use" } },
  growth: { season: "cool-season", observed: temperatures },
} as const;
const growIn = coverOverTime({
  start: { ...pattern, cover: quantity(18, "%") },
  from: "2015-07-06",
  to: "2015-12-31",
  ...conditions,
});
const closer = spacingForCover({
  plug: { side: quantity(2, "in") },
  pattern: "square",
  from: "2015-05-20",
  by: "2015-09-15",
  cover: quantity(90, "%"),
  ...conditions,
});

// One week of watering, from Monday July 6: what the turf uses, less the rain that counts, on three days.
const first = "2015-07-06";
const week = Array.from({ length: 7 }, (_, i) => addDays(first, i));
const reference = hargreavesSeries({ temperatures, latitude: quantity(47.61, "deg") });
const july = turfCoefficient({ season: "cool-season", list: "California, by month", month: 7 });
const place = (date: string): number => (Date.parse(date) - Date.parse("2015-01-01")) / 86_400_000;
const need = sum(
  week.map((date) =>
    turfUse({
      reference: quantity(reference.values[place(date)] as number, "mm/d"),
      coefficient: july.value,
    }).times(quantity(1, "d")),
  ),
);
const rain = sum(week.map((date) => quantity(year[place(date)]?.("precipitation") as number, "mm")));
// 80 % of the rain counts: common practice, no source.
const counted = effectiveRain({ method: "fixed share", rain, share: quantity(80, "%") });
const zone = quantity(0.6, "in/h");
const plan = wateringWeek({ need, rain: counted, days: [1, 3, 6], rate: zone });
const soil = soilIntake({ soil: "clay loam", slope: quantity(5, "% grade") });
const dayNames = ["", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

const inches = (q: { in(unit: "in"): number }): string => `${q.in("in").toFixed(2)} in`;
const minutes = (q: { in(unit: "min"): number }): string => `${Math.round(q.in("min"))} min`;
const indented = (text: string): string => text.replace(/(.{1,68})(?: |$)/g, "    $1\n").trimEnd();

const lines = [
  "MEADOW FROM PLUGS",
  `  Spread seen on this ground, at its best: ${seen.in("in/week").toFixed(2)} in a week.`,
  ...growIn.reached.map(
    ({ cover, earliest, mid, latest }) =>
      `  ${cover.in("%")} % covered: ${mid ?? "not this year"} (early ${earliest ?? "not this year"}, late ${latest ?? "not this year"})`,
  ),
  `  For 90 % by September 15, the plugs had to stand ${closer.mid.spacing.in("in").toFixed(1)} in apart on May 20.`,
  "  This rests on:",
  ...growIn.restsOn.map(({ what, source: who }) => indented(`${what}: ${who}`)),
  "  Not known:",
  ...growIn.notChecked.map(indented),
  "",
  `WATERING, ZONE 1, WEEK OF ${first}`,
  `  The turf uses ${inches(need)} (Hargreaves, coefficient ${july.value}).`,
  `  Rain ${inches(rain)}, of which ${inches(counted)} counts. To water: ${inches(plan.net)}.`,
  ...plan.days.flatMap(({ weekday, runTime }) => {
    const soak = cycleAndSoak({ runTime, rate: zone, intake: soil.intake, storage: soil.storage });
    return [
      `  ${dayNames[weekday]}: ${minutes(runTime)} in all` +
        (soak.cycles === 1
          ? ""
          : `, ${soak.cycles} x ${minutes(soak.cycle)} with ${minutes(soak.soak)} of soaking between`),
    ];
  }),
  "  The utility's hours and any drought order come first; water when the soil says so, not by the table.",
];
process.stdout.write(`${lines.join("\n")}\n`);
