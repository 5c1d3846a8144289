CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
CREATE TABLE cursors (
	name TEXT NOT NULL, 
	value TEXT NOT NULL, 
	CONSTRAINT cursors_key PRIMARY KEY (name)
);
CREATE TABLE people (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	name TEXT NOT NULL, 
	chat TEXT, 
	zone TEXT DEFAULT 'UTC' NOT NULL, 
	unit TEXT DEFAULT 'kg' NOT NULL, 
	is_coach BOOLEAN DEFAULT false NOT NULL, 
	is_client BOOLEAN DEFAULT false NOT NULL, 
	coach INTEGER, 
	programme INTEGER, 
	starts DATE, 
	remind_at TIME, 
	body_mass VARCHAR, 
	equipment TEXT, 
	own_names TEXT DEFAULT '{}' NOT NULL, 
	client_memory TEXT, 
	coach_memory TEXT, 
	wake_at DATETIME, 
	lease_token TEXT, 
	lease_until DATETIME, 
	unreachable_since DATETIME, 
	created_at DATETIME NOT NULL, erased_at DATETIME, 
	CONSTRAINT people_unit_known CHECK (unit IN ('kg', 'lb')), 
	CONSTRAINT people_lease_whole CHECK ((lease_token IS NULL) = (lease_until IS NULL)), 
	CONSTRAINT people_body_mass_positive CHECK (CAST(body_mass AS NUMERIC) > 0), 
	CONSTRAINT people_client_whole CHECK (NOT is_client OR (coach IS NOT NULL AND starts IS NOT NULL AND remind_at IS NOT NULL AND equipment IS NOT NULL)), 
	CONSTRAINT people_coach_stands FOREIGN KEY(coach) REFERENCES people (number), 
	CONSTRAINT people_programme_stands FOREIGN KEY(programme) REFERENCES programmes (number), 
	CONSTRAINT people_chat_once UNIQUE (chat)
);
CREATE INDEX people_by_coach ON people (coach);
CREATE INDEX people_by_name ON people (name);
CREATE INDEX people_due ON people (wake_at, number) WHERE wake_at IS NOT NULL;
CREATE TABLE alerts (
	client INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	coach INTEGER NOT NULL, 
	reason TEXT NOT NULL, 
	exercise TEXT, 
	evidence TEXT NOT NULL, 
	opened_at DATETIME NOT NULL, 
	settled_at DATETIME, 
	settled_by INTEGER, 
	remedy TEXT, 
	CONSTRAINT alerts_key PRIMARY KEY (client, number), 
	CONSTRAINT alerts_reason_known CHECK (reason IN ('stall', 'review', 'pain', 'urgent', 'missed', 'question', 'unreachable')), 
	CONSTRAINT alerts_remedy_known CHECK (remedy IN ('lighten', 'swap', 'rest more', 'next programme', 'keep on', 'lift hold', 'keep held', 'let train', 'seen')), 
	CONSTRAINT alerts_settling_whole CHECK ((settled_at IS NULL) = (settled_by IS NULL) AND (settled_at IS NULL) = (remedy IS NULL)), 
	CONSTRAINT alerts_number_counts CHECK (number >= 1), 
	CONSTRAINT alerts_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT alerts_coach_stands FOREIGN KEY(coach) REFERENCES people (number), 
	CONSTRAINT alerts_settled_by_stands FOREIGN KEY(settled_by) REFERENCES people (number)
)
 WITHOUT ROWID

