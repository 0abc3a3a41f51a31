import { readRates } from "./read-rates.js";

/** Texts as people of the trade type them, and what each means, by the field it is typed into: written down by hand. */
export const readTexts: Readonly<Record<string, string>> = {
  ...readRates,
  area: `
43560 ft2 = 43,560 sq ft | 43,560 sq. ft. | 43560 sqft | 43560 sq.ft. | 43560 sf | 43560 SF | 43560 s.f.
43560 ft2 = 43560 ft² | 43560 ft2 | 43560 ft^2 | 43560 square feet | 43560 Square Foot | 43560 sq feet
43500 ft2 = 43.5 M sq ft | 43.5 Msf
12000 ft2 = 12 thousand sq ft | 12 thousand square feet
5000 ft2 = 5 x 1000 ft2 | 5000 sq-ft | 5000 ft sq | 5000 ft. sq. | 5000 sq ft. | 5 M ft2 | 5 Mft2
5000 ft2 = 5 thousand square foot
1 acre = 1 acre | 1 ac | 1 ac. | 1 AC | 1 Acres
0.5 acre = 1/2 acre | ½ acre
2.5 acre = 2 1/2 ac | 2-1/2 acres
1.25 ha = 1.25 ha | 1.25 hectares
5000 m2 = 5000 m2 | 5000 m² | 5000 sqm | 5000 sq. m | 5000 sq mtrs | 5 000 m2 | 5000 square meters
5 m2 = 5.000 m2
50 yd2 = 50 sq yds | 50 sq. yd. | 50 sy
10 acre = 10 ac | 10ac | 10 acre | 10-acre
0.25 acre = 1/4 ac | 1/4ac | 1/4-acre
1.25 acre = 1 1/4-acre
5500 ft2 = 5.5 thousand sq ft
100 m2 = 100 sq m | 100 sq. metres | 100 m sq | 100 m 2 | 1 are | 1 ares
1 ha = 1 ha. | 1 Ha | 1 HA
`,
  length: `
3 ft = 3 ft | 3' | 3 feet | 3 foot | 3ft.
3.5 ft = 3 1/2 ft
20 in = 20" | 20 in | 20 in. | 20 inches | 20 inch | 20-inch
0.5 in = 1/2" | 1/2 in | ½" | 1/2-inch | .5" | 0.5 in. | 0.5 IN | .5 inch
0.25 in = 1/4 inch
0.375 in = 3/8"
0.15 in = 0.150" | .150 in
1.75 in = 1 3/4" | 1-3/4"
10 mm = 10 mm | 10mm | 10 m.m. | 10 millimeters | 10 MM
10 cm = 10 cm | 10 cm.
2 m = 2 m | 2 mtrs | 2 metres
100 yd = 100 yds | 100 yards
1 mi = 1 mile
3.5 in = 3.5" | 3.5 " | 3.5 ″ | 3.5”
6 ft = 6' | 6’ | 6 ’
0.109375 in = 7/64"
0.15625 in = 5/32 in
10 km = 10 Km | 10 KM
10 um = 10 um | 10 microns
10 m = 10 m
10 ft = 10 lin ft | 10 LF | 10 linear feet
`,
  liquid: `
2 gal = 2 gal | 2 gals | 2 gals. | 2 Gallons | 2 gallon
2.5 gal = 2 1/2 gal | 2-1/2 gal | 2.5gal
0.5 gal = 1/2 gal
1 qt = 1 qt
1 pt = 1 pt.
32 fl oz = 32 fl oz
500 mL = 500 ml | 500ml | 500 mls | 500 cc | 500 cm3
10 L = 10 L | 10 l | 10 lt | 10 liters
1 tbsp = 1 tablespoon
3 tsp = 3 tsp | 3 TSP | 3 Tsp.
2 cup = 2 cups
5 gal = 5gal. | 5-gal | 5 US gal | 5 U.S. gallons
5 imp gal = 5 imp. gal | 5 Imperial gallons
3 tbsp = 3 tbsp. | 3 tblsp
300 mL = 3 dl
30 mL = 3 cl
300 L = 3 hl
0.003 mL = 3 microliters
`,
  water: `
100 gal = 100 gal | 100 gal of water | 100 gal H2O | 100 gallons water | 100-gallon | 100 gal.
2 ft3 = 2 cu ft | 2 cu. ft. | 2 cf | 2 ft3
2 yd3 = 2 cubic yards | 2 cu yds | 2 cy
1 acre-ft = 1 acre foot | 1 ac-ft
1 acre-in = 1 acre-inch | 1 ac-in
`,
  weight: `
50 lb = 50 lb | 50 lbs | 50 lbs. | 50 LBS | 50# | 50 # | 50 pounds | 50lb | 50-lb | 50-pound
8 oz = 8 oz | 8 ounces | 8 ozs.
1 US ton = 1 short ton
2240 lb = 1 long ton
1 t = 1 tonne
2 kg = 2 kg | 2 kgs | 2 kilos | 2 kilo | 2 Kg | 2 KG | 2kg
250 g = 250 g | 250 gm | 250 gms | 250 grams
250 mg = 250 mg
14 lb = 1 stone
200 lb = 200 #
1 oz = 1 oz | 1 dry oz
0.25 lb = 1/4 #
1000 lb = 1,000 lb | 1 000 lb | 1'000 lb
1 lb = 1.000 lb
1000.5 lb = 1,000.5 lb
5 lb = 5. lb | 5.lb | 05 lb | 5 lb product | 5 lb of product
0.5 lb = 00.5 lb
`,
  temperature: `
68 °F = 68 F | 68F | 68°F | 68 °F | 68° F | 68 deg F | 68 deg. F | 68 degrees F | 68 degrees Fahrenheit
68 °F = 68 fahrenheit
20 °C = 20 C | 20C | 20°c | 20 ℃ | 20 celsius | 20 centigrade
-5 °C = -5 °C | −5 °C | –5 °C
72 °F = 72 deg. F. | 72 ºF | 72 ˚F | +72 F | 72 f
72.5 °F = 72.5F
22.2 °C = 22.2 C
22 °C = 22 deg C | 22 degC
295 K = 295 K
`,
  difference: `
10 °F diff = 10 F
5 °F diff = 5 F
5 °C diff = 5 °C
`,
  time: `
30 min = 30 min | 30 mins | 30 mins. | 30 minutes
45 s = 45 sec | 45 secs | 45s
1.5 h = 1 1/2 hours | 1 1/2 hr | 1.5 hrs
14 d = 14 days | 14 d | 14 day | 14-day
2 week = 2 wks | 2 weeks | 2 wk | 2 wks.
12 h = 12 hrs | 12 hr. | 12 HRS
7 d = 7 days | 7 days. | 7-days
1 week = 1 wk.
90 min = 90 minutes.
20 s = 20 s | 20 sec.
20.4 s = 20.4 seconds
20 min = 20 MIN
`,
  pressure: `
40 psi = 40 psi | 40 PSI | 40psi | 40 p.s.i. | 40 psig | 40 PSIG | 40 pounds per square inch
3 bar = 3 bar | 3 bars | 3 Bar
300 kPa = 300 kPa | 300 KPA | 0.3 MPa
2.8 bar = 2.8 bar | 2.8 BAR
280 kPa = 280 kpa | 280 KPa
`,
  speed: `
3 mi/h = 3 mph | 3 MPH | 3mph | 3 m.p.h. | 3 miles per hour | 3 mi/hr | 3 miles/hr
5 km/h = 5 kph | 5 km/hr | 5 kmh | 5 km/h | 5 kmph
3 m/s = 3 m/s
264 ft/min = 264 ft/min | 264 fpm | 264 feet per minute
4.4 ft/s = 4.4 ft/sec
5 nmi/h = 5 knots | 5 kts
4 mi/h = 4 mi./hr. | 4 mi/h | 4 M.P.H. | 4 Mph
352 ft/min = 352 ft/minute | 352 ft./min.
5.9 ft/s = 5.9 ft/s
6.4 km/h = 6.4 km/hr. | 6.4 kilometers per hour
1.8 m/s = 1.8 m/sec | 1.8 metres per second
3.5 nmi/h = 3.5 kn
`,
  "depth per time": `
0.5 in/h = 0.5 in/hr | 0.5"/hr | 0.5 iph | 0.5 inches per hour | 0.5 in./hr.
12 mm/h = 12 mm/hr | 12 mm/h
1 in/week = 1" per week | 1 in./week | 1 in/wk | 1 inch per wk.
1 in/h = 1"/hr
25 mm/week = 25 mm/week
0.2 in/d = 0.2"/day | 0.2 in/day
`,
  share: `
75 % = 75% | 75 % | 75 percent | 75 per cent | 75 pct | 75pct.
0.75 1 = .75 | 0.75 | ¾ | 3/4
75 1 = 75
85.5 % = 85.5%
0.5 % = 0.5% | .5 % | 1/2 %
100 % = 100 percent
`,
  concentration: `
1 % v/v = 1 % v/v | 1%v/v | 1 % volume
0.25 % v/v = 0.25% v/v | 0.25 % by vol | 0.25% vol/vol | 0.25% by volume | 1/4% v/v | 0.25 % (v/v)
0.25 % v/v = 0.25 percent v/v
2 fl oz/gal = 2 fl oz/gal | 2 fl oz per gal
0.01 qt/gal = 1 qt/100 gal | 1 qt per 100 gallons
2 tbsp/gal = 2 tbsp/gal
10 mL/L = 10 ml/L | 10ml per liter
1 mL/L = 10 ml/10 L
0.01 pt/gal = 1 pt/100 gal.
2500 ppm v/v = 2500 ppm v/v
`,
  flow: `
0.5 gal/min = 0.5 gpm | 0.5 GPM | .5 gal/min | 0.5 gallons per minute | 0.5 gallon/minute | 0.5 g.p.m.
30 gal/h = 30 gph
1.5 L/min = 1.5 lpm | 1.5 l/min | 1.5 L/mn
2 ft3/s = 2 cfs
5 gal/min = 5 gal/min | 5 GPM | 5 Gpm | 5 gal./min. | 5 gals/min | 5 gallons/min.
300 gal/h = 300 gal/hr
19 L/min = 19 L/min | 19 LPM
10 ft3/min = 10 cfm
`,
  density: `
8.34 lb/gal = 8.34 lb/gal | 8.34 lbs/gal | 8.34 lbs per gallon | 8.34 #/gal
1.2 g/mL = 1.2 g/cc | 1.2 g/ml
1.2 kg/L = 1.2 kg/l
9.2 lb/gal = 9.2 lbs. per gal. | 9.2 lbs/gallon | 9.2lb/gal
1.1 kg/L = 1.1 kg/litre | 1.1 kg/dm3
1.1 g/mL = 1.1 g/cm3
1100 kg/m3 = 1100 kg/m3
`,
  active: `
4 lb/gal = 4 lb ai/gal | 4 lbs a.i./gal | 4 lb a.i. per gallon | 4 lb/gal | 4 lb active ingredient/gal
4 lb/gal = 4 lb AI per gallon | 4# ai/gal | 4 lbs active/gal
480 g/L = 480 g/L | 480 g ai/L
`,
  content: `
46 % w/w = 46% w/w | 46 % by weight | 46 wt% | 46 % wt
460 g/kg = 460 g/kg
`,
  money: `
12.5 money:USD = $12.50 | $ 12.50 | 12.50 $ | 12.50 USD | USD 12.50
12 money:USD = $12
1250 money:USD = $1,250.00 | $1250
3 money:USD = $3 | 3$ | US$3 | 3 USD
-3 money:USD = $-3 | -$3
0.75 money:USD = $0.75
`,
  price: `
0.48 money:USD/lb = $0.48/lb | $0.48 per lb | $.48/lb | $24/50 lb
0.5 money:USD/lb = $25/50lb | $25/50 lbs. | $25 / 50 lb | $25 per 50 lb | $0.50 / lb. | $0.50/# | 0.50 $/lb
500 money:USD/US ton = $500/US ton | $500/short ton
1100 money:USD/t = $1,100/tonne
`,
  "seed rate": `
6 lb/1000 ft2 = 6 lbs seed/M | 6 lb/1000 | 6 lbs of seed per 1000 sq ft
250 lb/acre = 250 lb/ac seed
5 lb/1000 ft2 = 5 lbs seed/1000 | 5 lb seeds per M | 5 lb/M of seed | 5# seed/M
220 lb/acre = 220 lb/A seed
`,
  "active rate": `
0.5 lb/acre = 0.5 lb ai/A | 0.5 lb a.i./A | 0.5 lbs ai/ac | 0.5 lb active/acre | 0.5 lb active ingredient per acre
0.5 lb/acre = 0.5 lb AI/acre | 0.5 lb/acre ai | 0.5 lb/ac a.i.
0.25 lb/acre = 0.25 lb ai/ac | 0.25 lb AI/A | 0.25 lb active/A | 0.25 lb a.i. per acre
280 g/ha = 280 g ai/ha | 280 g a.i. ha-1
`,
  conductivity: `
1.2 dS/m = 1.2 dS/m | 1.2 ds/m | 1.2 mmhos/cm | 1.2 mmho/cm
1.2 mS/cm = 1.2 mS/cm
1200 uS/cm = 1200 umhos/cm | 1200 µS/cm | 1200 us/cm
0.8 dS/m = 0.8 dS m-1
800 uS/cm = 800 uS/cm | 800 µmho/cm | 800 micromhos/cm
0.8 mS/cm = 0.8 millimhos/cm
`,
  "water test": `
120 mg/L = 120 mg/l | 120 mg/L NO3
10 mg/L = 10 mg/L nitrate | 10 mg per liter
`,
  slope: `
2 % grade = 2% slope
0.25 in/ft = 1/4" per ft | 1/4 in/ft | 1/4 in. per ft. | 1/4 inch per foot
1 in/ft = 1 in/ft
1.5 % grade = 1.5% grade
`,
  "seed dressing": `
0.04 fl oz/lb = 4 fl oz/100 lb
`,
  count: `
12 count = 12 | 12 ea | 12 pcs | 12 each
1200 count = 1,200
`,
  any: `
3 lb/1000 ft2 = 3 lb/M
3 kg/m = 3 kg/m
3 m2 = 3 m 2
3 in2 = 3 in 2
2 % = 2 %
4 lb/1000 ft2 = 4 lb/1000 ft 2
`,
};
