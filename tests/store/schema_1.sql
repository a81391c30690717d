-- Schema 1 as it was first released. A later barkeep must still open it: never change this file.

CREATE TABLE product (
	id INTEGER NOT NULL,
	name TEXT NOT NULL,
	maker TEXT NOT NULL,
	folded_title TEXT NOT NULL,
	ingredient TEXT NOT NULL,
	size FLOAT NOT NULL,
	unit TEXT NOT NULL,
	abv_percent FLOAT,
	sugar_g_per_l FLOAT,
	price FLOAT,
	barcode TEXT NOT NULL,
	house_made BOOLEAN NOT NULL,
	hidden BOOLEAN NOT NULL,
	PRIMARY KEY (id),
	CHECK (size > 0),
	CHECK (abv_percent BETWEEN 0 AND 100),
	CHECK (price >= 0),
	CHECK (unit IN ('ml', 'g', 'each'))
);

CREATE UNIQUE INDEX one_product_of_a_title_and_size ON product (folded_title, size, unit) WHERE hidden = 0;

CREATE TABLE action (
	id INTEGER NOT NULL,
	at DATETIME NOT NULL,
	label TEXT NOT NULL,
	state TEXT NOT NULL,
	PRIMARY KEY (id),
	CHECK (state IN ('done', 'undone', 'superseded'))
);

CREATE INDEX action_in_state ON action (state, id);

CREATE TABLE spec (
	id INTEGER NOT NULL,
	name TEXT NOT NULL,
	folded_name TEXT NOT NULL,
	method TEXT NOT NULL,
	technique TEXT NOT NULL,
	glass TEXT NOT NULL,
	ice TEXT NOT NULL,
	notes TEXT NOT NULL,
	riff_of TEXT,
	added DATE,
	hidden BOOLEAN NOT NULL,
	PRIMARY KEY (id),
	CHECK (technique IN ('shaken', 'stirred', 'built', 'blended', 'thrown', 'swizzled', 'hot', 'unknown'))
);

CREATE UNIQUE INDEX one_spec_of_a_name ON spec (folded_name) WHERE hidden = 0;

CREATE TABLE own_ingredient (
	"key" TEXT NOT NULL,
	name TEXT NOT NULL,
	details JSON NOT NULL,
	PRIMARY KEY ("key")
);

CREATE TABLE own_stand_in (
	wanted TEXT NOT NULL,
	offered TEXT NOT NULL,
	closeness FLOAT NOT NULL,
	ratio FLOAT NOT NULL,
	why TEXT NOT NULL,
	scope JSON NOT NULL,
	PRIMARY KEY (wanted, offered),
	CHECK (closeness > 0 AND closeness <= 1),
	CHECK (ratio > 0),
	CHECK (wanted <> offered)
);

CREATE TABLE setting (
	"key" TEXT NOT NULL,
	value JSON NOT NULL,
	PRIMARY KEY ("key")
);

CREATE TABLE bottle (
	id INTEGER NOT NULL,
	product_id INTEGER NOT NULL,
	position INTEGER NOT NULL,
	received DATE,
	made DATE,
	use_by DATE,
	hidden BOOLEAN NOT NULL,
	PRIMARY KEY (id),
	FOREIGN KEY(product_id) REFERENCES product (id)
);

CREATE INDEX bottle_of_product ON bottle (product_id);

CREATE TABLE action_image (
	action_id INTEGER NOT NULL,
	position INTEGER NOT NULL,
	record TEXT NOT NULL,
	"key" JSON NOT NULL,
	"before" JSON,
	"after" JSON,
	PRIMARY KEY (action_id, position),
	FOREIGN KEY(action_id) REFERENCES action (id)
)
 WITHOUT ROWID;

CREATE TABLE spec_line (
	spec_id INTEGER NOT NULL,
	position INTEGER NOT NULL,
	text TEXT NOT NULL,
	ingredient TEXT NOT NULL,
	amount FLOAT,
	amount_high FLOAT,
	unit TEXT,
	quantity FLOAT,
	optional BOOLEAN NOT NULL,
	garnish BOOLEAN NOT NULL,
	note TEXT NOT NULL,
	min_abv_percent FLOAT,
	PRIMARY KEY (spec_id, position),
	FOREIGN KEY(spec_id) REFERENCES spec (id)
)
 WITHOUT ROWID;

CREATE TABLE ledger (
	id INTEGER NOT NULL,
	bottle_id INTEGER NOT NULL,
	action_id INTEGER NOT NULL,
	kind TEXT NOT NULL,
	at DATETIME NOT NULL,
	amount FLOAT NOT NULL,
	method TEXT,
	sigma FLOAT,
	note TEXT NOT NULL,
	reverses INTEGER,
	PRIMARY KEY (id),
	CHECK (kind IN ('receive', 'open', 'count', 'pour', 'waste', 'empty', 'correct', 'reverse')),
	CHECK (method IN ('tenths', 'volume', 'weight', 'height')),
	CHECK ((kind = 'reverse') = (reverses IS NOT NULL)),
	FOREIGN KEY(bottle_id) REFERENCES bottle (id),
	FOREIGN KEY(action_id) REFERENCES action (id),
	FOREIGN KEY(reverses) REFERENCES ledger (id)
);

CREATE INDEX ledger_of_action ON ledger (action_id);

CREATE INDEX ledger_reverses ON ledger (reverses);

CREATE INDEX ledger_of_bottle ON ledger (bottle_id);

CREATE TRIGGER ledger_refuses_update BEFORE UPDATE ON ledger BEGIN SELECT RAISE(ABORT, 'ledger rows are only ever added'); END;

CREATE TRIGGER ledger_refuses_delete BEFORE DELETE ON ledger BEGIN SELECT RAISE(ABORT, 'ledger rows are only ever added'); END;
