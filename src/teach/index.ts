// The formulas as data for a lesson: the catalogue, and the working line by line.

// expression: an equation as text, TeX and MathML.
export { equationMathML, equationTex, equationText } from "./expression/equation-text.js";

// entry: what is said of a formula.
export type {
  CatalogueEntry,
  CatalogueInput,
  CatalogueVariable,
  UnitsOfSystem,
} from "./entry/catalogue-entry.js";
export type { EquationBasis } from "./entry/formula.js";

// works: where the equations, and examples worked by them, are printed.

// application: the formulas of spraying, fertilizing, spreading and mixing.
// ground: the formulas of the site, its water, its soil and what grows on it.
// soil-and-air: the formulas of the soil report, salty water, sun and wind, growth, and readings.
// catalogue: all formulas, one by its id, and what it gives.
export { catalogue, catalogueEntry } from "./catalogue/catalogue.js";
export { entryResult } from "./catalogue/entry-result.js";

// derivation: what the working of a formula is made of, and how it is written.
export type {
  Derivation,
  DerivationStep,
  DerivationStepKind,
  DerivationUnits,
  DerivedQuantity,
} from "./derivation/derivation.js";

// explain: the working of a formula, line by line.
export { derivationMarkdown, derivationText } from "./explain/derivation-text.js";
export { type ExplainOptions, explain } from "./explain/explain.js";
export { type ChainStep, explainChain, type ResultOfStep } from "./explain/explain-chain.js";
export { explainWorkOrder, type WorkOrderWorking } from "./explain/explain-work-order.js";

// topics: what a problem for a learner is, and the steps that answer it; ratewright/teach/problems poses them, from a seed.
// application-lessons: the problems of spraying, fertilizing, spreading and mixing.
// ground-lessons: the problems of the site, its water, its soil, what grows on it, and the books of a season.
export type { NameOfMistake } from "./topics/mistakes.js";
export type { QuizAnswer, QuizChoice, QuizMistake, QuizProblem, Worksheet } from "./topics/quiz-problem.js";
export type { AnswerSubstance, Level, ProblemUnits } from "./topics/topic.js";

// grade: what a learner's answer is worth, part by part, and what to tell them.
export { grade, type PartVerdict, type QuizGrade } from "./grade/grade.js";

// worksheet: a sheet of problems as Markdown, as a page to print, and as a table; as QTI by ratewright/teach/qti.
export type { SheetOptions } from "./worksheet/sheet-options.js";
export { worksheetCsv } from "./worksheet/worksheet-csv.js";
export { worksheetHtml } from "./worksheet/worksheet-html.js";
export { worksheetMarkdown } from "./worksheet/worksheet-markdown.js";
