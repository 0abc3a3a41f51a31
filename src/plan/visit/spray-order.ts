import { type AreaRates, areaRatesOf, suppliedRates } from "../../ledger/house.js";
import { exceeds } from "../../numeric/index.js";
import type { NutrientsSupplied, Packages } from "../../nutrient/index.js";
import { checks, type Finding, fail, type Quantity, quantityOf, toldBy } from "../../quantity/index.js";
import {
  type LoadAmounts,
  type LoadingOrder,
  loadAmounts,
  loadingOrder,
  type ProductAmount,
  type ProductLoads,
  type RateOf,
  type TankLoads,
  tankLoads,
  type WaterReport,
  type WaterTest,
  waterReport,
} from "../../tank/index.js";
import type { ReadSprayer } from "../job/read-job.js";
import type { ReadProduct } from "../job/read-products.js";
import type { ReadSpray } from "../job/read-treatments.js";
import { labelNotCompared, nitrogenFindings, rateFindings } from "./rate-findings.js";
import { packagesOf } from "./spread-order.js";

/** A product in the tank: how much in all, in each load, and what it supplies. */
export interface SprayedProduct {
  readonly product: string;
  readonly productName: string;
  readonly rate: Quantity<string, string>;
  readonly amount: ProductAmount;
  readonly loads: ProductLoads["loads"];
  readonly measured?: ProductLoads["measured"];
  readonly packages?: Packages<"mass", string> | Packages<"volume", string>;
  /** Nutrients per area, where the product states an analysis and its mass is known. */
  readonly supplies?: NutrientsSupplied<"mass/area">;
}

/** What to spray: the loads, what goes into each, and in which order. */
export interface SprayOrder {
  readonly treatment: string;
  readonly method: "spray";
  readonly parts: readonly string[];
  readonly area: Quantity<"area", "none">;
  readonly volume: Quantity<"volume", "spray">;
  readonly tank: TankLoads;
  readonly products: readonly SprayedProduct[];
  readonly order: LoadingOrder;
  /** What the water test of the job means for this mix. */
  readonly water?: WaterReport;
}

/** The loads, what goes into each, and whether an order can be found: every problem of the three, by its place in the job. */
const measured = (
  treatment: ReadSpray,
  sprayer: ReadSprayer,
): { readonly tank: TankLoads; readonly amounts: LoadAmounts } => {
  const { mix, area, path } = treatment;
  const door = checks();
  const fromSprayer = {
    capacity: "sprayer.tank",
    applicationVolume: "sprayer.output",
    residualVolume: "sprayer.residualVolume",
    plumbingVolume: "sprayer.plumbingVolume",
    area: `${path}.area`,
  };
  const tank = door.run(() =>
    toldBy(fromSprayer, () =>
      tankLoads({
        area,
        applicationVolume: sprayer.output,
        capacity: sprayer.tank,
        split: sprayer.split,
        ...(sprayer.residualVolume && { residualVolume: sprayer.residualVolume }),
        ...(sprayer.plumbingVolume && { plumbingVolume: sprayer.plumbingVolume }),
      }),
    ),
  );
  // A density that is needed is missing from the product, not from the mix.
  const densities = Object.fromEntries(
    mix.map(({ product }, i) => [`products[${i}].density`, `${product.path}.density`]),
  );
  const amounts =
    tank &&
    door.run(() =>
      toldBy({ ...densities, products: `${path}.mix`, increments: "sprayer.increments" }, () =>
        loadAmounts({
          loads: tank,
          products: mix.map(({ product, rate }) => ({
            id: product.id,
            rate,
            form: product.form,
            ...(product.density && { density: product.density }),
          })),
          ...(sprayer.increments && { increments: sprayer.increments }),
        }),
      ),
    );
  door.run(() =>
    toldBy({ products: `${path}.mix` }, () =>
      loadingOrder({
        mixingOrder: sprayer.mixingOrder,
        products: mix.map(({ product }, i) => inOrder(product, mix, `${path}.mix[${i}].product`)),
      }),
    ),
  );
  door.done();
  return { tank: tank as TankLoads, amounts: amounts as LoadAmounts };
};

/** A product as the loading order takes it, without its amount. */
const inOrder = (product: ReadProduct, mix: ReadSpray["mix"], path: string) => ({
  id: product.id,
  name: product.name,
  formulation: product.formulation ?? fail("missing", path, undefined, "a formulation"),
  ...withinMix(product, mix),
});

