import type { SprayOrder } from "../visit/spray-order.js";
import type { SpreadOrder } from "../visit/spread-order.js";
import { both, folded, measured, table, told, wrapped } from "./text-lines.js";

const where = (order: SpreadOrder | SprayOrder, site: string): string =>
  order.parts.length === 0 ? site : order.parts.join(", ");

/** What to spread, line by line. */
export const spreadLines = (order: SpreadOrder, site: string): string[] => {
  const lines = [
    `Spread  ${order.productName}`,
    `  where       ${where(order, site)}, ${both(order.area)}`,
    ...(order.target ? [`  target      ${both(order.target)} of ${order.target.of}`] : []),
    `  rate        ${both(order.rate)} of product`,
    ...(order.passes > 1 ? [`  per pass    ${both(order.ratePerPass)}, in ${order.passes} passes`] : []),
    `  in all      ${both(order.amount)}`,
  ];
  if (order.packages !== undefined) {
    const { count, leftOver } = order.packages;
    lines.push(`  open        ${count} ${count === 1 ? "package" : "packages"}, ${told(leftOver)} left over`);
  }
  return lines;
};

/** What to spray, line by line: loads, amounts and the filling of the tank. */
export const sprayLines = (order: SprayOrder, site: string, width: number): string[] => {
  const { tank } = order;
  const lines = [
    `Spray  ${order.products.map(({ productName }) => productName).join(" + ")}`,
    `  where       ${where(order, site)}, ${both(order.area)}`,
    `  spray       ${both(order.volume)} in all, at ${both(tank.applicationVolume)}`,
    `  loads       ${tank.count}: ${tank.loads.map((load) => told(load.volume)).join(", ")}`,
    "",
  ];
  const folds = lines.flatMap((line) => folded(line, width));
  lines.splice(0, lines.length, ...folds);
  const heads = ["", "rate", "in all", ...tank.loads.map((load) => `load ${load.number}`)];
  const rows = order.products.map((product) => [
    product.productName,
    told(product.rate),
    measured(product.amount),
    ...product.loads.map((share) => measured(share.amount)),
  ]);
  const fits = table([heads, ...rows]).every((row) => row.length <= width);
  const shownColumns = fits ? heads.length : 3;
  const narrow = table([heads, ...rows].map((row) => row.slice(0, shownColumns)));
  if (narrow.every((row) => row.length <= width)) lines.push(...narrow);
  else
    for (const [name = "", rate = "", amount = ""] of rows)
      lines.push(...wrapped(`${name}: ${rate}, ${amount} in all`, width, "  ", "    "));
  if (shownColumns < heads.length) {
    lines.push("  Loads, one line each:");
    tank.loads.forEach((load, i) => {
      const parts = order.products.map((p) => `${p.productName} ${measured(p.loads[i]?.amount)}`);
      lines.push(
        ...wrapped(parts.join("; "), width, `    ${load.number}  ${told(load.volume)}: `, "       "),
      );
    });
  }
  for (const product of order.products) {
    if (product.packages === undefined) continue;
    const { count, leftOver } = product.packages;
    const open = `open ${count} of ${product.productName}, ${told(leftOver)} left over`;
    lines.push(...wrapped(open, width, "  ", "    "));
  }
  lines.push("", "  Filling the tank (amounts of load 1)");
  for (const step of order.order.steps) {
    const number = String(step.number).padStart(4);
    lines.push(...wrapped(step.text, width, `${number}  `, "      "));
    if (step.action === "add" && step.reason !== "")
      lines.push(...wrapped(step.reason, width, "      - ", "        "));
  }
  return lines;
};
