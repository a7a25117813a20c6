import type { Finding } from "../model.ts";
import { isAcrossContacts } from "./across-contacts.ts";
import { isIcedColdCoil } from "./cold-coil.ts";
import { fanAhead, fanSignOf } from "./of-fan.ts";
import { isOfDraft, pressureSwitch } from "./pressure-switch.ts";
import { repairSigns } from "./repairs.ts";
import type { Scene } from "./scene.ts";
import { signGroups } from "./signs/list.ts";
import { textAbout } from "./text-about.ts";

/** One sign with the words it came from. */
export interface Evidence {
  readonly sign: string;
  readonly says: string;
}

export function groupOf(sign: string): string {
  return sign.slice(0, sign.indexOf(":"));
}

const severity = { bad: 3, watch: 2, good: 1, unknown: 0 } as const;

/**
 * Signs of the findings. Where one group was looked at several times or on several units, only the
 * worst look counts: a sound sister or a sound half says nothing of the cause.
 */
export function findingEvidence(findings: readonly Finding[]): Evidence[] {
  const worst = new Map<string, number>();
  for (const one of findings)
    for (const sign of one.signs ?? []) {
      const group = groupOf(sign);
      worst.set(group, Math.max(worst.get(group) ?? 0, severity[one.level]));
    }
  const ill = new Set(
    findings.flatMap((one) =>
      severity[one.level] > severity.good && isUnit(one) ? [one.about] : [],
    ),
  );
  const sound = (one: Finding) =>
    one.level === "good" &&
    isUnit(one) &&
    !ill.has(one.about) &&
    [...ill].some((other) => kindOf(other) === kindOf(one.about));
  // on the drive that the fault did not go with, the motor runs: that clears the motor alone
  const onOther = worst.has("swap") && findings.some((one) => one.signs?.includes(followsDrive));
  return findings
    .filter((one) => !sound(one))
    .flatMap((one) =>
      (one.signs ?? [])
        .filter((sign) => severity[one.level] === worst.get(groupOf(sign)))
        .filter((sign) => !(onOther && ofMotor.includes(groupOf(sign))))
        .map((sign) => ({ sign, says: `${one.says} (${one.basis})` })),
    );
}

const followsDrive = "swap:follows_drive";
const ofMotor: readonly string[] = ["current", "ramp", "start"];

/** One of several: "compressor 2", "fan 1". */
function isUnit(one: Finding): boolean {
  return /^(?:compressor|fan|circuit) \w+$/.test(one.about);
}

function kindOf(about: string): string {
  return about.split(" ")[0] ?? about;
}

/**
 * Signs of what was seen or heard: an observation stands in the group that lists it. A test told in
 * words ("windings even") is that test's sign.
 */
export function remarkEvidence(scene: Scene): Evidence[] {
  return scene.seen.flatMap((one) => {
    if (isOfSmallPart(one, scene) || isOfPiping(one, scene) || isOfLug(one, scene)) return [];
    const says = `said: ${one.said}`;
    if (isOfDraft(one, scene)) return [];
    if (isOnce(one, scene) || isOfHeater(one, scene) || isOfOil(one, scene)) return [];
    const tripped = pressureSwitch(one, scene);
    if (tripped !== undefined) return [{ sign: tripped, says }];
    if (isOfControl(one, scene)) return [{ sign: "protection:control_fuse_open", says }];
    if (isOfSister(one, scene) || isOfDriveBoard(one, scene)) return [];
    if (isAcrossContacts(one, scene) || isOfStuckFan(one, scene)) return [];
    if (isOfBath(one, scene) || isOfUnloaded(one, scene)) return [];
    if (namesLine(one, scene)) return [{ sign: "protection:upstream_fuse_open", says }];
    const ofFan = fanSignOf(one, scene);
    if (ofFan !== undefined) return [{ sign: ofFan, says }];
    if (isOfBareDrive(one, scene)) return [{ sign: bareDriveSign(scene), says }];
    const note = scene.notes.find((other) => other.statements.includes(one));
    if (isIcedColdCoil(one, note, scene)) return [{ sign: "indoor_air:ice_on_cold_coil", says }];
    const test = toldTests[one.observation];
    if (test !== undefined) return [{ sign: test, says }];
    const group = remarkGroups.get(one.observation);
    return group === undefined ? [] : [{ sign: `${group}:${one.observation}`, says }];
  });
}

const stuckFan =
  /\bfans?\b(?: motor)?\b.{0,24}\b(?:locked|seized|stuck|froze(?:n)?|burnt|burned)(?: up)? solid\b/i;

