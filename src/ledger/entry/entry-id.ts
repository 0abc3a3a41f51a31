import { unseen } from "../../quantity/house.js";
import { expectText, fail, type Reader, shown } from "../../quantity/index.js";

/** Letters, digits and marks, no blanks. */
const plain = /^[\x21-\x7e]+$/;

/** Takes a text that stands on one line and holds nothing that nobody sees, or throws. */
export const expectId: Reader = (input, path) => {
  // Nearly every id is of plain letters: one look is enough.
  if (typeof input === "string" && plain.test(input)) return input;
  const id = expectText(input, path, "an id that no other entry has");
  return unseen.test(id) || /[\u2028\u2029]/.test(id)
    ? fail("type", path, id, "an id on one line, without tabs, control characters or marks that nobody sees")
    : id;
};

/** What tells ids apart: "a 1", "a  1" and "a 1 " are one id to whoever reads them. */
export const idKey = (id: string): string =>
  plain.test(id) ? id : id.normalize("NFC").trim().replace(/\s+/g, " ");

/** What an id should have been, beside one that is the same or reads the same. */
export const otherId = (id: string, alike: string, each: "entry" | "line"): string =>
  id === alike
    ? `an id that no other ${each} has`
    : `an id that differs from ${shown(alike)} by more than blanks or the way its letters are stored`;
