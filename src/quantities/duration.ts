import type { Quantity } from "./quantity.ts";

export const duration = {
  name: "duration",
  unit: "s",
  dimensions: ["time"],
  units: [
    {
      dimension: "time",
      figure: "s",
      factor: 1,
      words: "second|seconds|secs|sec|scnds",
      beside: "s",
      heard: "seconds s|second s|sekonds",
    },
    {
      dimension: "time",
      figure: "min",
      factor: 60,
      words: "minute|minutes|mins|min|minuts|minets|mnt|mn|mns|minit|minits",
      beside: "m'",
      heard: "minute s|minuets|minette",
    },
    {
      dimension: "time",
      figure: "h",
      factor: 3600,
      words: "hour|hours|hr|hrs|hrss",
      beside: "h",
      heard: "our s|hours s",
    },
    { dimension: "time", figure: "d", factor: 86400, words: "day|days" },
    { dimension: "time", figure: "week", factor: 604800, words: "week|weeks|wk|wks" },
    {
      dimension: "time",
      figure: "ms",
      factor: 1e-3,
      words: "ms|msec|millisecond|milliseconds|milli seconds",
    },
    { dimension: "time", figure: "us", factor: 1e-6, words: "us|µs|microsecond|microseconds" },
  ],
  words:
    "duration|run time|runtime|cycle time|run hours|off time|on time|time to|off cycle|on cycle|defrost time|defrost lasts|trip time|time to trip|pull down time|recovery time|lasts|lasted",
  plausible: [0, 1e9],
} as const satisfies Quantity;