/** "condenser fan motor locked solid": its shaft, not what its coil is full of. */
function isOfStuckFan(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "outdoor_coil_dirty") return false;
  const text = scene.notes.find(({ statements }) => statements.includes(one))?.text ?? one.said;
  return stuckFan.test(text) && !/\bcoil\b|\bfins\b|\bdirt|\bplugged|\bclogged/i.test(text);
}

/** What may pass: "tripped once, nothing since". */
const passing: readonly string[] = [
  "phase_monitor_open",
  "breaker_trips",
  "overload_trips",
  "communication_lost",
  "fault_returns",
];

/** It happened once and went by, so it says little. */
function isOnce(one: Scene["seen"][number], scene: Scene): boolean {
  if (!passing.includes(one.observation)) return false;
  return /\b(?:once|one time)\b(?! (?:it|you|the|i|we|a)\b)|nothing since/i.test(
    textAbout(one, scene, passingNear),
  );
}

const passingNear = [8, 24] as const;

/** The fuse of a heater's own circuit. */
function isOfHeater(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "fuse_blown") return false;
  return /heater|belly/i.test(textAbout(one, scene, [fanAhead, 0]));
}

/** An oil glass shows oil: neither a stain nor bubbles of refrigerant. */
function isOfOil(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation === "oil_stain") return /oil (?:sight )?glass/i.test(one.said);
  return (
    one.observation === "bubbles_in_sight_glass" &&
    /oil (?:sight )?glass/i.test(textAbout(one, scene, [nameAhead, 0]))
  );
}

/** "comp 2 runs fine, comp 1 trips": the sister's health says nothing of the one that fails. */
function isOfSister(one: Scene["seen"][number], scene: Scene): boolean {
  const unit = /^(compressor|fan|circuit) (\w+)$/.exec(one.subject ?? "");
  if (unit === null || !fineRemarks.includes(one.observation)) return false;
  const kind = (unit[1] ?? "").slice(0, 4);
  const failing = new RegExp(
    `\\b${kind}\\w* (\\w+)\\b.{0,30}\\b(?:trip|fault|over ?current|won'?t|fail|lock|dead|hum)`,
    "g",
  );
  return [...scene.words.matchAll(failing)].some((found) => found[1] !== unit[2]);
}

const fineRemarks: readonly string[] = ["runs_normally", "cooling_again", "fine"];

/** An inverter board is the drive, not a control board. */
function isOfDriveBoard(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "board_suspected" || scene.facts.drive !== "inverter") return false;
  return /\b(?:inverter|drive|compressor|power) boards?\b/.test(scene.words);
}

/** The small fuse of the control circuit, or one that a low voltage wire blows. */
function isOfControl(one: Scene["seen"][number], scene: Scene): boolean {
  return (
    one.observation === "fuse_blown" &&
    /\b(?:[1-5] ?a(?:mp)?|24 ?v\w*|low volt\w*|control|transformer|board|secondary|stat|thermostat)\b(?! heater)/i.test(
      textAbout(one, scene, [12, 34]),
    ) &&
    !/inverter|drive|\bmain\b|\bline\b/i.test(textAbout(one, scene, [nameAhead, nameAhead]))
  );
}

/** Ice in a cup that a sensor is proven in is none on the coil. */
function isOfBath(one: Scene["seen"][number], scene: Scene): boolean {
  if (!one.observation.startsWith("ice_on_")) return false;
  const near = textAbout(one, scene, [fanAhead, nameAhead]);
  return /\b(?:cup|glass|bucket|bath|slush|ice ?water)\b/i.test(near);
}

/** "2 runs fine on the other board": the sister, tried. */
const onOther =
  /\b(?:fine|good|ok(?:ay)?|normal\w*|smooth) on (?:the )?(?:other|swapped|sister|comp)/i;
const uncoupled = /\b(?:uncoupled|decoupled|(?:coupling|belts?) (?:is |are )?(?:off|apart|out))\b/i;

/** A breaker that trips with its load off says nothing of the load, a motor that runs uncoupled nothing of the machine; `told` hears both. */
function isOfUnloaded(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation === "runs_normally") {
    const near = textAbout(one, scene, [bareNear, fanAhead]);
    return uncoupled.test(near) || onOther.test(near);
  }
  if (one.observation !== "breaker_trips" && one.observation !== "fuse_blown") return false;
  return /\bwith (?:the |its )?load wires? off|load wires? (?:off|lifted|pulled)|nothing (?:on|hooked|connected)/i.test(
    textAbout(one, scene, [fanAhead, fanAhead]),
  );
}

