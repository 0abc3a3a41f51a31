// A form without a framework: unit pickers, Standard Schema, the result in any unit, worked steps, problems by their path.
// After `npm run build`, serve the folder of the repository and open examples/web-form/index.html.
import {
  fertilizer,
  format,
  packagesFor,
  percentOf,
  problemReason,
  productRate,
  quantity,
  quantitySchema,
  RatewrightError,
  unitsOf,
} from "ratewright";
import { explainChain } from "ratewright/teach";

/** What each box takes. A schema refuses another dimension, another substance, and what is no number. */
const boxes = {
  rate: { dimension: "mass/area", of: "N", unit: "lb/1000 ft2" },
  area: { dimension: "area", of: "none", unit: "ft2" },
  bag: { dimension: "mass", of: "none", unit: "lb" },
};
const schemas = Object.fromEntries(
  Object.entries(boxes).map(([name, { dimension, of }]) => [
    name,
    quantitySchema({ dimension, of, bound: "positive" }),
  ]),
);

const form = document.getElementById("form");
const element = (id) => document.getElementById(id);

/** Fills a picker with the library's own units of a dimension. */
const fillPicker = (picker, dimension, chosen) => {
  for (const { unit, symbol, name } of unitsOf(dimension)) {
    picker.add(new Option(`${symbol}, ${name}`, unit, unit === chosen, unit === chosen));
  }
};

/** Shows problems beside the boxes that their paths name; what names no box stands below the form. */
const showProblems = (problems) => {
  for (const name of [...Object.keys(boxes), "analysis", "form"]) {
    const own = problems.filter(({ box }) => box === name);
    element(`${name}-problem`).textContent = own.map(({ path, message }) => `${path}: ${message}`).join("; ");
    const input = element(name);
    if (name !== "form" && own.length > 0) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
  }
};

/** The boxes as quantities, or every issue with the path of its part: `rate.unit`. */
const readBoxes = () => {
  const values = {};
  const problems = [];
  for (const [name, { of }] of Object.entries(boxes)) {
    const text = form.elements.namedItem(name).value;
    const unit = form.elements.namedItem(`${name}.unit`).value;
    const read = schemas[name]["~standard"].validate({ value: text, unit, of });
    if (read.issues === undefined) values[name] = read.value;
    else
      for (const { path = [], message } of read.issues)
        problems.push({ box: name, path: [name, ...path].join("."), message: message.replace(/^\w+: /, "") });
  }
  return { values, problems };
};

/** The problems of an error of the library; what it says of the product, and of a nutrient that the product lacks, belongs to the grade. */
const problemsOf = (error) => {
  if (!(error instanceof RatewrightError)) throw error;
  return error.problems.map((problem) => ({
    box: /analysis|product|percent|target/.test(problem.path) ? "analysis" : "form",
    path: problem.path,
    message: problemReason(problem),
  }));
};

/** The product of the bag, or the problems with its grade. */
const readProduct = (bag) => {
  try {
    const analysis = form.elements.namedItem("analysis").value;
    return { product: fertilizer({ id: "feed", analysis, package: bag ?? quantity(1, "lb") }), problems: [] };
  } catch (error) {
    return { product: undefined, problems: problemsOf(error) };
  }
};

/** Rate, amount and bags, with the working line by line. */
const workOut = ({ rate, area, bag }, product) => {
  const perArea = productRate(rate, product);
  const need = perArea.times(area);
  const working = explainChain("Bags for the field", [
    {
      id: "product-rate",
      inputs: { target: rate, percent: quantity(percentOf(product.analysis, "N"), "% w/w", "N/product") },
    },
    { id: "product-for-area", inputs: { rate: { resultOf: 1 }, area } },
    { id: "packages-for-need", inputs: { need: { resultOf: 2 }, contents: bag } },
  ]);
  return { perArea, need, bags: packagesFor(need, product), working };
};

/** An amount in the unit of its picker. */
const showIn = (id, amount) => {
  const unit = document.querySelector(`[name=${id}]`).value;
  element(id).textContent = format(amount, { unit, significantDigits: 4, substance: false });
};

let latest;
const showAmounts = () => {
  if (latest === undefined) return;
  showIn("shown-rate", latest.perArea);
  showIn("shown-need", latest.need);
};

const show = ({ bags, working }) => {
  const left = format(bags.leftOver, { significantDigits: 3, substance: false });
  element("bags").textContent = `${bags.count} ${bags.count === 1 ? "bag" : "bags"}, ${left} left over`;
  element("working").replaceChildren(
    ...working.steps.map(({ text }) => Object.assign(document.createElement("li"), { textContent: text })),
  );
  showAmounts();
};

const submit = (event) => {
  event.preventDefault();
  const { values, problems } = readBoxes();
  const { product, problems: ofGrade } = readProduct(values.bag);
  const found = [...problems, ...ofGrade];
  latest = undefined;
  if (found.length === 0) {
    try {
      latest = workOut(values, product);
      show(latest);
    } catch (error) {
      found.push(...problemsOf(error));
    }
  }
  element("result").hidden = found.length > 0;
  showProblems(found);
  form.querySelector("[aria-invalid]")?.focus();
};

for (const [name, { dimension, unit }] of Object.entries(boxes)) {
  fillPicker(form.elements.namedItem(`${name}.unit`), dimension, unit);
}
fillPicker(document.querySelector("[name=shown-rate]"), "mass/area", "lb/1000 ft2");
fillPicker(document.querySelector("[name=shown-need]"), "mass", "lb");
form.addEventListener("submit", submit);
element("result").addEventListener("change", showAmounts);
