import type { Fault } from "../fault.ts";
import { compressorInsulationDegraded } from "./compressor-insulation-degraded.ts";
import { compressorWindingGrounded } from "./compressor-winding-grounded.ts";
import { noFault } from "./no-fault.ts";
import { other } from "./other.ts";

/** Every fault; a new one is its file and a line here. */
export const faults: readonly Fault[] = [
  // electrical side
  compressorInsulationDegraded,
  compressorWindingGrounded,
  // refrigerant and air side
  // always
  other,
  noFault,
];