;
CREATE INDEX alerts_by_coach ON alerts (coach);
CREATE INDEX alerts_by_settled_by ON alerts (settled_by);
CREATE INDEX alerts_open ON alerts (client, number) WHERE settled_at IS NULL;
CREATE TABLE deliveries (
	person INTEGER NOT NULL, 
	platform TEXT NOT NULL, 
	first INTEGER, 
	due_at DATETIME, 
	nudges_only BOOLEAN NOT NULL, 
	lease_token TEXT, 
	lease_until DATETIME, used_to DATETIME, 
	CONSTRAINT deliveries_key PRIMARY KEY (person), 
	CONSTRAINT deliveries_lease_whole CHECK ((lease_token IS NULL) = (lease_until IS NULL)), 
	CONSTRAINT deliveries_waiting_whole CHECK ((first IS NULL) = (due_at IS NULL)), 
	CONSTRAINT deliveries_person_stands FOREIGN KEY(person) REFERENCES people (number)
);
CREATE INDEX deliveries_due ON deliveries (platform, nudges_only, due_at, first) WHERE due_at IS NOT NULL;
CREATE INDEX deliveries_next ON deliveries (due_at) WHERE due_at IS NOT NULL;
CREATE TABLE exercise_holds (
	client INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	exercise TEXT NOT NULL, 
	place TEXT NOT NULL, 
	side TEXT, 
	since DATE NOT NULL, 
	lifted_on DATE, 
	lifted_by INTEGER, 
	CONSTRAINT exercise_holds_key PRIMARY KEY (client, number), 
	CONSTRAINT exercise_holds_lifting_whole CHECK ((lifted_on IS NULL) = (lifted_by IS NULL)), 
	CONSTRAINT exercise_holds_number_counts CHECK (number >= 1), 
	CONSTRAINT exercise_holds_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT exercise_holds_lifted_by_stands FOREIGN KEY(lifted_by) REFERENCES people (number)
)
 WITHOUT ROWID

;
CREATE INDEX exercise_holds_by_lifted_by ON exercise_holds (lifted_by);
CREATE TABLE inbox (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	source TEXT NOT NULL, 
	"key" TEXT NOT NULL, 
	person INTEGER NOT NULL, 
	chat TEXT, 
	message_key TEXT, 
	incoming TEXT NOT NULL, 
	received_at DATETIME NOT NULL, 
	done_at DATETIME, 
	fault TEXT, understood TEXT, 
	CONSTRAINT inbox_chat_known CHECK ((source = 'desk') = (chat IS NULL)), 
	CONSTRAINT inbox_fault_is_done CHECK (fault IS NULL OR done_at IS NOT NULL), 
	CONSTRAINT inbox_person_stands FOREIGN KEY(person) REFERENCES people (number), 
	CONSTRAINT inbox_key_once UNIQUE (source, "key")
);
CREATE INDEX inbox_by_message ON inbox (chat, message_key) WHERE message_key IS NOT NULL;
CREATE INDEX inbox_by_person ON inbox (person);
CREATE INDEX inbox_waiting ON inbox (number) WHERE done_at IS NULL;
CREATE INDEX inbox_waiting_of_person ON inbox (person, number) WHERE done_at IS NULL;
CREATE TABLE programmes (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	coach INTEGER NOT NULL, 
	name TEXT NOT NULL, 
	version INTEGER NOT NULL, 
	sheet TEXT NOT NULL, 
	programme TEXT NOT NULL, 
	created_at DATETIME NOT NULL, 
	CONSTRAINT programmes_version_counts CHECK (version >= 1), 
	CONSTRAINT programmes_coach_stands FOREIGN KEY(coach) REFERENCES people (number), 
	CONSTRAINT programmes_version_once UNIQUE (coach, name, version)
);
CREATE TABLE invitations (
	code_hash TEXT NOT NULL, 
	name TEXT NOT NULL, 
	coach INTEGER, 
	programme INTEGER, 
	person INTEGER, 
	as_coach BOOLEAN NOT NULL, 
	created_at DATETIME NOT NULL, 
	expires DATETIME NOT NULL, 
	used_by INTEGER, 
	used_at DATETIME, 
	revoked_at DATETIME, 
	CONSTRAINT invitations_key PRIMARY KEY (code_hash), 
	CONSTRAINT invitations_use_whole CHECK ((used_by IS NULL) = (used_at IS NULL)), 
	CONSTRAINT invitations_coach_known CHECK (as_coach OR coach IS NOT NULL), 
	CONSTRAINT invitations_code_hashed CHECK (length(code_hash) = 64), 
	CONSTRAINT invitations_coach_stands FOREIGN KEY(coach) REFERENCES people (number), 
	CONSTRAINT invitations_person_stands FOREIGN KEY(person) REFERENCES people (number), 
	CONSTRAINT invitations_programme_stands FOREIGN KEY(programme) REFERENCES programmes (number), 
	CONSTRAINT invitations_used_by_stands FOREIGN KEY(used_by) REFERENCES people (number)
);
CREATE INDEX invitations_by_coach ON invitations (coach);
CREATE INDEX invitations_by_person ON invitations (person);
CREATE INDEX invitations_by_used_by ON invitations (used_by);
CREATE TABLE outbox (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	person INTEGER NOT NULL, 
	weight TEXT NOT NULL, 
	parts TEXT NOT NULL, 
	actions TEXT NOT NULL, 
	about_message INTEGER, 
	about_wake DATETIME, 
	created_at DATETIME NOT NULL, 
	state TEXT DEFAULT 'pending' NOT NULL, 
	attempts INTEGER DEFAULT 0 NOT NULL, 
	trying_since DATETIME, 
	not_before DATETIME, 
	sent_at DATETIME, 
	words TEXT, 
	labels TEXT, 
	message_keys TEXT, 
	fault TEXT, edits INTEGER, 
	CONSTRAINT outbox_fault_is_failed CHECK ((state = 'failed') = (fault IS NOT NULL)), 
	CONSTRAINT outbox_sent_whole CHECK ((state = 'sent') = (sent_at IS NOT NULL)), 
	CONSTRAINT outbox_trying_is_pending CHECK (state = 'pending' OR trying_since IS NULL), 
	CONSTRAINT outbox_state_known CHECK (state IN ('pending', 'sent', 'failed')), 
	CONSTRAINT outbox_weight_known CHECK (weight IN ('answer', 'alert', 'nudge')), 
	CONSTRAINT outbox_words_whole CHECK ((sent_at IS NULL) = (words IS NULL) AND (sent_at IS NULL) = (labels IS NULL) AND (sent_at IS NULL) = (message_keys IS NULL)), 
	CONSTRAINT outbox_about_one CHECK (about_message IS NULL OR about_wake IS NULL), 
	CONSTRAINT outbox_attempts_count CHECK (attempts >= 0), 
	CONSTRAINT outbox_about_message_stands FOREIGN KEY(about_message) REFERENCES inbox (number), 
	CONSTRAINT outbox_person_stands FOREIGN KEY(person) REFERENCES people (number)
);
CREATE INDEX outbox_by_about_message ON outbox (about_message);
CREATE INDEX outbox_by_person ON outbox (person);
CREATE INDEX outbox_waiting ON outbox (person, number) WHERE state = 'pending';
CREATE TABLE workouts (
	client INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	programme INTEGER, 
	name TEXT NOT NULL, 
	day DATE NOT NULL, 
	state TEXT NOT NULL, 
	round INTEGER NOT NULL, 
	skipped TEXT NOT NULL, 
	CONSTRAINT workouts_key PRIMARY KEY (client, number), 
	CONSTRAINT workouts_state_known CHECK (state IN ('open', 'done', 'missed', 'skipped')), 
	CONSTRAINT workouts_number_counts CHECK (number >= 1), 
	CONSTRAINT workouts_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT workouts_programme_stands FOREIGN KEY(programme) REFERENCES programmes (number)
)
 WITHOUT ROWID

