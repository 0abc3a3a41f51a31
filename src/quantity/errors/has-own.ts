/** Whether a field is a record's own: `Object.hasOwn`, which came to JavaScript in 2022 and is missing in older browsers. */
export const hasOwn = (record: object, name: PropertyKey): boolean =>
  // biome-ignore lint/suspicious/noPrototypeBuiltins: the way of ES2020
  Object.prototype.hasOwnProperty.call(record, name);
