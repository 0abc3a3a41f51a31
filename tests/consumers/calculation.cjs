const { fertilizer, productRate, quantity } = require("ratewright");

const target = quantity(0.9, "lb/1000 ft2", "N");
const feed = fertilizer({
  id: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
  package: quantity(50, "lb"),
});
console.log(productRate(target, feed).in("lb/1000 ft2"));
