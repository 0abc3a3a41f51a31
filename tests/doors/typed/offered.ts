/** Texts that are refused, and what the person meant by each: the texts offered for a button have to mean just that, several where it may be either. */
export const offeredTexts: Readonly<Record<string, string>> = {
  "nitrogen rate": `
1 lb/1000 ft2 = 1 lb per 1000 feet | 1 lb per 1000 ft | 1 lb per m | 1 lb N/m | 5 lb/5000 | 5 lb/5,000
1 lb/1000 ft2 = 1 lb/1000ft | 1 lb/1000' | 1 lb nitorgen/1000 | 1 lb n/1000
0.5 kg/100 m2 ; 0.5 kg/acre = 0.5 kg/a
30 g/100 m2 = 30 g/100 | 30 g per 100
1.5 lb/1000 ft2 = 1.1/2 lb/M
-1 lb/1000 ft2 = - 1 lb/M
4 lb/acre ; 4 lb/100 m2 = 4 lb/a
`,
  "dry rate": `
3.5 lb/1000 ft2 = 3.5 lbs a thousand | ~3.5 lb/M | ≈3.5 lb/M | about 3.5 lb/M | approx 3.5 lb/M | approx. 3.5 lb/M
3.5 lb/1000 ft2 = ca. 3.5 lb/M | > 3.5 lb/M | <3.5 lb/M | ≤ 3.5 lb/M | up to 3.5 lb/M | max 3.5 lb/M
3.5 lb/1000 ft2 = max. 3.5 lb/M | no more than 3.5 lb/M | 3.5 lb/M max | 3.5 lb/M, | 3.5 lb/M; | 3.5 lb/M?
3.5 lb/1000 ft2 = = 3.5 lb/M | @ 3.5 lb/M | @3.5 lb/M | rate: 3.5 lb/M | 3.5 lb/M each | 3.5 lb/M per app
3.5 lb/1000 ft2 = 3.5 lb/1000 sq ft/app | 3 .5 lb/M | 3. 5 lb/M
150 lb/acre = 150 lb per acer | 150 lb/acrs | 150 punds/acre | 150 lbs/acr
4 lb/1000 ft2 = 50 lb bag/12,500 sq ft | 50 lb covers 12,500 sq ft | 50 lb to 12,500 sq ft
2 US ton/acre ; 2 t/acre = 2 tons/A | 2 T/ac | 2 ton per acre
2 t/ha = 2 MT/ha
100 lb/acre ; 112 lb/acre = 1 cwt/ac
3.5 lb/1000 ft2 ; 35 lb/1000 ft2 = 3,5 lb/M
3 lb/1000 ft2 = three lb/M
1 lb/1000 ft2 = one lb per thousand
0.5 lb/1000 ft2 = O.5 lb/M
10 lb/1000 ft2 = 1O lb/M
2 mg/ha ; 2 t/ha = 2 Mg/ha
`,
  "liquid rate": `
6 fl oz/1000 ft2 = 6 oz/1000 | 6 ounces per thousand | 6oz/M | 6 oz./M
11 fl oz/acre = 11 oz/ac | 11 oz/A
16 fl oz/acre = 16 oz per acre
1 gal/acre ; 1 gal/100 m2 = 1 gal/a
0.5 gal/acre = 1 / 2 gal per acre | half gal per acre | half a gallon per acre
250 mL/ha ; 250 m3/ha = 250 ML/ha
40 mL/100 m2 = 40 mL/100 | 40 ml per 100
2 tbsp/1000 ft2 = 2 Tbsp per 1000 | 2 T per 1000 | 2 TBS/1000 | 2 tablespoons per thousand
2 tsp/1000 ft2 = 2 t/M
`,
  "spray volume": `
40 gal/acre = 40 galons per acre | 40 galllons/acre
`,
  area: `
43560 ft2 = 43.56 K | 43.56k sq ft | (43,560 sq ft)
43000 ft2 ; 43000 m2 = 43k
43500 ft2 = 43.5 M
12000 ft2 ; 12000 m2 = 12 thousand
12000 ft2 = twelve thousand sq ft
1 acre = 1 A | 1 acre (43,560 sq ft) | an acre | one acre
1 acre ; 100 m2 = 1 a
1.5 acre = 1.5 acers | an acre and a half | one and a half acres | 1 and a half acres | 1 and 1/2 acres
1.5 acre = 1 & 1/2 acres
0.5 acre = half an acre | half acre | Half Acre | 1/2 an acre | 1/2 of an acre | ½ an acre | a half acre
0.5 acre = one half acre | one-half acre
0.25 acre = quarter acre | a quarter acre | quarter of an acre | quarter-acre | 0.25 A
0.75 acre = three quarters of an acre | three-quarter acre | 3/4 of an acre
1/3 acre = a third of an acre
2/3 acre = two thirds of an acre
2 acre = two acres
2.5 acre = two and a half acres
2.5 acre ; 250 m2 = 2 1/2 a
1.25 ha ; 125 ha = 1,25 ha
5000 ft2 = 50 x 100 ft | 50' x 100' | 50ft x 100ft | 50 by 100 feet | 50 ft. x 100 ft. | 50'x100' | 50 X 100 FT
5000 ft2 = 50 ft wide x 100 ft long | 50*100 ft | 50 feet times 100 feet | 5K ft2 | 5 k sq. ft. | 5k sq.ft
5000 ft2 ; 5000 m2 = 5k
5000 ft2 = 5000 ft | 5000' | 5000 feet | 5000 sqr ft | 5000 Sq/Ft | 5000 sq/ft | 5000 sqaure feet | 5000 squre feet
5000 ft2 = 50 ft x 100 ft | 50 ft by 100 ft
10 acre = 10 A.
0.5 ha = 0,5 ha
5000 yd2 = 50 yds x 100 yds
4000 ft2 = 100 ft x 40 | 100' x 40 | 100 x 40' | 100 ft. by 40 ft. | 100 foot by 40 foot
6400 m2 = 100 m x 64 m | 100 x 64 metres
7700 yd2 = 110yd x 70yd
`,
  length: `
3.16666666667 ft = 3' 2" | 3'2 | 3 ft 2 | 3 ft 2 in | 3 ft. 2 in. | 3 ft, 2 in | 3'-2" | 3ft2in
3.20833333333 ft = 3' 2 1/2" | 3 ft 2 1/2 in
3.5 ft = 3 and a half feet
20 in = 20''
0.5 in = half inch | half an inch
0.25 in = quarter inch
1.25 in ; 2.75 in = 11/4"
2 m = 2 M
6 ft = 6' 0" | 6'0 | 6 ft 0 in
6.95833333333 ft = 6 ft 11.5 in
6.5 ft = 6 ft. 6 | 6ft6 | 6 foot 6 | 6 ft 6" | 6' 6 in | 6 feet and 6 inches
5.33333333333 yd = 5 yd 1 ft
`,
  liquid: `
2.5 gal = 2.5 gal jug
5 gal = 2x2.5 gal | 2 x 2.5 gal | 2 @ 2.5 gal
2.5 gal ; 25 gal = 2,5 gal
0.5 gal = 1 / 2 gal | half gallon | half a gallon
1 gal = a gallon
1 qt = 1 qrt
32 fl oz = 32 oz | 32 oz. | 32oz
2 cup = 2 c
2.5 gal ; 9.46 L = 2.5 gal (9.46 L)
1 qt ; 32 fl oz = 1 qt (32 fl oz)
3 tbsp = 3 T | 3 T.
3 tsp = 3 t
3 fl oz = 3 oz
`,
  water: `
100 gal = 100 gal tank
2 yd3 = 2 yards | 2 yd
`,
  weight: `
50 lb = 50 lb bag | 50 lb. bags | lbs 50 | lb. 50
200 lb = 4 x 50 lb | 4 bags of 50 lb | 4 50-lb bags | 200 # bag
2.5 lb = 2 lb 8 oz | 2 lbs 8 ozs | 2 lbs. 8 oz. | 2 lb, 8 oz | 2# 8 oz | 2 lb + 8 oz | 2 lb 8
1 US ton ; 1 t = 1 ton
26.8 kg = kg 26.8
250 g ; 250 grain = 250 gr
50 lb ; 22.7 kg = 50 lb (22.7 kg)
22.68 kg ; 50 lb = 22.68 kg (50 lb)
1.125 lb = 1 lb 2 | 1lb2oz | 1 lb 2oz. | 1 lb. and 2 oz. | 1 lbs 2 ozs
2.03125 lb = 2 lb 1/2 oz
1.2 kg = 1 kg 200 g | 1 kg, 200 g
0.5 lb = half a pound | half lb | half-pound
1.5 lb = a pound and a half
1 lb = a pound
0.25 lb = quarter pound
3 lb = three pounds | Three lbs
10 lb = ten lb
1000.5 lb = 1.000,5 lb
1.00 lb ; 100 lb = 1,00 lb
5.3125 lb = 5lb5
5 lb = 5 lb total | 5 lbs total. | 5 lb each
100 lb = 2 50# bags | 2 bags @ 50 lb | 2x50lb | 2 x 50-lb bags | 2 * 50 lb | 50 lb x 2 | 50 lbs x 2 bags
`,
  temperature: `
68 °F ; 68 °C = 68° | 68 degrees | 68 deg
20 °C = 20 c
-5 °C = minus 5 C
72 °F = 72 o F | 72oF
72 °F ; 22 °C = 72 F (22 C)
`,
  time: `
30 min = 30m | 30 m
1.5 h = 1h30 | 1 h 30 | 1h 30m | 1 hr 30 min | 1 hour 30 minutes | 1 hour and 30 minutes | an hour and a half
1 h = an hour
0.5 h = half hour | half an hour
7.5 h ; 7.5 min = 7:30
7 d = seven days | 7 dys
1 week = a week
2 week = two weeks | two wk
4.25 h = 4 hrs 15 min | 4h15 | 4 h 15 m | 4 hrs., 15 min.
90.5 min = 90 min 30 sec
1.25 min = 1 min 15 s
20 min = 20 M
`,
  pressure: `
40 psi = 40 lbs | 40 lb | 40 # | 40 pounds | 40 pounds per sq in | 40 lb/sq in | 40 lbs./in2 | 40 lb/in²
2.8 bar ; 28 bar = 2,8 bar
`,
  "depth per time": `
1 in/week = 1 inch a week
25 mm/week = 25 mm a week
`,
  concentration: `
0.2 % v/v = 200 mL/100 | 200 ml per 100
2 % v/v = 2 L per 100 | 2 liters/100
2 fl oz/gal = 2 oz/gal | 2 oz per gallon | 2 oz. / gal.
0.01 qt/gal = 1 qt/100 | 1 qt in 100 gal
0.04 fl oz/gal = 4 oz/100 gal | 4 oz per 100 gals
0.25 % v/v = 1/4 %
`,
  flow: `
64 fl oz/min = 64 oz/min
5 gal/min = 5 gallons a minute
19 L/min = 19 l/m
`,
  active: `
480 g/L = 480 g/l a.i.
4 lb/gal = 4 lb/gal ai
`,
  content: `
46 % w/w = 46% | 46 % | 46% N | 46 pct | 46% nitrogen | 46% total N | 46.0%
`,
  money: `
12 money:USD = 12 dollars
0.5 money:USD = 50 cents | 50¢
1200 money:USD = $1.2k
3 money:USD = $3.00 each | 3.00 dollars | 3 usd | three dollars
3.5 money:USD ; 350 money:USD = $3,50
0.75 money:USD = 75 ¢
1500 money:USD = $1.5 k
`,
  price: `
0.48 money:USD/lb = $.48 a pound | 48 cents/lb | 48¢/lb | $24/50# bag | $24 per 50 lb bag
0.5 money:USD/lb = $25 for 50 lb
`,
  "water test": `
120 mg/L = 120 ppm
10 mg/L = 10 ppm NO3
`,
  slope: `
2 % grade = 2% | 2 %
2 % grade ; 5000 % grade = 1:50 | 1 in 50
1.5 % grade = 1.5 percent
`,
  "seed dressing": `
4/100 fl oz/lb ; 4/112 fl oz/lb = 4 fl oz/cwt | 4 fl. oz./cwt
0.04 fl oz/lb = 4 fl oz/100 lbs seed
`,
  speed: `
4 mi/h = 4 miles an hour
`,
  share: `
85 % = 85 % RH
0.5 % = one half percent | half a percent
`,
  "active rate": `
0.25 lb/acre = 0.25 lb (ai)/acre
`,
  difference: `
5 °F diff ; 5 °C diff = 5 degrees
`,
};
