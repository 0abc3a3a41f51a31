import { counted } from "../../quantity/house.js";
import { type Finding, type NeutralSubstance, numberIn, type Quantity } from "../../quantity/index.js";
import type { ProductLoads, TankLoads } from "../../tank/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { WithFindings } from "./with-findings.js";

/** A product in water-soluble packets: what one holds, and how many each load takes. */
export interface PacketShare {
  readonly size: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  /** Packets by load, as computed: 0.44 is a part of a packet, which is a finding. */
  readonly perLoad: readonly number[];
  /** Whether every load takes whole packets. */
  readonly whole: boolean;
  /** The area that one packet treats at this rate. */
  readonly areaPerPacket: Quantity<"area", NeutralSubstance>;
}

/** A load that is within a tenth of a percent of whole packets takes whole packets: labels print rounded rates. */
export const nearWhole = (count: number): boolean =>
  Math.round(count) >= 1 && Math.abs(count - Math.round(count)) <= 1e-3 * count;

/**
 * How many water-soluble packets each load takes. Packets go in whole and are never cut, so a load that takes a part of one
 * is a finding that says which area whole packets treat.
 */
export const wholePackets = (input: {
  readonly product: ReadProduct;
  readonly loads: ProductLoads;
  readonly tank: TankLoads;
  readonly path: string;
}): WithFindings<PacketShare | undefined> => {
  const { product, loads, tank, path } = input;
  const none = { value: undefined, findings: [], notChecked: [] };
  if (product.formulation !== "water-soluble packet") return none;
  const size = product.packetSize ?? product.package;
  if (size === undefined || size.dimension !== loads.total.dimension)
    return {
      ...none,
      findings: [
        {
          code: "packet/size-not-known",
          severity: "warning",
          path,
          params: { product: product.id },
          text: `${product.name}: the job does not state what one packet holds${size === undefined ? "" : " in the measure of the rate"}, so this sheet cannot say how many whole packets a load takes. State packetSize. Never cut or open a packet.`,
          source: "common practice, no source",
        },
      ],
      notChecked: [
        `${product.name}: whether each load takes whole packets, because no packet size is stated.`,
      ],
    };
  const perLoad = loads.loads.map(({ exact }) => numberIn(exact, size.unit) / size.value);
  const whole = perLoad.every(nearWhole);
  const packets = numberIn(loads.total, size.unit) / size.value;
  const areaPerPacket = tank.mixedFor.times(1 / packets);
  return {
    value: { size, perLoad, whole, areaPerPacket },
    findings: whole ? [] : [partOfPacket(product, perLoad, areaPerPacket, path)],
    notChecked: [],
  };
};

/** An area to four figures: 9,170 m2, 1.284 ha, 45,300 ft2; a part of an acre in square feet. */
const treated = (area: Quantity<"area", NeutralSubstance>): string => {
  const { value, unit } = area;
  const told = unit === "m2" && value >= 10_000 ? "ha" : unit === "acre" && value < 1 ? "ft2" : area.unit;
  const figures = String(Number(numberIn(area, told).toPrecision(4)));
  return `${figures.includes(".") ? figures : figures.replace(/\B(?=(\d{3})+$)/g, ",")} ${told}`;
};

const partOfPacket = (
  product: ReadProduct,
  perLoad: readonly number[],
  area: Quantity<"area", NeutralSubstance>,
  path: string,
): Finding => {
  const parts = perLoad.flatMap((count, i) => (nearWhole(count) ? [] : [{ load: i + 1, count }]));
  const shown = parts
    .slice(0, 3)
    .map(({ load, count }) => `load ${load} takes ${counted(Number(count.toPrecision(3)), "packet")}`);
  return {
    code: "packet/part-of-one",
    severity: "warning",
    path,
    params: {
      product: product.id,
      loads: parts.map(({ load }) => String(load)),
      areaPerPacket: area.value,
      unit: area.unit,
    },
    text: `${product.name}: ${shown.join(", ")}${parts.length > 3 ? " and others like it" : ""}. Packets go in whole and are never cut. One packet treats ${treated(area)} at this rate: plan loads for a whole number of packets, or use a product that does not come in packets.`,
    source: {
      title: "Water Soluble Packages",
      publisher: "Ontario Pesticide Education Program",
      year: 2017,
    },
  };
};