/** Computes a treatment that is sprayed; findings go to the list. */
export const sprayOrder = (
  treatment: ReadSpray,
  sprayer: ReadSprayer,
  findings: Finding[],
  notChecked: string[],
): SprayOrder => {
  const { mix, area, path } = treatment;
  const { tank, amounts } = measured(treatment, sprayer);
  findings.push(...amounts.findings.map((f): Finding => ({ ...f, path })));
  const last = tank.loads[tank.loads.length - 1];
  if (
    sprayer.minimumLoad !== undefined &&
    last !== undefined &&
    exceeds(sprayer.minimumLoad.in("L"), last.volume.in("L"))
  ) {
    findings.push({
      code: "load/below-minimum",
      severity: "warning",
      path,
      params: {
        load: last.number,
        volume: last.volume.in("gal"),
        unit: "gal",
        minimum: sprayer.minimumLoad.in("gal"),
      },
      text: `Load ${last.number} is smaller than the least that the sprayer can agitate. Even loads (split: "even") would share the spray out.`,
      source: "the minimum load that the job states",
    });
  }
  const products = mix.map((item, i) =>
    sprayedProduct(item, amounts.products[i] as ProductLoads, sprayer, findings, notChecked),
  );
  const order = loadingOrder({
    mixingOrder: sprayer.mixingOrder,
    ...(tank.loads[0] && { loadVolume: tank.loads[0].volume }),
    products: mix.map(({ product }, i) => ({
      ...inOrder(product, mix, `${path}.mix[${i}].product`),
      ...(amounts.products[i]?.loads[0] && { amount: amounts.products[i].loads[0].amount as never }),
    })),
  });
  findings.push(...order.findings.map((f): Finding => ({ ...f, path })));
  const water = sprayer.water === undefined ? undefined : waterOf(sprayer.water, sprayer, mix);
  if (water === undefined) {
    notChecked.push(
      "Hardness and pH of the water, and what it does to the products: the job gives no water test.",
    );
  } else {
    findings.push(...water.findings.map((f): Finding => ({ ...f, path: "sprayer.water" })));
    notChecked.push(...water.notChecked.map((text) => `Water: ${text}.`));
  }
  return {
    treatment: treatment.id,
    method: "spray",
    parts: treatment.parts ?? [],
    area,
    volume: tank.volume,
    tank,
    products,
    order,
    ...(water && { water }),
  };
};

const activeOf = ({ contents = [] }: ReadProduct): string | undefined => {
  const named = contents.map(({ of }) => /^a[ie]:([^/]+)/.exec(of)?.[1]).filter((name) => name !== undefined);
  return named.length === 1 ? named[0] : undefined;
};

/** What the water test means for the products of a mix. */
const waterOf = (test: WaterTest, sprayer: ReadSprayer, mix: ReadSpray["mix"]): WaterReport =>
  waterReport({
    test,
    products: mix.map(({ product }) => {
      const active = activeOf(product);
      return {
        id: product.id,
        name: product.name,
        ...(product.contains && { contains: product.contains }),
        ...(active !== undefined && { active }),
      };
    }),
    ...(sprayer.timeToEmpty && { timeToEmpty: sprayer.timeToEmpty }),
  });

/** What the label says of other products counts only for those that are in this tank. */
const withinMix = (product: ReadProduct, mix: ReadSpray["mix"]) => {
  const here = (ids: readonly string[] | undefined): readonly string[] =>
    (ids ?? []).filter((id) => mix.some((other) => other.product.id === id));
  return {
    addBefore: here(product.addBefore),
    addAfter: here(product.addAfter),
    ...(product.labelNote && { labelNote: product.labelNote }),
    ...(product.lowRate && { lowRate: true }),
    ...(product.contains && { contains: product.contains }),
    ...(product.groups && { groups: product.groups }),
    ...(product.labelProhibits && { labelProhibits: product.labelProhibits }),
  };
};

const sprayedProduct = (
  item: ReadSpray["mix"][number],
  loads: ProductLoads,
  sprayer: ReadSprayer,
  findings: Finding[],
  notChecked: string[],
): SprayedProduct => {
  const { product, path } = item;
  const rate = statedRate(item.rate, product.id, path);
  findings.push(...rateFindings({ product, rate, path }));
  notChecked.push(...labelNotCompared(product, rate));
  const packages = packagesOf(loads.total as Quantity<"mass", `product:${string}`>, product, notChecked);
  const supplies = suppliedBy(product, rate, sprayer, notChecked);
  if (supplies !== undefined) findings.push(...nitrogenFindings(supplies, product, path));
  return {
    product: product.id,
    productName: product.name,
    rate,
    amount: loads.total,
    loads: loads.loads,
    ...(loads.measured && { measured: loads.measured }),
    ...(packages && { packages }),
    ...(supplies && { supplies }),
  };
};

/** The rate as one quantity: 2 pt per 100 gal is 0.02 pt/gal. */
export const statedRate = (rate: RateOf, id: string, path: string): Quantity<string, string> => {
  const { value, unit, of, per } = rate as { value: number; unit: string; of: string; per?: unknown };
  if (typeof per !== "object" || per === null) return quantityOf(value, unit, of, path);
  const below = per as { value: number; unit: string };
  return quantityOf(value / below.value, `${unit}/${below.unit}`, `product:${id}/spray`, path);
};

/** Product per area of what is sprayed: a rate per volume of spray counts at the output of the sprayer. */
export const perAreaRates = (
  product: ReadProduct,
  rate: Quantity<string, string>,
  sprayer: ReadSprayer | undefined,
): AreaRates => {
  if (rate.dimension.endsWith("/area")) return areaRatesOf(rate, product.density);
  if (sprayer === undefined) return {};
  const perArea = (rate as Quantity<"mass/volume", "product/spray">).times(sprayer.output);
  return areaRatesOf(perArea as unknown as Quantity<string, string>, product.density);
};

/** Nutrients per area of what is sprayed: a rate by volume is weighed through the density. */
export const suppliedBy = (
  product: ReadProduct,
  rate: Quantity<string, string>,
  sprayer: ReadSprayer | undefined,
  notChecked: string[],
): NutrientsSupplied<"mass/area"> | undefined => {
  if (product.fertilizer === undefined) return undefined;
  const rates = perAreaRates(product, rate, sprayer);
  if (rates.byMass === undefined) {
    notChecked.push(
      rates.byVolume === undefined
        ? `Nutrients of ${product.name}: its rate is per volume of spray, and no sprayer is stated.`
        : `Nutrients of ${product.name}: its rate is by volume, and no density is stated.`,
    );
    return undefined;
  }
  return suppliedRates({ fertilizer: product.fertilizer }, rates) as NutrientsSupplied<"mass/area">;
};
