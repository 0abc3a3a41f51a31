// Reference evapotranspiration of station-days beside loops written by hand that do the same checks.
import { hargreavesEvapotranspirationsMmPerD, referenceEvapotranspirationsMmPerD } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const n = 50_000;
const of = (make: (i: number) => number): Float64Array => Float64Array.from({ length: n }, (_, i) => make(i));
const tMinC = of((i) => 8 + 7 * Math.sin(i / 58));
const tMaxC = of((i) => 17 + 9 * Math.sin(i / 58) + (i % 7));
const vaporPressureKPa = of((i) => 0.9 + 0.3 * Math.sin(i / 58));
const windAtTwoMetersMPerS = of((i) => 0.5 + (i % 11) / 2);
const solarMJPerM2D = of((i) => 6 + (i % 13));
const elevationM = of((i) => (i >> 10) % 2000);
const latitudeDeg = of((i) => ((i >> 10) % 90) - 45);
const dayOfYear = of((i) => (i % 365) + 1);
const byKernel = new Float64Array(n);
const byHand = new Float64Array(n);

/** What a careful programmer writes: the equations in one loop, each input looked at once. */
const hand = (): void => {
  for (let i = 0; i < n; i++) {
    const low = tMinC[i] as number;
    const high = tMaxC[i] as number;
    const ea = vaporPressureKPa[i] as number;
    const u2 = windAtTwoMetersMPerS[i] as number;
    const rs = solarMJPerM2D[i] as number;
    const z = elevationM[i] as number;
    const lat = latitudeDeg[i] as number;
    const j = dayOfYear[i] as number;
    if (!(low >= -90 && high <= 60 && low <= high && ea >= 0 && ea <= 20 && u2 >= 0 && u2 <= 120))
      throw new Error(`day ${i}`);
    if (!(rs >= 0 && rs <= 50 && z >= -500 && z <= 9000 && lat >= -90 && lat <= 90 && j >= 1 && j <= 366))
      throw new Error(`day ${i}`);
    const phi = (lat * Math.PI) / 180;
    const angle = ((2 * Math.PI) / 365) * j;
    const d = 0.409 * Math.sin(angle - 1.39);
    const dr = 1 + 0.033 * Math.cos(angle);
    const x = -Math.tan(phi) * Math.tan(d);
    const ws = x >= 1 ? 0 : x <= -1 ? Math.PI : Math.acos(x);
    const ra =
      ((24 * 60) / Math.PI) *
      0.082 *
      dr *
      (ws * Math.sin(phi) * Math.sin(d) + Math.cos(phi) * Math.cos(d) * Math.sin(ws));
    if (!(ra > 0)) throw new Error(`day ${i}`);
    const ratio = Math.min(1, rs / ((0.75 + 2e-5 * z) * ra));
    const t = (low + high) / 2;
    const slope = (4098 * (0.6108 * Math.exp((17.27 * t) / (t + 237.3)))) / ((t + 237.3) * (t + 237.3));
    const gamma = 0.000665 * (101.3 * ((293 - 0.0065 * z) / 293) ** 5.26);
    const es =
      (0.6108 * Math.exp((17.27 * low) / (low + 237.3)) +
        0.6108 * Math.exp((17.27 * high) / (high + 237.3))) /
      2;
    const rnl =
      4.903e-9 *
      (((high + 273.16) ** 4 + (low + 273.16) ** 4) / 2) *
      (0.34 - 0.14 * Math.sqrt(ea)) *
      (1.35 * ratio - 0.35);
    const below = slope + gamma * (1 + 0.34 * u2);
    byHand[i] = (0.408 * slope * (0.77 * rs - rnl) + ((gamma * 900) / (t + 273)) * u2 * (es - ea)) / below;
  }
};

const kernel = (): void => {
  referenceEvapotranspirationsMmPerD({
    tMinC,
    tMaxC,
    vaporPressureKPa,
    windAtTwoMetersMPerS,
    solarMJPerM2D,
    elevationM,
    latitudeDeg,
    dayOfYear,
    outMmPerD: byKernel,
  });
};

const hargreavesByHand = (): void => {
  for (let i = 0; i < n; i++) {
    const low = tMinC[i] as number;
    const high = tMaxC[i] as number;
    const lat = latitudeDeg[i] as number;
    const j = dayOfYear[i] as number;
    if (!(low >= -90 && high <= 60 && low <= high && lat >= -90 && lat <= 90 && j >= 1 && j <= 366))
      throw new Error(`day ${i}`);
    const phi = (lat * Math.PI) / 180;
    const angle = ((2 * Math.PI) / 365) * j;
    const d = 0.409 * Math.sin(angle - 1.39);
    const dr = 1 + 0.033 * Math.cos(angle);
    const x = -Math.tan(phi) * Math.tan(d);
    const ws = x >= 1 ? 0 : x <= -1 ? Math.PI : Math.acos(x);
    const ra =
      ((24 * 60) / Math.PI) *
      0.082 *
      dr *
      (ws * Math.sin(phi) * Math.sin(d) + Math.cos(phi) * Math.cos(d) * Math.sin(ws));
    byHand[i] = 0.408 * 0.0023 * ((low + high) / 2 + 17.8) * Math.sqrt(high - low) * ra;
  }
};

const hargreavesKernel = (): void => {
  hargreavesEvapotranspirationsMmPerD({ tMinC, tMaxC, latitudeDeg, dayOfYear, outMmPerD: byKernel });
};

const row = (name: string, byLoop: () => void, own: () => void): KernelRow => ({
  name,
  of: "station-day",
  items: n,
  hand: byLoop,
  own,
  results: [
    () => {
      byLoop();
      return byHand[4321] as number;
    },
    () => {
      own();
      return byKernel[4321] as number;
    },
  ],
});

/** The evapotranspiration kernels. */
export const evapotranspirationRows: readonly KernelRow[] = [
  row("referenceEvapotranspirationsMmPerD", hand, kernel),
  row("hargreavesEvapotranspirationsMmPerD", hargreavesByHand, hargreavesKernel),
];
