/** Every noun of the program: readonly data, no code. Field names are those of the JSON it speaks. */
import type { QuantityName } from "./quantities/list.ts";
import type {
  ActionName,
  CheckName,
  FaultName,
  LimitName,
  ObservationName,
  Place,
  QuestionName,
  Rating,
  Status,
} from "./vocabulary.ts";

// ---------------------------------------------------------------- messages

export type UnitHabit = "us" | "si";
export type Role = "tech" | "dispatcher" | "office";

/** A file that came with a message; the bytes stand in the store under their hash. */
export interface FileNote {
  readonly name: string;
  readonly type: string;
  readonly size: number;
  readonly sha256: string;
}

/** One message as a platform delivered it. `platform` and `id` together are unique. */
export interface Message {
  readonly platform: string;
  readonly id: string;
  /** ISO 8601 with offset: the platform's time */
  readonly at: string;
  readonly channel: string;
  readonly thread?: string;
  readonly person: string;
  readonly role: Role;
  readonly text: string;
  /** the bot's own name stood before it */
  readonly to_bot?: true;
  /** id of the message that this one replies to, or of the bot's own post */
  readonly answers?: string;
  /** id of the message whose text this one replaces */
  readonly edits?: string;
  /** id of the message that this one removes */
  readonly deletes?: string;
  readonly files: readonly FileNote[];
}

// ---------------------------------------------------------------- reading

/** Half-open range of UTF-16 units of the message's text. */
export type Span = readonly [from: number, to: number];

export type Relation = "=" | "~" | "<" | "<=" | ">" | ">=" | "in";
export type Assumed = "unit" | "quantity" | "points" | "test_voltage";

/** A number and its unit in the technician's own figures, plain letters: "84", "megohm". */
export interface Figure {
  readonly number: string;
  readonly unit: string;
}

/** What a value was called: of which quantity where that was wrong, at which points or place, of which machine. */
export interface Named {
  readonly quantity?: QuantityName;
  readonly points?: readonly string[];
  readonly at?: Place;
  readonly subject?: string;
}

/** One structured reading. What was not said is absent, never 0 or a default. */
export interface Reading {
  readonly quantity: QuantityName;
  readonly relation: Relation;
  /** in `unit`; text for a fault code; null when over range */
  readonly value: number | string | null;
  readonly unit: string | null;
  readonly high?: number;
  readonly over_range?: true;
  readonly series?: readonly number[];
  readonly after_s?: number;
  readonly for_s?: number;
  readonly points?: readonly string[];
  readonly at?: Place;
  readonly state?: "start" | "running";
  readonly stat?: "peak" | "minimum" | "average";
  readonly kind?: "ac" | "dc";
  readonly reference?: "gauge" | "absolute";
  /** V */
  readonly test_voltage?: number;
  /** Cel, of winding or shell, said with an insulation or winding test */
  readonly temperature?: number;
  readonly action?: "recovered" | "charged";
  readonly rating?: Rating;
  readonly subject?: string;
  readonly earlier?: true;
  readonly corrects?: true;
  /** with `corrects`: the place of what was wrong in a row that was told without names */
  readonly nth?: number;
  /** with `corrects`: under what name the value was filed, where the name was what was wrong */
  readonly instead?: Named;
  readonly measured_at?: string;
  readonly doubtful?: true;
  readonly said: string;
  readonly spans: readonly Span[];
  readonly assumed: readonly Assumed[];
  readonly figure: Figure;
  /** name of the rule that made it */
  readonly rule: string;
}

interface StatementBase {
  readonly said: string;
  readonly spans: readonly Span[];
  readonly rule: string;
}

/** A part of the system, what it hangs on, and the rooms that hang on it directly. */
export interface TreeNode {
  readonly tag: string;
  readonly parent?: string;
  readonly kind?: string;
  readonly places?: readonly string[];
}

export type CircuitState = "charged" | "recovered" | "open" | "nitrogen" | "vacuum";
export type Decision = "approved" | "declined";
export type PartState = "needed" | "ordered" | "fitted";

