-- A bar of schema 4 as barkeep wrote it before rows were mapped by field name: nineteen actions,
-- one of every kind of record, all of which undo remembers. Never to be changed.

CREATE TABLE action (
	id INTEGER NOT NULL, 
	at DATETIME NOT NULL, 
	label TEXT NOT NULL, 
	state TEXT NOT NULL, 
	PRIMARY KEY (id), 
	CHECK (state IN ('done', 'undone', 'superseded'))
);
INSERT INTO "action" VALUES(1,'2026-11-21 12:03:00.000000','Receive Hollow Lamp London dry gin','done');
INSERT INTO "action" VALUES(2,'2026-11-21 12:06:00.000000','Receive Lime juice','done');
INSERT INTO "action" VALUES(3,'2026-11-21 12:10:00.000000','Change product Hollow Lamp London dry gin','done');
INSERT INTO "action" VALUES(4,'2026-11-21 12:13:00.000000','Weigh Hollow Lamp London dry gin empty','done');
INSERT INTO "action" VALUES(5,'2026-11-21 12:17:00.000000','Set the dasher of Hollow Lamp London dry gin','done');
INSERT INTO "action" VALUES(6,'2026-11-21 12:20:00.000000','Reorder the shelf','done');
INSERT INTO "action" VALUES(7,'2026-11-21 12:24:00.000000','Add spec Snow Plough','done');
INSERT INTO "action" VALUES(8,'2026-11-21 12:27:00.000000','Change spec Snow Plough','done');
INSERT INTO "action" VALUES(9,'2026-11-21 12:32:00.000000','Add trial of Snow Plough','done');
INSERT INTO "action" VALUES(10,'2026-11-21 12:35:00.000000','Mark Snow Plough as won','done');
INSERT INTO "action" VALUES(11,'2026-11-21 12:40:00.000000','Add shoot Night train','done');
INSERT INTO "action" VALUES(12,'2026-11-21 12:44:00.000000','Change shoot Night train','done');
INSERT INTO "action" VALUES(13,'2026-11-21 12:48:00.000000','Log shoot Night train','done');
INSERT INTO "action" VALUES(14,'2026-11-21 12:53:00.000000','Change settings','done');
INSERT INTO "action" VALUES(15,'2026-11-21 12:56:00.000000','Set the par of gin','done');
INSERT INTO "action" VALUES(16,'2026-11-21 13:00:00.000000','Let Lemon juice stand in for Lime juice','done');
INSERT INTO "action" VALUES(17,'2026-11-21 13:03:00.000000','Keep a recipe for grenadine','done');
INSERT INTO "action" VALUES(18,'2026-11-21 13:07:00.000000','Add ingredient Tansy syrup','done');
INSERT INTO "action" VALUES(19,'2026-11-21 13:10:00.000000','Remove Lime juice','done');
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
 WITHOUT ROWID

