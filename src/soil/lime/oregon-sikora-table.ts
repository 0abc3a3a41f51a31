import { frozen } from "../../quantity/index.js";
import type { LimeTable } from "./lime-table.js";

/** US tons an acre of lime of score 100, by the pH of the Sikora buffer. The slope breaks between 5.8 and 5.7. */
export const oregonSikoraTable: LimeTable = /* @__PURE__ */ frozen({
  by: "bufferPH",
  targets: [5.6, 6, 6.4, 6.8, 7.2],
  unit: "US ton/acre",
  rows: [
    [6.9, 0, 0, 0.5, 0.8, 1],
    [6.8, 0, 0.4, 0.8, 1.2, 1.6],
    [6.7, 0.2, 0.7, 1.1, 1.6, 2.2],
    [6.6, 0.4, 0.9, 1.5, 2.1, 2.7],
    [6.5, 0.7, 1.2, 1.8, 2.5, 3.3],
    [6.4, 0.9, 1.5, 2.1, 2.9, 3.8],
    [6.3, 1.1, 1.7, 2.5, 3.3, 4.4],
    [6.2, 1.3, 2, 2.8, 3.7, 4.9],
    [6.1, 1.5, 2.3, 3.1, 4.2, 5.5],
    [6, 1.7, 2.5, 3.5, 4.6, 6],
    [5.9, 1.9, 2.8, 3.8, 5, 6.6],
    [5.8, 2.2, 3.1, 4.1, 5.4, 7.1],
    [5.7, 2.7, 4, 5.5, 7.2, 9.9],
    [5.6, 3.1, 4.5, 6.2, 8.3, 11.4],
    [5.5, 3.5, 5.1, 7, 9.3, 12.9],
    [5.4, 3.8, 5.6, 7.7, 10.3, 14.3],
    [5.3, 4.2, 6.2, 8.5, 11.3, 15.8],
    [5.2, 4.6, 6.7, 9.2, 12.3, 17.3],
    [5.1, 5, 7.3, 10, 13, 18.7],
    [5, 5.3, 7.8, 10.7, 14, 20.2],
    [4.9, 5.7, 8.4, 11.5, 15, 21.7],
    [4.8, 6.1, 8.9, 12.2, 16.3, 23.2],
  ],
  source: {
    title: "Updated lime requirement recommendations for Oregon",
    publisher: "Oregon State University Extension, EM 9585",
    year: 2025,
    where: "table 1",
    url: "https://extension.oregonstate.edu/catalog/em-9585-updated-lime-requirement-recommendations-oregon",
  },
});
