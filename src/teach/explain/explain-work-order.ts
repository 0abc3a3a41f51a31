import { readOrder } from "../../plan/house.js";
import type { SprayOrder, SpreadOrder, WorkOrder } from "../../plan/index.js";
import {
  expectFields,
  expectOneOf,
  expectRecord,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { runnableEntry } from "../catalogue/catalogue.js";
import type { Derivation, DerivationUnits, DerivedQuantity } from "../derivation/derivation.js";
import { readInputs } from "../entry/runnable-entry.js";
import { derivationOf } from "./derivation-of.js";

/** The working of a work order: a derivation for each figure, and what has none. */
export interface WorkOrderWorking {
  readonly type: "workOrderWorking";
  readonly version: 1;
  readonly title: string;
  readonly units: DerivationUnits;
  /** In the order of the sheet; the title of each says which figure it is. */
  readonly derivations: readonly Derivation[];
  /** Figures without a derivation, each with the reason. */
  readonly notExplained: readonly string[];
}

/** A figure of the sheet, and the formula that should give it. */
interface Figure {
  readonly title: string;
  readonly is: unknown;
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
}

type Stored = { readonly value: number; readonly unit: string; readonly of?: string };

/** A quantity of the order as one of another substance: the formulas say product where the order says which. */
const as = (q: unknown, of: string): DerivedQuantity => {
  const { value, unit } = expectRecord(
    q,
    "order",
    "a quantity for every figure",
  ) as Partial<Stored> as Stored;
  return quantityOf(value, unit, of, "order");
};
const count = (value: number): Quantity<"count", "none"> => quantity(value, "count");

const dimensionOf = (q: unknown): string => as(q, "none").dimension;

/** The percentage on the label, out of what the product supplies at its rate. */
const percentOf = (rate: unknown, supplied: unknown, nutrient: string): DerivedQuantity => {
  const share = (100 * numberIn(supplied, "kg/ha")) / numberIn(as(rate, "product"), "kg/ha");
  return quantityOf(Number(share.toPrecision(10)), "% w/w", `${nutrient}/product`, "order");
};

const targetFormulas: Readonly<Record<string, string>> = {
  N: "product-rate",
  P2O5: "product-rate-phosphate",
  K2O: "product-rate-potash",
};

const targetFigures = ({ productName, target, rate, supplies }: SpreadOrder): readonly Figure[] => {
  const nutrient = target?.of ?? "";
  const id = targetFormulas[nutrient];
  const supplied = supplies?.[nutrient as "N"];
  if (id === undefined || supplied === undefined) return [];
  const inputs = { target: as(target, nutrient), percent: percentOf(rate, supplied, nutrient) };
  return [{ title: `${productName}: product per area`, is: rate, id, inputs }];
};

const packageFigures = (
  name: string,
  need: unknown,
  size: unknown,
  packages: { readonly count: number } | undefined,
): readonly Figure[] => {
  if (packages === undefined || size === undefined) return [];
  const id = dimensionOf(need) === "mass" ? "packages-for-need" : "packages-for-volume";
  return [
    {
      title: `${name}: packages`,
      is: count(packages.count),
      id,
      inputs: { need: as(need, "product"), contents: as(size, "none") },
    },
  ];
};

const spreadFigures = (order: SpreadOrder): readonly Figure[] => {
  const { productName: name, rate, area, amount, passes, ratePerPass, byPart } = order;
  const whole = { rate: as(rate, "product"), area: as(area, "none") };
  return [
    ...targetFigures(order),
    { title: `${name}: in all`, is: amount, id: "product-for-area", inputs: whole },
    ...byPart.map((part) => ({
      title: `${name}: ${part.part}`,
      is: part.amount,
      id: "product-for-area",
      inputs: { rate: whole.rate, area: as(part.area, "none") },
    })),
    ...(passes > 1
      ? [
          {
            title: `${name}: each pass`,
            is: ratePerPass,
            id: "pass-rate",
            inputs: { rate: whole.rate, passes: count(passes) },
          },
        ]
      : []),
    ...packageFigures(name, amount, order.packageSize, order.packages),
  ];
};

/** The formula of an amount by what its rate is per: an area, or a volume of spray. */
const amountFormulas: Readonly<Record<string, string>> = {
  "mass/area": "product-for-area",
  "volume/area": "liquid-for-lawn",
  "mass/volume": "dry-product-for-spray",
  "volume/volume": "liquid-for-spray",
};

const sprayFigures = (order: SprayOrder, units: DerivationUnits): readonly Figure[] => {
  const { tank, treatment } = order;
  const volume = as(tank.applicationVolume, "spray");
  const mixed = as(tank.mixedFor, "none");
  const full = as(tank.capacity, "spray");
  // a rate per 1,000 sq ft is not taken to the acre and back: the crew counts in thousands
  const byThousands = volume.unit.endsWith("/1000 ft2") && units === "US";
  const amounts = ({ rate }: { readonly rate: unknown }, area: unknown, spray: unknown): Figure["inputs"] =>
    dimensionOf(rate).endsWith("/area")
      ? { rate: as(rate, "product"), area: as(area, "none") }
      : { rate: as(rate, "product/spray"), sprayVolume: as(spray, "spray") };
  return [
    {
      title: `${treatment}: spray to mix`,
      is: tank.volume,
      id: byThousands ? "spray-for-lawn" : "spray-for-area",
      inputs: { applicationVolume: volume, area: mixed },
    },
    {
      title: `${treatment}: loads`,
      is: count(tank.count),
      id: "tank-load-count",
      inputs: { applicationVolume: volume, area: mixed, capacity: full },
    },
    {
      title: `${treatment}: area that one full tank covers`,
      is: tank.areaPerTank,
      id: byThousands ? "lawn-per-tank" : "area-per-tank",
      inputs: { capacity: full, applicationVolume: volume },
    },
    ...order.products.flatMap((product) => {
      const id = amountFormulas[dimensionOf(product.rate)] ?? "product-for-area";
      const name = product.productName;
      return [
        {
          title: `${name}: in all`,
          is: product.amount,
          id,
          inputs: amounts(product, tank.mixedFor, tank.volume),
        },
        ...tank.loads.flatMap((load, n) => {
          const share = product.loads[n];
          if (share === undefined) return [];
          const title = `${name}: load ${load.number}`;
          return [{ title, is: share.exact, id, inputs: amounts(product, load.mixedFor, load.volume) }];
        }),
        ...packageFigures(name, product.amount, product.packageSize, product.packages),
      ];
    }),
  ];
};

/** As many as a sheet prints of what is weighed out: 354.8 lb. */
const digits = 4;

/** Whether a derivation comes to the figure of the sheet. */
const agrees = ({ exact }: Derivation, is: unknown): boolean => {
  const figure = as(is, exact.of);
  if (figure.dimension !== exact.dimension) return false;
  const there = numberIn(figure, exact.unit);
  return Math.abs(there - exact.value) <= 1e-9 * Math.max(Math.abs(there), Math.abs(exact.value));
};

/**
 * The working of a work order: every figure of its sheet that a formula gives, from the product per area to the packages
 * and the loads. Each derivation is compared with the order: one that comes to another figure is not given, and
 * `notExplained` says so (whole packets, a rate that was rounded, a liquid that is weighed by its density).
 *
 * @param order - what `workOrder` gives, also out of a store
 * @param options - `units`, those of the order where left out, US customary for an order with both
 * @throws RatewrightError for anything but a work order, as `workOrderSheet`
 *
 * @example
 * ```ts
 * import { workOrder } from "ratewright";
 * import { derivationText, explainWorkOrder } from "ratewright/teach";
 * const order = workOrder({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: { name: "Practice field", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", package: { value: 50, unit: "lb" } }],
 *   treatments: [
 *     { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   ],
 * });
 * const { derivations, notExplained } = explainWorkOrder(order);
 * derivations.map(({ title, result }) => `${title}: ${result.value}`);
 * // => ["feed-a: product per area: 3.75", "feed-a: in all: 46.5", "feed-a: packages: 1"]
 * notExplained; // => []
 * ```
 */
export const explainWorkOrder = (
  order: WorkOrder,
  options: { readonly units?: DerivationUnits } = {},
): WorkOrderWorking => {
  const read = readOrder(order);
  const { units } = expectFields(options, ["units"], "options");
  const system =
    units === undefined
      ? read.units === "metric"
        ? "metric"
        : "US"
      : expectOneOf(units, ["US", "metric"], "options.units");
  const sprays = read.sprays.flatMap((spray) => sprayFigures(spray, system));
  const worked = [...read.spreads.flatMap(spreadFigures), ...sprays].map((figure) => {
    const found = runnableEntry(figure.id, "id");
    const given = readInputs(found.entry, figure.inputs, figure.title);
    const derivation = derivationOf(found, given, { units: system, digits, unit: undefined });
    return { figure, derivation: { ...derivation, title: figure.title } };
  });
  return {
    type: "workOrderWorking",
    version: 1,
    title: read.title,
    units: system,
    derivations: worked
      .filter(({ figure, derivation }) => agrees(derivation, figure.is))
      .map(({ derivation }) => derivation),
    notExplained: worked
      .filter(({ figure, derivation }) => !agrees(derivation, figure.is))
      .map(({ figure }) => `${figure.title}: the figure in the order differs from rate times area.`),
  };
};
