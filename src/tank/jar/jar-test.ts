import {
  allOf,
  expectFields,
  expectOneOf,
  type Finding,
  fail,
  inUnit,
  numberIn,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import type { FinishedSpray } from "../../spray/index.js";
import { amountText } from "../amount-text.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import {
  type Formulation,
  formulations,
  isFormulation,
  type ProductForm,
} from "../formulation/formulation.js";
import {
  applicationVolumeOf,
  eachOf,
  expectSameProduct,
  mostItems,
  type SprayPerArea,
  sprayOf,
} from "../inputs.js";
import { strengthFindings } from "../load/load-strength.js";
import { loadingOrder } from "../order/loading-order.js";
import type { LoadingOrder } from "../order/loading-order-types.js";
import { mixProductFields } from "../partners/expect-mix-products.js";
import type { MixProduct } from "../partners/mix-product.js";
import type { MixingOrderId } from "../published-orders/mixing-order.js";
import { amountAt } from "../rate/amount-for.js";
import { expectRate, type RateOf } from "../rate/rate.js";
import { jarCannotShow, jarFailures, jarReadings } from "./jar-facts.js";
import type { JarAmount, JarProduct, JarStep, JarTest } from "./jar-test-types.js";

const standing = { "Utah State": 15, "University of Arizona": 5 } as const;

/**
 * A jar test of a mix: how much of each product goes into the jar, in grams and milliliters scaled from
 * the real rates, in which order, how to read the jar and what it cannot show.
 *
 * `amount = rate per area * jar volume / spray rate`, or `rate per volume * jar volume`: the jar holds the
 * mix at the strength of the tank. In metric units the usual shortcut, all rates per hectare divided by
 * 100, is the jar of a hundredth of the spray per hectare (0.7 L at 70 L/ha). Dry products are weighed: a
 * level teaspoon of them is anything from 1.6 to 4.7 g. Water-soluble packets are never opened: what comes in them is left
 * out of the jar, and a finding says so.
 *
 * @param input - `jar`, volume of spray in the jar; `applicationVolume`, volume of spray per area, needed for rates
 *   per area; `products`, each with `id`, `formulation` and `rate` and, where the rate needs it,
 *   `density`; `mixingOrder` as in {@link loadingOrder}; `stand`, whose standing time: Utah State (15 min, where
 *   left out) or University of Arizona (5 min)
 * @throws RatewrightError with every problem: `missing`, `range`, `duplicate`, `type`, `unit/mismatch`,
 *   `substance/mismatch` (also a rate of another product than its `id` says), with paths such as `products[1].rate`;
 *   `infeasible` for more product than the jar holds
 *
 * Source: GRDC GrowNotes, Spray Application Manual, module 7.5; Utah State University Extension, Using a
 * Jar Test (2012); University of Arizona turf extension, Order in The Tank! (1999).
 *
 * @example
 * ```ts
 * import { jarTest, quantity } from "ratewright";
 * const jar = jarTest({
 *   jar: quantity(0.7, "L", "spray"),
 *   applicationVolume: quantity(70, "L/ha", "spray"),
 *   products: [
 *     { id: "a", formulation: "EC", rate: quantity(2000, "mL/ha", "product:a") },
 *     { id: "b", formulation: "WG", rate: quantity(150, "g/ha", "product:b") },
 *   ],
 * });
 * jar.amounts.map(({ amount }) => amount.toString()); // => ["1.5 g of product:b", "20 mL of product:a"]
 * ```
 */
export const jarTest = (input: {
  readonly jar: Quantity<"volume", "spray">;
  readonly applicationVolume?: SprayPerArea;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly products: readonly JarProduct[];
  readonly mixingOrder?: "consensus" | MixingOrderId;
  readonly stand?: keyof typeof standing;
}): JarTest => {
  const read = readJarInput(input);
  const { jar, spray, stand, products, loading } = read;
  const measured = measuredOut(read);
  const inJar = new Map(
    measured.filter(({ formulation }) => formulation !== packet).map((one) => [one.id, one]),
  );
  const amounts = loading.order.flatMap((id) => inJar.get(id) ?? []);
  return {
    type: "jar-test",
    version: 1,
    jar,
    amounts,
    steps: jarSteps(jar, amounts, products, standing[stand]),
    failures: [...jarFailures],
    cannotShow: [...jarCannotShow],
    readings: [...jarReadings],
    findings: [
      ...loading.findings.filter(({ code }) => code !== "jar-test"),
      ...(spray?.findings ?? []),
      ...jarStrength(read, measured),
      ...products.filter(({ mix }) => mix.formulation === packet).map(({ mix }) => packetLeftOut(mix)),
    ],
    cautions: cautionsFor(amounts),
    source: stand,
  };
};

