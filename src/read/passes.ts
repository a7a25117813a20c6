import { acrossRow } from "./across-row.ts";
import { approaches } from "./approaches.ts";
import { atEach } from "./at-each.ts";
import { atTheOutdoor } from "./at-the-outdoor.ts";
import { countOfRow } from "./count-of-row.ts";
import { dampBehind } from "./damp-behind.ts";
import { airsOfRooms, dischargeAir } from "./discharge-air.ts";
import { ductStatic } from "./duct-static.ts";
import { endsOfPart } from "./ends-of-part.ts";
import { coolerAt } from "./gas-cooler.ts";
import { gasTrain } from "./gas-train.ts";
import { gaugePair } from "./gauge-pair.ts";
import { gaugesOfEach } from "./gauges-of-each.ts";
import { onCoil } from "./guard-coil.ts";
import { halvesOfPlant } from "./halves-of-plant.ts";
import { headThenDischarge, vaporOverSuction } from "./head-then-discharge.ts";
import { heldFor } from "./held-for.ts";
import { inThere } from "./in-there.ts";
import { legsBehindSpeed } from "./legs-behind-speed.ts";
import { legsPulled } from "./legs-pulled.ts";
import { legsAsWarm, letteredRows } from "./lettered-rows.ts";
import { lettersAlone, lowOfLeg } from "./letters-alone.ts";
import { markedThenRead } from "./marked-then-read.ts";
import { minutesAfter } from "./minutes-after.ts";
import { nowBoth } from "./now-both.ts";
import { numberedCases, waresCold } from "./numbered-cases.ts";
import { ofVessels } from "./of-vessels.ts";
import { netOil, oilRow, oilSides } from "./oil-sides.ts";
import { onItWas } from "./on-it-was.ts";
import { openThenPair } from "./open-then-pair.ts";
import { otherOfPair } from "./other-of-pair.ts";
import { outOf } from "./out-of.ts";
import { outputPairs } from "./output-pairs.ts";
import { outAtEnd, outsideBehind } from "./outside-behind.ts";
import { outsideColon } from "./outside-colon.ts";
import { pairInHand } from "./pair-in-hand.ts";
import { passes } from "./pass.ts";
import { peakThen } from "./peak-then.ts";
import { pipesAhead, pipesBehind } from "./pipes-at.ts";
import { powerSwitched } from "./power-on.ts";
import { pullsDown } from "./pulls-down.ts";
import { ratedThenPlate } from "./rated-then-plate.ts";
import { regulatorEnds } from "./regulator-ends.ts";
import { relate } from "./relate.ts";
import { riseAlone } from "./rise-alone.ts";
import { roomWarmth } from "./room-warmth.ts";
import { speeds } from "./speeds.ts";
import { stages } from "./stages.ts";
import { statLetters } from "./stat-letters.ts";
import { setBesideHumidity, statSet, statShows } from "./stat-set.ts";
import { statsOfOne } from "./stats-of-one.ts";
import { toldByWords } from "./told-by-words.ts";
import { drewAtTrip, trips } from "./trips.ts";
import { voltsAtSwitch } from "./volts-of-switch.ts";
import { ofWarmDay } from "./warm-day.ts";
import { waterAgain } from "./water-again.ts";
import { zeros } from "./zeros.ts";

