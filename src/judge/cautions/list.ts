import type { CautionRule } from "../caution.ts";
import { live50v } from "./50v.ts";
import { a2l } from "./a2l.ts";
import { a2lTools } from "./a2l-tools.ts";
import { acid } from "./acid.ts";
import { arcFlash } from "./arc-flash.ts";
import { brazeOpen } from "./braze-open.ts";
import { breaker } from "./breaker.ts";
import { bypass } from "./bypass.ts";
import { capacitorCharge } from "./capacitor-charge.ts";
import { cylinder } from "./cylinder.ts";
import { dcBus } from "./dc-bus.ts";
import { dcEnergy } from "./dc-energy.ts";
import { dischargeHot } from "./discharge-hot.ts";
import { epa608 } from "./epa608.ts";
import { fall } from "./fall.ts";
import { fan } from "./fan.ts";
import { fireWatch } from "./fire-watch.ts";
import { frostbite } from "./frostbite.ts";
import { grounded } from "./grounded.ts";
import { heat } from "./heat.ts";
import { insulationDead } from "./insulation-dead.ts";
import { insulationDischarge } from "./insulation-discharge.ts";
import { insulationDrive } from "./insulation-drive.ts";
import { insulationGas } from "./insulation-gas.ts";
import { insulationVacuum } from "./insulation-vacuum.ts";
import { ladder } from "./ladder.ts";
import { lift } from "./lift.ts";
import { lockout } from "./lockout.ts";
import { lone } from "./lone.ts";
import { meterCat } from "./meter-cat.ts";
import { multiFeed } from "./multi-feed.ts";
import { nitrogen } from "./nitrogen.ts";
import { noOxygen } from "./no-oxygen.ts";
import { oxygenLow } from "./oxygen-low.ts";
import { pmMotor } from "./pm-motor.ts";
import { qualified } from "./qualified.ts";
import { recoveryTank } from "./recovery-tank.ts";
import { relief } from "./relief.ts";
import { roof } from "./roof.ts";
import { terminal } from "./terminal.ts";
import { testBeforeTouch } from "./test-before-touch.ts";
import { toxic } from "./toxic.ts";
import { trappedLiquid } from "./trapped-liquid.ts";
import { wet } from "./wet.ts";

/** Every caution; a new one is its file and a line here. */
export const cautions: readonly CautionRule[] = [
  lockout,
  testBeforeTouch,
  live50v,
  arcFlash,
  multiFeed,
  meterCat,
  capacitorCharge,
  dcBus,
  dcEnergy,
  insulationDead,
  insulationDrive,
  insulationVacuum,
  insulationDischarge,
  insulationGas,
  terminal,
  grounded,
  breaker,
  bypass,
  fan,
  pmMotor,
  wet,
  nitrogen,
  noOxygen,
  cylinder,
  recoveryTank,
  brazeOpen,
  fireWatch,
  toxic,
  a2l,
  a2lTools,
  oxygenLow,
  frostbite,
  trappedLiquid,
  relief,
  acid,
  epa608,
  qualified,
  roof,
  fall,
  ladder,
  heat,
  lone,
  lift,
  dischargeHot,
];
