/**
 * What nobody sees in a text: control characters (Cc) and marks without a width (Cf), of Unicode 17. Spelled out, for the
 * engine of older React Native apps knows no classes of Unicode in a pattern and would load nothing of this library.
 */
export const unseen: RegExp = /* @__PURE__ */ new RegExp(
  "[\\x00-\\x1f\\x7f-\\x9f\\xad\\u0600-\\u0605\\u061c\\u06dd\\u070f\\u0890\\u0891\\u08e2\\u180e\\u200b-\\u200f" +
    "\\u202a-\\u202e\\u2060-\\u2064\\u2066-\\u206f\\ufeff\\ufff9-\\ufffb]" +
    "|\\ud804[\\udcbd\\udccd]|\\ud80d[\\udc30-\\udc3f]|\\ud82f[\\udca0-\\udca3]|\\ud834[\\udd73-\\udd7a]" +
    "|\\udb40[\\udc01\\udc20-\\udc7f]",
);
