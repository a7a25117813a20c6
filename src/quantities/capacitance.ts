import type { Quantity } from "./quantity.ts";

export const capacitance = {
  name: "capacitance",
  unit: "F",
  dimensions: ["capacitance"],
  units: [
    {
      dimension: "capacitance",
      figure: "microfarad",
      factor: 1e-6,
      words:
        "uf|µf|µfd|mfd|mfds|mf|ufd|microfarad|microfarads|micro farad|micro farads|micro f|ufarad|micfarad|mic farad",
      beside: "mic|mics|mikes|mike|micro|micros|fd",
      heard:
        "m f d|m f ds|u f|micro fared|micro fareds|micro fair ads|micro fare ads|micro ferret|micro ferrets|micro farah|micro ferrads|micro fads|microfarads s|micro for ads|micro far ads|my crow farads|microfad|microfads|mike row farads|mic row farads|micro fairs|micro for add|micro pharaohs|micro forwards|micro ferrads|micro farms|micro frauds|micro fad|micro fiber|micro fairy|mcrofarads|micro parades|micro farid|micro farids|micro fahrads",
    },
    { dimension: "capacitance", figure: "farad", factor: 1, words: "farad|farads" },
    {
      dimension: "capacitance",
      figure: "nF",
      factor: 1e-9,
      words: "nf|nanofarad|nanofarads|nano farad|nano farads",
    },
    { dimension: "capacitance", figure: "pF", factor: 1e-12, words: "pf|picofarad|picofarads" },
    { dimension: "capacitance", figure: "mF", factor: 1e-3, words: "millifarad|millifarads" },
  ],
  words:
    "capacitance|cap|caps|capacitor|capacitors|run cap|start cap|herm|dual cap|run capacitor|start capacitor|fan cap|dual|dual run",
  habit: { us: "microfarad", si: "microfarad" },
  plausible: [0, 0.02],
} as const satisfies Quantity;