/** The one fuse of a named line is open: that line is lost there. */
function namesLine(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "fuse_blown" || scene.facts.phases === 1) return false;
  return /\b(?:L ?[123]|(?:leg|phase|line) [123abc]|[ABC] (?:phase|leg)) fuse\b/i.test(
    textAbout(one, scene, [nameAhead, 0]),
  );
}

const unplugged =
  /\b(?:unplugged|disconnected|(?:with ?out|no) (?:the |a )?(?:motor|comp\w*)|(?:motor|comp\w*|leads?|wires) (?:is |are )?(?:off|out|lifted|unhooked|hanging|dangling|loose))\b/i;

/** A drive that runs with nothing on it, however that was heard. */
function isOfBareDrive(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation === "drive_fine_without_motor") {
    // "trips even with the compressor unplugged" was heard both ways
    const note = scene.notes.find((other) => other.statements.includes(one));
    return !note?.statements.some(
      (each) => each.kind === "observation" && each.observation === "drive_faults_without_motor",
    );
  }
  if (one.observation !== "runs_normally" || scene.facts.drive !== "inverter") return false;
  return unplugged.test(textAbout(one, scene, [bareNear, bareNear]));
}

/** Letters about a remark that tell a bare drive from a whole machine. */
const bareNear = 60;

/** With a motor that faults it clears the drive and accuses the motor; alone it is one sound test. */
function bareDriveSign(scene: Scene): string {
  return troubled.test(scene.words) ? "unplugged:drive_fine_without_motor" : "output:balanced";
}

const troubled =
  /\b(?:fault\w*|trip\w*|alarm\w*|code|won'?t|wont|kick\w*|limit\w*|over ?current|hums?|stall\w*|grounded|fails?|dies|no start|does(?:n'?t| not) start)\b/;

/** What hums may be the contactor or the transformer, and says nothing of the compressor then. */
function isOfSmallPart(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "hums" && one.observation !== "noisy") return false;
  if (/^\W*along\b/i.test(textAbout(one, scene, [0, nameAhead]).slice(one.said.length)))
    return true;
  const words = `${textAbout(one, scene, [nameAhead, 0])} ${one.subject ?? ""}`;
  if (soundOfPanel.test(scene.words)) return true;
  return /contactor|transformer|relay/i.test(words);
}

/** "noise was a loose panel screw": heard, and found to be sheet metal. */
const soundOfPanel =
  /\b(?:noise|rattl\w*|sound|racket)\b(?: \w+){0,4} (?:panel|door|cover|cabinet|sheet ?metal|guard|grille|bracket|screw)s?\b/;

/** A burnt lug on a contactor is the joint's matter, not the contacts'. */
function isOfLug(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "contactor_pitted") return false;
  const near = textAbout(one, scene, [nameAhead, 0]);
  return (
    /\b(?:lug|terminal|wire|screw|stab|spade)s?\b/i.test(near) &&
    !/contacts|points|pole/i.test(near)
  );
}

/** A flare or a fitting is a connection too, and no electrical one. */
function isOfPiping(one: Scene["seen"][number], scene: Scene): boolean {
  if (one.observation !== "connection_loose") return false;
  const near = textAbout(one, scene, [pipingNear, pipingNear]);
  if (/\b(?:panel|door|cover|cabinet|guard)\b/i.test(one.said)) return true;
  return /flare|fitting|schrader|braz|\boil|leak/i.test(`${near} ${one.said}`);
}

/** Letters about a remark that tell piping from wiring. */
const pipingNear = 30;

/** Letters before a remark that name what it is of. */
const nameAhead = 16;

/** Tests whose result was told in words. */
const toldTests: Readonly<Record<string, string>> = {
  windings_even: "winding:balanced",
  insulation_fine: "insulation:sound",
  continuity_to_ground: "insulation:ground_fault",
  supply_fine: "supply:sound",
  output_balanced: "output:balanced",
  output_unbalanced: "output:unbalanced",
  capacitor_bulged: "capacitor:low",
};

/**
 * Signs of what was mended: the trade seldom mends what was sound. Where that changed nothing it
 * speaks against that part instead.
 */
export function repairEvidence(scene: Scene, inVain: boolean): Evidence[] {
  return repairSigns(scene).map(({ part, said }) =>
    inVain
      ? { sign: `in_vain:${part}`, says: `done without effect: ${said}` }
      : { sign: `mended:${part}`, says: `done: ${said}` },
  );
}

const remarkGroups: ReadonlyMap<string, string> = new Map(
  [...signGroups.values()]
    .filter((one) => one.remarks === true)
    .flatMap((one) => Object.keys(one.background).map((name) => [name, one.group] as const)),
);
