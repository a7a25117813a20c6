/** One step of the store's schema. Steps are only ever added; an opened store takes the missing ones. */
export interface SchemaStep {
  readonly name: string;
  readonly sql: string;
}

/** The store's version is the number of steps it has taken (`user_version`). */
export const schemaSteps: readonly SchemaStep[] = [
  {
    name: "messages, words, entries, answers",
    sql: `
CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;

-- what a person wrote or sent, with its salt: the only table whose content may be erased
CREATE TABLE words (
  key TEXT PRIMARY KEY,
  salt TEXT NOT NULL,
  content ANY,
  erased TEXT
) STRICT;

CREATE TABLE person (
  id INTEGER PRIMARY KEY,
  platform TEXT NOT NULL,
  handle TEXT NOT NULL,
  UNIQUE (platform, handle)
) STRICT;

CREATE TABLE inbox (
  seq INTEGER PRIMARY KEY,
  platform TEXT NOT NULL,
  id TEXT NOT NULL,
  at TEXT NOT NULL,
  instant INTEGER NOT NULL,
  channel TEXT NOT NULL,
  thread TEXT,
  person INTEGER NOT NULL REFERENCES person (id),
  role TEXT NOT NULL,
  edits TEXT,
  deletes TEXT,
  files TEXT NOT NULL,
  state TEXT NOT NULL DEFAULT 'new',
  job INTEGER,
  error TEXT,
  UNIQUE (platform, id)
) STRICT;
CREATE INDEX inbox_by_state ON inbox (state, instant, seq) WHERE state <> 'done';
CREATE INDEX inbox_by_channel ON inbox (platform, channel, instant);
CREATE INDEX inbox_edits ON inbox (platform, edits) WHERE edits IS NOT NULL;
CREATE INDEX inbox_deletes ON inbox (platform, deletes) WHERE deletes IS NOT NULL;

CREATE TABLE entry (
  seq INTEGER PRIMARY KEY,
  job INTEGER NOT NULL,
  place INTEGER NOT NULL,
  version INTEGER NOT NULL,
  at TEXT NOT NULL,
  person INTEGER NOT NULL,
  platform TEXT NOT NULL,
  message TEXT NOT NULL,
  facts TEXT NOT NULL,
  words TEXT NOT NULL,
  hash TEXT NOT NULL,
  UNIQUE (job, place)
) STRICT;
CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are only ever added'); END;
CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'entries are only ever added'); END;

CREATE TABLE outbox (
  id TEXT PRIMARY KEY,
  seq INTEGER NOT NULL,
  platform TEXT NOT NULL,
  channel TEXT NOT NULL,
  thread TEXT,
  kind TEXT NOT NULL,
  answers TEXT,
  text TEXT NOT NULL,
  files TEXT NOT NULL DEFAULT '[]',
  edits TEXT,
  detail TEXT,
  state TEXT NOT NULL DEFAULT 'pending',
  wire TEXT,
  attempt_at TEXT,
  not_before TEXT,
  remote_id TEXT
) STRICT;
CREATE INDEX outbox_waiting ON outbox (platform, channel, seq) WHERE state <> 'sent';
CREATE INDEX outbox_seq ON outbox (seq);
CREATE INDEX outbox_kinds ON outbox (kind, platform, channel, seq);
CREATE INDEX outbox_answers ON outbox (platform, answers);

CREATE TABLE cursor (
  platform TEXT NOT NULL,
  conversation TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (platform, conversation)
) STRICT;

-- the office's files: sites, equipment, fault codes, people, cylinders
CREATE TABLE registry (
  kind TEXT NOT NULL,
  key TEXT NOT NULL,
  facts TEXT NOT NULL,
  PRIMARY KEY (kind, key)
) STRICT;
`,
  },
  {
    name: "exports that were made, so that the next one can say what changed since",
    sql: `
CREATE TABLE export (
  scope TEXT NOT NULL,
  revision INTEGER NOT NULL,
  -- of the whole store when it was made
  entries INTEGER NOT NULL,
  digest TEXT NOT NULL,
  -- fingerprint of what was exported
  content TEXT NOT NULL,
  PRIMARY KEY (scope, revision)
) STRICT;
`,
  },
  {
    name: "jobs at hand and jobs at rest, so that opening a store and a message cost the same after years",
    sql: `
-- jobs that are read when the store is opened: all but those at rest
CREATE TABLE at_hand (job INTEGER PRIMARY KEY) STRICT;
INSERT INTO at_hand SELECT DISTINCT job FROM entry;

-- derived, and made anew from the entries whenever a row is taken out: done jobs of which nothing was heard for days
CREATE TABLE at_rest (
  job INTEGER PRIMARY KEY,
  site TEXT,
  equipment TEXT,
  -- the tag as it is compared
  unit TEXT,
  opened INTEGER NOT NULL,
  -- instants of the first and the last entry
  first INTEGER NOT NULL,
  last INTEGER NOT NULL,
  -- a compressor was fitted
  compressor INTEGER NOT NULL,
  facts TEXT NOT NULL
) STRICT;
CREATE INDEX at_rest_by_site ON at_rest (site, unit, opened);
CREATE INDEX at_rest_by_unit ON at_rest (unit, opened);
CREATE INDEX at_rest_by_last ON at_rest (last);
CREATE TABLE gas_at_rest (
  number TEXT NOT NULL,
  job INTEGER NOT NULL,
  kg REAL NOT NULL,
  PRIMARY KEY (number, job)
) STRICT;

CREATE INDEX entry_by_message ON entry (message);
CREATE INDEX inbox_by_job ON inbox (job) WHERE job IS NOT NULL;
CREATE INDEX inbox_by_person ON inbox (person, instant);
CREATE INDEX inbox_by_thread ON inbox (channel, thread) WHERE thread IS NOT NULL;
CREATE INDEX outbox_by_job ON outbox (json_extract(detail, '$.job'), seq) WHERE kind = 'reply';
`,
  },
];
