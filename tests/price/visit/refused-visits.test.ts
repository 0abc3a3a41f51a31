import { expect, test } from "vitest";
import {
  marginOfMarkup,
  markupOfMargin,
  priceAtMargin,
  priceAtMarkup,
  visitPrice,
} from "../../../src/price/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const hour = quantity(1, "h");
const usd = (value: number) => money(value, "USD");
const percent = (value: number) => quantity(value, "%");
const good = {
  manHours: quantity(2, "h"),
  wage: usd(20).per(hour),
  overhead: usd(0).per(hour),
  aim: { markup: percent(25) },
};
const visit = (change: object) => () => visitPrice({ ...good, ...change } as never);
const rig = { name: "spray rig", hours: quantity(1, "h"), rate: usd(28).per(hour) };
const feed = { name: "24-0-11", cost: usd(10) };

test("margin and markup", () => {
  const cost = usd(90);
  expectRefusals([
    [
      () => priceAtMargin({ cost: undefined as never, margin: percent(10) }),
      "missing",
      "cost",
      /^the cost, such as money\(20, "USD"\) /,
    ],
    [
      () => priceAtMargin({ cost, margin: undefined as never }),
      "missing",
      "margin",
      /^the margin as a share of the price, 0 %/,
    ],
    [
      () => priceAtMargin({ cost, margin: percent(100) }),
      "range",
      "margin",
      /it is a share of the price\. A share of the cost is a markup: priceAtMarkup.*"below":100,"unit":"%"/,
    ],
    [
      () => priceAtMarkup({ cost: undefined as never, markup: percent(10) }),
      "missing",
      "cost",
      /^the cost, such as/,
    ],
    [
      () => priceAtMarkup({ cost, markup: undefined as never }),
      "missing",
      "markup",
      /^the markup as a share of the cost, 0 %/,
    ],
    [() => priceAtMarkup({ cost, markup: percent(-1) }), "range", "markup", /zero or more/],
    [() => markupOfMargin(percent(100)), "range", "margin", /it is a share of the price/],
    [() => marginOfMarkup(undefined as never), "missing", "markup", /^the markup as a share of the cost/],
    [() => marginOfMarkup(10 as never), "type", "markup", /^the markup as a share of the cost with its unit/],
  ]);
  expect(priceAtMargin({ cost: usd(1), margin: percent(99) }).value).toBeCloseTo(100, 9);
});

test("the aim of a visit", () => {
  const aim = (input: unknown) => visit({ aim: input });
  const both =
    /one of margin \(share of the price\) and markup \(share of the cost\): 10 % of one is not 10 % of the other/;
  expectRefusals([
    [
      aim(undefined),
      "missing",
      "aim",
      /^\{ margin \} as a share of the price, or \{ markup \} as a share of the cost/,
    ],
    [aim({}), "missing", "aim", both],
    [aim({ margin: percent(10), markup: percent(10) }), "conflict", "aim", both],
    [aim({ margin: percent(100) }), "range", "aim.margin", /it is a share of the price/],
    [aim({ margin: 10 }), "type", "aim.margin", /with its unit/],
    [aim({ markup: 10 }), "type", "aim.markup", /^the markup with its unit/],
  ]);
  expect(complaints(aim({ gain: percent(1) }))).toContain("type aim.gain");
});

const machines = (list: unknown) => visit({ machines: list });
const lines = (count: number) => Array.from({ length: count }, () => rig);

test("what goes into a visit", () => {
  expectRefusals([
    [visit({ wage: undefined }), "missing", "wage", /^the loaded wage, such as money\(20, "USD"\) per 1 h/],
    [visit({ manHours: undefined }), "missing", "manHours", /^the man-hours of the visit/],
    [visit({ manHours: quantity(0, "h") }), "range", "manHours", /more than zero/],
    [visit({ overhead: undefined }), "missing", "overhead", /^overhead per man-hour, such as money/],
    [
      visit({ overhead: money(1, "EUR").per(hour) }),
      "unit/mismatch",
      "overhead",
      /^overhead per man-hour in USD, as the first amount is/,
    ],
    [machines([]), "missing", "machines", /machine/],
    [machines(lines(201)), "range", "machines", /"max":200/],
    [machines([rig, { ...rig, name: "" }]), "missing", "machines[1].name", /^the name of the machine/],
    [
      machines([rig, { ...rig, hours: undefined }]),
      "missing",
      "machines[1].hours",
      /^its hours on the visit/,
    ],
    [machines([rig, { ...rig, hours: quantity(-1, "h") }]), "range", "machines[1].hours", /zero or more/],
    [
      machines([rig, { ...rig, rate: undefined }]),
      "missing",
      "machines[1].rate",
      /^its rate, such as money\(20, "USD"\) per 1 h/,
    ],
    [
      machines([{ ...rig, rate: money(1, "EUR").per(hour) }]),
      "unit/mismatch",
      "machines[0].rate",
      /^its rate in USD/,
    ],
  ]);
});

test("what else goes into it", () => {
  expectRefusals([
    [visit({ products: [] }), "missing", "products", /cost/],
    [
      visit({ products: [{ ...feed, cost: money(1, "EUR") }] }),
      "unit/mismatch",
      "products[0].cost",
      /^the cost in USD/,
    ],
    [visit({ other: [feed, { ...feed, name: 3 }] }), "type", "other[1].name", /^what the cost is for/],
    [visit({ other: [] }), "missing", "other", /cost/],
    [visit({ area: quantity(0, "acre") }), "range", "area", /more than zero/],
    [visit({ visits: 0 }), "range", "visits", /"above":0,"max":1000/],
    [visit({ visits: 1001 }), "range", "visits", /1000/],
  ]);
  expect(machines(lines(200))).not.toThrow();
  expect(visit({ visits: 1000 })().season?.value).toBe(50_000);
  expect(
    complaints(
      machines([
        { name: "", hours: 1, rate: 2 },
        { ...rig, hours: 3 },
      ]),
    ),
  ).toEqual([
    "missing machines[0].name",
    "type machines[0].hours",
    "type machines[0].rate",
    "type machines[1].hours",
  ]);
});

test("a visit tells what nothing is counted for", () => {
  const found = (change: object) =>
    visit(change)().findings.map(({ code, text, params }) => [code, text, params]);
  expect(found({})).toEqual([
    [
      "price/nothing-for",
      "Nothing is counted for: products, machines, overhead. Travel, loading and cleaning take labor hours too.",
      { parts: ["products", "machines", "overhead"] },
    ],
  ]);
  expect(found({ machines: [rig], products: [feed], overhead: usd(1).per(hour) })).toEqual([]);
});

test("a visit that costs nothing has a price of nothing, without a division by it", () => {
  const free = visit({ wage: usd(0).per(hour) })();
  expect([free.price.value, free.margin.value, free.markup.value, free.perManHour.value]).toEqual([
    0, 0, 0, 0,
  ]);
});
