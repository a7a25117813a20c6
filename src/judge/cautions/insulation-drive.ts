import type { CautionRule } from "../caution.ts";
import { insulationTested, nearest, said } from "./fits.ts";

export const insulationDrive: CautionRule = {
  id: "insulation_drive",
  severity: "warning",
  says: "Take the compressor off the drive before the insulation tester goes on: its volts can kill the drive and it spoils the reading.",
  source: "instrument and solid-state starter guides",
  fits: (scene) =>
    nearest(
      [
        3,
        insulationTested(scene) &&
          said(
            scene,
            /(?:still )?(?:plugged in(?:to)?|hooked (?:up )?to|connected to|landed on|wired to|(?:meg|megger|megged|test)[^.]{0,24} (?:from|at|through))(?: to)? (?:the )?(?:inverter|drive|module|board)/,
          ),
      ],
      [
        1,
        insulationTested(scene) &&
          scene.facts.drive === "inverter" &&
          !said(scene, /unplug|leads? off|leads? lifted|lifted|plug (?:is )?off|disconnected/),
      ],
    ),
};
