// Problems and worksheets as IMS QTI 2.1, which learning platforms take. They need the package fast-xml-builder.

export { problemQti, type QtiFile, type QtiWorksheet, worksheetQti } from "./worksheet-qti.js";
