import { perScene, type Scene } from "./scene.ts";

/**
 * What the circuit does, as far as its usual figures depend on it. `multi_zone` is inverter-driven
 * equipment: what it controls supports no charge verdict.
 */
export type Application = "comfort" | "multi_zone" | "cooler" | "freezer" | "chiller";

const freezers = /freezer|low temp|ice cream/;
const coolers = /walk-?in|cooler|reach-?in|display|prep table|\bcase\b|refrigerat|ice machine|rack/;
const multiZones = /heat recovery|multi-?(zone|split)|branch|vrf/;
/** Words of notes and tags that only such equipment has. */
const zonedWords = /\bvrf\b|\bmulti-?zone\b|\bbranch (?:box|controller|selector)\b/;

/** Words of notes that only refrigeration has; "cooler" alone may be said of the weather. */
const coldWords =
  /\bwalk-?ins?\b|\breach-?ins?\b|\b(?:dairy|meat|produce|deli|display|beer|island|coffin) (?:case|cooler|box)\b|\b(?:case|box) (?:is |at |temp|air|\d)|\bproduct (?:temp|at |is |\d)/;
const frozenWords = /\bfreezer\b|\bice cream case\b|\bfrozen (?:food )?(?:case|box)\b/;

const chillers = /\bchiller\b|^(?:chlr|chl|ch)-? ?\d/;

/** Words of a condenser that water cools: what goes in and out of it is no air and no liquid line. */
const condenserWater =
  /\b(?:cond(?:enser)?|condensing|tower|cdw) (?:water|wtr)\b|\btower (?:basin|fan|pump)\b|\bwater[- ]cooled\b/;

/** Is the condenser cooled by water, as the plate or the notes tell? */
export const isWaterCooled: (scene: Scene) => boolean = perScene(
  (scene) =>
    /water[- ]cooled/.test((scene.facts.kind ?? "").toLowerCase()) ||
    condenserWater.test(scene.words.toLowerCase()),
);

/** What the tag and the notes tell where no plate does. */
function asTold(tag: string, words: string): Application {
  if (zonedWords.test(`${tag} ${words}`)) return "multi_zone";
  if (chillers.test(tag)) return "chiller";
  if (freezers.test(tag) || /^(?:wif|frz)\b/.test(tag)) return "freezer";
  if (coolers.test(tag) || /^(?:wic|ri)\b/.test(tag)) return "cooler";
  if (frozenWords.test(words)) return "freezer";
  return coldWords.test(words) ? "cooler" : "comfort";
}

/** The kind of circuit, from the plate and its drive; comfort cooling where nothing says more. */
export const applicationOf: (scene: Scene) => Application = perScene((scene) => {
  const kind = (scene.facts.kind ?? "").toLowerCase();
  if (scene.facts.drive === "inverter" || multiZones.test(kind)) return "multi_zone";
  if (/chiller/.test(kind)) return "chiller";
  if (freezers.test(kind)) return "freezer";
  if (coolers.test(kind) || scene.facts.use === "commercial_refrigeration") return "cooler";
  if (kind !== "") return "comfort";
  return asTold((scene.facts.tag ?? "").toLowerCase(), scene.words.toLowerCase());
});

/** Heating, by the plate's word or the notes'; cooling where nothing says so. */
export const isHeating: (scene: Scene) => boolean = perScene((scene) => {
  if (scene.facts.mode !== undefined) return scene.facts.mode === "heating";
  return /\b(in heat(ing)?|heat(ing)? mode|calling for heat|heating call)\b|^heating\b[,:;]|\bheating,? (?:suction|head|low side|high side|discharge|liquid)\b/m.test(
    scene.words,
  );
});

/** Gas heat that is spoken of: none of the circuit's checks settles anything there. */
export const isBurner: (scene: Scene) => boolean = perScene(
  (scene) => /furnace/i.test(scene.facts.kind ?? "") || burnerWords.test(scene.words.toLowerCase()),
);

export const burnerWords =
  /\b(?:burners?|ignit[oe]rs?|inducers?|gas (?:valve|heat)|flame (?:sensor|rod)|pilot light|manifold pressure|furnaces?)\b/;

/** Whether the notes or the plate say that a forced test operation was running and settled. */
export const inTestOperation: (scene: Scene) => boolean = perScene((scene) => {
  if (scene.facts.operation === "test") return true;
  return /\b(test (run|mode|operation)|run[- ]test|forced (test|cool|heat)|trial (run|operation)|charge check (mode|operation))/.test(
    scene.words,
  );
});

/** Metering device, from the plate's word or the notes'. */
export const meteringOf: (scene: Scene) => "expansion_valve" | "fixed_orifice" | undefined =
  perScene((scene) => {
    if (scene.facts.metering !== undefined) return scene.facts.metering;
    if (/\b(txv|tev|eev|exv|expansion valve)\b/.test(scene.words)) return "expansion_valve";
    if (/\b(piston|fixed orifice|cap(illary)? tube|accurator)\b/.test(scene.words))
      return "fixed_orifice";
    return undefined;
  });

const waterWords =
  /\bboilers?\b|\bhydronic\b|\b(?:hot|heating|chilled|condenser) water (?:loop|pump|system)|\bcirculators?\b|\bexpansion tank\b|\b(?:hw|hhw|chw|cw) (?:loop|pump)/;
const circuitWords =
  /\bcomp(?:ressor)?s?\b|\brefrigerant\b|\bfreon\b|\bchillers?\b|\bsuper ?heat\b|\bsub ?cool|\bheat pumps?\b|\bevap|\bcondens(?:er|ing) unit/;

/** A machine of water alone is spoken of: its pressures and temperatures are no circuit's. */
export const isWaterSide: (scene: Scene) => boolean = perScene(({ facts, words }) => {
  if (facts.refrigerant !== undefined) return false;
  if (/boiler|\bwater heater/i.test(facts.kind ?? "")) return !circuitWords.test(words);
  return waterWords.test(words) && !circuitWords.test(words);
});