/** What else a message said. */
export type Statement = StatementBase &
  (
    | {
        readonly kind: "status";
        readonly status: Status;
        /** as said, "14:05"; ISO where the message's own time is known */
        readonly time?: string;
        /** the site or unit named with it */
        readonly where?: string;
        /** gone to fetch something, and coming back */
        readonly errand?: true;
      }
    | {
        readonly kind: "complaint";
        readonly places: readonly string[];
        readonly symptom: string;
        readonly fine: readonly string[];
      }
    | {
        readonly kind: "action";
        readonly action: ActionName;
        /** what it was done to: "compressor 1", "filters", "flare" */
        readonly what?: string;
        readonly lock?: "on" | "off";
        readonly bypass?: "on" | "off";
        readonly leads?: "lifted" | "landed";
        readonly circuit?: CircuitState;
        /** announced, not done */
        readonly planned?: true;
        readonly time?: string;
      }
    | {
        readonly kind: "part";
        readonly part: string;
        readonly number?: string;
        readonly quantity?: number;
        readonly state: PartState;
        /** when it comes, as said: "thursday", "2 days" */
        readonly due?: string;
        /** the day that this means, YYYY-MM-DD, seen from the message */
        readonly due_on?: string;
        /** said to be here now */
        readonly arrived?: true;
        /** what the customer or the office made of it */
        readonly decided?: Decision;
      }
    | {
        readonly kind: "labor";
        readonly hours: number;
        readonly overtime?: true;
        /** whose they are, as said: "5.5 me 5.5 ruben"; absent, its author's */
        readonly whose?: string;
      }
    | {
        readonly kind: "observation";
        readonly observation: ObservationName;
        /** what it was seen on: "compressor 2", "outdoor fan" */
        readonly subject?: string;
        readonly denied?: true;
        readonly earlier?: true;
      }
    /** who feeds whom: parts of the system and the rooms that hang on them */
    | { readonly kind: "tree"; readonly nodes: readonly TreeNode[] }
    | { readonly kind: "undo"; readonly count?: number; readonly taken?: string }
    | { readonly kind: "question"; readonly question: QuestionName; readonly about?: string }
    | {
        readonly kind: "open_job";
        readonly site?: string;
        readonly equipment?: string;
        readonly complaint?: string;
        readonly assigned?: string;
      }
    | {
        readonly kind: "nameplate";
        readonly field: "refrigerant" | "model" | "serial" | "metering" | "drive" | "phases";
        readonly value: string;
        readonly subject?: string;
      }
    | { readonly kind: "confirm"; readonly answer: "yes" | "no" }
    /** anything understood that holds numbers but is no reading: a room, a phone, a size, a price, a joke */
    | { readonly kind: "note"; readonly about: string }
  );

/** What a question of the bot's left open, so that the answer completes the reading. */
export interface OpenQuestion {
  /** what is missing: the unit, the quantity, or which of two values */
  readonly missing: "unit" | "quantity" | "choice";
  /** the numbers asked about with what was said of them */
  readonly drafts: readonly {
    readonly number: number;
    readonly figure: string;
    readonly quantity?: QuantityName;
    readonly unit?: string;
    readonly points?: readonly string[];
    readonly at?: Place;
    readonly subject?: string;
    readonly action?: "recovered" | "charged";
  }[];
}

/** One message, understood. Spans of readings and statements, `unread` and `skipped` cover the text. */
export interface Understood {
  readonly readings: readonly Reading[];
  readonly statements: readonly Statement[];
  /** as written: numbers that got no meaning or are asked about */
  readonly unread: readonly string[];
  readonly unread_spans: readonly Span[];
  /** at most one question */
  readonly ask: readonly string[];
  readonly skipped: readonly Span[];
  /** stands where `ask` does */
  readonly open?: OpenQuestion;
}

// ---------------------------------------------------------------- what is known beforehand

/** A unit's plate and place, from the office's file or `judge`'s input. */
export interface EquipmentFacts {
  readonly tag?: string;
  readonly site?: string;
  readonly kind?: string;
  readonly parent?: string;
  readonly places?: readonly string[];
  readonly drive?: "inverter" | "line";
  readonly phases?: number;
  readonly supply_V?: number;
  readonly rla_A?: number;
  readonly lra_A?: number;
  readonly moc_A?: number;
  readonly refrigerant?: string;
  readonly metering?: "expansion_valve" | "fixed_orifice";
  readonly mode?: "cooling" | "heating";
  readonly operation?: "normal" | "test";
  readonly charge_kg?: number;
  /** circuits of their own, where the office's file tells them apart */
  readonly circuits?: readonly {
    readonly circuit: string;
    readonly refrigerant?: string;
    readonly charge_kg?: number;
  }[];
  readonly receiver?: boolean;
  readonly line_set?: readonly {
    readonly line: string;
    readonly size_in: number;
    readonly length_m: number;
    readonly covered_m?: number;
  }[];
  readonly use?: "comfort_cooling" | "commercial_refrigeration" | "industrial_process";
  readonly leak_regime?: "us_82" | "us_84" | "eu" | "ask_office";
  readonly leak_method?: "annualizing" | "rolling";
  readonly last_addition?: string;
  readonly winding_class?: string;
  readonly model?: string;
  readonly serial?: string;
  readonly installed?: string;
  readonly notes?: string;
}

