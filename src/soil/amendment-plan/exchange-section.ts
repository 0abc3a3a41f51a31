import { quantity } from "../../quantity/index.js";
import { acidityFromBuffer } from "../report/buffer-acidity.js";
import { type ExchangeCapacity, exchangeCapacity } from "../report/exchange-capacity.js";
import type { SectionNotes } from "./plan-types.js";
import type { ReadReport } from "./read-plan-input.js";
import { amountText, relocate } from "./relocate.js";

/** The acidity of the report, printed or from its buffer; `undefined` where it can be neither. */
export const acidityOf = (report: ReadReport): ReadReport["acidity"] => {
  if (report.acidity !== undefined) return report.acidity;
  const { buffer, bufferPH } = report;
  // Acidity by volume needs the weight of a volume, which reports seldom print.
  if (buffer === undefined || bufferPH === undefined || buffer === "Mehlich, North Carolina")
    return undefined;
  return relocate(
    () => acidityFromBuffer({ buffer, bufferPH }),
    (path) => `report.${path}`,
  );
};

/** Exchange capacity and base saturation, where the report has the figures for it. */
export const exchangeSection = (
  report: ReadReport,
): SectionNotes & { readonly exchange: ExchangeCapacity | null } => {
  const nothing = { exchange: null, figures: [], findings: [], checked: [] };
  const acidity = acidityOf(report);
  const [Ca, Mg, K, Na] = (["Ca", "Mg", "K", "Na"] as const).map((name) => report.elements.get(name));
  if (acidity === undefined || Ca === undefined || Mg === undefined || K === undefined) {
    const text = "exchange capacity: it takes calcium, magnesium, potassium and the acidity of the report";
    return { ...nothing, notChecked: [text] };
  }
  const exchange = exchangeCapacity({
    cations: {
      Ca: quantity(Ca, "mg/kg", "Ca/soil"),
      Mg: quantity(Mg, "mg/kg", "Mg/soil"),
      K: quantity(K, "mg/kg", "K/soil"),
      ...(Na === undefined ? {} : { Na: quantity(Na, "mg/kg", "Na/soil") }),
    },
    acidity,
    pH: report.pH,
  });
  const method = report.acidity === undefined ? `summation, acidity by ${report.buffer}` : "summation";
  const source = "CEC calculations, Clemson University Agricultural Service Laboratory";
  return {
    exchange,
    figures: [
      { section: "soil", of: "exchange capacity", value: amountText(exchange.capacity), method, source },
      { section: "soil", of: "base saturation", value: amountText(exchange.baseSaturation), method, source },
    ],
    findings: exchange.findings,
    checked: ["exchange capacity by summation"],
    notChecked: [],
  };
};
