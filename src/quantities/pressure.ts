import type { Quantity } from "./quantity.ts";

export const pressure = {
  name: "pressure",
  unit: "Pa",
  dimensions: ["pressure", "inches_of_mercury", "low_pressure"],
  units: [
    {
      dimension: "pressure",
      figure: "psi",
      factor: 6894.757293168361,
      words:
        "psi|p s i|pound per square inch|pounds per square inch|lbs per square inch|psis|lb per sq in|lbs per sq in|psi s|pounds pressure|pounds of pressure|psid|psi d|psi diff|psi differential|pis|psi's",
      heard:
        "psy|p s eye|pee s i|piece i|ps eye|p s side|p.s.i|ps i|p si|peas i|pea s i|piece eye|pssi|psi i|ps|pounds per square",
    },
    {
      dimension: "pressure",
      figure: "psig",
      factor: 6894.757293168361,
      words: "psig|p s i g|psi g|psi gauge|psi gage|pounds gauge|p s i gauge",
      heard: "psi gee|ps i g",
      reference: "gauge",
    },
    {
      dimension: "pressure",
      figure: "psia",
      factor: 6894.757293168361,
      words: "psia|p s i a|psi a|psi absolute|pounds absolute|p s i absolute",
      reference: "absolute",
    },
    {
      dimension: "pressure",
      figure: "bar",
      factor: 1e5,
      words: "bar|bars|br",
      heard: "barr|bahr|bare|barre",
    },
    {
      dimension: "pressure",
      figure: "bar",
      factor: 1e5,
      words: "barg|bar g|bar gauge|bar gage",
      reference: "gauge",
    },
    {
      dimension: "pressure",
      figure: "bar",
      factor: 1e5,
      words: "bara|bar a|bar absolute|bar abs",
      reference: "absolute",
    },
    {
      dimension: "pressure",
      figure: "kPa",
      factor: 1e3,
      words: "kpa|kilopascal|kilopascals|kilo pascal|kilo pascals|k p a|kilopascales",
      heard: "kilo pascale|kilo pass cal|kilo paschal|kilopascal s",
    },
    {
      dimension: "pressure",
      figure: "kPa",
      factor: 1e3,
      words: "kpag|kpa g|kpa gauge",
      reference: "gauge",
    },
    {
      dimension: "pressure",
      figure: "kPa",
      factor: 1e3,
      words: "kpaa|kpa a|kpa abs|kpa absolute",
      reference: "absolute",
    },
    {
      dimension: "pressure",
      figure: "MPa",
      factor: 1e6,
      words: "mpa|megapascal|megapascals|mega pascal|mega pascals",
      heard: "mega pascale",
    },
    { dimension: "pressure", figure: "GPa", factor: 1e9, words: "gpa|gigapascal|gigapascals" },
    { dimension: "pressure", figure: "atm", factor: 101325, words: "atm|atmosphere|atmospheres" },
    { dimension: "pressure", figure: "ksi", factor: 6894757.293168361, words: "ksi" },
    {
      dimension: "pressure",
      figure: "kg/cm2",
      factor: 98066.5,
      words: "kg cm2|kgf cm2|kg per square centimeter|kilos per square centimeter",
    },
    {
      dimension: "inches_of_mercury",
      figure: "inHg",
      factor: 3386.389,
      words:
        "inhg|inhg vacuum|inhg vac|inhg of vacuum|in hg vacuum|in hg vac|in hg|inches of mercury|inch of mercury|inches mercury|inch mercury|inches hg|inch hg|ins hg|inches of hg|in of mercury|in merc",
      beside:
        "inches of vacuum|inches vacuum|inches of vac|inch of vacuum|inches vac|in vac|in of vacuum|in of vac|in vacuum|inch vacuum|inch vac",
      heard: "inches of mercy|inches of merc|inches mercury s",
    },
  ],
  words:
    "pressure|pressures|press|psi|standing pressure|static pressure psi|nitrogen|n2|nitro|nitrogen pressure|test pressure|pressure test|gauge pressure|oil pressure|water pressure|dry nitrogen",
  habit: { us: "psi", si: "bar" },
  plausible: [-101325, 8e6],
} as const satisfies Quantity;
