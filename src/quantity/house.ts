// What the floors above use of this room, and the world does not.

export { counted } from "./errors/counted.js";
export { described } from "./errors/errors.js";
export { fieldsOf } from "./errors/expect-fields.js";
export { hasOwn } from "./errors/has-own.js";
export { nearSpelling } from "./errors/near-name.js";
export { unseen } from "./errors/unseen.js";
export { withoutUndefined } from "./errors/without-undefined.js";
export { formsOf } from "./text/two-forms.js";
export { amountInWords, dimensionDue, dimensionNoun, unitInWords } from "./unit/dimension-words.js";
