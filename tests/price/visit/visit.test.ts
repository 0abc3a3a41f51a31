import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  marginOfMarkup,
  markupOfMargin,
  money,
  priceAtMargin,
  priceAtMarkup,
  quantity,
  visitPrice,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const usd = (value: number) => money(value, "USD");
const percent = (value: number) => quantity(value, "%");
const hour = quantity(1, "h");
const rate = (value: number) => usd(value).per(hour);

describe("margin and markup", () => {
  it("turn into each other and give one price", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 95, noNaN: true }),
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        (margin, cost) => {
          const markup = markupOfMargin(percent(margin));
          expect(marginOfMarkup(markup).in("%")).toBeCloseTo(margin, 9);
          expect(markup.in("%")).toBeGreaterThanOrEqual(margin - 1e-9);
          const price = priceAtMargin({ cost: usd(cost), margin: percent(margin) }).value;
          expect(priceAtMarkup({ cost: usd(cost), markup }).value / price).toBeCloseTo(1, 9);
          expect((100 * (price - cost)) / price).toBeCloseTo(margin, 6);
        },
      ),
    );
  });

  it("refuse the wrong pick by its name", () => {
    expect(complaints(() => priceAtMargin({ cost: usd(1), markup: percent(10) } as never))).toEqual([
      "type input.markup",
    ]);
    expect(complaints(() => priceAtMargin({ cost: usd(1), margin: percent(100) }))).toEqual(["range margin"]);
    expect(complaints(() => markupOfMargin(percent(120)))).toEqual(["range margin"]);
    expect(complaints(() => marginOfMarkup(undefined as never))).toEqual(["missing markup"]);
  });
});

describe("visitPrice", () => {
  const visit = {
    manHours: quantity(3, "h"),
    wage: rate(23),
    machines: [{ name: "mower", hours: quantity(2, "h"), rate: rate(18) }],
    products: [
      { name: "seed", cost: usd(40) },
      { name: "feed", cost: usd(25) },
    ],
    other: [{ name: "dump fee", cost: usd(9) }],
    overhead: rate(12),
    aim: { margin: percent(15) },
  } as const;

  it("adds up to the cent and keeps the aim", () => {
    const found = visitPrice(visit);
    expect(found.direct.value).toBeCloseTo(69 + 36 + 65 + 9, 12);
    expect(found.breakEven.value).toBeCloseTo(179 + 36, 12);
    expect(found.breakEven.plus(found.profit).value).toBeCloseTo(found.price.value, 12);
    expect(found.margin.in("%")).toBeCloseTo(15, 12);
    expect(found.markup.in("%")).toBeCloseTo(markupOfMargin(percent(15)).in("%"), 9);
    expect(found.findings).toEqual([]);
    expect([found.perArea, found.season]).toEqual([null, null]);
  });

  it("is the same by a margin and by the markup that belongs to it", () => {
    const other = visitPrice({ ...visit, aim: { markup: markupOfMargin(percent(15)) } });
    expect(other.price.value).toBeCloseTo(visitPrice(visit).price.value, 9);
    expect(visitPrice({ ...visit, aim: { markup: percent(15) } }).price.value).toBeLessThan(
      other.price.value,
    );
  });

  it("prices an area in its own unit, and a season", () => {
    const found = visitPrice({ ...visit, area: quantity(20, "1000 ft2"), visits: 6 });
    expect(found.perArea?.unit).toBe("money:USD/1000 ft2");
    expect(found.perArea?.value).toBeCloseTo(found.price.value / 20, 12);
    expect(found.season?.value).toBeCloseTo(6 * found.price.value, 9);
    expect(found.perManHour.times(quantity(3, "h")).value).toBeCloseTo(found.price.value, 9);
  });

  it("says what was counted as nothing", () => {
    const { products: _, machines: __, ...bare } = visit;
    expect(visitPrice({ ...bare, overhead: rate(0) }).findings[0]?.params).toEqual({
      parts: ["products", "machines", "overhead"],
    });
  });

  it("asks for exactly one aim, one currency and no hidden overhead", () => {
    const call = visitPrice as (input: unknown) => unknown;
    expect(complaints(() => call({ ...visit, aim: { margin: percent(10), markup: percent(10) } }))).toEqual([
      "conflict aim",
    ]);
    expect(complaints(() => call({ ...visit, aim: {} }))).toEqual(["missing aim"]);
    expect(complaints(() => call({ ...visit, aim: { profit: percent(10) } }))).toEqual(["type aim.profit"]);
    expect(complaints(() => call({ ...visit, overhead: undefined }))).toEqual(["missing overhead"]);
    expect(
      complaints(() =>
        call({
          ...visit,
          products: [{ name: "seed", cost: money(4, "EUR") }],
          machines: [{ name: "x", hours: hour }],
        }),
      ),
    ).toEqual(["missing machines[0].rate", "unit/mismatch products[0].cost"]);
    expect(complaints(() => call({ ...visit, products: [] }))).toEqual(["missing products"]);
  });
});

describe("a share without its unit", () => {
  it("is refused with the form to write", () => {
    const bare = () => priceAtMargin({ cost: usd(90), margin: 10 } as never);
    expect(complaints(bare)).toEqual(["type margin"]);
    expect(bare).toThrow(/quantity\(10, "%"\)/);
    expect(() => priceAtMargin({ cost: usd(90), margin: percent(100) })).toThrow(/priceAtMarkup/);
  });
});
