/**
 * Temperatures in °F that are whole degrees Celsius, for the compiler: those that are whole on both
 * scales from -40 to 122 °F, and every whole °C from 0 to 20. At run time the value is computed.
 */
export interface WholeCelsius {
  "-40": "-40";
  "-31": "-35";
  "-22": "-30";
  "-13": "-25";
  "-4": "-20";
  "5": "-15";
  "14": "-10";
  "23": "-5";
  "32": "0";
  "33.8": "1";
  "35.6": "2";
  "37.4": "3";
  "39.2": "4";
  "41": "5";
  "42.8": "6";
  "44.6": "7";
  "46.4": "8";
  "48.2": "9";
  "50": "10";
  "51.8": "11";
  "53.6": "12";
  "55.4": "13";
  "57.2": "14";
  "59": "15";
  "60.8": "16";
  "62.6": "17";
  "64.4": "18";
  "66.2": "19";
  "68": "20";
  "77": "25";
  "86": "30";
  "95": "35";
  "104": "40";
  "113": "45";
  "122": "50";
}

/** What the id is made of. */
export interface IdParts {
  readonly method: string;
  readonly base: { readonly value: number; readonly unit: "°C" | "°F" };
  readonly upper?: { readonly value: number; readonly unit: "°C" | "°F" };
  readonly cutoff?: string;
  readonly sensor: string;
  readonly start?: string;
}

type Hyphened<T extends string> = T extends `${infer A} ${infer B}` ? `${A}-${Hyphened<B>}` : T;

/** Where the compiler cannot tell the base text it is `string`, and the check is left to run time. */
type BaseText<V extends number, U extends string> = number extends V
  ? string
  : U extends "°C"
    ? `${V}C`
    : `${V}` extends keyof WholeCelsius
      ? `${WholeCelsius[`${V}`]}C`
      : `${V}` extends `${string}.${string}`
        ? string
        : `${V}F`;

/** The upper threshold and what happens above it, with a blank before each. */
type UpperText<M extends IdParts> = M extends {
  readonly upper: { readonly value: infer V extends number; readonly unit: infer U extends string };
}
  ? string extends BaseText<V, U>
    ? string
    : ` to ${BaseText<V, U>}${M extends { readonly cutoff: infer C extends string } ? ` ${Hyphened<C>}` : ""}`
  : "";

type IdText<M extends IdParts> =
  `${Hyphened<M["method"]>} base ${BaseText<M["base"]["value"], M["base"]["unit"]>}${UpperText<M>} ${M["sensor"]}${M extends {
    readonly start: infer S extends string;
  }
    ? ` from ${S}`
    : ""}`;

/** The id of a model as far as the compiler knows it: a literal, or `string`. */
export type DegreeDayId<M extends IdParts> =
  string extends BaseText<M["base"]["value"], M["base"]["unit"]>
    ? string
    : string extends UpperText<M>
      ? string
      : "air" | "soil at 1 cm" extends M["sensor"]
        ? string
        : IdText<M>;

/**
 * A base temperature in its one spelling: in °C where it is a thousandth of a degree Celsius or a
 * coarser fraction, else in °F. 32 °F and 0 °C are both `0C`; 53 °F, which is 11.66... °C, is `53F`.
 */
const baseText = ({ value, unit }: IdParts["base"]): string => {
  const thousandths = Math.round(value * 1000) + 0;
  if (unit === "°C") return `${thousandths / 1000}C`;
  const ninths = (thousandths - 32000) * 5;
  return ninths % 9 === 0 ? `${(ninths / 9 + 0) / 1000}C` : `${thousandths / 1000}F`;
};

/** The id of a model: the same for two models that give the same sums, and different for all others. */
export const degreeDayId = ({ method, base, upper, cutoff, sensor, start }: IdParts): string => {
  const hyphened = (text: string): string => text.replace(/ /g, "-");
  const limit = upper === undefined ? "" : ` to ${baseText(upper)}`;
  const how = cutoff === undefined ? "" : ` ${hyphened(cutoff)}`;
  const since = start === undefined ? "" : ` from ${start}`;
  return `${hyphened(method)} base ${baseText(base)}${limit}${how} ${sensor}${since}`;
};
