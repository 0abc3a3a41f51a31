import { exceeds } from "../../numeric/index.js";
import type { NutrientsSupplied, Packages } from "../../nutrient/index.js";
import { allOf, type Finding, fail, numberIn, type Quantity, toldBy } from "../../quantity/index.js";
import {
  type Formulation,
  type LoadAmounts,
  type LoadingOrder,
  loadAmounts,
  loadingOrder,
  type ProductAmount,
  type ProductLoads,
  type TankLoads,
  tankLoads,
  type WaterReport,
} from "../../tank/index.js";
import type { TreatmentUse } from "../grow-in/turf-types.js";
import type { ReadSprayer } from "../job/read-machines.js";
import type { ReadProduct } from "../job/read-products.js";
import type { TreatedPart } from "../job/read-site.js";
import type { ReadWater } from "../job/read-water.js";
import type { ReadSpray } from "../job/treatments.js";
import { type Watering, watering } from "../watering/watering.js";
import { statedRate, suppliedBy } from "./area-rates.js";
import { inOrder, waterOf } from "./mix-products.js";
import { packagesOf } from "./packages-of.js";
import {
  type LabelRateCheck,
  labelNotCompared,
  labelRateCheck,
  nitrogenFindings,
  rateFindings,
} from "./rate-findings.js";
import { type PacketShare, wholePackets } from "./whole-packets.js";
import type { WithFindings } from "./with-findings.js";

/** A product in the tank: how much in all, in each load, and what it supplies. */
export interface SprayedProduct {
  readonly product: string;
  readonly productName: string;
  readonly rate: Quantity<string, string>;
  readonly amount: ProductAmount;
  readonly loads: ProductLoads["loads"];
  readonly measured?: ProductLoads["measured"];
  readonly packages?: Packages<"mass", string> | Packages<"volume", string>;
  /** What one package holds. */
  readonly packageSize?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  readonly form: ReadProduct["form"];
  readonly formulation: Formulation;
  /** Whether the rate was held against the label. */
  readonly labelRate: LabelRateCheck;
  /** Of water-soluble packets: how many each load takes, where the size of one is stated. */
  readonly packets?: PacketShare;
  readonly use?: TreatmentUse;
  readonly labelNote?: string;
  readonly registrationNumber?: string;
  readonly lot?: string;
  /** Nutrients per area, where the product states an analysis and its mass is known. */
  readonly supplies?: NutrientsSupplied<"mass/area">;
}

/** What to spray: the loads, what goes into each, and in which order. */
export interface SprayOrder {
  readonly treatment: string;
  readonly method: "spray";
  readonly parts: readonly string[];
  readonly area: Quantity<"area", "none">;
  /** What of it lies on each part of the site; empty where the job does not say. */
  readonly byPart: readonly TreatedPart[];
  readonly volume: Quantity<"volume", "spray">;
  readonly tank: TankLoads;
  readonly products: readonly SprayedProduct[];
  readonly order: LoadingOrder;
  /** What the sprayer was calibrated with, and what the pump leaves in the tank, as far as the job says. */
  readonly sprayer: Pick<ReadSprayer, "nozzle" | "pressure" | "speed" | "residualVolume">;
  /** What the water test of the job means for this mix. */
  readonly water?: WaterReport;
  /** What to do with water afterward. */
  readonly watering: Watering;
}

/** The loads, what goes into each, and the order in which it goes in: every problem of the three, by its place in the job. */
const measured = (
  treatment: ReadSpray,
  sprayer: ReadSprayer,
  filled?: TankLoads,
): { readonly tank: TankLoads; readonly amounts: LoadAmounts; readonly order: LoadingOrder } => {
  const { mix, area, path } = treatment;
  const fromSprayer = {
    capacity: "sprayer.tank",
    applicationVolume: "sprayer.applicationVolume",
    residualVolume: "sprayer.residualVolume",
    plumbingVolume: "sprayer.plumbingVolume",
    area: `${path}.area`,
  };
  // A density that is needed is missing from the product, not from the mix.
  const fromMix: Record<string, string> = {};
  for (const [i, { product }] of mix.entries()) fromMix[`products[${i}].density`] = `${product.path}.density`;
  // The first that fits is taken: what is told of the whole mix comes behind.
  fromMix.products = `${path}.mix`;
  fromMix.increments = "sprayer.increments";
  const loads = () =>
    filled ??
    toldBy(fromSprayer, () =>
      tankLoads({
        area,
        applicationVolume: sprayer.applicationVolume,
        capacity: sprayer.tank,
        loadSplit: sprayer.loadSplit,
        ...(sprayer.residualVolume && { residualVolume: sprayer.residualVolume }),
        ...(sprayer.plumbingVolume && { plumbingVolume: sprayer.plumbingVolume }),
      }),
    );
  // The order says how much water goes in first where the loads were found; it is looked for all the same.
  let known: TankLoads | undefined;
  const { mixed, order } = allOf({
    mixed: () => {
      const tank = loads();
      known = tank;
      const amounts = toldBy(fromMix, () =>
        loadAmounts({
          loads: tank,
          products: mix.map(({ product, rate }) => ({
            id: product.id,
            name: product.name,
            rate,
            form: product.form,
            ...(product.density && { density: product.density }),
          })),
          ...(sprayer.increments && { increments: sprayer.increments }),
        }),
      );
      return { tank, amounts };
    },
    order: () => orderOf(treatment, sprayer, known),
  });
  return { ...mixed, order };
};