const fields = ["jar", "applicationVolume", "density", "products", "mixingOrder", "stand"] as const;

interface ReadJarInput {
  readonly jar: Quantity<"volume", "spray">;
  readonly spray: FinishedSpray<"volume/area"> | undefined;
  readonly stand: keyof typeof standing;
  readonly products: readonly ReadJarProduct[];
  readonly loading: LoadingOrder;
}

const readJarInput = (input: unknown): ReadJarInput => {
  const given = expectFields(input, fields);
  return allOf({
    jar: () => sprayOf(given.jar, "jar"),
    spray: () =>
      given.applicationVolume === undefined
        ? undefined
        : applicationVolumeOf(given.applicationVolume, given.density),
    stand: () => standOf(given.stand),
    products: () => readJarProducts(given.products),
    loading: () =>
      loadingOrder({
        products: mixOf(given.products),
        // Read there, which refuses anything but an order that it knows.
        ...(given.mixingOrder !== undefined && { mixingOrder: given.mixingOrder as MixingOrderId }),
      }),
  });
};

/** What goes into the jar of every product: its rate on the area that the jar stands for. */
const measuredOut = ({ jar, spray, products }: ReadJarInput): readonly JarAmount[] => {
  const area = spray === undefined ? undefined : jar.per(spray.value);
  return eachOf(products, "products", "product", (_, at, i) =>
    jarAmount(products[i] as ReadJarProduct, area, jar, `${at}.`),
  );
};

const jarStrength = ({ jar, products }: ReadJarInput, measured: readonly JarAmount[]): readonly Finding[] =>
  strengthFindings(
    measured.map(({ id, amount }, i) => ({
      id,
      name: products[i]?.mix.name ?? id,
      amount,
      perVolume: products[i]?.perVolume === true,
      rateUnit: `${products[i]?.rate.unit}`,
      path: `products[${i}].rate`,
    })),
    jar,
    "The jar",
  );

const packet: Formulation = "water-soluble packet";

/** No part of a packet can be weighed into a jar: packets are never cut or opened. */
const packetLeftOut = ({ id, name = id }: MixProduct): Finding => ({
  code: "jar/packet-left-out",
  severity: "warning",
  params: { product: id },
  text: `${name} is left out of the jar: its packets are never cut or opened, and a whole one is too much for a jar. The jar shows the rest of the mix only. Ask the maker of ${name} about the mix.`,
  source: "common practice, no source",
});

const jarCautions: readonly string[] = [
  "caution/label-first",
  "caution/protective-equipment",
  "caution/no-food-containers",
  "caution/emergency",
];

const cautionsFor = (amounts: readonly JarAmount[]): readonly TankCaution[] => {
  const weighed = amounts.some(({ amount }) => amount.dimension === "mass");
  return tankCautions.filter(
    ({ code }) => jarCautions.includes(code) || (weighed && code === "caution/dry-powder"),
  );
};

/** A product of a jar test, read. */
interface ReadJarProduct {
  readonly mix: MixProduct;
  readonly rate: RateOf;
  readonly perVolume: boolean;
  readonly form: ProductForm | undefined;
  readonly density: unknown;
}

/** The products as the loading order takes them, which checks all that it knows of them; the rest is read here. */
const mixOf = (input: unknown): readonly MixProduct[] =>
  // A list that is too long is told by readJarProducts, and by the loading order.
  Array.isArray(input) && input.length <= mostItems
    ? Array.from(input, (item: unknown) => {
        if (typeof item !== "object" || item === null) return item as MixProduct;
        const known: readonly string[] = mixProductFields;
        return Object.fromEntries(
          Object.entries(item).filter(([name]) => known.includes(name)),
        ) as MixProduct;
      })
    : (input as readonly MixProduct[]);

