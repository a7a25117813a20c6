import type { EquipmentFacts, Role, SiteFacts } from "../../src/model.ts";

/** One message of the invented day. */
export interface Line {
  readonly id: string;
  /** "07:05" on the day, or a whole ISO time for what came before it */
  readonly at: string;
  readonly person: string;
  readonly thread?: string;
  readonly text: string;
  readonly edits?: string;
  readonly deletes?: string;
  /** the board is shown after it */
  readonly board?: true;
}

export const day = "2026-07-14";
export const zone = "-04:00";
export const channel = "harbor";

export const roles: Readonly<Record<string, Role>> = {
  isla: "dispatcher",
  wren: "tech",
  tobin: "tech",
};

export const sites: readonly SiteFacts[] = [
  {
    name: "Lantern Street Bakery",
    contact: "the baker",
    phone: "555-0111",
    notes: "ladder at the back door, ovens off after 13",
  },
  {
    name: "Pinecone Hostel",
    contact: "front desk",
    phone: "555-0112",
    notes: "roof key at the desk",
  },
  { name: "Ferry House Museum", contact: "keeper", phone: "555-0113", notes: "closed on Tuesdays" },
];

export const equipment: readonly EquipmentFacts[] = [
  {
    tag: "RTU-4",
    site: "Lantern Street Bakery",
    kind: "rooftop unit, two compressors",
    phases: 3,
    supply_V: 208,
    rla_A: 18.2,
    lra_A: 121,
    refrigerant: "R-410A",
    charge_kg: 4.08,
    metering: "expansion_valve",
    drive: "line",
    model: "RT-14-2C",
    serial: "L14-0226",
    places: ["shop", "bakehouse"],
  },
  {
    tag: "OU-2",
    site: "Pinecone Hostel",
    kind: "heat recovery outdoor unit",
    phases: 3,
    supply_V: 460,
    rla_A: 16.4,
    moc_A: 19,
    refrigerant: "R-410A",
    charge_kg: 9.1,
    metering: "expansion_valve",
    drive: "inverter",
    model: "HR-96",
    serial: "007",
  },
  {
    tag: "WIC-1",
    site: "Ferry House Museum",
    kind: "walk-in cooler",
    phases: 1,
    supply_V: 230,
    rla_A: 9.3,
    lra_A: 54,
    refrigerant: "R-134a",
    charge_kg: 2.9,
    metering: "expansion_valve",
    drive: "line",
    places: ["archive store"],
  },
];

/** An earlier visit, so that there is something to compare with. */
export const before: readonly Line[] = [
  {
    id: "p1",
    at: "2026-05-28T08:00:00-04:00",
    person: "isla",
    text: "New job: Pinecone Hostel OU-2, spring check. Wren",
  },
  { id: "p2", at: "2026-05-28T09:10:00-04:00", person: "wren", text: "on site pinecone" },
  {
    id: "p3",
    at: "2026-05-28T09:40:00-04:00",
    person: "wren",
    text: "comp 1 all three leads 640 meg at 500 V, shell 72 F",
  },
  { id: "p4", at: "2026-05-28T10:20:00-04:00", person: "wren", text: "done at pinecone, leaving" },
];

