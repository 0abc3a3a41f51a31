/** Types of records that users write themselves, so that an unknown field in one is a slip and not a result handed on. */
export const writtenByUsers: ReadonlySet<string> = new Set(["ledger", "job"]);

/** Where an unknown field is not refused with an error: function, place in its arguments with `*` for a number, and why. */
export const readsOtherwise: readonly (readonly [name: RegExp, place: RegExp, why: string])[] = [
  [/^(?:allOf|toldBy)$/, /^\*$/, "named readers or places: the names are the caller's"],
  [/^(?:expectRecord|frozen|plainCopy|unreadable)$/, /^\*/, "takes any record, whatever is in it"],
  [/^readFields$/, /^\*$/, "keeps the problem in the list of checks that it is handed"],
  [/^(?:readQuantity|readExact)$/, /^\*$/, "gives the problem back, and throws nothing"],
  [/^quantityReviver$/, /^\*/, "a record with other fields is no quantity, and comes back as it is"],
  [
    /^(?:problemText|problemReason)$/,
    /^\*(?:\.params)?$/,
    "a problem is written for people, whatever else it carries",
  ],
  [/^try(?:WorkOrder|RouteOrder)$/, /^\*/, "gives the problems back, and throws nothing"],
  [/^geodesicArea$/, /^\*$/, "GeoJSON (RFC 7946) lets other members stand beside type and coordinates"],
  [
    /^chart(?:Amount|Conductivity)$/,
    /ouncesPerGallon$/,
    "keyed by the settings of the chart, as the user writes them",
  ],
  [/^percentOf$/, /^\*/, "reads one figure of an analysis that `analysis` has checked"],
  [/^tabulated(?:Acidity|SaltIndex)$/, /rows\.\*$/, "reads the row that is asked for, and no other"],
  [/^ledgerTotals$/, /entries/, "reads the entries of the days that are asked for, and no others"],
];
