import type { Quantity } from "./quantity.ts";

export const voltage = {
  name: "voltage",
  unit: "V",
  dimensions: ["voltage"],
  units: [
    {
      dimension: "voltage",
      figure: "V",
      factor: 1,
      words: "volt|volts|vlts|vots|vts|vol",
      beside: "v",
      heard: "bolts|bolt|vaults|vault",
    },
    {
      dimension: "voltage",
      figure: "V",
      factor: 1,
      words: "vac|v ac|volts ac|volt ac|ac volts|ac volt|volts a c|vrms|v rms|volts alternating",
      heard: "bolts ac|vaults ac",
      kind: "ac",
    },
    {
      dimension: "voltage",
      figure: "V",
      factor: 1,
      words: "vdc|v dc|volts dc|volt dc|dc volts|dc volt|volts d c|volts direct",
      heard: "bolts dc|vaults dc|volts decay",
      kind: "dc",
    },
    {
      dimension: "voltage",
      figure: "kV",
      factor: 1e3,
      words: "k volts|k volt|kvolts|kvolt|k v|kv|kilovolt|kilovolts|kilo volt|kilo volts",
      heard: "kilo bolts|kill a volts",
    },
    {
      dimension: "voltage",
      figure: "mV",
      factor: 1e-3,
      words: "mv|millivolt|millivolts|milli volt|milli volts|mvac|mvdc",
      heard: "milli bolts|mini volts",
    },
  ],
  words: "voltage|volts|volt|voltages|potential|vltg",
  habit: { us: "V", si: "V" },
  plausible: [-1500, 40000],
} as const satisfies Quantity;