export interface SiteFacts {
  readonly name?: string;
  readonly street?: string;
  readonly town?: string;
  readonly contact?: string;
  readonly phone?: string;
  readonly use?: string;
  readonly notes?: string;
  readonly altitude_m?: number;
  readonly smallest_room_m3?: number;
  readonly occupancy?: string;
  readonly rules?: "ashrae" | "iso_en";
  /** from the office's file */
  readonly tree?: readonly TreeNode[];
  /** told in chat on other jobs of the site, oldest first */
  readonly told?: readonly TreeNode[];
}

export interface FaultCode {
  readonly code: string;
  readonly shown_on?: string;
  readonly meaning: string;
  readonly first?: string;
}

// ---------------------------------------------------------------- judging

/** What one message added to a case: only what stands and is not doubtful. */
export interface CaseNote {
  /** ISO, the measurement's or the message's time */
  readonly at?: string;
  readonly who?: string;
  readonly readings: readonly Reading[];
  readonly statements: readonly Statement[];
  /** the words, where they still exist: for cautions */
  readonly text?: string;
}

/** An earlier job on the same unit, for trends and repeat failures. */
export interface PastCase {
  readonly job?: number;
  readonly closed?: string;
  readonly equipment?: string;
  readonly notes: readonly CaseNote[];
}

/** A limit that the company set itself, in the canonical unit of its figure; percent as percent. */
export interface Limit {
  readonly least?: number;
  readonly most?: number;
}

export type Limits = Readonly<Partial<Record<LimitName, Limit>>>;

/** One line of the company's list of limits. Without site and equipment it holds everywhere. */
export interface LimitFacts extends Limit {
  readonly limit: LimitName;
  readonly site?: string;
  /** a unit's tag, or a kind of equipment as the office's list names it */
  readonly equipment?: string;
  readonly notes?: string;
}

/** Everything that `judge` sees. */
export interface Case {
  readonly equipment: EquipmentFacts;
  readonly site: SiteFacts;
  readonly notes: readonly CaseNote[];
  readonly history: readonly PastCase[];
  readonly codes: readonly FaultCode[];
  /** the company's own, which stand in for the usual ones */
  readonly limits?: Limits;
  /** ISO, the moment of judging: the last message's time */
  readonly at?: string;
}

export type Level = "good" | "watch" | "bad" | "unknown";

export interface Finding {
  /** "compressor 1", "circuit 2", "supply", "system" */
  readonly about: string;
  readonly check: CheckName | string;
  readonly level: Level;
  /** a plain sentence for the technician */
  readonly says: string;
  /** the same in at most ten words, for a reply of three lines: "below most published floors" */
  readonly brief?: string;
  /** named figures in canonical units */
  readonly values: Readonly<Record<string, number>>;
  /** standard or "common practice", short enough to stand in a reply */
  readonly basis: string;
  /** full source for "why" */
  readonly source?: string;
  /** names of signs that this finding gives the diagnosis */
  readonly signs?: readonly string[];
  /** what was missing, where the level is unknown */
  readonly missing?: string;
}

export interface Suspect {
  readonly fault: FaultName;
  readonly probability: number;
  readonly for: readonly string[];
  readonly against: readonly string[];
  /** what mends it was done, and nothing read since speaks for it */
  readonly mended?: true;
}

export interface NextCheck {
  readonly check: CheckName | string;
  readonly why: string;
  readonly minutes: number;
}

export interface Caution {
  readonly id: string;
  readonly says: string;
  readonly source: string;
  readonly severity: "danger" | "warning" | "notice";
  /** the last message itself calls for it, not only what was said before */
  readonly now?: true;
}

export interface Judgement {
  readonly findings: readonly Finding[];
  readonly diagnosis: readonly Suspect[];
  readonly next: readonly NextCheck[];
  readonly cautions: readonly Caution[];
}

// ---------------------------------------------------------------- the job

/** A reading in a job's record, with what became of it. */
export interface JobReading extends Reading {
  /** stable within the store: job, entry and place in it */
  readonly id: string;
  readonly message: string;
  /** ISO: the said time, else the message's */
  readonly taken: string;
  readonly received: string;
  readonly who: string;
  /** id of the reading that replaced it */
  readonly replaced_by?: string;
  readonly undone?: true;
  readonly deleted?: true;
}