/** What words right beside the values make of them. */
export const byWords = passes(
  { look: ({ drafts, items }) => outsideColon(drafts, items), heads: ":" },
  {
    look: ({ drafts, items, context }) => {
      dischargeAir(drafts, items, context.units);
      airsOfRooms(drafts, items);
    },
    heads: "return|ret|rtn|disch|discharge|sup|supply",
  },
  { look: ({ drafts, items }) => nowBoth(drafts, items), heads: "now", several: true },
  { look: ({ drafts, items }) => openThenPair(drafts, items), several: true },
  { look: ({ drafts, items }) => outputPairs(drafts, items), heads: "output|outputs" },
  {
    look: ({ drafts, items, context }) => pullsDown(drafts, items, context),
    heads: "down|pulling",
  },
  { look: ({ drafts, items }) => powerSwitched(drafts, items), heads: "power" },
  {
    look: ({ drafts, items, context }) => waterAgain(drafts, items, context),
    heads: "return|ret|rtn|supply|sup|in|out",
  },
  { look: ({ drafts, items, note }) => ofWarmDay(drafts, items, note.plain), heads: "a|an" },
  { look: ({ drafts, items }) => gaugesOfEach(items, drafts), heads: "/", several: true },
  {
    look: ({ drafts, items }) => approaches(items, drafts),
    heads: "approach|approaches|app|appr|apr",
  },
  {
    look: ({ drafts, items }) => markedThenRead(items, drafts),
    heads:
      "reads|reading|read|readin|redin|reedin|rd|rds|tests|tested|measures|measured|measuring|says|shows|showing|got|getting",
    several: true,
  },
  {
    look: ({ drafts, items }) => ratedThenPlate(drafts, items),
    heads: "plate|nameplate|np|tag|sticker|label",
    several: true,
  },
  { look: ({ drafts, items }) => outOf(items, drafts), heads: "of|out|/", several: true },
  ...ofVessels,
  {
    look: ({ drafts, items }) => letteredRows(drafts, items),
    heads:
      "lug|lugs|pole|poles|terminal|terminals|stud|studs|stab|stabs|clip|clips|fuse|fuses|screw|screws|phase|leg|bearing",
    several: true,
  },
  { look: ({ drafts, items }) => legsAsWarm(drafts, items), several: true },
  {
    look: ({ drafts, items }) => acrossRow(drafts, items),
    heads: "across|between",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => headThenDischarge(drafts, items, context.units),
    heads: "discharge|disch|disc|dis|dischg|hot",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => vaporOverSuction(drafts, items, context.units),
    heads: "vapor|vapour",
    several: true,
  },
  { look: ({ drafts, note }) => zeros(drafts, note) },
  { look: ({ drafts, items, context }) => lettersAlone(drafts, items, context.units) },
  {
    look: ({ drafts, items, note }) => halvesOfPlant(drafts, items, note),
    heads: "temp|temps|temperature|temperatures|lt|mt",
  },
  { look: ({ drafts, items, context }) => onCoil(drafts, items, context.units), heads: "coil" },
  { look: ({ drafts, items }) => voltsAtSwitch(drafts, items), heads: "in|on|out" },
  {
    look: ({ drafts, items, context }) => {
      atTheOutdoor(drafts, items);
      outsideBehind(drafts, items, context.units);
    },
    heads: "out|outside|outdoors|outdoor|ambient|amb|od|oat",
  },
  { look: ({ drafts, items, context }) => outAtEnd(drafts, items, context), heads: "out" },
  { look: ({ drafts, items, context }) => inThere(drafts, items, context) },
  { look: ({ drafts, items, context }) => roomWarmth(drafts, items, context) },
  { look: ({ drafts, items }) => minutesAfter(drafts, items), heads: "after", several: true },
  { look: ({ drafts, items }) => atEach(drafts, items), several: true },
  { look: ({ drafts }) => statsOfOne(drafts), several: true },
  {
    look: ({ drafts, items }) => endsOfPart(drafts, items),
    heads: "in|inlet|entering",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => waresCold(drafts, items, context),
    heads:
      "dairy|meat|meats|produce|deli|bakery|fish|seafood|beer|frozen|icecream|freezer|cooler|cheese|poultry|chicken",
    several: true,
  },
  { look: ({ drafts, items, context }) => numberedCases(drafts, items, context) },
  {
    look: ({ drafts, items, context }) => gaugePair(drafts, items, context.units),
    several: true,
  },
  { look: ({ drafts, items, context }) => pairInHand(drafts, items, context), several: true },
  { look: ({ drafts, items }) => statLetters(drafts, items) },
  {
    look: ({ drafts, items }) => stages(drafts, items),
    heads: "stage|stages|stg|speed|fire",
    several: true,
  },
  {
    look: ({ drafts, items, context }) => {
      statShows(drafts, items, context.units);
      statSet(drafts, items, context.units);
    },
    heads: "stat|tstat|thermostat|t'stat",
    several: true,
  },
  { look: ({ drafts, items }) => lowOfLeg(drafts, items), heads: "low|lo|high|hi" },
  {
    look: ({ drafts, items }) => otherOfPair(drafts, items),
    heads: "at|@|temp|temperature|press|pressure",
    several: true,
  },
  { look: ({ drafts, items, context }) => netOil(drafts, items, context), heads: "net" },
  { look: ({ drafts, items, context }) => oilRow(drafts, items, context) },
  {
    look: ({ drafts, items }) => oilSides(drafts, items),
    heads: "net|diff|differential|crankcase|crank|suct|suction|case",
    several: true,
  },
  {
    look: ({ drafts, items }) => speeds(drafts, items),
    heads: "hi|high|med|medium|lo|low|highest|lowest",
    several: true,
  },
  {
    look: ({ drafts, items }) => trips(drafts, items),
    heads: "trip|trips|max|maximum|limit",
    several: true,
  },
  { look: ({ drafts, items }) => drewAtTrip(drafts, items), heads: "trip|trips" },
  { look: ({ drafts, items }) => legsPulled(drafts, items), heads: "pulled", several: true },
  {
    look: ({ drafts, items, context }) => gasTrain(drafts, items, context.units),
    heads: "gas|mani|manif|manifold|burner|regulator|fire|wc|inwc|iwc|wg|inwg",
  },
  { look: ({ drafts, items }) => ductStatic(drafts, items), heads: "sp" },
  { look: ({ drafts, items }) => countOfRow(drafts, items), several: true },
  { look: ({ drafts, items }) => onItWas(drafts, items), heads: "was", several: true },
  { look: ({ drafts, items }) => regulatorEnds(drafts, items), heads: "epr|eprs" },
  {
    look: ({ drafts, items, context }) => coolerAt(drafts, items, context.units),
    heads: "gas|gc|gascooler|gcot",
    several: true,
  },
  { look: ({ drafts, items, context }) => riseAlone(drafts, items, context), heads: "rise" },
  {
    look: ({ drafts, items }) => pipesBehind(drafts, items),
    heads: "liq|liquid|gas|vapor",
    several: true,
  },
  {
    look: ({ drafts, items }) => pipesAhead(drafts, items),
    heads: "gas|vapor",
    several: true,
  },
  { look: ({ drafts, items }) => legsBehindSpeed(drafts, items), several: true },
  { look: ({ drafts, items }) => dampBehind(drafts, items), heads: "%|percent", several: true },
  {
    look: ({ drafts, context }) => setBesideHumidity(drafts, context.units),
    heads: "%|rh|humidity|percent",
    several: true,
  },
);

/** How values are measured and how they stand to what is known, before the test's own values are taken out. */
export const beforeTest = passes(
  { look: ({ drafts, items }) => heldFor(drafts, items), heads: "for" },
  { look: ({ drafts, items }) => relate(drafts, items) },
  { look: ({ drafts, items }) => peakThen(items, drafts) },
  { look: ({ drafts, note }) => toldByWords(drafts, note) },
);
