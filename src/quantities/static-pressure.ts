import type { Quantity } from "./quantity.ts";

export const staticPressure = {
  name: "static_pressure",
  unit: "Pa",
  dimensions: ["inches_of_water", "low_pressure"],
  units: [
    {
      dimension: "inches_of_water",
      figure: "in wc",
      factor: 249.08891,
      words:
        "inwc|in wc|inches wc|inch wc|inches of water|inch of water|inches water|inh2o|in h2o|iwc|wc|w c|wg|inwg|in wg|inches of water column|inches water column|inch water column|inches wg|water column|in water|ins wc|inches w c|in of water|inches of wc|inch w c|in wtr|inches of h2o|inch wg|in of wc",
      beside: 'inches|inch|in|"|ins',
      heard: "inches of watter|inches a water|inches of waters",
    },
  ],
  words:
    "delta p|delta pressure|delta p filter|delta p coil|dp filter|dp coil|filter pressure drop|coil pressure drop|pressure drop filter|pressure drop coil|static|static pressure|esp|tesp|external static|external static pressure|total static|total external static|total external|total external static pressure|total esp|filter drop|filter dp|fan dp|supply fan dp|return fan dp|exhaust fan dp|filter pressure drop|filter pressure|coil drop|coil dp|supply static|return static|duct static|duct pressure|filter delta p|coil pressure drop|sp|building pressure|static pres|total static pressure|t e s p|e s p|duct static pressure|gas pressure|manifold pressure|manifold gas pressure|gas manifold|gas mani|mani|manif|manif press|manif pressure|manifold|mani press|mani pressure|manifold press|inlet gas|inlet gas pressure|gas inlet|gas inlet pressure|gas press|gas valve inlet|gas valve outlet|lp manifold|lp mani|ng manifold|manifold outlet|hi fire manifold|lo fire manifold|hi fire mani|lo fire mani|high fire manifold|low fire manifold|tsp|pressure drop across the filter|pressure drop over the filter|pressure drop over filter|pressure drop on the filter|pressure drop on filter|pressure drop on the coil|pressure drop through the filter|pressure drop through the coil|pressure drop over the coil|pressure drop across the coil|pressure drop across filter|filt dp|fltr dp|filt drop|fltr drop|filter pd|coil pd|dirty filter drop",
  habit: { us: "in wc", si: "Pa" },
  plausible: [-5000, 5000],
} as const satisfies Quantity;
