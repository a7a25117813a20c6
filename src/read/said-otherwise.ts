import type { ObservationName } from "../vocabulary.ts";

/** Words of a note that runs a test: "no defrost" is then a condition that it was taken in. */
const settledRun = /\b(?:forced|test (?:run|mode|operation)|settled|steady|oil return)\b/i;
const burns = /\b(?:burners?|igniters?|ignitors?|inducer|flame|pilot|furnace|boiler|gas valve)\b/i;
const asked =
  /\b(?:ask(?:s|ed|ing)?|wonder\w*|wants? to know|curious)\b[^.]{0,12}\b(?:if|whether)\b/i;

const coldUnasked =
  /\b(?:off|satisfied|heat\w*|not calling)\b[^.;]{0,24}\bblow\w* cold|\bonly\b[^.;]{0,30}\bblow\w* cold/i;

/** The words fit a remark's pattern and say something else here. */
export function saidOtherwise(name: ObservationName, said: string, text: string): boolean {
  // "gone to get a belt": an errand
  if (/^(?:gone|off) (?:to|for|get|2)\b/i.test(said)) return true;
  // "calling office", "no answer at the door": people, no thermostat and no line
  if (
    name === "calling" &&
    /\bcalling (?:the )?(?:office|boss|shop|dispatch|you|him|her|them|supervisor|tech|in|it|back)\b/i.test(
      text,
    )
  )
    return true;
  if (name === "communication_lost")
    return /\banswer\w*\b[^.;]{0,12}\b(?:door|phone|desk|gate|bell|buzzer|intercom)\b/i.test(text);
  // "sensing bulb tight": fastened, not leak free
  if (name === "no_leak_found")
    return (
      /\b(?:bulb|belt|lugs?|screws?|bolts?|terminals?|connections?|strap|nuts?)s? (?:is |are |was |were )?(?:all )?tight\b/i.test(
        text,
      ) && !/\bleak/i.test(text)
    );
  // "7 calls left today"
  if (name === "calling")
    return /\b\d+ (?:more )?calls\b|\bcalls (?:left|today|to go|tomorrow)\b/i.test(text);
  // "condenser clean and fan full speed": clean, and nothing there is full of anything
  if (/_dirty$/.test(name))
    return (
      /\bclean\b/i.test(said) &&
      /\bfull (?:speed|bore|blast|tilt|on|load|open|flow)\b/i.test(text) &&
      !/n[o']?t\b[^,;.]{0,12}\bclean\b/i.test(said)
    );
  // "glass past it full of flash"
  if (name === "sight_glass_clear")
    return /\bfull$/i.test(said) && /\bfull of (?:flash|bubble|foam|gas)/i.test(text);
  // "trips on comp 2 when its hot out": the day, no shell and no room
  if (name === "shell_hot" || name === "not_cooling")
    return (
      /\bhot$/i.test(said) &&
      /\bhot (?:out(?:side|doors)?|days?|weather|afternoons?|spells?)\b/i.test(text)
    );
  // "its swinging 17-19 A": what moves is the current, no valve
  if (name === "valve_hunting")
    return /\b(?:swing|bounc|jump|hunt)\w*\b[^.;,]{0,24}\d ?(?:a|amps?|v|volts?)\b/i.test(text);
  // "running flat out"
  if (name === "holding_steady") return /\bflat$/i.test(said) && /\bflat out\b/i.test(text);
  if (name === "water_inside") return /wet bulb/i.test(said);
  // "customer asks if it's low on gas", "igniter glows no gas": what would burn
  if (name === "low_charge_said")
    return (
      asked.test(text) ||
      (/\b(?:no|low on|out of|short o[nf]) gas\b/i.test(text) && burns.test(text))
    );
  // "off but blowing cold" is the complaint
  if (name === "cooling_again") return coldUnasked.test(text);
  // "nothing defrosting: 341 psi on the liquid"
  if (name === "unit_dead")
    return (
      /^nothing\b.*\d.*\bon$/i.test(said) ||
      /\b(?:found|finds|shows|showed|picked up|see|saw) nothing\b/i.test(text) ||
      /\bnothing on (?:the )?(?:comp\w*|contactor|fan|y\d?|cc|output|relay)\b/i.test(text)
    );
  return name === "defrost_not_working" && /^no\b/i.test(said) && settledRun.test(text);
}
