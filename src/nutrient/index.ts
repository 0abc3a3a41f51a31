export { type Analysis, analysis, type Nutrient, percentOf } from "./analysis.js";
export { atomicWeights, type Element, formulaWeight } from "./atomic-weights.js";
export { type Fertilizer, type FertilizerInput, fertilizer } from "./fertilizer.js";
export { type FormOf, formFactor, nutrientForms } from "./forms.js";
export { type Elements, elementOf, inForm, type NutrientDimension, type Oxides, oxideOf } from "./in-form.js";
export { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
export { areaCovered, type Packaged, type Packages, packageCoverage, packagesFor } from "./packages.js";
export { productRate } from "./product-rate.js";
