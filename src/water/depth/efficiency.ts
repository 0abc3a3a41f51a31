import { likeQuantity } from "../../quantity/index.js";
import { depth, type Length, percent, readRecord, type Share } from "../read.js";

const efficiency = percent({ above: 0, max: 100 }, 1);

/**
 * The depth to apply so that a net depth reaches the roots, `dg = dn * 100 / E`.
 *
 * - `dn` net depth, in any unit of length; the result is in it
 * - `E` application efficiency in percent, more than 0 and at most 100: what is left after wind, evaporation, runoff
 *   and water below the roots. Unevenness is another thing: see {@link runTimeMultiplier}
 *
 * @throws RatewrightError `range`, `missing`, `type` for a bare number, `unit/mismatch`, `not-finite`
 *
 * Source: the definition of application efficiency, as irrigation handbooks print it.
 *
 * @example
 * ```ts
 * import { grossDepth, quantity } from "ratewright";
 * grossDepth({ net: quantity(0.75, "in"), efficiency: quantity(75, "%") }).in("in"); // => 1
 * ```
 */
export const grossDepth = (input: { readonly net: Length; readonly efficiency: Share }): Length => {
  const { net, efficiency: e } = readRecord(
    input,
    { net: depth, efficiency },
    "a record with net and efficiency",
  );
  return likeQuantity(net, (net.value * 100) / e);
};

/**
 * The net depth of an application, `dn = dg E / 100`: the other way round from {@link grossDepth}.
 *
 * - `dg` gross depth, in any unit of length; the result is in it
 * - `E` application efficiency in percent, more than 0 and at most 100
 *
 * @throws RatewrightError `range`, `missing`, `type` for a bare number, `unit/mismatch`, `not-finite`
 *
 * Source: as {@link grossDepth}.
 *
 * @example
 * ```ts
 * import { netDepth, quantity } from "ratewright";
 * netDepth({ gross: quantity(20, "mm"), efficiency: quantity(80, "%") }).in("mm"); // => 16
 * ```
 */
export const netDepth = (input: { readonly gross: Length; readonly efficiency: Share }): Length => {
  const { gross, efficiency: e } = readRecord(
    input,
    { gross: depth, efficiency },
    "a record with gross and efficiency",
  );
  return likeQuantity(gross, (gross.value * e) / 100);
};