;
INSERT INTO "action_image" VALUES(1,0,'product','[1]',NULL,NULL);
INSERT INTO "action_image" VALUES(1,1,'bottle','[1]',NULL,NULL);
INSERT INTO "action_image" VALUES(2,0,'product','[2]',NULL,NULL);
INSERT INTO "action_image" VALUES(2,1,'bottle','[2]',NULL,NULL);
INSERT INTO "action_image" VALUES(3,0,'product','[1]','{"id": 1, "name": "London dry gin", "maker": "Hollow Lamp", "folded_title": "hollow lamp london dry gin", "ingredient": "london-dry-gin", "size": 700.0, "unit": "ml", "abv_percent": 43.0, "sugar_g_per_l": null, "price": 24.5, "barcode": "", "house_made": false, "hidden": false, "shape": null, "density_g_per_ml": null, "acid_g_per_l": null}','{"id": 1, "name": "London dry gin", "maker": "Hollow Lamp", "folded_title": "hollow lamp london dry gin", "ingredient": "london-dry-gin", "size": 700.0, "unit": "ml", "abv_percent": 43.0, "sugar_g_per_l": 1.5, "price": 26.0, "barcode": "2140079190177", "house_made": false, "hidden": false, "shape": null, "density_g_per_ml": null, "acid_g_per_l": null}');
INSERT INTO "action_image" VALUES(4,0,'bottle','[1]','{"id": 1, "product_id": 1, "position": 0, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": null, "tare_sigma_g": null, "full_g": null, "dash_ml": null}','{"id": 1, "product_id": 1, "position": 0, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": 520.0, "tare_sigma_g": 1.0, "full_g": null, "dash_ml": null}');
INSERT INTO "action_image" VALUES(5,0,'bottle','[1]','{"id": 1, "product_id": 1, "position": 0, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": 520.0, "tare_sigma_g": 1.0, "full_g": null, "dash_ml": null}','{"id": 1, "product_id": 1, "position": 0, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": 520.0, "tare_sigma_g": 1.0, "full_g": null, "dash_ml": 0.7}');
INSERT INTO "action_image" VALUES(6,0,'bottle','[2]','{"id": 2, "product_id": 2, "position": 1, "received": "2026-11-21", "made": "2026-11-21", "use_by": "2026-11-22", "hidden": false, "tare_g": null, "tare_sigma_g": null, "full_g": null, "dash_ml": null}','{"id": 2, "product_id": 2, "position": 0, "received": "2026-11-21", "made": "2026-11-21", "use_by": "2026-11-22", "hidden": false, "tare_g": null, "tare_sigma_g": null, "full_g": null, "dash_ml": null}');
INSERT INTO "action_image" VALUES(6,1,'bottle','[1]','{"id": 1, "product_id": 1, "position": 0, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": 520.0, "tare_sigma_g": 1.0, "full_g": null, "dash_ml": 0.7}','{"id": 1, "product_id": 1, "position": 1, "received": "2026-11-21", "made": null, "use_by": null, "hidden": false, "tare_g": 520.0, "tare_sigma_g": 1.0, "full_g": null, "dash_ml": 0.7}');
INSERT INTO "action_image" VALUES(7,0,'spec','[1]',NULL,NULL);
INSERT INTO "action_image" VALUES(8,0,'spec','[1]','{"id": 1, "name": "Snow Plough", "folded_name": "snow plough", "method": "Shake.", "technique": "shaken", "glass": "coupe", "ice": "cubed", "notes": "", "riff_of": null, "added": "2026-11-21", "hidden": false, "serves": 2.0, "tags": ["house", "winter"], "credit": "Ada", "source": "", "lines": [{"text": "60 ml gin", "ingredient": "gin", "amount": 60.0, "amount_high": null, "unit": "ml", "quantity": 60.0, "optional": false, "garnish": false, "note": "", "min_abv_percent": null, "alternatives": null}, {"text": "1 dash bitters or lime", "ingredient": "bitters", "amount": 1.0, "amount_high": null, "unit": "dash", "quantity": 0.9, "optional": true, "garnish": false, "note": "on top", "min_abv_percent": null, "alternatives": ["orange-bitters"]}]}','{"id": 1, "name": "Snow Plough", "folded_name": "snow plough", "method": "Stir.", "technique": "stirred", "glass": "coupe", "ice": "cubed", "notes": "", "riff_of": null, "added": "2026-11-21", "hidden": false, "serves": 2.0, "tags": null, "credit": "Ada", "source": "", "lines": [{"text": "60 ml gin", "ingredient": "gin", "amount": 60.0, "amount_high": null, "unit": "ml", "quantity": 60.0, "optional": false, "garnish": false, "note": "", "min_abv_percent": null, "alternatives": null}]}');
INSERT INTO "action_image" VALUES(9,0,'trial','[1]',NULL,NULL);
INSERT INTO "action_image" VALUES(10,0,'trial','[1]','{"id": 1, "spec_id": 1, "on": "2026-11-21", "changed": "", "notes": "Long.", "scores": [{"taster": "Ada", "scale": "Balance", "value": 3.5}], "won": false, "hidden": false}','{"id": 1, "spec_id": 1, "on": "2026-11-21", "changed": "", "notes": "Long.", "scores": [{"taster": "Ada", "scale": "Balance", "value": 3.5}], "won": true, "hidden": false}');
INSERT INTO "action_image" VALUES(11,0,'shoot','[1]',NULL,NULL);
INSERT INTO "action_image" VALUES(12,0,'shoot','[1]','{"id": 1, "theme": "Night train", "on": "2026-11-21", "starts": "18:30", "state": "idea", "drinks": [{"spec_id": 1, "name": "Snow Plough", "serves": {"tests": 1, "camera": 1, "tasting": 2}, "chosen": [{"line": 0, "ingredient": "london-dry-gin", "ratio": 1.0, "bottle_id": 1, "wanted": "gin"}]}], "notes": "Lamps.", "ticked": [], "log": null, "hidden": false}','{"id": 1, "theme": "Night train", "on": "2026-11-21", "starts": "18:30", "state": "filmed", "drinks": [{"spec_id": 1, "name": "Snow Plough", "serves": {"tests": 1, "camera": 1, "tasting": 2}, "chosen": [{"line": 0, "ingredient": "london-dry-gin", "ratio": 1.0, "bottle_id": 1, "wanted": "gin"}]}], "notes": "Lamps.", "ticked": [], "log": null, "hidden": false}');
INSERT INTO "action_image" VALUES(13,0,'shoot','[1]','{"id": 1, "theme": "Night train", "on": "2026-11-21", "starts": "18:30", "state": "filmed", "drinks": [{"spec_id": 1, "name": "Snow Plough", "serves": {"tests": 1, "camera": 1, "tasting": 2}, "chosen": [{"line": 0, "ingredient": "london-dry-gin", "ratio": 1.0, "bottle_id": 1, "wanted": "gin"}]}], "notes": "Lamps.", "ticked": [], "log": null, "hidden": false}','{"id": 1, "theme": "Night train", "on": "2026-11-21", "starts": "18:30", "state": "logged", "drinks": [{"spec_id": 1, "name": "Snow Plough", "serves": {"tests": 1, "camera": 1, "tasting": 2}, "chosen": [{"line": 0, "ingredient": "london-dry-gin", "ratio": 1.0, "bottle_id": 1, "wanted": "gin"}]}], "notes": "Lamps.", "ticked": [], "log": {"at": "2026-11-21T12:48:00", "made": [2], "bottles": [{"bottle_id": 2, "title": "Lime juice", "unit": "ml", "poured": 0.0, "spilled": 5.0, "expected": 245.0, "counted": null, "sigma": 4.445222154178574}, {"bottle_id": 1, "title": "Hollow Lamp London dry gin", "unit": "ml", "poured": 120.0, "spilled": 0.0, "expected": 580.0, "counted": 500.0, "sigma": 36.015181983898586}]}, "hidden": false}');
INSERT INTO "action_image" VALUES(14,0,'setting','["name"]',NULL,'{"key": "name", "value": "Signal box"}');
INSERT INTO "action_image" VALUES(14,1,'setting','["not_there"]',NULL,'{"key": "not_there", "value": ["ice", "salt"]}');
INSERT INTO "action_image" VALUES(14,2,'setting','["scales"]',NULL,'{"key": "scales", "value": [{"name": "Balance", "low": 1.0, "high": 5.0}, {"name": "On theme", "low": 0.0, "high": 10.0}]}');
INSERT INTO "action_image" VALUES(15,0,'setting','["pars"]',NULL,'{"key": "pars", "value": [{"ingredient": "gin", "amount": 1400.0}]}');
INSERT INTO "action_image" VALUES(16,0,'own_stand_in','["lime-juice", "lemon-juice"]',NULL,'{"wanted": "lime-juice", "offered": "lemon-juice", "closeness": 0.7, "ratio": 1.1, "why": "Sour as well.", "scope": ["accent"]}');
INSERT INTO "action_image" VALUES(17,0,'own_recipe','["grenadine"]',NULL,'{"made": "grenadine", "inputs": [["pomegranate-juice", 500.0], ["sugar", 500.0]], "yields": 750.0, "how": "Warm and stir."}');
INSERT INTO "action_image" VALUES(18,0,'own_ingredient','["tansy-syrup"]',NULL,'{"key": "tansy-syrup", "name": "Tansy syrup", "details": {"key": "tansy-syrup", "name": "Tansy syrup", "parents": ["fruit-syrup"], "aliases": ["syrup of tansy"], "regional": {}, "printed": [], "family": false, "proper": false, "unit": "ml", "abv_percent": 0.0, "sugar_g_per_l": 629.6, "acid_g_per_l": 5.0, "shelf_life_days": 28, "allergens": ["sulphites"], "always_there": false, "typical_size": 500.0, "basis": "USDA SR26 42040; acid from memory"}}');
INSERT INTO "action_image" VALUES(19,0,'bottle','[2]','{"id": 2, "product_id": 2, "position": 0, "received": "2026-11-21", "made": "2026-11-21", "use_by": "2026-11-22", "hidden": false, "tare_g": null, "tare_sigma_g": null, "full_g": null, "dash_ml": null}','{"id": 2, "product_id": 2, "position": 0, "received": "2026-11-21", "made": "2026-11-21", "use_by": "2026-11-22", "hidden": true, "tare_g": null, "tare_sigma_g": null, "full_g": null, "dash_ml": null}');
CREATE TABLE bottle (
	id INTEGER NOT NULL, 
	product_id INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	received DATE, 
	made DATE, 
	use_by DATE, 
	hidden BOOLEAN NOT NULL, 
	tare_g FLOAT, 
	tare_sigma_g FLOAT, 
	full_g FLOAT, 
	dash_ml FLOAT, 
	PRIMARY KEY (id), 
	FOREIGN KEY(product_id) REFERENCES product (id)
);
INSERT INTO "bottle" VALUES(1,1,1,'2026-11-21',NULL,NULL,0,520.0,1.0,NULL,0.7);
INSERT INTO "bottle" VALUES(2,2,0,'2026-11-21','2026-11-21','2026-11-22',1,NULL,NULL,NULL,NULL);
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
INSERT INTO "ledger" VALUES(1,1,1,'receive','2026-11-21 12:03:00.000000',700.0,NULL,NULL,'',NULL);
INSERT INTO "ledger" VALUES(2,2,2,'receive','2026-11-21 12:06:00.000000',250.0,NULL,NULL,'',NULL);
INSERT INTO "ledger" VALUES(3,2,13,'waste','2026-11-21 12:48:00.000000',5.0,NULL,NULL,'Night train: spilled',NULL);
INSERT INTO "ledger" VALUES(4,1,13,'pour','2026-11-21 12:48:00.000000',120.0,NULL,NULL,'Night train',NULL);
INSERT INTO "ledger" VALUES(5,1,13,'count','2026-11-21 12:48:00.000000',500.0,'tenths',35.0,'',NULL);
CREATE TABLE own_ingredient (
	"key" TEXT NOT NULL, 
	name TEXT NOT NULL, 
	details JSON NOT NULL, 
	PRIMARY KEY ("key")
);
INSERT INTO "own_ingredient" VALUES('tansy-syrup','Tansy syrup','{"key": "tansy-syrup", "name": "Tansy syrup", "parents": ["fruit-syrup"], "aliases": ["syrup of tansy"], "regional": {}, "printed": [], "family": false, "proper": false, "unit": "ml", "abv_percent": 0.0, "sugar_g_per_l": 629.6, "acid_g_per_l": 5.0, "shelf_life_days": 28, "allergens": ["sulphites"], "always_there": false, "typical_size": 500.0, "basis": "USDA SR26 42040; acid from memory"}');
CREATE TABLE own_recipe (
	made TEXT NOT NULL, 
	inputs JSON NOT NULL, 
	yields FLOAT NOT NULL, 
	how TEXT NOT NULL, 
	PRIMARY KEY (made), 
	CHECK (yields > 0)
);
INSERT INTO "own_recipe" VALUES('grenadine','[["pomegranate-juice", 500.0], ["sugar", 500.0]]',750.0,'Warm and stir.');
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
INSERT INTO "own_stand_in" VALUES('lime-juice','lemon-juice',0.7,1.1,'Sour as well.','["accent"]');
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
	shape TEXT, 
	density_g_per_ml FLOAT, 
	acid_g_per_l FLOAT, 
	PRIMARY KEY (id), 
	CHECK (size > 0), 
	CHECK (abv_percent BETWEEN 0 AND 100), 
	CHECK (price >= 0), 
	CHECK (unit IN ('ml', 'g', 'each'))
);
INSERT INTO "product" VALUES(1,'London dry gin','Hollow Lamp','hollow lamp london dry gin','london-dry-gin',700.0,'ml',43.0,1.5,26.0,'2140079190177',0,0,NULL,NULL,NULL);
INSERT INTO "product" VALUES(2,'Lime juice','','lime juice','lime-juice',250.0,'ml',NULL,NULL,NULL,'',1,0,NULL,NULL,NULL);
CREATE TABLE setting (
	"key" TEXT NOT NULL, 
	value JSON NOT NULL, 
	PRIMARY KEY ("key")
);
INSERT INTO "setting" VALUES('name','"Signal box"');
INSERT INTO "setting" VALUES('not_there','["ice", "salt"]');
INSERT INTO "setting" VALUES('scales','[{"name": "Balance", "low": 1.0, "high": 5.0}, {"name": "On theme", "low": 0.0, "high": 10.0}]');
INSERT INTO "setting" VALUES('pars','[{"ingredient": "gin", "amount": 1400.0}]');
CREATE TABLE shoot (
	id INTEGER NOT NULL, 
	theme TEXT NOT NULL, 
	"on" DATE NOT NULL, 
	starts TEXT, 
	state TEXT NOT NULL, 
	drinks JSON NOT NULL, 
	notes TEXT NOT NULL, 
	ticked JSON NOT NULL, 
	log JSON, 
	hidden BOOLEAN NOT NULL, 
	PRIMARY KEY (id), 
	CHECK (state IN ('idea', 'planned', 'filmed', 'logged'))
);
INSERT INTO "shoot" VALUES(1,'Night train','2026-11-21','18:30','logged','[{"spec_id": 1, "name": "Snow Plough", "serves": {"tests": 1, "camera": 1, "tasting": 2}, "chosen": [{"line": 0, "ingredient": "london-dry-gin", "ratio": 1.0, "bottle_id": 1, "wanted": "gin"}]}]','Lamps.','[]','{"at": "2026-11-21T12:48:00", "made": [2], "bottles": [{"bottle_id": 2, "title": "Lime juice", "unit": "ml", "poured": 0.0, "spilled": 5.0, "expected": 245.0, "counted": null, "sigma": 4.445222154178574}, {"bottle_id": 1, "title": "Hollow Lamp London dry gin", "unit": "ml", "poured": 120.0, "spilled": 0.0, "expected": 580.0, "counted": 500.0, "sigma": 36.015181983898586}]}',0);
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
	serves FLOAT DEFAULT '1' NOT NULL, 
	tags JSON, 
	credit TEXT DEFAULT '' NOT NULL, 
	source TEXT DEFAULT '' NOT NULL, 
	PRIMARY KEY (id), 
	CHECK (technique IN ('shaken', 'stirred', 'built', 'blended', 'thrown', 'swizzled', 'hot', 'unknown'))
);
INSERT INTO "spec" VALUES(1,'Snow Plough','snow plough','Stir.','stirred','coupe','cubed','',NULL,'2026-11-21',0,2.0,NULL,'Ada','');
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
	alternatives JSON, 
	PRIMARY KEY (spec_id, position), 
	FOREIGN KEY(spec_id) REFERENCES spec (id)
)
 WITHOUT ROWID

