const name =
  "(?:(?:low|high|lo|hi|head|suction|lp|hp)(?: pressure| press)? (?:switch|sw|limit|cut ?out|control)|hps|lps|hpc|lpc|freeze ?stat|float switch|limit switch|rollout switch|door switch)";
const dead = "(?:nothing|none|zero|0(?:\\.0)?|dead|no (?:volts?|voltage|power))";
const live = "(?:2[0-9](?:\\.\\d)?|1[12]\\d)";

/** "low pressure switch has 26 on one side and nothing on the other": the contact that stands open was found. */
export const openSwitch = new RegExp(
  `\\b${name}\\b.{0,24}\\b${live}\\b.{0,30}\\b${dead}\\b|\\b${live}(?: ?v\\w*)? (?:in|into|to) the ${name}\\b.{0,24}\\b${dead}\\b`,
);