;
CREATE TABLE entries (
	client INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	workout INTEGER NOT NULL, 
	message INTEGER NOT NULL, 
	exercise TEXT NOT NULL, 
	load VARCHAR NOT NULL, 
	unit TEXT NOT NULL, 
	load_kind TEXT NOT NULL, 
	reps INTEGER, 
	seconds INTEGER, 
	lowering_only BOOLEAN NOT NULL, 
	to_failure BOOLEAN, 
	rir VARCHAR, 
	day DATE, 
	at DATETIME NOT NULL, 
	place INTEGER, 
	superseded_by INTEGER, 
	taken_back_at DATETIME, 
	CONSTRAINT entries_key PRIMARY KEY (client, number), 
	CONSTRAINT entries_body_has_no_load CHECK (load_kind <> 'body' OR CAST(load AS NUMERIC) = 0), 
	CONSTRAINT entries_load_kind_known CHECK (load_kind IN ('total', 'each', 'added', 'assist', 'body')), 
	CONSTRAINT entries_unit_known CHECK (unit IN ('kg', 'lb')), 
	CONSTRAINT entries_reps_or_seconds CHECK ((reps IS NULL) <> (seconds IS NULL)), 
	CONSTRAINT entries_load_not_negative CHECK (CAST(load AS NUMERIC) >= 0), 
	CONSTRAINT entries_rir_not_negative CHECK (CAST(rir AS NUMERIC) >= 0), 
	CONSTRAINT entries_number_counts CHECK (number >= 1), 
	CONSTRAINT entries_reps_not_negative CHECK (reps >= 0), 
	CONSTRAINT entries_seconds_not_negative CHECK (seconds >= 0), 
	CONSTRAINT entries_superseded_by_later CHECK (superseded_by > number), 
	CONSTRAINT entries_place_of_an_earlier_one CHECK (place < number), 
	CONSTRAINT entries_gone_once CHECK (superseded_by IS NULL OR taken_back_at IS NULL), 
	CONSTRAINT entries_workout_stands FOREIGN KEY(client, workout) REFERENCES workouts (client, number), 
	CONSTRAINT entries_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT entries_message_stands FOREIGN KEY(message) REFERENCES inbox (number)
)
 WITHOUT ROWID