export const lines: readonly Line[] = [
  {
    id: "d1",
    at: "07:02",
    person: "isla",
    thread: "bakery",
    text: "New job: Lantern Street Bakery RTU-4, shop is warm since Sunday. Wren",
  },
  {
    id: "d2",
    at: "07:04",
    person: "isla",
    thread: "hostel",
    text: "New job: Pinecone Hostel OU-2, trips its breaker, second floor has nothing. Tobin",
  },
  {
    id: "d3",
    at: "07:06",
    person: "isla",
    text: "New job: Ferry House Museum WIC-1, archive store at 49 F. Wren after the bakery",
  },
  { id: "d4", at: "07:15", person: "wren", thread: "bakery", text: "on my way" },
  { id: "d5", at: "07:18", person: "tobin", thread: "hostel", text: "rolling to pinecone" },
  {
    id: "d6",
    at: "07:25",
    person: "tobin",
    text: "traffic is 40 minutes of nothing, send 2 coffees",
  },
  { id: "d7", at: "07:41", person: "wren", thread: "bakery", text: "here" },
  {
    id: "d8",
    at: "07:55",
    person: "wren",
    thread: "bakery",
    text: "suction 96 psig, suction line 71 F, head 286 psig, liquid line 88 F, outdoor air 76",
  },
  { id: "d9", at: "07:57", person: "wren", thread: "bakery", text: "no, head was 268" },
  { id: "d10", at: "07:58", person: "wren", thread: "bakery", text: "why?", board: true },
  {
    id: "d11",
    at: "08:03",
    person: "tobin",
    thread: "hostel",
    text: "on site, locked out at the roof disconnect, proved dead",
  },
  {
    id: "d12",
    at: "08:12",
    person: "tobin",
    thread: "hostel",
    text: "comp 1 lead 1 to ground 520 megohm at 500",
  },
  { id: "d13", at: "08:15", person: "tobin", thread: "hostel", text: "lead 2 515, lead 3 53" },
  { id: "d14", at: "08:17", person: "tobin", thread: "hostel", text: "no, lead 3 was 530" },
  { id: "d15", at: "08:20", person: "tobin", thread: "hostel", text: "history?" },
  { id: "d16", at: "08:24", person: "tobin", thread: "hostel", text: "what next?" },
  {
    id: "d17",
    at: "08:31",
    person: "tobin",
    thread: "hostel",
    text: "U-V 0.61, V-W 0.62, U-W 0.61 ohm",
  },
  {
    id: "d18",
    at: "08:36",
    person: "wren",
    thread: "bakery",
    text: "oil on the suction service valve, bubbles there",
  },
  { id: "d19", at: "08:40", person: "wren", thread: "bakery", text: "recovered 5 lb 9 oz" },
  {
    id: "d20",
    at: "09:02",
    person: "wren",
    thread: "bakery",
    text: "valve core replaced, nitrogen 300 psig, pipe 78 F",
  },
  {
    id: "d21",
    at: "09:34",
    person: "wren",
    thread: "bakery",
    text: "nitrogen 300 psig, pipe 78 F, no drop",
  },
  {
    id: "d22",
    at: "09:40",
    person: "wren",
    thread: "bakery",
    text: "nitrogen out, vacuum started",
  },
  {
    id: "d23",
    at: "10:05",
    person: "tobin",
    thread: "hostel",
    text: "bus 2 V, diodes L1 to plus 0.38, L2 to plus 0.38, L3 to plus OL",
  },
  {
    id: "d23b",
    at: "10:07",
    person: "tobin",
    thread: "hostel",
    text: "turned the leads over, L3 OL both ways",
  },
  {
    id: "d24",
    at: "10:09",
    person: "tobin",
    thread: "hostel",
    text: "need a drive board for OU-2, part 60-12E4",
  },
  {
    id: "d25",
    at: "10:14",
    person: "isla",
    thread: "hostel",
    text: "60-12E4 ordered, here thursday",
  },
  {
    id: "d26",
    at: "10:16",
    person: "tobin",
    thread: "hostel",
    text: "leads taped, still locked out, leaving, waiting for parts",
    board: true,
  },
  { id: "d27", at: "10:20", person: "wren", thread: "bakery", text: "isolated at 340 microns" },
  {
    id: "d28",
    at: "10:31",
    person: "wren",
    thread: "bakery",
    text: "370 microns after ten minutes",
  },
  { id: "d29", at: "10:50", person: "wren", thread: "bakery", text: "charged 9 lb" },
  { id: "d30", at: "11:10", person: "wren", thread: "bakery", text: "suction 1280 psig" },
  { id: "d31", at: "11:11", person: "wren", thread: "bakery", text: "no, 128" },
  {
    id: "d32",
    at: "11:13",
    person: "wren",
    thread: "bakery",
    text: "suction line 55 F, head 331 psig, liquid line 93 F, 15.1 15.3 14.9 amps",
  },
  { id: "d33", at: "11:20", person: "wren", thread: "bakery", text: "done, leaving" },
  { id: "d34", at: "11:24", person: "tobin", text: "heading to the museum" },
  {
    id: "d35",
    at: "11:48",
    person: "tobin",
    text: "nobody at the museum, closed tuesdays, no access",
  },
  { id: "d36", at: "11:52", person: "isla", text: "status?" },
  { id: "d37", at: "11:54", person: "isla", text: "summary of the bakery", board: true },
];
