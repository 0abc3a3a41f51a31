// The code of an imaginary app for a park's grounds crew, of a usual size: what `npm run budget` compiles.
import {
  addDays,
  type CivilDate,
  degreeDayModel,
  degreeDays,
  type Fertilizer,
  fertilizer,
  format,
  isUnit,
  nutrientsSupplied,
  packagesFor,
  parseQuantity,
  productRate,
  type Quantity,
  quantity,
  quantityFrom,
  RatewrightError,
  readQuantity,
  rectangleArea,
  sum,
  tankLoads,
  unitsOf,
} from "ratewright";

// --- the site -------------------------------------------------------------------------------------------

interface Lawn {
  readonly name: string;
  readonly area: Quantity<"area", "none">;
}

const pitchNorth: Lawn = {
  name: "practice pitch north",
  area: rectangleArea({ length: quantity(100, "yd"), width: quantity(60, "yd") }),
};
const pitchSouth: Lawn = {
  name: "practice pitch south",
  area: rectangleArea({ length: quantity(90, "m"), width: quantity(55, "m") }),
};
const bowling: Lawn = { name: "bowling green", area: quantity(14_400, "ft2") };
const lawns: readonly Lawn[] = [pitchNorth, pitchSouth, bowling];

export const totalArea = sum(lawns.map(({ area }) => area));
export const totalAcres: number = totalArea.in("acre");

// --- feeding --------------------------------------------------------------------------------------------

const granular = fertilizer({
  id: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
  package: quantity(50, "lb"),
});
const starter = fertilizer({ id: "feed-b", analysis: "12-24-8", package: quantity(25, "kg") });

const target = quantity(0.9, "lb/1000 ft2", "N");
const rate = productRate(target, granular);
export const rateOnScreen: string = `${rate.in("lb/1000 ft2")} lb per 1000 ft2, ${rate.in("kg/ha")} kg/ha`;

const need = rate.times(bowling.area);
export const bags: number = packagesFor(need, granular).count;
const starterRate = productRate(quantity(49, "kg/ha", "P2O5"), starter);
const starterNeed = starterRate.times(pitchSouth.area);
export const starterBags: number = packagesFor(starterNeed, starter).count;

const supplied = nutrientsSupplied(need, granular);
export const nitrogen: number | undefined = supplied.N?.in("lb");

export interface FeedLine {
  readonly lawn: string;
  readonly product: string;
  readonly pounds: number;
  readonly perArea: string;
}

export const feedPlan = (product: Fertilizer): readonly FeedLine[] =>
  lawns.map(({ name, area }) => {
    const onTurf = productRate(target, product);
    return {
      lawn: name,
      product: product.id,
      pounds: onTurf.times(area).in("lb"),
      perArea: format(onTurf, { unit: "lb/1000 ft2" }),
    };
  });

// --- cost -----------------------------------------------------------------------------------------------

const price = quantity(32, "money:USD").per(quantity(50, "lb", "product:feed-a"));
export const costOfBowling: number = price.times(need).in("money:USD");
const pricePerPoundOfN = quantity(32, "money:USD").per(quantity(12, "lb", "N"));
export const perKilogram: number = pricePerPoundOfN.in("money:USD/kg");

// --- spraying -------------------------------------------------------------------------------------------

const sprayVolume = quantity(2, "gal/1000 ft2", "spray");
const tank = quantity(100, "gal", "spray");
const loads = tankLoads({ area: bowling.area, applicationVolume: sprayVolume, capacity: tank });
export const loadCount: number = loads.loads.length;

const labelRate = quantity(3, "fl oz/1000 ft2", "product:spray-a");
const concentrate = labelRate.times(bowling.area);
export const jugs: number = concentrate.in("gal") / 2.5;
const active = quantity(4, "lb/gal", "ai/product:spray-a");
const activeRate = active.times(labelRate);
export const activePerAcre: number = activeRate.in("lb/acre");
const mixture = labelRate.per(sprayVolume);
export const ouncesPerGallon: number = mixture.in("fl oz/gal");

const speed = quantity(3.5, "mi/h");
const swath = quantity(20, "ft");
const pace = speed.times(swath);
export const acresPerHour: number = pace.in("acre/h");
const flow = sprayVolume.times(pace);
export const gallonsPerMinute: number = flow.in("gal/min");
export const nozzleFlow: number = flow.dividedBy(12).in("gal/min");

// --- water and sand -------------------------------------------------------------------------------------

const depth = quantity(0.5, "in");
const perWeek = depth.per(quantity(1, "week"));
export const millimetresPerDay: number = perWeek.in("mm/d");
const sand = bowling.area.times(quantity(0.125, "in"));
export const yardsOfSand: number = sand.in("yd3");
const bulk = quantity(100, "lb/ft3", "other:sand");
export const tonsOfSand: number = bulk.times(sand).in("US ton");

// --- heat and days --------------------------------------------------------------------------------------

const model = degreeDayModel({
  method: "simple average",
  base: { value: 32, unit: "°F" },
  sensor: "air",
});
const today = degreeDays({ max: quantity(86, "°F"), min: quantity(61, "°F"), model });
export const heat: number = today.in("°C d");
const warmer = quantity(21, "°C").plus(quantity(5, "°F diff"));
export const warm: boolean = warmer.compare(quantity(75, "°F")) > 0;
export const nextVisit = (last: CivilDate): CivilDate => addDays(last, 21);

// --- the form -------------------------------------------------------------------------------------------

interface Field {
  readonly text: string;
  readonly unit: string;
}

export const unitChoices = unitsOf("mass/area").map(({ unit, name }) => ({ value: unit, label: name }));

export const rateFromForm = (field: Field): Quantity<"mass/area", "N"> | string => {
  if (!isUnit(field.unit, "mass/area")) return `${field.unit} is not a unit of a rate`;
  return quantity(Number(field.text), field.unit, "N");
};

export const areaFromText = (text: string): number => {
  const read = readQuantity(text, { dimension: "area", of: "none" });
  return read.value?.in("ft2") ?? 0;
};

export const typed = (text: string): string => {
  try {
    return format(parseQuantity(text));
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ path }) => path).join(", ");
    throw error;
  }
};

// --- the store ------------------------------------------------------------------------------------------

interface Visit {
  readonly date: string;
  readonly lawn: string;
  readonly applied: { readonly value: number; readonly unit: string; readonly of: string };
}

export const saved: string = JSON.stringify({
  date: "2031-04-14",
  lawn: bowling.name,
  applied: need,
});

export const loadVisit = (text: string): number => {
  const visit = JSON.parse(text) as Visit;
  return quantityFrom(visit.applied).compare(need as never);
};

// --- what must not compile ------------------------------------------------------------------------------

export const refused = (): void => {
  // @ts-expect-error a volume of nitrogen is not a mass of it
  productRate(quantity(0.9, "fl oz/1000 ft2", "N"), granular);
  // @ts-expect-error phosphorus is not phosphate
  quantity(1, "lb", "P").plus(quantity(1, "lb", "P2O5"));
  // @ts-expect-error no product of area and area
  bowling.area.times(bowling.area);
  // @ts-expect-error not a unit for a weight, such as lb or kg per area
  rate.in("gal/acre");
};