;
CREATE INDEX entries_by_message ON entries (message);
CREATE TABLE sent_keys (
	chat TEXT NOT NULL, 
	message_key TEXT NOT NULL, 
	outbox INTEGER NOT NULL, 
	CONSTRAINT sent_keys_key PRIMARY KEY (chat, message_key), 
	CONSTRAINT sent_keys_outbox_stands FOREIGN KEY(outbox) REFERENCES outbox (number)
)
 WITHOUT ROWID

;
CREATE INDEX sent_keys_by_outbox ON sent_keys (outbox);
CREATE TABLE erasures (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	coach INTEGER, 
	at DATETIME NOT NULL, 
	workouts INTEGER NOT NULL, 
	sets INTEGER NOT NULL, 
	messages INTEGER NOT NULL, 
	CONSTRAINT erasures_coach_stands FOREIGN KEY(coach) REFERENCES people (number)
);
CREATE INDEX erasures_by_coach ON erasures (coach);
CREATE TABLE readers (
	name TEXT NOT NULL, 
	fence INTEGER NOT NULL, 
	lease_until DATETIME, 
	CONSTRAINT readers_key PRIMARY KEY (name), 
	CONSTRAINT readers_fence_counts CHECK (fence >= 0)
);
CREATE TABLE budgets (
	name TEXT NOT NULL, 
	used_to DATETIME NOT NULL, 
	CONSTRAINT budgets_key PRIMARY KEY (name)
);
CREATE TABLE words (
	client INTEGER NOT NULL, 
	number INTEGER NOT NULL, 
	writer TEXT NOT NULL, 
	name TEXT NOT NULL, 
	text TEXT NOT NULL, 
	at DATETIME NOT NULL, 
	alert INTEGER, 
	CONSTRAINT words_key PRIMARY KEY (client, number), 
	CONSTRAINT words_number_counts CHECK (number >= 1), 
	CONSTRAINT words_writer_known CHECK (writer IN ('client', 'coach')), 
	CONSTRAINT words_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT words_alert_stands FOREIGN KEY(client, alert) REFERENCES alerts (client, number)
)
 WITHOUT ROWID

;
CREATE INDEX people_coaches ON people (number) WHERE is_coach = 1;
CREATE TABLE notes (
	number INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT, 
	coach INTEGER NOT NULL, 
	client INTEGER NOT NULL, 
	message INTEGER NOT NULL, 
	text TEXT NOT NULL, 
	at DATETIME NOT NULL, 
	CONSTRAINT notes_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT notes_coach_stands FOREIGN KEY(coach) REFERENCES people (number), 
	CONSTRAINT notes_message_stands FOREIGN KEY(message) REFERENCES inbox (number)
);
CREATE INDEX notes_by_client ON notes (client);
CREATE INDEX notes_by_coach ON notes (coach);
CREATE INDEX notes_by_message ON notes (message);
CREATE TABLE offers (
	client INTEGER NOT NULL, 
	"to" INTEGER NOT NULL, 
	at DATETIME NOT NULL, 
	with_notes BOOLEAN NOT NULL, 
	CONSTRAINT offers_key PRIMARY KEY (client), 
	CONSTRAINT offers_client_stands FOREIGN KEY(client) REFERENCES people (number), 
	CONSTRAINT offers_to_stands FOREIGN KEY("to") REFERENCES people (number)
);
CREATE INDEX offers_by_to ON offers ("to");
CREATE INDEX outbox_edits ON outbox (edits) WHERE edits IS NOT NULL;
CREATE INDEX workouts_by_day ON workouts (client, day, number);
CREATE INDEX entries_by_day ON entries (client, day, number) WHERE superseded_by IS NULL AND taken_back_at IS NULL;
INSERT INTO alembic_version (version_num) VALUES ('0011');