/** The order in which the products go in; the amounts stand with the loads, not in it. */
const orderOf = ({ mix, path }: ReadSpray, sprayer: ReadSprayer, tank?: TankLoads): LoadingOrder =>
  toldBy({ products: `${path}.mix` }, () =>
    loadingOrder({
      mixingOrder: sprayer.mixingOrder,
      ...(tank?.loads[0] && { loadVolume: tank.loads[0].volume }),
      products: mix.map(({ product }, i) => inOrder(product, mix, `${path}.mix[${i}].product`)),
    }),
  );

/** A last load that is less than what the sprayer can agitate. */
const smallLoad = (tank: TankLoads, sprayer: ReadSprayer, path: string): readonly Finding[] => {
  const last = tank.loads[tank.loads.length - 1];
  const least = sprayer.minimumLoad;
  if (least === undefined || last === undefined || !exceeds(least.in("L"), last.volume.in("L"))) return [];
  return [
    {
      code: "load/below-minimum",
      severity: "warning",
      path,
      params: {
        load: last.number,
        volume: numberIn(last.volume, least.unit),
        unit: least.unit,
        minimum: least.value,
      },
      text: `Load ${last.number} is smaller than the sprayer can agitate. Use even loads.`,
      source: "the minimum load that the job states",
    },
  ];
};

/** Computes a treatment that is sprayed; with loads of their own, as those of a route, in `filled`. */
export const sprayOrder = (
  treatment: ReadSpray,
  sprayer: ReadSprayer,
  rain?: ReadWater,
  filled?: TankLoads,
): WithFindings<SprayOrder> => {
  const after = watering(treatment, rain);
  const { mix, area, path, byPart } = treatment;
  const { tank, amounts, order } = measured(treatment, sprayer, filled);
  const products = mix.map((item, i) => {
    const loads =
      amounts.products[i] ?? fail("missing", `${item.path}.rate`, undefined, "an amount per load");
    return sprayedProduct(item, loads, tank, sprayer);
  });
  const water = sprayer.water === undefined ? undefined : waterOf(sprayer.water, sprayer, mix);
  const at =
    (where: string) =>
    (finding: Finding): Finding => ({ ...finding, path: where });
  const { nozzle, pressure, speed, residualVolume } = sprayer;
  return {
    value: {
      treatment: treatment.id,
      method: "spray",
      parts: treatment.parts ?? [],
      area,
      byPart,
      volume: tank.volume,
      tank,
      products: products.map(({ value }) => value),
      order,
      sprayer: {
        ...(nozzle !== undefined && { nozzle }),
        ...(pressure && { pressure }),
        ...(speed && { speed }),
        ...(residualVolume && { residualVolume }),
      },
      ...(water && { water }),
      watering: after.value,
    },
    findings: [
      ...amounts.findings.map(at(path)),
      ...smallLoad(tank, sprayer, path),
      ...products.flatMap(({ findings }) => findings),
      ...order.findings.map(at(path)),
      ...(water?.findings ?? []).map(at("sprayer.water")),
      ...after.findings,
    ],
    notChecked: [
      ...products.flatMap(({ notChecked }) => notChecked),
      ...(water?.notChecked.map((text) => `Water: ${text}.`) ?? [
        "Hardness and pH of the water, and what they do to the products: no water test given.",
      ]),
      ...after.notChecked,
    ],
  };
};

const sprayedProduct = (
  item: ReadSpray["mix"][number],
  loads: ProductLoads,
  tank: TankLoads,
  sprayer: ReadSprayer,
): WithFindings<SprayedProduct> => {
  const { product, path } = item;
  const rate = statedRate(item.rate, product.id, path);
  const packages = packagesOf(loads.total, product);
  const supplies = suppliedBy(product, rate, sprayer);
  const packets = wholePackets({ product, loads, tank, path });
  const { labelNote, registrationNumber, lot, use } = product;
  return {
    value: {
      product: product.id,
      productName: product.name,
      form: product.form,
      formulation: product.formulation ?? fail("missing", `${path}.product`, undefined, "a formulation"),
      labelRate: labelRateCheck(product, rate),
      rate,
      amount: loads.total,
      loads: loads.loads,
      ...(loads.measured && { measured: loads.measured }),
      ...(product.package && { packageSize: product.package }),
      ...(packages.value && { packages: packages.value }),
      ...(packets.value && { packets: packets.value }),
      ...(use && { use }),
      ...(labelNote && { labelNote }),
      ...(registrationNumber && { registrationNumber }),
      ...(lot && { lot }),
      ...(supplies.value && { supplies: supplies.value }),
    },
    findings: [
      ...rateFindings({ product, rate, path }),
      ...packets.findings,
      ...(supplies.value === undefined ? [] : nitrogenFindings(supplies.value, product, path)),
    ],
    notChecked: [
      ...labelNotCompared(product, rate),
      ...packages.notChecked,
      ...packets.notChecked,
      ...supplies.notChecked,
    ],
  };
};
