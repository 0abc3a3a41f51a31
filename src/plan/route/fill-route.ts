import { exceeds } from "../../numeric/index.js";
import {
  type Finding,
  fail,
  likeQuantity,
  numberIn,
  outOfRange,
  perOf,
  type Quantity,
  timesOf,
  toldBy,
} from "../../quantity/index.js";
import { amountFor, type ProductAmount, type TankLoads } from "../../tank/index.js";
import type { ReadSprayer } from "../job/read-machines.js";
import type { ReadSpray, ReadSpread } from "../job/treatments.js";
import { type SprayOrder, sprayOrder } from "../visit/spray-order.js";
import { type SpreadOrder, spreadOrder } from "../visit/spread-order.js";
import type { WithFindings } from "../visit/with-findings.js";
import { onRoute, type ReadRoute } from "./read-route.js";
import { type RouteAmount, type RouteLoads, routeLoads } from "./route-loads.js";

/** The fillings of a route as the loads of a tank, so that all that is known of loads holds for them. */
const asTankLoads = (route: RouteLoads, sprayer: ReadSprayer): TankLoads => {
  const spray = (q: RouteAmount): Quantity<"volume", "spray"> =>
    likeQuantity(sprayer.tank, (q as Quantity<"volume", string>).in(sprayer.tank.unit as "L"));
  const covers = (volume: Quantity<"volume", "spray">) => {
    const area = perOf(volume, sprayer.applicationVolume) as Quantity<"area", "none">;
    return likeQuantity(route.area, area.in(route.area.unit as "m2"));
  };
  const volume = spray(route.loaded);
  const left = spray(route.leftOver);
  return {
    type: "tank-loads",
    version: 1,
    count: route.fills.length,
    loadSplit: "full then partial",
    volume,
    area: route.area,
    mixedFor: covers(volume),
    applicationVolume: sprayer.applicationVolume,
    capacity: sprayer.tank,
    areaPerTank: covers(sprayer.tank),
    smallestMix: volume,
    leftOver: { volume: left, residual: left },
    loads: route.fills.map(({ number, added, area, full }) => ({
      number,
      volume: spray(added),
      area,
      mixedFor: covers(spray(added)),
      full,
    })),
    findings: [],
  };
};

/** Fillings after which the tank holds less than the sprayer can agitate. */
const smallFills = (loads: RouteLoads, sprayer: ReadSprayer): readonly Finding[] => {
  const least = sprayer.minimumLoad;
  if (least === undefined) return [];
  return loads.fills.flatMap(({ number, stop, after }): readonly Finding[] => {
    const volume = numberIn(after, least.unit);
    if (!exceeds(least.value, volume)) return [];
    return [
      {
        code: "load/below-minimum",
        severity: "warning",
        path: "sprayer.minimumLoad",
        params: { load: number, stop, volume, minimum: least.value, unit: least.unit },
        text: `Fill ${number} (${stop}) leaves less in the tank than the sprayer can agitate.`,
        source: "the minimum load that the route states",
      },
    ];
  });
};

const places = {
  capacity: "sprayer.tank",
  rate: "sprayer.applicationVolume",
  residualVolume: "sprayer.residualVolume",
  plumbingVolume: "sprayer.plumbingVolume",
} as const;

const loadsOf = (
  route: ReadRoute,
  machine: Pick<Parameters<typeof routeLoads>[0], "rate" | "capacity" | "residualVolume" | "plumbingVolume">,
): RouteLoads => {
  const { startWith, stops, refill } = route;
  const from =
    route.treatment.method === "spray" ? places : { capacity: "spreader.hopper", rate: "spread.rate" };
  return toldBy(from, () =>
    routeLoads({
      stops: stops.map(({ id, area, canFill }) => ({ id, area, canFill })),
      ...machine,
      refill,
      ...(startWith && { startWith }),
    }),
  );
};

/** What is computed of the machine and the mix, before the stops are looked at one by one. */
export interface Filled {
  readonly loads: RouteLoads;
  readonly order: { readonly spray?: SprayOrder; readonly spread?: SpreadOrder };
  /** What of each product goes down where so much goes out of the machine over an area. */
  readonly amounts: (
    area: Quantity<"area", "none">,
    out: RouteAmount,
  ) => readonly { readonly product: ReadSpread["product"]; readonly amount: ProductAmount }[];
}

/** The fillings and the mix of a route that is sprayed. */
export const sprayed = (
  route: ReadRoute,
  treatment: ReadSpray,
  sprayer: ReadSprayer,
): WithFindings<Filled> => {
  const { tank: capacity, applicationVolume: rate, residualVolume, plumbingVolume } = sprayer;
  const loads = loadsOf(route, {
    rate,
    capacity,
    ...(residualVolume && { residualVolume }),
    ...(plumbingVolume && { plumbingVolume }),
  });
  if (loads.fills.length === 0)
    outOfRange(
      "startWith",
      route.startWith,
      { below: numberIn(loads.amount, capacity.unit), unit: capacity.unit },
      "{}, what the whole route takes: otherwise nothing is mixed; routeLoads says what is left",
    );
  const told = onRoute("spray", () => sprayOrder(treatment, sprayer, undefined, asTankLoads(loads, sprayer)));
  const amounts: Filled["amounts"] = (area, out) =>
    treatment.mix.map(({ product, rate: each, path }) => ({
      product,
      amount: onRoute("spray", () =>
        toldBy({ density: `${product.path}.density`, rate: `${path}.rate` }, () =>
          amountFor({
            rate: each,
            form: product.form,
            area,
            sprayVolume: out as Quantity<"volume", "spray">,
            ...(product.density && { density: product.density }),
          }),
        ),
      ) as ProductAmount,
    }));
  return {
    value: { loads, order: { spray: told.value }, amounts },
    findings: [
      ...told.findings.filter(({ code }) => code !== "load/below-minimum"),
      ...smallFills(loads, sprayer),
    ],
    notChecked: told.notChecked,
  };
};

/** The fillings of the hopper of a route that is spread. */
export const spreadOut = (route: ReadRoute, treatment: ReadSpread): WithFindings<Filled> => {
  const told = onRoute("spread", () => spreadOrder(treatment, route.spreader));
  const capacity = route.hopper ?? fail("missing", "spreader.hopper", undefined, "what the hopper holds");
  const { rate } = told.value;
  const amounts: Filled["amounts"] = (area) => [
    { product: treatment.product, amount: timesOf(rate, area) as Quantity<"mass", string> },
  ];
  return {
    ...told,
    value: { loads: loadsOf(route, { rate, capacity }), order: { spread: told.value }, amounts },
  };
};
