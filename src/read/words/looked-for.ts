/** Words that rules look for by a pattern and that no other list holds: known, so that a slip in one is mended. */
export const lookedFor =
  "exchanger|exchangers|cassette|cassettes|furnace|furnaces|coupling|minisplit|multisplit|downstairs|upstairs|pumpdown|ductless|harvest|impeller|standby|boilers|ohmmeter|transcritical|filterdrier|subcooler|penthouse|bedroom|bedrooms|classroom|classrooms|basement|hallway|kitchen|warehouse|strainers|manifolds|ignition|overvoltage|undervoltage|muffler|interlock|hydronic|cartridge|generator|stepper|installing|replacing|maintenance|paperwork";