export interface JobStatement {
  readonly message: string;
  readonly at: string;
  readonly who: string;
  readonly statement: Statement;
  readonly undone?: true;
  readonly deleted?: true;
}

export interface Machine {
  readonly power: "live" | "off" | "locked" | "proven_dead" | "unknown";
  readonly locks: readonly {
    readonly who: string;
    readonly where?: string;
    readonly since: string;
    /** a tag alone was told: it warns, it holds nothing */
    readonly tag?: true;
    /** its owner said that a colleague may take it off */
    readonly free?: true;
  }[];
  readonly leads: "landed" | "lifted" | "unknown";
  readonly circuit: CircuitState | "unknown";
  readonly bypasses: readonly {
    readonly what: string;
    readonly who: string;
    readonly since: string;
  }[];
}

export interface JobPart {
  readonly part: string;
  readonly number?: string;
  readonly quantity?: number;
  readonly state: PartState;
  readonly due?: string;
  /** the day that this means, YYYY-MM-DD */
  readonly due_on?: string;
  /** said to be here now */
  readonly arrived?: true;
  /** what the customer or the office made of it */
  readonly decided?: Decision;
  readonly who: string;
  readonly at: string;
  readonly message: string;
}

/** One stretch of work of one person; `to` is absent while it is open. */
export interface Visit {
  readonly person: string;
  readonly kind: "travel" | "site";
  readonly from: string;
  readonly to?: string;
}

export type ClockKindName =
  | "insulation_1min"
  | "insulation_10min"
  | "vacuum_hold"
  | "nitrogen_hold"
  | "bus_wait"
  | "fire_watch"
  | "heater"
  /** nothing heard of who is on site */
  | "quiet_job"
  /** and nothing after he was asked: the dispatcher is told */
  | "quiet_told";

export interface Clock {
  readonly id: string;
  readonly due: string;
  readonly job: number;
  readonly channel: string;
  readonly thread?: string;
  readonly text: string;
}

/** A clock that asks for a value at `due`, unless work moves on before. */
export interface RunningClock extends Omit<Clock, "text"> {
  readonly kind: ClockKindName;
  readonly since: string;
  /** who has the job in hand and is asked */
  readonly holder: string;
}

/** A job folded from its entries. */
export interface Job {
  readonly job: number;
  readonly channel: string;
  readonly thread?: string;
  readonly opened_by: string;
  readonly opened: string;
  readonly site: string | null;
  readonly equipment: string | null;
  readonly complaint?: string;
  readonly assigned?: string;
  /** who was sent along with him */
  readonly second?: string;
  readonly status: "open" | Status;
  readonly status_at: string;
  /** who said the last status */
  readonly person: string | null;
  readonly people: readonly string[];
  readonly timeline: readonly {
    readonly at: string;
    readonly who: string;
    readonly kind: string;
    readonly says: string;
    readonly message: string;
  }[];
  readonly readings: readonly JobReading[];
  readonly statements: readonly JobStatement[];
  readonly parts: readonly JobPart[];
  readonly visits: readonly Visit[];
  readonly labor_hours: number;
  readonly refrigerant: { readonly recovered_kg: number; readonly charged_kg: number };
  readonly machine: Machine;
  readonly clocks: readonly Clock[];
  readonly file: { readonly state: "open" | "closed"; readonly gaps: readonly string[] };
  readonly files: readonly (FileNote & {
    readonly message: string;
    readonly at: string;
    readonly who: string;
  })[];
  readonly unread: readonly { readonly message: string; readonly text: string }[];
}

// ---------------------------------------------------------------- showing

