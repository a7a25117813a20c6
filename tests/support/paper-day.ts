import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { run } from "./run.ts";

/** Invented, and as long as names get, with letters of several alphabets. */
export const longSite =
  "Młyn Zbożowy i Chłodnia Południowo-Wschodnia Świętej Genowefy, Budynek Żółty, skrzydło północne";
export const longUnit = "OU-3";
export const technician = "Þórunn Ångström-Őrsi-Łukasiewicz";

const sites = `site,street,town,contact\n"${longSite}","ul. Źródlana 14b/2","Łódź","pani Wójcik"\n`;
const equipment = `tag,site,kind,model,serial,refrigerant,charge lb,phases,volts,RLA,LRA,drive,metering\n${longUnit},"${longSite}","heat recovery outdoor unit, two compressors",HR-96/Ω-ČŠ,0071-E4,R-410A,20,3,460,16.4,88,line,expansion valve\n`;
const people = `name,handle,role,certificate\n"${technician}",thora,tech,C-00417\nMaren,maren,dispatcher,\n`;

/** Forty readings and six parts, with corrections, a hold of each kind, gas out and in. */
const said: readonly string[] = [
  "here",
  "hums and trips, coil matted",
  "locked out at the roof disconnect, proved dead, leads lifted",
  "comp 1 lead 1 to ground 0.4 megohm at 500 V",
  "comp 1 lead 2 to ground 0.5 megohm at 500 V, lead 3 0.4",
  "no, lead 2 was 0.45",
  "comp 1 T1-T2 0.74 T2-T3 0.73 T1-T3 0.74 ohm",
  "L1-L2 471 V L2-L3 459 V L1-L3 468 V",
  "recovered 17 lb 6 oz into cylinder 22",
  "need a compressor, part 60-12E4",
  "need 2 contactors, part 007-1",
  "new compressor 60-12E4 in, new serial 88-2260",
  "new drier in, brazed with nitrogen flowing",
  "new contactor 007-1 in",
  "new valve core in",
  "new fan motor in, part 1-2",
  "nitrogen 500 psi at 81 F pipe",
  "nitrogen 498 psi at 80 F pipe",
  "isolated at 340 microns",
  "5 minutes later 365",
  "10 minutes later 380",
  "15 minutes later 388",
  "charged 20 lb from cylinder 31",
  "comp 1 start peak 84 A, then 40 A, then 14.1 A",
  "comp 1 running amps L1 13.8 L2 14.0 L3 13.7",
  "suction 124 psi 54 F, liquid 338 psi 93 F, outdoor air 88 F, discharge 171 F",
  "return air 76 F supply air 57 F",
  "superheat 11.6, subcooling 11.2",
  "need a crankcase heater",
  "done, leaving",
];

/** A log is sent in pieces. */
const perMessage = 40;

/** Plays the job, with so many more readings of a log before he leaves; tells the store's path. */
export async function playPaperDay(folder: string, more: number): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const db = join(folder, "paper.db");
  for (const [name, text] of Object.entries({ sites, equipment, people })) {
    writeFileSync(join(folder, `${name}.csv`), text);
    const ran = await run(["import", join(folder, `${name}.csv`), "--db", db]);
    if (ran.exit !== 0) throw new Error(`${ran.out.join("\n")}\n${ran.complaints}`);
  }
  const logged = Array.from({ length: Math.ceil(more / perMessage) }, (_, row) =>
    Array.from({ length: Math.min(perMessage, more - row * perMessage) }, (_, n) => {
      const nth = row * perMessage + n;
      return `box ${36 + (nth % 7)}.${nth % 10} F`;
    }).join("\n"),
  );
  const texts = [...said.slice(0, -1), ...logged, ...said.slice(-1)];
  const start = Date.parse("2026-05-12T12:00:00Z");
  const line = (n: number, text: string, who: readonly [person: string, role: string]): string => {
    const [person, role] = who;
    const wall = new Date(start - 5 * 3_600_000 + n * 60_000).toISOString().slice(0, 19);
    const thread = n === 0 ? {} : { thread: "m0" };
    const at = `${wall}-05:00`;
    return JSON.stringify({ id: `m${n}`, at, channel: "south", ...thread, person, role, text });
  };
  const opening = `New job: ${longSite} ${longUnit}, piętro drugie nie chłodzi, trips its breaker`;
  const lines = [
    line(0, opening, ["maren", "dispatcher"]),
    ...texts.map((text, n) => line(n + 1, text, ["thora", "tech"])),
  ];
  writeFileSync(join(folder, "day.jsonl"), `${lines.join("\n")}\n`);
  const ran = await run(["replay", join(folder, "day.jsonl"), "--db", db]);
  if (ran.exit !== 0) throw new Error(ran.complaints);
  return db;
}
