/**
 * The sheet of a visit to an invented park, with real weather.
 *
 * The daily temperatures are those of Seattle, 2012 to 2015, from the daily summaries of the United States
 * National Oceanic and Atmospheric Administration (NOAA), as the npm package `vega-datasets` carries them
 * in `data/seattle-weather.csv`. `--office` prints the copy for the office, `--html` the page to print, `--json` the
 * work order as data. The park, its products, its limits and its log are invented.
 */
import { readFileSync } from "node:fs";
import { type Job, problemText, tryWorkOrder, workOrderHtml, workOrderText } from "ratewright";

const here = new URL(".", import.meta.url);
const job = JSON.parse(readFileSync(new URL("job.json", here), "utf8")) as Job;

const csv = readFileSync(new URL("../../node_modules/vega-datasets/data/seattle-weather.csv", here), "utf8");
const [header, ...rows] = csv.trim().split("\n");
const columns = (header as string).split(",");
const column = (row: string, name: string): string => row.split(",")[columns.indexOf(name)] as string;
const year = rows.filter((row) => column(row, "date").startsWith("2015-"));

const result = tryWorkOrder({
  ...job,
  temperatures: {
    type: "daily-temperatures",
    version: 1,
    start: "2015-01-01",
    unit: "°C",
    sensor: "air",
    min: year.map((row) => Number(column(row, "temp_min"))),
    max: year.map((row) => Number(column(row, "temp_max"))),
    source: "NOAA daily summaries, Seattle, in vega-datasets seattle-weather.csv",
  },
});

const asked = (word: string): boolean => process.argv.includes(word);
const copy = asked("--office") ? "office" : "shed";

if (result.order !== null) {
  process.stdout.write(
    asked("--json")
      ? JSON.stringify(result.order, null, 2)
      : asked("--html")
        ? workOrderHtml(result.order, { copy })
        : workOrderText(result.order, { copy }),
  );
} else {
  process.stderr.write(`${result.problems.map(problemText).join("\n")}\n`);
  process.exitCode = 1;
}