;
INSERT INTO "spec_line" VALUES(1,0,'60 ml gin','gin',60.0,NULL,'ml',60.0,0,0,'',NULL,NULL);
CREATE TABLE trial (
	id INTEGER NOT NULL, 
	spec_id INTEGER NOT NULL, 
	"on" DATE NOT NULL, 
	changed TEXT NOT NULL, 
	notes TEXT NOT NULL, 
	scores JSON NOT NULL, 
	won BOOLEAN NOT NULL, 
	hidden BOOLEAN NOT NULL, 
	PRIMARY KEY (id), 
	FOREIGN KEY(spec_id) REFERENCES spec (id)
);
INSERT INTO "trial" VALUES(1,1,'2026-11-21','','Long.','[{"taster": "Ada", "scale": "Balance", "value": 3.5}]',1,0);
CREATE UNIQUE INDEX one_product_of_a_title_and_size ON product (folded_title, size, unit) WHERE hidden = 0;
CREATE INDEX action_in_state ON action (state, id);
CREATE UNIQUE INDEX one_spec_of_a_name ON spec (folded_name) WHERE hidden = 0;
CREATE INDEX shoot_on ON shoot ("on");
CREATE INDEX bottle_of_product ON bottle (product_id);
CREATE INDEX trial_of_spec ON trial (spec_id);
CREATE INDEX ledger_of_bottle ON ledger (bottle_id);
CREATE INDEX ledger_reverses ON ledger (reverses);
CREATE INDEX ledger_of_action ON ledger (action_id);
CREATE TRIGGER ledger_refuses_update BEFORE UPDATE ON ledger BEGIN SELECT RAISE(ABORT, 'ledger rows are only ever added'); END;
CREATE TRIGGER ledger_refuses_delete BEFORE DELETE ON ledger BEGIN SELECT RAISE(ABORT, 'ledger rows are only ever added'); END;
