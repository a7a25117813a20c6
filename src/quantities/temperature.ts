import type { Quantity } from "./quantity.ts";

export const temperature = {
  name: "temperature",
  unit: "Cel",
  dimensions: ["temperature"],
  units: [
    {
      dimension: "temperature",
      figure: "F",
      factor: 0.5555555555555556,
      offset: -17.77777777777778,
      words:
        "degf|deg f|degrees f|degree f|fahrenheit|degrees fahrenheit|degree fahrenheit|deg fahrenheit|°f|° f|℉|degs f|farenheit|degrees farenheit|fahr|º f|° fahrenheit|degree farenheit|fahrenheit degrees|df|dgf|dgr f|deg. f",
      beside: "f",
      heard:
        "fair and height|farhenheit|foreign height|fair in height|ferenheit|degrees foreign height",
    },
    {
      dimension: "temperature",
      figure: "C",
      factor: 1,
      words:
        "degc|deg c|degrees c|degree c|celsius|degrees celsius|degree celsius|deg celsius|centigrade|degrees centigrade|°c|° c|℃|degs c|celcius|degrees celcius|º c|° celsius|degree centigrade|grad celsius",
      beside: "c",
      heard: "celsius s|sell see us|celsious|sell cs|degrees see",
    },
    {
      dimension: "temperature",
      figure: "degrees",
      factor: 1,
      words: "deg|degs|degree|degrees|°|º|dg",
      heard: "the grease|decrees|de grease",
    },
    {
      dimension: "temperature",
      figure: "K",
      factor: 1,
      offset: -273.15,
      words: "kelvin|kelvins|deg k|degrees kelvin|degree k",
      beside: "k",
    },
  ],
  words: "temperature|temp|temps|temperatures|tmp|tmps",
  habit: { us: "F", si: "C" },
  plausible: [-75, 320],
} as const satisfies Quantity;
