import { perScene, type Scene } from "./scene.ts";

const pumps = /\bpumps?\b/;
/** Tags that mechanical drawings give to what moves air or water. Common practice, no source. */
const fanTags = /^(?:ahu|ef|sf|rf|xf|mau|mua|tf|ct|kef|gef)[- ]?\d/;
const pumpTags = /^(?:cwp|chwp|hwp|p)[- ]?\d/;
/** Words of a circuit that such a machine has beside its motor. */
const circuit =
  /\bheaters?\b|\belements?\b|\bstrips?\b|\bcomp(?:ressor)?s?\b|\bscroll\b|\bsuction\b|\bsuct\b|\bdischarge (?:line|press)|\bhead (?:press|\d)|\brefrigerant\b|\bsubcool/;

/**
 * The machine is a pump, or by its tag alone a fan: its one motor is no compressor's, where none is spoken of.
 * What the office calls an air handler may have heaters and a coil, and is judged by its words.
 */
export const ownMotor: (scene: Scene) => "pump" | "fan" | undefined = perScene((scene) => {
  const kind = (scene.facts.kind ?? "").toLowerCase();
  if (kind !== "") return pumps.test(kind) && !/heat pump/.test(kind) ? "pump" : undefined;
  const tag = (scene.facts.tag ?? "").toLowerCase();
  const [fan, pump] = [fanTags.test(tag), pumpTags.test(tag)];
  if ((!fan && !pump) || circuit.test(scene.words.toLowerCase())) return undefined;
  return scene.facts.refrigerant === undefined ? (pump ? "pump" : "fan") : undefined;
});