/** What the loading order knows nothing of: the rates, and how a product is measured out. */
const readJarProducts = (input: unknown): readonly ReadJarProduct[] =>
  Array.isArray(input) && input.length > 0
    ? eachOf(input, "products", "product", (item, at) => {
        if (typeof item !== "object" || item === null) return item as ReadJarProduct;
        const { rate, form, density, ...mix } = item as JarProduct;
        const { read, formRead } = allOf({
          known: () => expectFields(item, [...mixProductFields, "rate", "form", "density"], at),
          read: () => {
            if (rate === undefined) fail("missing", `${at}.rate`, undefined, "a rate of product");
            const found = expectRate(rate, `${at}.rate`);
            expectSameProduct(found.product, mix.id, `${at}.rate`, found.rate);
            return found;
          },
          formRead: () =>
            form === undefined ? undefined : expectOneOf(form, ["dry", "liquid"], `${at}.form`),
        });
        // For nothing at all, to see at this door whether a density is missing.
        const none = { area: quantity(0, "m2"), sprayVolume: quantity(0, "L", "spray") };
        const usual = isFormulation(mix.formulation) ? formulations[mix.formulation].form : undefined;
        if ((formRead ?? usual) !== undefined)
          amountAt({ rate, form: formRead ?? usual, density, ...none }, `${at}.`);
        return { mix, rate, perVolume: read.basis === "spray volume", form: formRead, density };
      })
    : [];

const jarSteps = (
  jar: Quantity<"volume", "spray">,
  amounts: readonly JarAmount[],
  products: readonly ReadJarProduct[],
  minutes: number,
): readonly JarStep[] => {
  const milliliters = jar.in("mL");
  const poured = amounts.reduce(
    (sum, { amount }) => (amount.dimension === "volume" ? sum + numberIn(amount, "mL") : sum),
    0,
  );
  const product = (id: string): MixProduct | undefined => products.find(({ mix }) => mix.id === id)?.mix;
  // Water first, to half of the jar, or to what the liquids leave of it.
  const water = Number(Math.min(milliliters / 2, milliliters - poured).toPrecision(3));
  const source = "water from the spray source, at its temperature";
  const steps: Omit<JarStep, "number">[] = [
    { text: "Wear what the labels require for mixers and loaders, and work outdoors or under a hood." },
    {
      text:
        water > 0
          ? `${poured > milliliters / 2 ? "Put into" : "Half-fill"} a clear jar (${water} mL) with ${source}.`
          : "Take a clear jar: the liquids fill it, and no water goes in.",
    },
    ...amounts.map(({ id, amount }) => {
      const { name = id, labelNote } = product(id) ?? {};
      const note = labelNote === undefined ? "" : ` Label: ${labelNote}`;
      return {
        text: `Add ${amountText(amount, 3)} of ${name}. Cap the jar and shake well.${note}`,
      };
    }),
    {
      text: `Fill to ${Number(milliliters.toPrecision(4))} mL with the same water, cap, invert ten times. Feel the jar for heat.`,
    },
    { text: `Let it stand ${minutes} minutes, look, shake, look again.`, minutes },
    {
      text: "Pour the jar into the tank when that mix is loaded, and put in that much less of each product, or apply it to a labeled site at or below the label rate.",
    },
  ];
  return steps.map((step, i) => ({ number: i + 1, ...step }));
};

const standOf = (input: unknown): keyof typeof standing =>
  input === undefined ? "Utah State" : expectOneOf(input, ["Utah State", "University of Arizona"], "stand");

const jarAmount = (
  { mix: { id, formulation }, rate, form = formulations[formulation].form, density }: ReadJarProduct,
  area: unknown,
  jar: Quantity<"volume", "spray">,
  at: string,
): JarAmount => {
  const total = amountAt({ rate, form, sprayVolume: jar, area, density }, at, "applicationVolume");
  // Weighed in grams, poured in milliliters: the form says which of the two it is.
  const amount = inUnit(total as Quantity<string, string>, form === "dry" ? "g" : "mL");
  return { id, formulation, amount: amount as JarAmount["amount"] };
};
