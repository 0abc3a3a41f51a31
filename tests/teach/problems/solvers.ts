import type { ReadText } from "./read-text.js";

/** Solves a problem from its text alone, in SI units, money and percents as they are printed. */
export type Solver = (read: ReadText) => number;

/** A figure that has to be there. */
const at = (list: readonly number[], i: number, otherwise?: number): number => {
  const found = list[i] ?? otherwise;
  if (found === undefined) throw new Error(`no figure ${i} among ${list.join(", ")}`);
  return found;
};

const pound = 0.45359237;
const foot = 0.3048;
const up = (value: number): number => Math.ceil(value - 1e-9);

export const solvers: Readonly<Record<string, Solver>> = {
  "nutrient/product-rate": ({ q, grade, level }) =>
    level === 1
      ? (at(q, 0) * 100) / at(grade, 0)
      : level === 2
        ? ((at(q, 0) * 100) / at(grade, 0)) * at(q, 1)
        : ((at(q, 0) * at(q, 1)) / at(q, 2) / at(grade, 1)) * 100 * (q[3] ?? 1),
  "nutrient/nutrient-supplied": ({ q, grade }) => ((at(q, 0) * at(grade, 0)) / 100) * (q[1] ?? 1),
  "nutrient/bags": ({ q, grade, level }) =>
    level === 1
      ? up(at(q, 0) / at(q, 1))
      : level === 2
        ? up((at(q, 0) * at(q, 1)) / at(q, 2))
        : up((((at(q, 0) * at(q, 1)) / at(grade, 0)) * 100) / at(q, 2)),
  "spray/whole-boom": ({ q, bare, level }) =>
    level === 1 ? at(q, 0) / (at(q, 1) * at(q, 2)) : at(q, 0) / (at(bare, 0) * at(q, 1) * at(q, 2)),
  "spray/speed-for-flow": ({ q }) => at(q, 0) / (at(q, 1) * at(q, 2)),
  "spray/hand-gun": ({ q, level }) => (at(q, 0) * at(q, 1)) / (level === 1 ? 1 : at(q, 2) * at(q, 3)),
  "tank/per-volume": ({ q, level }) => (level === 1 ? at(q, 0) * at(q, 1) : (at(q, 0) / at(q, 1)) * at(q, 2)),
  "tank/strength": ({ q, level }) =>
    level < 3 ? (at(q, 0) * at(q, 1)) / at(q, 2) : (at(q, 0) * at(q, 2) * at(q, 1)) / at(q, 3),
  "tank/spray-for-active": ({ q }) => (at(q, 0) * 100) / (at(q, 1) * at(q, 2)),
  "tank/spray-for-area": ({ q, level }) =>
    level === 1 ? at(q, 0) * at(q, 1) : at(q, 0) * at(q, 1) * at(q, 2),
  "quantity/flow": ({ q, level }) => at(q, 0) / (level === 1 ? 60 : at(q, 1)),
  "nutrient/in-a-bag": ({ q, bare, grade, level, text }) => {
    const percent = at(grade, /potash/.test(text) ? 2 : 1);
    return (
      ((text.startsWith("A bag") ? 1 : at(bare, 0)) *
        at(q, 0) *
        percent *
        (level === 2 ? at(q, 2) / at(q, 1) : 1)) /
      100
    );
  },
  "plan/season-order": ({ q, bare, level }) => {
    const season = at(bare, 0) * at(q, 0) * at(q, 1);
    return level === 1 ? season : up(season / at(q, 2));
  },
  "quantity/rates-per-acre": ({ q }) => at(q, 0),
  "spray/application-volume": ({ q, bare, level }) =>
    level === 1
      ? at(q, 2) / (at(q, 0) * at(q, 1))
      : at(q, 2) * at(q, 0) * at(q, 1) * (level === 3 ? at(bare, 0) : 1),
  "spray/speed": ({ q, level }) =>
    level === 2
      ? (2 * at(q, 0)) / (at(q, 1) + at(q, 2))
      : level === 1
        ? at(q, 0) / at(q, 1)
        : at(q, 1) / at(q, 0),
  "spray/refill": ({ q, bare }) => at(q, 2) / (at(q, 0) * at(q, 1) * (bare[0] ?? 1)),
  "spray/pressure": ({ q, level }) =>
    level === 2 ? at(q, 0) * Math.sqrt(at(q, 2) / at(q, 1)) : at(q, 1) * (at(q, 2) / at(q, 0)) ** 2,
  "spray/active-ingredient": ({ q, level }) =>
    level === 1 ? (at(q, 0) * 100) / at(q, 1) : (at(q, 0) / at(q, 1)) * (q[2] ?? 1),
  "spread/calibration": ({ q, level, text }) =>
    level === 3
      ? at(q, 0) * at(q, 2) * at(q, 3)
      : at(q, 2) / (at(q, 0) * at(q, 1)) / (text.includes("twice") ? 2 : 1),
  "spread/passes": ({ q, level }) =>
    level === 3 ? (at(q, 0) * at(q, 1)) / 2 : up(at(q, 0) / (at(q, 1) - (q[2] ?? 0))),
  "tank/coverage": ({ q, level }) => {
    if (level < 3) return at(q, 0) / at(q, 1);
    const spray = at(q, 2) * at(q, 1);
    return spray - (up(spray / at(q, 0)) - 1) * at(q, 0);
  },
  "tank/product-per-load": ({ q, level }) =>
    level === 1 ? at(q, 0) * at(q, 1) : (at(q, 2) / at(q, 1)) * at(q, 0),
  "tank/dilution": ({ q, bare, level }) =>
    level === 1 ? (at(q, 0) * at(q, 1)) / 100 : at(q, 0) / (level === 2 ? at(bare, 1) : at(bare, 1) + 1),
  "site/area": ({ q, level }) =>
    level === 1
      ? (at(q, 0) * at(q, 1)) / 2
      : level === 2
        ? (Math.PI * at(q, 0) ** 2) / 4
        : at(q, 0) * at(q, 1) - (Math.PI * at(q, 2) ** 2) / 4,
  "site/offsets": ({ q: [spacing = 0, ...widths] }) =>
    spacing * widths.slice(1).reduce((sum, each, i) => sum + (each + at(widths, i)) / 2, 0),
  "site/topdressing": ({ q, level }) =>
    level === 1 ? at(q, 0) * at(q, 1) : at(q, 0) * at(q, 1) * at(q, 2) * (q[3] ?? 1),
  "site/pond": ({ q, level }) =>
    level === 1
      ? at(q, 0) * at(q, 1)
      : (at(q, 0) * at(q, 1) * at(q, 2) * 100) / (level === 3 ? at(q, q.length - 1) : 100),
  "water/depth-and-time": ({ q, level }) =>
    level === 1 ? at(q, 0) * at(q, 1) : ((at(q, 0) / at(q, 1)) * 100) / (q[2] ?? 100),
  "water/uniformity": ({ q }) => {
    const sorted = [...q].sort((a, b) => a - b);
    const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;
    return (mean(sorted.slice(0, q.length / 4)) / mean(q)) * 100;
  },
  "water/reserve": ({ q, level }) => (at(q, 0) * at(q, 1)) / 100 / (level === 2 ? at(q, 2) : 1),
  "stand/seed": ({ q, level }) => {
    const live = (at(q, 0) * at(q, 1)) / 100;
    if (level === 1) return live;
    const seed = ((at(q, 2) * at(q, 3)) / live) * 100;
    return level === 2 ? seed : up(seed / at(q, 4));
  },
  "stand/mowing": ({ q, level }) =>
    level === 1
      ? ((at(q, 0) - at(q, 1)) / at(q, 0)) * 100
      : level === 2
        ? at(q, 0) * 1.5
        : at(q, 0) / 2 / at(q, 1),
  "stand/plugs": ({ q }) => up((at(q, 0) / at(q, 1) ** 2) * (1 + (q[2] ?? 0) / 100)),
  "interval/degree-days": ({ q }) => {
    const base = at(q, q.length - 1);
    let sum = 0;
    for (let i = 0; i + 1 < q.length; i += 2) sum += Math.max(0, (at(q, i) + at(q, i + 1)) / 2 - base);
    return sum;
  },
  "limits/nitrogen-left": ({ q: [limit = Number.NaN, ...applied] }) =>
    limit - applied.reduce((a, b) => a + b, 0),
  "price/margin": ({ q, text }) =>
    text.includes("markup") ? at(q, 0) * (1 + at(q, 1) / 100) : at(q, 0) / (1 - at(q, 1) / 100),
  "soil/lime": ({ q }) => (at(q, 0) / at(q, 1)) * 100 * (q[2] ?? 1),
  "quantity/rates": ({ q }) => at(q, 0),
  "nutrient/cost": ({ q, level }) =>
    level === 1 ? (at(q, 1) * 100) / at(q, 0) / at(q, 2, 1) : (at(q, 2) / at(q, 0) / at(q, 1)) * 100,
  "nutrient/liquids": ({ q, level }) =>
    level === 1
      ? at(q, 0) * at(q, 1)
      : level === 2
        ? (at(q, 1) * at(q, 0)) / 100
        : (at(q, 0) * 100) / at(q, 1) / at(q, 2),
  "price/per-area": ({ q, level, text }) => {
    const price = at(q, 1) / (text.includes("per lb.") ? pound : 1);
    return level === 1 ? at(q, 0) * price : at(q, 0) * price * at(q, 2);
  },
  "spray/catch": ({ q, level }) =>
    level === 1 ? at(q, q.length - 1) / at(q, 0) : at(q, 2) / at(q, 0) / at(q, 1),
  "spray/bands": ({ q }) => (at(q, 2) * at(q, 0)) / at(q, 1),
  "spray/heavy-liquids": ({ q }) => at(q, 0) * Math.sqrt(at(q, 1) / at(q, 2)),
  "spread/capacity": ({ q, level }) => {
    const rate = (at(q, 0) * at(q, 1) * at(q, 2)) / 100;
    return level === 1 ? rate : at(q, 3) / rate;
  },
  "tank/rinsing": ({ q, bare }) => 100 * (at(q, 0) / (at(q, 0) + at(q, 1))) ** (bare[0] ?? 1),
  "site/rectangle": ({ q }) => at(q, 0) * at(q, 1),
  "site/trapezoid": ({ q }) => ((at(q, 0) + at(q, 1)) / 2) * at(q, 2),
  "water/precipitation-rate": ({ q, level }) => {
    const rate = at(q, 0) / at(q, 1);
    return level === 1 ? rate : at(q, q.length - 1) / rate;
  },
  "soil/layer": ({ q, bare, level }) => at(q, 0) * at(bare, 0) * 1000 * (level === 2 ? at(q, 3) / 1e6 : 1),
  "soil/sodium": ({ q }) => at(q, 0) / 1000 / Math.sqrt((at(q, 1) + at(q, 2)) / 2000),
  "stand/clippings": ({ q, level }) =>
    ((at(q, 0) * at(q, 1)) / 0.001) * (level === 2 ? at(q, q.length - 1) / 100 : 1),
  "stand/sod": ({ q, level }) => {
    const sod = at(q, 0) * (1 + at(q, 1) / 100);
    return level === 1 ? sod : up(sod / at(q, 2));
  },
  "weather/wind": ({ q, bare }) => at(q, 0) * at(bare, 0),
  "weather/light": ({ q, bare }) => ((at(bare, 0) * at(q, 0)) / 100) * at(bare, 2),
  "pest/density": ({ q, bare, level, text }) =>
    (((at(bare, 0) + at(bare, 1) + at(bare, 2)) / 3) * (/square foot/.test(text) ? foot * foot : 1)) /
    (level === 1 ? at(q, 1) : (Math.PI * at(q, 0) ** 2) / 4),
  "indicator/impact": ({ q, bare, level }) =>
    at(bare, 0) * (at(q, q.length - 1) / (pound / 4046.8564224)) * (level === 2 ? at(q, 0) / 100 : 1),
  "calendar/days": ({ text, level }) => {
    const [from = 0, to = 0] = [...text.matchAll(/([A-Z][a-z]+) (\d+)/g)]
      .filter(([, month]) => !Number.isNaN(Date.parse(`${month} 1, 2026`)))
      .map(([, month, day]) => Date.parse(`${month} ${day}, 2026 12:00 UTC`) / 86_400_000);
    return level === 1 ? to - from : Number(/asks for (\d+) days/.exec(text)?.[1]) - (to - from);
  },
  "numeric/mean": ({ q, level }) =>
    level === 1
      ? (at(q, 0) + at(q, 1) + at(q, 2)) / 3
      : (200 * (at(q, 1) - at(q, 0))) / Math.SQRT2 / (at(q, 0) + at(q, 1)),
  "plan/reorder": ({ q }) => (at(q, 1) * at(q, 2)) / at(q, 0) + (q[3] ?? 0),
  "plan/route": ({ q }) => up(((at(q, 0) + at(q, 1) + at(q, 2)) * at(q, 3)) / at(q, 4)),
  "ledger/season-total": ({ q, text, level }) => {
    const [a = 0, b = 0] = [...text.matchAll(/an? (\d+)-\d+-\d+/g)].map(([, n]) => Number(n));
    const total = (at(q, 0) * a + at(q, 1) * b) / 100;
    return level === 2 ? at(q, 2) - total : total;
  },
  "interval/half-life": ({ q }) => 100 * 0.5 ** (at(q, 1) / at(q, 0)),
  "interval/split": ({ q }) => up(at(q, 0) / at(q, 1)),
};
