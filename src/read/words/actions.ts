import type { CircuitState } from "../../model.ts";
import type { ActionName } from "../../vocabulary.ts";

export interface ActionWords {
  readonly action: ActionName;
  readonly words: string;
  readonly lock?: "on" | "off";
  readonly bypass?: "on" | "off";
  readonly leads?: "lifted" | "landed";
  readonly circuit?: CircuitState;
}

/** What people say they did, and what it makes of the machine. */
export const actionWords: readonly ActionWords[] = [
  {
    action: "locked",
    lock: "on",
    words:
      "locked out|locked it out|lock out|lockout tagout|lockout on|lock on|locked and tagged|tagged out|lock is on|my lock is on|locked the disconnect|locked|loto|loto on|put my lock on|hung my lock|lock and tag on|its locked out|locked off|lock hung|hung a lock|padlocked it|lock and tag",
  },
  {
    action: "tagged",
    words:
      "tagged with my tag|tagged it|my tag is on|my tag is on it|my tag on it|my tag on|tag stays on|tag is on|tag is still on|hung my tag|hung a tag|put my tag on|put a tag on|off and tagged|breaker tagged|disconnect tagged",
  },
  {
    action: "unlocked",
    lock: "off",
    words:
      "tag off|tag is off|took my tag off|pulled my tag|removed my tag|tag removed|lock off|unlocked|pulled my lock|removed my lock|lock removed|took my lock off|lock is off|locks off|lock pulled|my lock is off|pulled the lock|cleared my lock|loto off|lock came off|lock and tag off",
  },
  {
    action: "power_off",
    words:
      "power off|killed the power|killed power|shut it off|powered down|powered it down|disconnect off|pulled the disconnect|threw the disconnect|breaker off|turned it off|shut it down|powered off|deenergized|de energized|opened the disconnect|shut the unit off|shut the unit down|cut the power|power is off|disconnect pulled|killed it|shut off the power|turned the power off|pulled the plug on it|turned off the breaker|shut down the unit|flipped the breaker off|power killed|shut off the disconnect",
  },
  {
    action: "power_on",
    words:
      "power on|power back on|power is on|turned it back on|reenergized|re energized|powered up|powered it up|breaker back on|power restored|closed the disconnect|turned it on|disconnect on|energized it|power is back on|powered back up|turned the power on|turned the power back on|flipped it on|flipped it back on|power is back|disconnect back on|put power back on|powered on",
  },
  {
    action: "proved_dead",
    words:
      "proved dead|proven dead|proved it dead|tested dead|verified dead|checked dead|live dead live|absence of voltage|absence of voltage verified|verified zero energy|verified zero|verified no voltage|tested for dead|confirmed dead|dead proven|proved zero|verified its dead|tested it dead|checked for absence of voltage|zero energy verified|confirmed zero",
  },
  {
    action: "leads_lifted",
    leads: "lifted",
    words:
      "leads off|leads lifted|lifted the leads|lifted leads|leads are off|pulled the leads|pulled the wires off|leads disconnected|disconnected the motor|disconnected the leads|disconnected the compressor|unhooked the compressor|unplugged the compressor|comp plug off|wires off|leads pulled|with the leads off|with leads off|pulled the motor leads|wires are off|took the leads off|unhooked the leads|unlanded the leads|compressor unplugged|comp unplugged|unplugged at the compressor|plug off|lifted|leads removed|removed the leads|motor unhooked|motor disconnected|pulled the wire off|isolated the compressor|isolated the motor|took the wires off",
  },
  {
    action: "leads_landed",
    leads: "landed",
    words:
      "leads back on|leads landed|landed the leads|reconnected the leads|reconnected the compressor|hooked back up|wires back on|plugged back in|leads still landed|leads are back on|reconnected|relanded|leads relanded|landed|hooked it back up|leads back|hooked the leads back up|plugged it back in|compressor plugged back in",
  },
  {
    action: "jumper_on",
    bypass: "on",
    words:
      "jumped|jumpered|jumper on|bypassed|jumped out|jumper in|jumpered out|put a jumper on|jumper across|bypassing|is jumped|jumping out|put a jumper across|jumper installed|jumped around",
  },
  {
    action: "jumper_off",
    bypass: "off",
    words:
      "jumper off|jumper removed|jumper out|removed the jumper|took the jumper off|pulled the jumper|jumpers off|jumpers removed|jumpers out|pulled the jumpers|removed my jumper|bypass removed|took the jumper out|unjumped|jumper is off|jumper is out|pulled my jumper|jumper pulled|no jumper|no jumpers|without the jumper|jumper is gone",
  },
  {
    action: "recovered",
    circuit: "recovered",
    words:
      "recovered|reclaimed|recovery done|recovered the charge|recovered it all|pulled the charge|recovery complete|recovered the gas|recovered all|charge recovered|recovery finished|charge is out|pulled the gas out|recovered the refrigerant|gas is out",
  },
  {
    action: "pumped_down",
    words:
      "pumped down|pumped it down|pumped the system down|pumping down|pumping the system down|pumped her down|pumped it all into the receiver|pumped into the receiver|king valve closed|king valve shut|closed the king valve|closing the king valve|shut the king valve|front seated the king valve|closed the receiver valve|closed the receiver outlet|receiver valve closed|valved off the receiver",
  },
  {
    action: "circuit_opened",
    circuit: "open",
    words:
      "opened the circuit|opened the system|system is open|system open|circuit open|opened it up|cut the lines|cut the line|unsweated|cut out the drier|cut the drier out|cut out the compressor|unbrazed|lines are cut|circuit is open|cut it out|opened up the system|sweat off|sweated off|cut in the drier",
  },
  {
    action: "brazed",
    words:
      "brazed|rebrazed|braze it|braze the|brazed in|sweated in|brazing|joint redone|re brazed|redid the braze|silfosed|brazed it|brazed up|redid the joint|soldered|joints brazed|resweated|brazed the",
  },
  {
    action: "repaired",
    words:
      "repaired|fixed|redone|rewired|strapped|strapped and wrapped|fixed the|patched|remade|redid|spliced|rerouted|resealed|reflared|remade the flare|insulated|wrapped|re strapped|restrapped|reterminated|re terminated|made up new|put new ends on|fixed it|repaired the|redid the flare|mended|reattached|resecured",
  },
  {
    action: "nitrogen_in",
    circuit: "nitrogen",
    words:
      "nitrogen in|nitrogen on|nitrogen on it|pressurized with nitrogen|put nitrogen in|put nitrogen on it|put nitrogen|pressured up with nitrogen|n2 on it|nitrogen is in|pressure test started|charged with nitrogen|pressurized it|nitrogen charged|pressured it up|pressurized|pumped it up with nitrogen|started pressure test|n2 in|pressured up|standing pressure test on",
  },
  {
    action: "nitrogen_out",
    circuit: "open",
    words:
      "nitrogen out|released n2|released nitrogen|released the n2|bled n2|bled the n2|bled off n2|dumped n2|dumped the n2|vented n2|vented the n2|n2 released|let n2 out|let the n2 out|released the nitrogen|bled the nitrogen|blew off the nitrogen|vented the nitrogen|dumped the nitrogen|nitrogen off|let the nitrogen out|nitrogen released|nitrogen is out|blew the nitrogen off|bled off the nitrogen|n2 out|nitrogen vented|let the nitrogen off",
  },
  {
    action: "vacuum_started",
    circuit: "vacuum",
    words:
      "on the pump|back on pump|on pump now|pumps been on|pump has been on|vacuum pump going|vac pump going|going on the pump|pulling a vacuum|pump on|pump is on|started the vacuum|vac pump on|vac pump started|vacuum pump started|started vac pump|started the vac pump|started vacuum pump|started the vacuum pump|vacuum pump running|evacuating|pump running|put it on the pump|vacuum started|started pulling a vacuum|back on the pump|its on the pump|pump back on|pulling vacuum|pump is running|vacuum pump on|hooked up the pump|on vacuum|pumping it down|triple evac|started evacuation|evac started|started vac|started a vac|vac started|vac on|vacuum on|got the vac going|got the vacuum going|vac going|vacuum going|starting evac|started evac|starting the evac|hooked up vac pump|hooked up the vac pump|vac pump hooked up|started vacuum|starting vacuum|starting vac|pulling vac|pulling a vac|on the vac pump|on vac|put it on vac|started evacuating",
  },
  {
    action: "vacuum_isolated",
    circuit: "vacuum",
    words:
      "isolated|off the pump|blank off|blanked|blanked in|isolated the pump|valved off|valving off|valving it off|valved it off|valved off the pump|blanked off|shut the valve|shut the core tool|isod|iso'd|iso d|closed off the pump|closed the core tool|isolated at|at valve off|at isolation|blanked it off|closed the valve to the pump|pump off|shut the pump off|pump valved off|closed the core tools|closed it off",
  },
  {
    action: "vacuum_broken",
    circuit: "open",
    words:
      "broke the vacuum|vacuum broken|broke vacuum|swept with nitrogen|broke it with nitrogen|broke the vacuum with nitrogen|nitrogen sweep|n2 sweep|swept it with nitrogen|sweep with nitrogen|swept with n2|sweep and pull|sweep it with nitrogen",
  },
  {
    action: "charged",
    circuit: "charged",
    words:
      "charged|weighed in|charged it|charging|topped off|topped it off|topping off|recharged|released the charge|opened the service valves|charged up|topped up|added gas|added refrigerant|adding gas|charging off the scale|opened the king valves|gassed it up",
  },
  {
    action: "replaced",
    words:
      "replaced|changed|changed out|swapped|swapped out|installed|put in a new|put in new|new one in|fitted|hung a new|hung a fresh|dropped in a new|set the new|put a new|change em|changed em|stuck a new|put on a new|put on a|put on an|replaced the|changed the|swapped the|installed new|installed a new|swaped|installed the new|hung a",
  },
  {
    action: "cleaned",
    words:
      "cleaned|washed|hosed|hosed off|hosed the|rinsed|blew out|washed the|cleaned the|vacuumed|brushed|scrubbed|flushed|coils washed|hosed down|washed down|cleaned up|wiped|degreased|cleared the drain|blew out the drain|combed|sprayed off|pressure washed|wiped the block dry|pan drained|drained the pan|drained the condensate|drain blown out|drain line blown out|line blown out|coil blown out|condenser blown out|unclogged|snaked|wet vac|shop vac|wet vacced|shop vacced|cleared the trap|cleared the drain line|cleared the condensate line",
  },
  {
    action: "other",
    words: "greased|greased it|greased the|lubed|lubed it|lubricated|oiled it",
  },
  {
    action: "tightened",
    words:
      "tightened|tightened it|tightened the|tightened up|snugged|snugged up|torqued|retorqued|re torqued|retightened|cinched",
  },
  {
    action: "adjusted",
    words:
      "adjusted|readjusted|dialed in|turned it down|turned it up|opened the txv|closed the txv|set the superheat|backed off the|turned the stem|opened the valve|closed the valve|front seated|backseated|back seated|aligned|realigned|leveled|reprogrammed|changed the setting|lowered the setpoint|raised the setpoint|bumped the setpoint|set the damper",
  },
  {
    action: "reset",
    words:
      "reset|reset it|cleared the code|cleared it|cleared the fault|cleared|power cycled|cycled power|rebooted|reset the|cleared the alarm|cycled the power|hard reset|reset the breaker|cleared n",
  },
  {
    action: "started",
    words:
      "started it|started it up|fired it up|restarted|fired it back up|started up|started the unit|brought it back up|started the compressor|fired up|unit started|kicked it on|started it back up|brought it online|restarted it|back online|put it back in service|back in service",
  },
  {
    action: "stopped",
    words:
      "stopped it|stopped the unit|shut down the compressor|stopped the compressor|took it offline|unit is off|left it off|shut it all down|left it down",
  },
  {
    action: "tested",
    words:
      "tested|checked|no fault found|no faults found|no trouble found|nothing found wrong|found nothing wrong|nothing wrong found|found no fault|found no problem|no problem found|could not find a fault|couldnt find anything wrong|cant find anything wrong|cant find a fault|ran it|ran a test|test run|megged|meggered|leak checked|leak tested|soaped|soaped it|soap tested|forced it on|ran the inverter|ohmed|ohmed out|sniffed|leak searched|nothing at the joints|pressure tested|bubble tested|ran it through|cycled it|leak check",
  },
  {
    action: "called",
    words:
      "utility called|called the utility|called the office|called tech support|called the customer|called the manager|called the power company|called support|called in|left a message|talked to the manager|talked to the customer|called the owner|called it in|spoke with the manager|told the manager|told the customer|let the customer know|notified|called dispatch",
  },
];
