ALTER TABLE `offers` RENAME COLUMN `part` TO `for`;
--> statement-breakpoint
CREATE TABLE `lot_items` (
	`lot` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`part` text,
	`quantity` text,
	`unit` text,
	`vehicle` text,
	`position` text,
	PRIMARY KEY(`lot`, `from_edition`, `ordinal`),
	FOREIGN KEY (`lot`,`from_edition`) REFERENCES `lots`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lot_items_span" CHECK("lot_items"."until_edition" > "lot_items"."from_edition"),
	CONSTRAINT "lot_items_either" CHECK(("lot_items"."part" IS NULL) = ("lot_items"."vehicle" IS NOT NULL))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `lot_items_part` ON `lot_items` (`part`);
--> statement-breakpoint
CREATE TABLE `lots` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "lots_span" CHECK("lots"."until_edition" > "lots"."from_edition"),
	CONSTRAINT "lots_record" CHECK("lots"."record" ->> '$.id' IS "lots"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `ruleset_checks` (
	`ruleset` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`source` text NOT NULL,
	PRIMARY KEY(`ruleset`, `from_edition`, `ordinal`),
	FOREIGN KEY (`ruleset`,`from_edition`) REFERENCES `rulesets`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "ruleset_checks_span" CHECK("ruleset_checks"."until_edition" > "ruleset_checks"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `rulesets` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text,
	`valid_from` text,
	`valid_until` text,
	`cite` text NOT NULL,
	`keep` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "rulesets_span" CHECK("rulesets"."until_edition" > "rulesets"."from_edition"),
	CONSTRAINT "rulesets_record" CHECK("rulesets"."record" ->> '$.id' IS "rulesets"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `work_parameters` (
	`work` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`interface` text NOT NULL,
	`parameter` text NOT NULL,
	`item` integer NOT NULL,
	`text` text NOT NULL,
	`form` text NOT NULL,
	`code` text,
	`low` text,
	`low_open` integer,
	`high` text,
	`high_open` integer,
	`unit` text NOT NULL,
	`basis` text NOT NULL,
	`tool` text,
	`low_about` real GENERATED ALWAYS AS (iif(instr("low", '/') > 0, CAST(substr("low", 1, instr("low", '/') - 1) AS REAL) / CAST(substr("low", instr("low", '/') + 1) AS REAL), CAST("low" AS REAL))) VIRTUAL,
	`high_about` real GENERATED ALWAYS AS (iif(instr("high", '/') > 0, CAST(substr("high", 1, instr("high", '/') - 1) AS REAL) / CAST(substr("high", instr("high", '/') + 1) AS REAL), CAST("high" AS REAL))) VIRTUAL,
	PRIMARY KEY(`work`, `from_edition`, `interface`, `parameter`, `item`),
	FOREIGN KEY (`work`,`from_edition`) REFERENCES `works`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "work_parameters_span" CHECK("work_parameters"."until_edition" > "work_parameters"."from_edition"),
	CONSTRAINT "work_parameters_form" CHECK("work_parameters"."form" IN ('number', 'code', 'list', 'range', 'set')),
	CONSTRAINT "work_parameters_code" CHECK(("work_parameters"."code" IS NULL) = ("work_parameters"."low_open" IS NOT NULL))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `work_values` (
	`work` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`value` text NOT NULL,
	`item` integer NOT NULL,
	`text` text NOT NULL,
	`form` text NOT NULL,
	`code` text,
	`low` text,
	`low_open` integer,
	`high` text,
	`high_open` integer,
	`unit` text NOT NULL,
	`basis` text NOT NULL,
	`tool` text,
	`low_about` real GENERATED ALWAYS AS (iif(instr("low", '/') > 0, CAST(substr("low", 1, instr("low", '/') - 1) AS REAL) / CAST(substr("low", instr("low", '/') + 1) AS REAL), CAST("low" AS REAL))) VIRTUAL,
	`high_about` real GENERATED ALWAYS AS (iif(instr("high", '/') > 0, CAST(substr("high", 1, instr("high", '/') - 1) AS REAL) / CAST(substr("high", instr("high", '/') + 1) AS REAL), CAST("high" AS REAL))) VIRTUAL,
	PRIMARY KEY(`work`, `from_edition`, `value`, `item`),
	FOREIGN KEY (`work`,`from_edition`) REFERENCES `works`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "work_values_span" CHECK("work_values"."until_edition" > "work_values"."from_edition"),
	CONSTRAINT "work_values_form" CHECK("work_values"."form" IN ('number', 'code', 'list', 'range', 'set')),
	CONSTRAINT "work_values_code" CHECK(("work_values"."code" IS NULL) = ("work_values"."low_open" IS NOT NULL))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `works` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text NOT NULL,
	`condition` text NOT NULL,
	`voids` text NOT NULL,
	`labour_hours` text,
	`sign_off` text,
	`reversible` integer NOT NULL,
	`basis` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "works_span" CHECK("works"."until_edition" > "works"."from_edition"),
	CONSTRAINT "works_record" CHECK("works"."record" ->> '$.id' IS "works"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `fitted_options` (
	`vehicle` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`position` text NOT NULL,
	`hand` text NOT NULL,
	`fact` text NOT NULL,
	`value` text NOT NULL,
	`part` text,
	PRIMARY KEY(`vehicle`, `from_edition`, `position`, `hand`, `value`),
	FOREIGN KEY (`vehicle`,`from_edition`) REFERENCES `vehicles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fitted_options_span" CHECK("fitted_options"."until_edition" > "fitted_options"."from_edition"),
	CONSTRAINT "fitted_options_hand" CHECK("fitted_options"."hand" IN ('none', 'left', 'right'))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `fitted_options_part` ON `fitted_options` (`part`);
--> statement-breakpoint
CREATE TABLE `vehicle_vins` (
	`vehicle` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`pattern` text NOT NULL,
	`serial_from` text,
	`serial_to` text,
	PRIMARY KEY(`vehicle`, `from_edition`, `ordinal`),
	FOREIGN KEY (`vehicle`,`from_edition`) REFERENCES `vehicles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "vehicle_vins_span" CHECK("vehicle_vins"."until_edition" > "vehicle_vins"."from_edition"),
	CONSTRAINT "vehicle_vins_pattern" CHECK(length("vehicle_vins"."pattern") = 17)
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
ALTER TABLE `positions` ADD `labour_hours` text;
--> statement-breakpoint
ALTER TABLE `positions` ADD `access_hours` text;
--> statement-breakpoint
ALTER TABLE `rules` ADD `recommends` text;
--> statement-breakpoint
ALTER TABLE `rules` ADD `consumes` text;
--> statement-breakpoint
ALTER TABLE `vehicles` ADD `like` text;
--> statement-breakpoint
ALTER TABLE `vehicles` ADD `replaced_by` text;
--> statement-breakpoint
-- Seals, column by column: the tables that have grown, then those that are new.
DROP TRIGGER `positions_changed`;
--> statement-breakpoint
CREATE TRIGGER `positions_changed` BEFORE UPDATE OF `layout`, `from_edition`, `position`, `ordinal`, `name`, `count`, `handed`, `optional`, `behind`, `labour_hours`, `access_hours` ON `positions`
BEGIN
	SELECT RAISE(ABORT, 'positions: a row never changes');
END;
--> statement-breakpoint
DROP TRIGGER `rules_changed`;
--> statement-breakpoint
CREATE TRIGGER `rules_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `layouts`, `condition`, `needs`, `excludes`, `note`, `caution`, `because`, `basis`, `recommends`, `consumes` ON `rules`
BEGIN
	SELECT RAISE(ABORT, 'rules: a row never changes');
END;
--> statement-breakpoint
DROP TRIGGER `vehicles_changed`;
--> statement-breakpoint
CREATE TRIGGER `vehicles_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `make`, `model`, `variant`, `built_from`, `built_until`, `layout`, `basis`, `like`, `replaced_by` ON `vehicles`
BEGIN
	SELECT RAISE(ABORT, 'vehicles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_options_added` BEFORE INSERT ON `fitted_options`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'fitted_options: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_options_changed` BEFORE UPDATE OF `vehicle`, `from_edition`, `position`, `hand`, `fact`, `value`, `part` ON `fitted_options`
BEGIN
	SELECT RAISE(ABORT, 'fitted_options: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_options_ended` BEFORE UPDATE OF `until_edition` ON `fitted_options`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'fitted_options: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_options_deleted` BEFORE DELETE ON `fitted_options`
BEGIN
	SELECT RAISE(ABORT, 'fitted_options: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `lot_items_added` BEFORE INSERT ON `lot_items`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'lot_items: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `lot_items_changed` BEFORE UPDATE OF `lot`, `from_edition`, `ordinal`, `part`, `quantity`, `unit`, `vehicle`, `position` ON `lot_items`
BEGIN
	SELECT RAISE(ABORT, 'lot_items: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `lot_items_ended` BEFORE UPDATE OF `until_edition` ON `lot_items`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'lot_items: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `lot_items_deleted` BEFORE DELETE ON `lot_items`
BEGIN
	SELECT RAISE(ABORT, 'lot_items: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `lots_added` BEFORE INSERT ON `lots`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `lots` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'lots: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `lots_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name` ON `lots`
BEGIN
	SELECT RAISE(ABORT, 'lots: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `lots_ended` BEFORE UPDATE OF `until_edition` ON `lots`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'lots: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `lots_deleted` BEFORE DELETE ON `lots`
BEGIN
	SELECT RAISE(ABORT, 'lots: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `ruleset_checks_added` BEFORE INSERT ON `ruleset_checks`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'ruleset_checks: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `ruleset_checks_changed` BEFORE UPDATE OF `ruleset`, `from_edition`, `ordinal`, `source` ON `ruleset_checks`
BEGIN
	SELECT RAISE(ABORT, 'ruleset_checks: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `ruleset_checks_ended` BEFORE UPDATE OF `until_edition` ON `ruleset_checks`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'ruleset_checks: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `ruleset_checks_deleted` BEFORE DELETE ON `ruleset_checks`
BEGIN
	SELECT RAISE(ABORT, 'ruleset_checks: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `rulesets_added` BEFORE INSERT ON `rulesets`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `rulesets` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'rulesets: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `rulesets_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `valid_from`, `valid_until`, `cite`, `keep` ON `rulesets`
BEGIN
	SELECT RAISE(ABORT, 'rulesets: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `rulesets_ended` BEFORE UPDATE OF `until_edition` ON `rulesets`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'rulesets: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `rulesets_deleted` BEFORE DELETE ON `rulesets`
BEGIN
	SELECT RAISE(ABORT, 'rulesets: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_vins_added` BEFORE INSERT ON `vehicle_vins`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'vehicle_vins: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_vins_changed` BEFORE UPDATE OF `vehicle`, `from_edition`, `ordinal`, `pattern`, `serial_from`, `serial_to` ON `vehicle_vins`
BEGIN
	SELECT RAISE(ABORT, 'vehicle_vins: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_vins_ended` BEFORE UPDATE OF `until_edition` ON `vehicle_vins`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'vehicle_vins: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_vins_deleted` BEFORE DELETE ON `vehicle_vins`
BEGIN
	SELECT RAISE(ABORT, 'vehicle_vins: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `work_parameters_added` BEFORE INSERT ON `work_parameters`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'work_parameters: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `work_parameters_changed` BEFORE UPDATE OF `work`, `from_edition`, `interface`, `parameter`, `item`, `text`, `form`, `code`, `low`, `low_open`, `high`, `high_open`, `unit`, `basis`, `tool` ON `work_parameters`
BEGIN
	SELECT RAISE(ABORT, 'work_parameters: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `work_parameters_ended` BEFORE UPDATE OF `until_edition` ON `work_parameters`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'work_parameters: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `work_parameters_deleted` BEFORE DELETE ON `work_parameters`
BEGIN
	SELECT RAISE(ABORT, 'work_parameters: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `work_values_added` BEFORE INSERT ON `work_values`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'work_values: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `work_values_changed` BEFORE UPDATE OF `work`, `from_edition`, `value`, `item`, `text`, `form`, `code`, `low`, `low_open`, `high`, `high_open`, `unit`, `basis`, `tool` ON `work_values`
BEGIN
	SELECT RAISE(ABORT, 'work_values: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `work_values_ended` BEFORE UPDATE OF `until_edition` ON `work_values`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'work_values: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `work_values_deleted` BEFORE DELETE ON `work_values`
BEGIN
	SELECT RAISE(ABORT, 'work_values: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `works_added` BEFORE INSERT ON `works`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `works` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'works: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `works_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `condition`, `voids`, `labour_hours`, `sign_off`, `reversible`, `basis` ON `works`
BEGIN
	SELECT RAISE(ABORT, 'works: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `works_ended` BEFORE UPDATE OF `until_edition` ON `works`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'works: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `works_deleted` BEFORE DELETE ON `works`
BEGIN
	SELECT RAISE(ABORT, 'works: a row is never deleted');
END;