export interface FileOut {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** The same component failing again and again in one building. */
export interface RepeatFailure {
  readonly component: string;
  readonly jobs: readonly number[];
  readonly months: number;
  /** the base rate that `chance` is reckoned with */
  readonly per_100_unit_years: number;
  /** of so many or more by chance; absent where there are too few for a rate */
  readonly chance?: number;
}

/** Why a message may need an answer from its author before it can be filed. */
export interface Routing {
  /** jobs or units that it could belong to; empty: none is known */
  readonly candidates: readonly Job[];
  /** its author was asked before, and has not answered */
  readonly again: boolean;
  /** the unit that the message names and nobody knows: "RTU-5" */
  readonly unit?: string;
}

/** Earlier values of a unit that a message's are seen beside. */
export interface PastValues {
  readonly baseline?:
    | {
        /** ISO, when the repair's visit ended */
        readonly when: string;
        /** values that differ, under like outdoor air */
        readonly pairs: readonly { readonly was: JobReading; readonly now: JobReading }[];
        /** outdoor air then and now, where it differs too much */
        readonly air?: readonly JobReading[];
        /** outdoor air was not read then or now */
        readonly missing?: true;
      }
    | undefined;
  /** values of one thing that fell at each visit, oldest first */
  readonly drift?: readonly JobReading[] | undefined;
  /** an insulation value of this message beside the last visit's; another test voltage is no comparison */
  readonly before?:
    | { readonly was: JobReading; readonly now: JobReading; readonly comparable: boolean }
    | undefined;
  /** a value of this message beside its sister's on this job, where they are far apart */
  readonly sister?: { readonly own: JobReading; readonly other: JobReading } | undefined;
}

/** Everything that a reply to one message is made from. */
export interface ReplyInput {
  readonly message: Message;
  readonly understood: Understood;
  /** the job that the message belongs to, folded with it; absent: it belongs to none */
  readonly job?: Job;
  /** this message's readings, as the record keeps them */
  readonly readings: readonly JobReading[];
  /** what this message replaced, deleted or undid; `by` is what stands instead */
  readonly replaced: readonly { readonly old: JobReading; readonly by?: JobReading }[];
  /** the job judged with this message, and as it was judged before it */
  readonly judgement: Judgement;
  /** next checks that can't be done as the machine stands: locked out, opened, under nitrogen */
  readonly waiting?: readonly NextCheck[];
  readonly before: Judgement;
  readonly equipment: EquipmentFacts;
  readonly site: SiteFacts;
  /** earlier jobs on the same unit, oldest first */
  readonly earlier: readonly Job[];
  /** by job: which rooms were told as out and which as fine, where the site has a tree and that is asked */
  readonly rooms_told?: Readonly<
    Record<number, { readonly out: readonly string[]; readonly fine: readonly string[] }>
  >;
  /** what the leak rules say of such a unit, where that is asked */
  readonly law?: readonly string[];
  /** every job that is open or was worked on this day, this one among them */
  readonly jobs: readonly Job[];
  /** by job: the company's own limits for its boxes */
  readonly box_limits: Readonly<Record<number, Limit | undefined>>;
  /** where one component failed repeatedly in the job's building */
  readonly repeats?: RepeatFailure;
  /** this message opened the job */
  readonly opened: boolean;
  /** it arrived after a later status: filed, but status and hours stay */
  readonly late: boolean;
  /** put to the bot by name, or in a direct message, or in a job's thread */
  readonly addressed: boolean;
  /** there is something to file and no job to file it on, or more than one */
  readonly routing?: Routing;
  /** ids of cautions that this person was already given on this job today */
  readonly cautioned: readonly string[];
  /** the recovery cylinder that this message weighed into, where the office knows it */
  readonly cylinder?:
    | { readonly number: string; readonly in_kg: number; readonly limit_kg: number }
    | undefined;
  /** what the same unit read before, beside what this message reads */
  readonly past?: PastValues;
  /** the advice that was given last on this job: the same is not said again */
  readonly advised?: string;
  /** what is not measured yet of what is looked at before the dear part it needs is ordered */
  readonly rule_outs?: readonly string[];
  /** statements that this message took back */
  readonly withdrawn: readonly JobStatement[];
  /** doubtful readings that this message's "yes" or "no" answered */
  readonly confirmed: readonly JobReading[];
  /** readings of earlier messages that waited for a job and are filed now */
  readonly released: readonly JobReading[];
  /** what else those messages said */
  readonly released_statements?: readonly Statement[];
  /** the company's fault code list for this kind of unit */
  readonly codes: readonly FaultCode[];
  readonly units: UnitHabit;
  /** IANA zone, or a fixed offset like "-05:00", that times are said in */
  readonly time_zone: string;
  /** person id -> the name to say; an unknown id is said as it is */
  readonly names: Readonly<Record<string, string>>;
}

/** Sheet cells: text stays text, a number stays a number, an instant is an ISO string. */
export type Cell = string | number | null;
export interface Sheet {
  readonly name: string;
  readonly columns: readonly {
    readonly name: string;
    readonly kind: "text" | "number" | "time";
    readonly about: string;
  }[];
  readonly rows: readonly (readonly Cell[])[];
}
