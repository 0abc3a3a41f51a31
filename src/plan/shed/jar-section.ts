import { numberIn } from "../../quantity/index.js";
import { jarFailures } from "../../tank/index.js";
import { inWords } from "../sheet/british-words.js";
import type { SheetRow, SheetSection } from "../sheet/sheet-types.js";
import { type FirstUnits, plainNumber } from "../sheet/sheet-units.js";
import { stepsText } from "../sheet/tool-amount.js";
import type { SprayOrder } from "../visit/spray-order.js";
import { sprayTool } from "./spray-section.js";

/** What the jar holds, in milliliters: the mix is measured into it with a gram scale and a syringe. */
const jarVolume = 500;

/** What goes into the jar of a product: its share of the spray, in grams or milliliters. */
const jarRow = (order: SprayOrder, index: number, number: number): SheetRow | undefined => {
  const product = order.products[index];
  if (product === undefined) return undefined;
  const name = `${number}  ${product.productName}`;
  if (product.formulation === "water-soluble packet") return { cells: [name, "leave out", "never cut"] };
  const dry = product.amount.dimension === "mass";
  const amount = numberIn(product.amount, dry ? "g" : "mL") * (jarVolume / order.tank.volume.in("mL"));
  return {
    cells: [
      name,
      `${plainNumber(amount, amount < 0.1 ? 4 : amount < 10 ? 2 : 1)} ${dry ? "g" : "mL"}`,
      dry ? "gram scale" : "syringe",
    ],
  };
};

/** What the jar may add to a load: less than a scale or a jug tells (common practice, no source). */
const unnoticed = 0.01;

/**
 * What becomes of the jar. It holds product at the rate of the job, so a load that takes the jar takes so much less of each
 * product: in a small tank it would else be too strong by what the jar is of it.
 */
const jarIntoLoad = (order: SprayOrder, first: FirstUnits): string => {
  const share = jarVolume / (order.tank.loads[0] ?? order.tank).volume.in("mL");
  if (share < unnoticed) return "Pour the jar into load 1.";
  if (share >= 1)
    return inWords(
      "Do not pour the jar into load 1: it is no less than the load. Spray it on a labeled site, at or below the label rate.",
      first,
    );
  const less = order.products.flatMap((product) => {
    const amount = product.loads[0]?.exact;
    if (amount === undefined || product.formulation === "water-soluble packet") return [];
    const tool = sprayTool(product, first);
    // rounded down: with the jar the load is never over the rate
    const steps = Math.floor((numberIn(amount, tool.unit) * (1 - share)) / tool.step + 1e-9);
    return [`${stepsText(steps, tool)} of ${product.productName}`];
  });
  const percent = Math.round(100 * share);
  return `Pour the jar into load 1, and measure out only ${less.join(" and ")} for it: with the full amounts the load would be ${percent} % too strong.`;
};

/**
 * How to make the jar test of a mix: the amounts of its own rates in the order of the tank, and how the jar is read.
 *
 * Source of the steps, of the signs and of the 15 minutes: Utah State University Extension, Using a Jar Test (2012), list
 * 1-9; the amounts are the mix, scaled to the jar.
 */
export const jarSection = (order: SprayOrder, number: number, first: FirstUnits): readonly SheetSection[] => {
  if (order.products.length < 2) return [];
  const sequence = order.order.order
    .map((id) => order.products.findIndex(({ product }) => product === id))
    .filter((index) => index >= 0);
  const rows = sequence.flatMap((index, i) => jarRow(order, index, i + 2) ?? []);
  const last = rows.length + 2;
  return [
    {
      id: "jar test",
      title: `JAR TEST for JOB ${number}, before load 1`,
      treatment: order.treatment,
      blocks: [
        {
          kind: "text",
          text: `A clear jar with a lid that holds more than ${jarVolume} mL. Wear what you wear for mixing; work outdoors.`,
        },
        {
          kind: "table",
          heads: ["IN THIS ORDER", "amount", "measure by"],
          rows: [
            { cells: ["1  Water from the fill point, not warmed", `${jarVolume / 2} mL`, "jar mark"] },
            ...rows,
            { cells: [`${last}  The same water up to`, `${jarVolume} mL`, "jar mark"] },
          ],
        },
        {
          kind: "list",
          mark: "[ ]",
          items: [
            "Cap and shake well after each product. At the end cap the jar and invert it ten times.",
            "Let it stand 15 minutes, look, shake, look again.",
            `BAD, do not mix: ${jarFailures.map(({ sign }) => sign).join("; ")}.`,
            "None of these? That is all the jar shows. It does not show whether the mix works or harms the turf.",
            jarIntoLoad(order, first),
          ],
        },
      ],
    },
  ];
};
