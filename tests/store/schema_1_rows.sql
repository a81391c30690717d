-- A bar of schema 1, written by hand: two bottles with a ledger, a spec, everything of the owner's,
-- and four actions that undo remembers. Something stands in every table.

INSERT INTO product VALUES
  (1, 'London dry gin', 'Hollow Lamp', 'hollow lamp london dry gin', 'london-dry-gin', 700.0, 'ml', 43.0, NULL, 26.0, '2140079190177', 0, 0),
  (2, 'Simple syrup', '', 'simple syrup', 'simple-syrup', 500.0, 'ml', 0.0, 615.0, NULL, '', 1, 0),
  (3, 'Dark rum', 'Old Sidings', 'old sidings dark rum', 'dark-rum', 700.0, 'ml', 40.0, NULL, 22.0, '', 0, 1);

INSERT INTO bottle VALUES
  (1, 1, 0, '2026-08-01', NULL, NULL, 0),
  (2, 2, 1, '2026-11-13', '2026-11-13', '2026-12-13', 0);

INSERT INTO action VALUES
  (1, '2026-08-01 10:00:00.000000', 'Receive everything', 'superseded'),
  (2, '2026-11-18 10:00:00.000000', 'Add product rum', 'done'),
  (3, '2026-11-19 10:00:00.000000', 'Change product gin', 'done'),
  (4, '2026-11-20 10:00:00.000000', 'Remove rum', 'done'),
  (5, '2026-11-21 10:00:00.000000', 'Pour 45 ml', 'done');

INSERT INTO action_image VALUES
  (2, 0, 'product', '[3]', NULL, NULL),
  (3, 0, 'product', '[1]',
   '{"id": 1, "name": "London dry gin", "maker": "Hollow Lamp", "folded_title": "hollow lamp london dry gin", "ingredient": "london-dry-gin", "size": 700.0, "unit": "ml", "abv_percent": 43.0, "sugar_g_per_l": null, "price": 24.5, "barcode": "2140079190177", "house_made": false, "hidden": false}',
   '{"id": 1, "name": "London dry gin", "maker": "Hollow Lamp", "folded_title": "hollow lamp london dry gin", "ingredient": "london-dry-gin", "size": 700.0, "unit": "ml", "abv_percent": 43.0, "sugar_g_per_l": null, "price": 26.0, "barcode": "2140079190177", "house_made": false, "hidden": false}'),
  (3, 1, 'bottle', '[1]',
   '{"id": 1, "product_id": 1, "position": 5, "received": "2026-08-01", "made": null, "use_by": null, "hidden": false}',
   '{"id": 1, "product_id": 1, "position": 0, "received": "2026-08-01", "made": null, "use_by": null, "hidden": false}'),
  (4, 0, 'product', '[3]',
   '{"id": 3, "name": "Dark rum", "maker": "Old Sidings", "folded_title": "old sidings dark rum", "ingredient": "dark-rum", "size": 700.0, "unit": "ml", "abv_percent": 40.0, "sugar_g_per_l": null, "price": 22.0, "barcode": "", "house_made": false, "hidden": false}',
   '{"id": 3, "name": "Dark rum", "maker": "Old Sidings", "folded_title": "old sidings dark rum", "ingredient": "dark-rum", "size": 700.0, "unit": "ml", "abv_percent": 40.0, "sugar_g_per_l": null, "price": 22.0, "barcode": "", "house_made": false, "hidden": true}');

INSERT INTO ledger VALUES
  (1, 1, 1, 'receive', '2026-08-01 10:00:00.000000', 700.0, NULL, NULL, '', NULL),
  (2, 1, 1, 'count', '2026-10-01 18:00:00.000000', 400.0, 'tenths', 35.0, '', NULL),
  (3, 2, 1, 'receive', '2026-11-13 10:00:00.000000', 500.0, NULL, NULL, '', NULL),
  (4, 2, 1, 'pour', '2026-11-14 10:00:00.000000', 45.0, NULL, NULL, 'a slip', NULL),
  (5, 2, 1, 'reverse', '2026-11-14 10:01:00.000000', 0.0, NULL, NULL, '', 4),
  (6, 1, 5, 'pour', '2026-11-21 10:00:00.000000', 45.0, NULL, NULL, 'Branch Line', NULL);

INSERT INTO spec VALUES
  (1, 'Snow Plough', 'snow plough', 'Shake.', 'shaken', 'coupe', 'cubed', '', NULL, '2026-11-01', 0);

INSERT INTO spec_line VALUES
  (1, 0, '60 ml gin', 'gin', 60.0, NULL, 'ml', 60.0, 0, 0, '', NULL);

INSERT INTO own_ingredient VALUES ('moss-syrup', 'Moss syrup', '{"parents": ["syrup"]}');

INSERT INTO own_stand_in VALUES ('gin', 'bourbon', 0.4, 1.0, 'both are strong', '[]');

INSERT INTO setting VALUES ('name', '"Signal box"');
