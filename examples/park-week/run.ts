/**
 * A week of an invented park: the route of Tuesday, what to buy for the season, the groups of its fungicides, the weather
 * that favors diseases and brings insects, and the price of the route.
 *
 * The daily temperatures are those of New York, 2015, from the daily summaries of the United States National Oceanic and
 * Atmospheric Administration (NOAA), a work of the United States government, as the npm package `vega-datasets` (BSD
 * 3-Clause) carries them in `data/weather.csv`. They hold no humidity: the night is taken to cool to the dew point
 * (FAO Irrigation and Drainage Paper 56, equation 48), which stands beside the figures. The park, its lawns, products,
 * stock, prices and wages are invented.
 */
import { readFileSync } from "node:fs";
import {
  brownPatchOutlook,
  type CivilDate,
  type DiseaseOutlook,
  dailyMeans,
  dailySeries,
  dailyTemperatures,
  dateReached,
  dollarSpotOutlook,
  humidityFromDewPoint,
  insectModel,
  insectTargets,
  ledger,
  loadedWage,
  money,
  type ProductNeed,
  purchaseList,
  quantity,
  type RouteJob,
  resistanceRotation,
  routeOrder,
  routeText,
  stockOnHand,
  visitPrice,
} from "ratewright";

const here = new URL(".", import.meta.url);
const route = JSON.parse(readFileSync(new URL("route.json", here), "utf8")) as RouteJob;
const out: string[] = [];
const say = (...lines: readonly string[]): void => void out.push(...lines);

// The route: the sheet of the crew, and the entries for the ledgers.
const order = routeOrder(route);
say(routeText(route));

// The purchase list: this route every three weeks from April to September, and what the books say is in the store.
const days: readonly CivilDate[] = ["2015-06-09", "2015-06-30", "2015-07-21", "2015-08-11", "2015-09-01"];
const needs: readonly ProductNeed[] = days.flatMap((date) =>
  (order.spray?.products ?? []).map(({ product, amount }) => ({ product, date, site: "the route", amount })),
);
const spring = ledger(
  ["iron", "wetter"].map((product, i) => ({
    id: `spring ${product}`,
    date: "2015-05-19" as CivilDate,
    product,
    area: { value: 64_300, unit: "ft2" },
    rate: { value: i === 0 ? 3 : 6, unit: "fl oz/1000 ft2" },
  })),
);
const stock = stockOnHand({
  received: [
    { product: "iron", date: "2015-03-02", amount: quantity(5, "gal") },
    { product: "wetter", date: "2015-03-02", amount: quantity(7.5, "gal") },
  ],
  ledgers: [spring],
  on: "2015-06-08",
});
const inStore = (id: string) =>
  stock.products.find(({ product }) => product === id)?.onHand ?? quantity(0, "gal");
const jug = quantity(2.5, "gal");
const buy = purchaseList<"USD">({
  needs,
  products: [
    {
      id: "iron",
      package: jug,
      stock: inStore("iron"),
      leadTime: quantity(10, "d"),
      prices: [
        { from: 1, price: money(42, "USD") },
        { from: 6, price: money(38, "USD") },
      ],
    },
    {
      id: "wetter",
      package: jug,
      stock: inStore("wetter"),
      leadTime: quantity(10, "d"),
      prices: [
        { from: 1, price: money(118, "USD") },
        { from: 8, price: money(104, "USD") },
      ],
    },
  ],
  orderedOn: "2015-06-08",
});
const gallons = ({ value, unit, of }: { value: number; unit: string; of: string }): string =>
  `${quantity(value, unit as "gal", of as "product")
    .in("gal")
    .toFixed(2)} gal`;
say(
  "TO BUY FOR THE SEASON",

  ...buy.lines.map(
    ({ product, need, stock: there, once, perVisit, orderBy }) =>
      `  ${product}: needs ${gallons(need)}, in store ${gallons(there)}: ${once.packages} jugs by ${orderBy ?? "no date"}, ${gallons(once.leftOver)} left over (bought for each day by itself: ${perVisit.packages} jugs, ${gallons(perVisit.leftOver)} left over)`,
  ),
  `  In all ${buy.cost?.value.toFixed(2)} USD; day by day ${buy.perVisitCost?.value.toFixed(2)} USD.`,
  ...buy.findings.map(({ text }) => `  ! ${text}`),
  "",
);

// The groups of the season's fungicides on the bowling green, and what another spray would make of them.
const sprays = ledger([
  { id: "f1", date: "2015-05-04", activeIngredient: "propiconazole" },
  { id: "f2", date: "2015-05-18", activeIngredient: "azoxystrobin + propiconazole" },
  { id: "f3", date: "2015-06-01", activeIngredient: "chlorothalonil" },
]);
const times = (count: number): string => (count === 1 ? "once" : `${count} times`);
const rotation = resistanceRotation({
  ledger: sprays,
  planned: [{ date: "2015-06-15", actives: ["tebuconazole"] }],
  from: "2015-01-01",
  to: "2015-12-31",
  on: "2015-06-20",
});
say(
  "FUNGICIDE GROUPS ON THE BOWLING LAWN, with a spray planned for 2015-06-15",
  ...rotation.groups.map(
    ({ group, applications, longestRun, share }) =>
      `  group ${group}: applied ${times(applications)}, at most ${longestRun.applications} in a row, ${share.value.toFixed(0)} % of all`,
  ),
  `  Multi-site codes, counted apart: ${rotation.multiSite.map(({ group }) => group).join(", ")}`,
  "",
);

