import {
  allOf,
  checks,
  expectRecord,
  type Finding,
  fail,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import { type Formulation, formulations, type ProductForm } from "../formulation/formulation.js";
import { expectSameProduct, numberIn, sprayOf, sprayRateOf } from "../inputs.js";
import { loadingOrder } from "../order/loading-order.js";
import type { MixProduct } from "../partners/mix-product.js";
import { amountAt } from "../rate/amount-for.js";
import { expectRate, type RateOf } from "../rate/rate.js";
import type { LadderId } from "../votes/ladder.js";
import { type JarReading, type JarSign, jarCannotShow, jarFailures, jarReadings } from "./jar-facts.js";

/** A product of a jar test. */
export interface JarProduct
  extends Pick<MixProduct, "labelBefore" | "labelAfter" | "labelNote" | "contains" | "groups"> {
  readonly id: string;
  readonly name?: string;
  readonly formulation: Formulation;
  /** Rate per area or per volume of spray. */
  readonly rate: RateOf;
  /** Weighed or poured; what its kind is by itself where left out. */
  readonly form?: ProductForm;
  /** Mass per volume; needed where the rate is not in the measure of the form. */
  readonly density?: Quantity<"mass/volume", "none">;
}

/** What goes into the jar of one product. */
export interface JarAmount {
  readonly id: string;
  readonly formulation: Formulation;
  /** In grams where it is weighed, in milliliters where it is poured. */
  readonly amount: Quantity<"mass", string> | Quantity<"volume", string>;
}

/** One step of a jar test. */
export interface JarStep {
  readonly number: number;
  readonly text: string;
  readonly minutes?: number;
}

/** A jar test: amounts, steps, how to read it and what it cannot show. */
export interface JarTest {
  readonly type: "jar-test";
  readonly version: 1;
  /** Finished spray that the jar stands for. */
  readonly jar: Quantity<"volume", "spray">;
  /** In the order in which they go in. */
  readonly amounts: readonly JarAmount[];
  readonly steps: readonly JarStep[];
  readonly failures: readonly JarSign[];
  readonly cannotShow: readonly string[];
  readonly readings: readonly JarReading[];
  /** What there is to say of the mix and its order: the jar is filled in it. */
  readonly findings: readonly Finding[];
  readonly cautions: readonly TankCaution[];
  readonly source: string;
}

const standing = { "Utah State": 15, "University of Arizona": 5 } as const;

/**
 * A jar test of a mix: how much of each product goes into the jar, in grams and milliliters scaled from
 * the real rates, in which order, how to read the jar and what it cannot show.
 *
 * `amount = rate per area * jar volume / spray rate`, or `rate per volume * jar volume`: the jar holds the
 * mix at the strength of the tank. In metric units the usual shortcut, all rates per hectare divided by
 * 100, is the jar of a hundredth of the spray per hectare (0.7 L at 70 L/ha). Dry products are weighed: a
 * level teaspoon of them is anything from 1.6 to 4.7 g.
 *
 * @param input - `jar`, volume of spray in the jar; `sprayRate`, volume of spray per area, needed for rates
 *   per area; `products`, each with `id`, `formulation` and `rate` and, where the rate needs it,
 *   `density`; `ladder` as in {@link loadingOrder}; `stand`, whose standing time: Utah State (15 min, where
 *   left out) or University of Arizona (5 min)
 * @throws RatewrightError with every problem: `missing`, `range`, `duplicate`, `type`, `unit/mismatch`,
 *   `substance/mismatch` (also a rate of another product than its `id` says), with paths such as
 *   `products[1].rate`
 *
 * Source: GRDC GrowNotes, Spray Application Manual, module 7.5; Utah State University Extension, Using a
 * Jar Test (2012); University of Arizona turf extension, Order in The Tank! (1999).
 *
 * @example
 * ```ts
 * import { jarTest, quantity } from "ratewright";
 * const jar = jarTest({
 *   jar: quantity(0.7, "L", "spray"),
 *   sprayRate: quantity(70, "L/ha", "spray"),
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
  readonly sprayRate?: Quantity<"volume/area", "spray">;
  readonly products: readonly JarProduct[];
  readonly ladder?: "consensus" | LadderId;
  readonly stand?: keyof typeof standing;
}): JarTest => {
  expectRecord(input, "input");
  const { products, ladder = "consensus" } = input;
  const { jar, sprayRate, minutes, mix } = allOf({
    jar: () => sprayOf(input.jar, "jar"),
    sprayRate: () => (input.sprayRate === undefined ? undefined : sprayRateOf(input.sprayRate)),
    minutes: () => standingOf(input.stand),
    mix: () => loadingOrder({ products, ladder }),
  });
  const area = sprayRate === undefined ? undefined : jar.per(sprayRate);
  const door = checks();
  const byId = new Map(
    products.map((product, i) => [
      product.id,
      door.run(() => jarAmount(product, area, jar, `products[${i}].`)),
    ]),
  );
  door.done();
  const { order, findings } = mix;
  const amounts = order.map((id) => byId.get(id) as JarAmount);
  const name = (id: string): string => products.find((product) => product.id === id)?.name ?? id;
  const noteOf = (id: string): string => {
    const note = products.find((product) => product.id === id)?.labelNote;
    return note === undefined ? "" : ` Label: ${note}`;
  };
  const half = Number((jar.in("mL") / 2).toPrecision(3));
  const steps: Omit<JarStep, "number">[] = [
    { text: "Wear what the labels ask of mixers and loaders, and work outdoors or under a hood." },
    {
      text: `Put ${half} mL of the water that goes into the tank into a clear jar: half of what it will hold. It must be that very water, at its temperature.`,
    },
    ...amounts.map(({ id, amount }) => ({
      text: `Add ${Number(amount.value.toPrecision(3))} ${amount.unit} of ${name(id)}. Close the jar, shake well.${noteOf(id)}`,
    })),
    {
      text: `Fill with the same water to ${Number(jar.in("mL").toPrecision(4))} mL, close, turn it over ten times. Feel whether it grows warm.`,
    },
    { text: `Let it stand ${minutes} minutes, look, shake, look again.`, minutes },
    { text: "Pour the jar into the tank when that mix is loaded, or use it where the labels name the site." },
  ];
  return {
    type: "jar-test",
    version: 1,
    jar,
    amounts,
    steps: steps.map((step, i) => ({ number: i + 1, ...step })),
    failures: jarFailures,
    cannotShow: jarCannotShow,
    readings: jarReadings,
    findings: findings.filter(({ code }) => code !== "jar-test"),
    cautions: tankCautions.filter(({ code }) =>
      [
        "caution/label-first",
        "caution/protective-equipment",
        "caution/dry-powder",
        "caution/no-food-containers",
        "caution/emergency",
      ].includes(code),
    ),
    source: input.stand ?? "Utah State",
  };
};

const standingOf = (input: unknown): number => {
  const stand = input === undefined ? "Utah State" : input;
  const found = Object.entries(standing).find(([id]) => id === stand)?.[1];
  return found ?? fail("type", "stand", stand, "whose standing time", { choices: Object.keys(standing) });
};

const jarAmount = (
  product: JarProduct,
  area: unknown,
  jar: Quantity<"volume", "spray">,
  at: string,
): JarAmount => {
  const { id, formulation, form = formulations[formulation].form } = product;
  if (form !== "dry" && form !== "liquid") fail("type", `${at}form`, form, '"dry" or "liquid"');
  if (product.rate === undefined) fail("missing", `${at}rate`, undefined, "a rate of product");
  expectSameProduct(expectRate(product.rate, `${at}rate`).product, id, `${at}rate`, product.rate);
  const total = amountAt(
    {
      rate: product.rate,
      form,
      sprayVolume: jar,
      ...(area !== undefined && { area }),
      ...(product.density !== undefined && { density: product.density }),
    },
    at,
    "sprayRate",
  );
  const unit = form === "dry" ? "g" : "mL";
  const value = numberIn(total, unit);
  return { id, formulation, amount: quantityOf(value, unit, total.of, at) as never };
};
