import type { ReplyInput } from "../../model.ts";
import { type CheckName, checkNames } from "../../vocabulary.ts";
import { wordsOfCheck } from "../check-words.ts";
import { howToLines } from "../how-to.ts";
import type { Answer } from "./answer.ts";

/** Six lines on how a check is done: the one asked for, else the one to do next. */
export const how: Answer = (input, question) => {
  const asked = askedCheck(question.about ?? "");
  // another thing was asked: the lines of the next check would answer it wrongly
  if (asked === undefined && namesAnother.test(question.about ?? "")) return whichCheck;
  const wanted = [asked, nextCheck(input), input.judgement.findings[0]?.check];
  const check = wanted.map(known).find((name) => name !== undefined);
  if (check !== undefined) return howToLines(check).join("\n");
  return whichCheck;
};

const whichCheck =
  "How to do which check? Say megohms, windings, superheat, vacuum, supply, or another.";
/** "How do I recover the gas": work that is no check. */
const namesAnother =
  /\b(?:recover|braze|solder|flare|pump (?:it )?down|swap|replace|change|install|wire|program|clean|drain|unlock|reset|reclaim)\w*\b/i;

/** The check to do next; where that is to find a leak before any charge, how a leak is found. */
function nextCheck({ judgement }: ReplyInput): string | undefined {
  const next = judgement.next[0];
  return next?.check === "charge" && /^look for the leak/i.test(next.why)
    ? "pressure_test"
    : next?.check;
}

/** The check whose name or usual words stand in the question. */
function askedCheck(about: string): CheckName | undefined {
  const words = about.toLowerCase();
  if (words === "") return undefined;
  const named = checkNames.find(
    (name) => words.includes(name.replaceAll("_", " ")) || words === name,
  );
  if (named !== undefined) return named;
  const told = checkNames.find((name) => words.includes(wordsOfCheck(name).name.toLowerCase()));
  return told ?? spoken.find(([pattern]) => pattern.test(words))?.[1];
}

const spoken: readonly (readonly [RegExp, CheckName])[] = [
  [/\bmeg(?:ger|s|ged|ging|ohms?)?\b|\bground(?:ed|ing)?\b|\binsulation\b/, "insulation"],
  [/\b10 minute|ten minute|index\b/, "polarization"],
  [/winding|ohm/, "winding"],
  [/diode|rectifier/, "bridge"],
  [/\bbus\b/, "dc_bus"],
  [/\bcaps?\b|microfarad/, "capacitor"],
  [/locked rotor|inrush|start(?:ing|up)? amps/, "start_current"],
  [/thermistor|\bprobe\b/, "sensor"],
  [/blower|fan motor/, "fan"],
  [/\bleaks?\b|\bsoap\b/, "pressure_test"],
  [/vacuum|micron|evacuat/, "evacuation"],
  [/nitrogen|leak test|pressure test/, "pressure_test"],
  [/static|filter/, "airflow"],
  [/split|delta/, "temperature_split"],
  [/volts?|supply|phase/, "supply"],
  [/amps?/, "running_current"],
  [/charge|weigh/, "charge"],
  [/comm/, "communication"],
];

function known(check: string | undefined): CheckName | undefined {
  return checkNames.find((name) => name === check);
}
