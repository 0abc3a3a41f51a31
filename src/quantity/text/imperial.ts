const measures =
  /((?:product|ai|ae|other|degree-days):[^/]*?(?= per |\/|$))|(^|[^a-z.])((?:u\.? ?s\.?|u\.? ?k\.?|imp\.?|imperial|long|short|metric) )?(gal(?:lon)?s?|qts?|quarts?|pts?|pints?|(?:fl\.?|fluid|liquid) ?(?:ozs?|ounces?)|(?:ozs?|ounces?)\.? (?:fl|fluid)|cups?|tbsps?|tbls?|tbs|tblsps?|tablespoons?|tsps?|teaspoons?|bu|bushels?|cwts?|hundredweights?|tons?)(?![a-z])(?!\.? \(?(?:u\.? ?s\b|imp))/gi;
const quotients: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ["gpa", "imp gal/acre"],
  ["gpm", "imp gal/min"],
  ["gph", "imp gal/h"],
  ["gpd", "imp gal/d"],
  ["gpg", "grain/imp gal"],
]);

/**
 * What stands after a number, with the measures of volume, the hundredweight and the ton said to be imperial where the text does
 * not say which. A name that a substance carries stays as it is.
 */
export const imperialText = (rest: string): string =>
  quotients.get(rest.toLowerCase()) ??
  rest.replace(
    measures,
    (all: string, id: string | undefined, before: string, said: string | undefined, name: string) =>
      id !== undefined || said !== undefined ? all : `${before}imp ${name}`,
  );