// The weather of the year.
const csv = readFileSync(new URL("../../node_modules/vega-datasets/data/weather.csv", here), "utf8");
const [header, ...rows] = csv.trim().split("\n");
const columns = (header as string).split(",");
const year = rows
  .map((row) => row.split(","))
  .filter(([place, date]) => place === "New York" && date?.startsWith("2015-"));
const column = (name: string): readonly number[] => year.map((cells) => Number(cells[columns.indexOf(name)]));
const [low, high] = [column("temp_min"), column("temp_max")];
const station = {
  start: "2015-01-01",
  source: "NOAA daily summaries, New York, in vega-datasets weather.csv",
} as const;
const air = dailyTemperatures({ ...station, unit: "°C", sensor: "air", min: low, max: high });
const humidity = dailySeries({
  ...station,
  unit: "%",
  what: "relative humidity, with the lowest temperature as dew point",
  values: low.map((dew, i) =>
    humidityFromDewPoint({
      temperature: quantity((dew + (high[i] as number)) / 2, "°C"),
      dewPoint: quantity(dew, "°C"),
    }).in("%"),
  ),
});
const lows = dailySeries({ ...station, unit: "°C", what: "lowest air temperature", values: low });
const week = (date: string): boolean => date >= "2015-06-08" && date <= "2015-06-14";
const dayCount = (count: number): string => (count === 1 ? "1 day" : `${count} days`);
const told = ({ disease, action, days: all, findings, measure }: DiseaseOutlook): readonly string[] => [
  `  ${disease}, ${measure}, action at ${action}: ${all
    .filter(({ date }) => week(date))
    .map(({ value }) => value?.toFixed(1) ?? "?")
    .join(
      ", ",
    )}; at or above on ${dayCount(all.filter(({ atOrAboveAction }) => atOrAboveAction).length)} of the year`,
  ...findings.map(({ text }) => `  ! ${text}`),
];
say(
  "WEATHER OF THE WEEK OF 2015-06-08 (humidity from the night's low as dew point, not measured)",
  ...told(dollarSpotOutlook({ temperature: dailyMeans(air), humidity })),
  ...told(brownPatchOutlook({ minimum: lows, humidity })),
  "",
);

// Insects: the bluegrass billbug of the eastern United States. What the source of the record does not state is assumed, and told.
const [billbug] = insectTargets.filter(({ id }) => id === "bluegrass billbug, first adults, eastern model");
if (billbug === undefined) throw new Error("no such record");
const counted = insectModel({
  target: billbug,
  assume: { method: "simple average", upper: "none", sensor: "air" },
});
const { model, from: threshold, findings: scouting } = counted;
const reached = dateReached({ series: air, model, from: "2015-03-01", threshold });
say(
  "INSECTS, WHEN TO SCOUT",
  `  ${billbug.insect}, ${billbug.event}: ${threshold.in("°C d").toFixed(0)} °C d reached on ${reached.reached ? reached.date : "no day of the record"}`,
  ...scouting.map(({ text }) => `  ! ${text}`),
  "",
);

// The price of the route; what goes out of each jug costs its share of the price.
const used = (id: string): number =>
  quantity(order.spray?.products.find(({ product }) => product === id)?.amount.value ?? 0, "fl oz").in("gal");
const hour = quantity(1, "h");
const usd = (value: number) => money(value, "USD");
const percent = (value: number) => quantity(value, "%");
const wage = loadedWage({
  wage: usd(19).per(hour),
  overtime: percent(5),
  risk: percent(10),
  burden: percent(22),
});
const price = visitPrice({
  manHours: quantity(7, "h"),
  wage: wage.cost,
  machines: [{ name: "spray rig", hours: quantity(4, "h"), rate: usd(24).per(hour) }],
  products: [
    { name: "iron", cost: usd((used("iron") * 42) / 2.5) },
    { name: "wetting agent", cost: usd((used("wetter") * 118) / 2.5) },
  ],
  overhead: usd(12).per(hour),
  aim: { margin: percent(15) },
  area: quantity(order.loads.area.in("1000 ft2"), "1000 ft2"),
});
say(
  "PRICE OF THE ROUTE",
  `  Break-even ${price.breakEven.value.toFixed(2)} USD, price ${price.price.value.toFixed(2)} USD at a margin of ${price.margin.in("%").toFixed(0)} % (a markup of ${price.markup.in("%").toFixed(1)} %), ${price.perArea?.value.toFixed(2)} USD per 1,000 sq ft.`,
);
process.stdout.write(`${out.join("\n")}\n`);
