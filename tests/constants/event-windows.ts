// When weeds emerge and treatments work, typed a second time from what the sources print.
import { eventWindows, soilTemperatureThresholds } from "../../src/interval/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const read = { room: "interval", reached: "read" } as const;

type WindowCell = readonly [from: number, to: number | undefined, base: number | undefined];
const eventWindow = (id: string, [from, to, base]: WindowCell): readonly Cell[] => {
  const of = () => eventWindows.find((one) => one.id === id);
  const rows: Cell[] = [[`${id}: from`, from, () => of()?.from ?? Number.NaN]];
  if (to !== undefined) rows.push([`${id}: to`, to, () => of()?.to ?? Number.NaN]);
  if (base !== undefined) rows.push([`${id}: base`, base, () => of()?.base?.value ?? Number.NaN]);
  return rows;
};
const windows: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Fidanza et al. 1996, Crop Science 36(4), abstract: base 12 °C, first 42 to 78, major 140 to 230",
    },
    [
      ...eventWindow("smooth crabgrass, first emergence", [42, 78, 12]),
      ...eventWindow("smooth crabgrass, major emergence", [140, 230, 12]),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Crabgrass germination and preemergence programs, Virginia Tech 2008: 70 to 140 units, base 50 °F",
    },
    [...eventWindow("crabgrass, Virginia", [70, 140, 50])],
  ),
  ...cells(
    {
      ...read,
      source:
        "Crabgrass pre-emergence timer, University of Wisconsin: 250-500 GDD; base 32 °F of Michigan State",
    },
    [...eventWindow("crabgrass, pre-emergence application", [250, 500, 32])],
  ),
  ...cells(
    { ...read, source: "Growing degree days in Ohio, BYGL: smooth crabgrass 155, large crabgrass 211" },
    [
      ...eventWindow("smooth crabgrass, Ohio", [155, undefined, undefined]),
      ...eventWindow("large crabgrass, Ohio", [211, undefined, undefined]),
    ],
  ),
  ...cells(
    { ...read, source: "Annual bluegrass seedhead suppression, Rutgers: 200 to 500 GDD from February 15" },
    [...eventWindow("annual bluegrass, seedhead suppression", [200, 500, 32])],
  ),
  ...cells(
    {
      ...read,
      source: "Branham and Danneberger 1989, Agronomy Journal 81(5), abstract: over 86 % between 25 and 125",
    },
    [...eventWindow("Kentucky bluegrass, seedhead suppression", [25, 125, undefined])],
  ),
  ...cells(
    {
      ...read,
      source:
        "Dandelion control recommendation maps, Northeast Regional Climate Center: ester over 145, amine over 180, base 50 °F",
    },
    [
      ...eventWindow("dandelion, ester", [145, undefined, 50]),
      ...eventWindow("dandelion, amine", [180, undefined, 50]),
    ],
  ),
];

const soil = (n: number, event: string, low: number, high = low): readonly Cell[] => [
  [`${event}: low, °F`, low, () => soilTemperatureThresholds[n]?.temperature[0] ?? Number.NaN],
  [`${event}: high, °F`, high, () => soilTemperatureThresholds[n]?.temperature[1] ?? Number.NaN],
];
const soils = cells({ ...read, source: "Importance of soil temps, Georgia, list at 4-inch depth" }, [
  ...soil(0, "crabgrass germination", 53, 58),
  ...soil(1, "goosegrass and spurge germination", 60, 65),
  ...soil(2, "overseeding bermudagrass, planting warm-season grass", 74),
  ...soil(3, "spring root decline", 64),
  ...soil(4, "dormancy begins", 50),
]);

/** Every window by degree-days and by the temperature of the soil. */
export const eventWindowConstants: readonly ConstantCheck[] = [...windows, ...soils];
