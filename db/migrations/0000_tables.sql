CREATE TABLE `editions` (
	`number` integer PRIMARY KEY NOT NULL,
	`hash` text NOT NULL,
	`published_at` text NOT NULL,
	`note` text,
	`engine` text NOT NULL,
	`counts` text NOT NULL,
	`sealed` integer NOT NULL,
	CONSTRAINT "editions_number" CHECK("editions"."number" >= 1),
	CONSTRAINT "editions_hash" CHECK("editions"."hash" GLOB 'sha256-*' AND length("editions"."hash") = 71),
	CONSTRAINT "editions_counts" CHECK(json_valid("editions"."counts")),
	CONSTRAINT "editions_sealed" CHECK("editions"."sealed" IN (0, 1))
) STRICT;
--> statement-breakpoint
CREATE TABLE `index_columns` (
	`name` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`type` text NOT NULL,
	`byte_order` text NOT NULL,
	`length` integer NOT NULL,
	`sha256` text NOT NULL,
	`data` blob NOT NULL,
	PRIMARY KEY(`name`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "index_columns_span" CHECK("index_columns"."until_edition" > "index_columns"."from_edition"),
	CONSTRAINT "index_columns_type" CHECK("index_columns"."type" IN ('uint8', 'int32')),
	CONSTRAINT "index_columns_byte_order" CHECK("index_columns"."byte_order" = 'little'),
	CONSTRAINT "index_columns_length" CHECK(length("index_columns"."data") = "index_columns"."length" * iif("index_columns"."type" = 'int32', 4, 1)),
	CONSTRAINT "index_columns_sha256" CHECK(length("index_columns"."sha256") = 64)
) STRICT;
--> statement-breakpoint
CREATE TABLE `offers` (
	`id` text PRIMARY KEY NOT NULL,
	`part` text NOT NULL,
	`price` text NOT NULL,
	`condition` text,
	`stock` integer,
	`lead_days` integer,
	`supplier` text,
	`sku` text,
	`pack` text,
	`from_offers` integer NOT NULL,
	`record` text NOT NULL,
	CONSTRAINT "offers_record" CHECK("offers"."record" ->> '$.id' IS "offers"."id"),
	CONSTRAINT "offers_from" CHECK("offers"."from_offers" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `offers_state` (
	`only` integer PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`published_at` text NOT NULL,
	CONSTRAINT "offers_state_only" CHECK("offers_state"."only" = 1),
	CONSTRAINT "offers_state_number" CHECK("offers_state"."number" >= 1)
) STRICT;
--> statement-breakpoint
CREATE TABLE `layout_checks` (
	`layout` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`check` text NOT NULL,
	`ordinal` integer NOT NULL,
	`spelling` text NOT NULL,
	`severity` text NOT NULL,
	`code` text,
	`text` text,
	`source` text NOT NULL,
	PRIMARY KEY(`layout`, `from_edition`, `check`),
	FOREIGN KEY (`layout`,`from_edition`) REFERENCES `layouts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "layout_checks_span" CHECK("layout_checks"."until_edition" > "layout_checks"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `layouts` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text,
	`unmated` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "layouts_span" CHECK("layouts"."until_edition" > "layouts"."from_edition"),
	CONSTRAINT "layouts_record" CHECK("layouts"."record" ->> '$.id' IS "layouts"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `matings` (
	`layout` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`mating` text NOT NULL,
	`ordinal` integer NOT NULL,
	`first_position` text NOT NULL,
	`first_interface` text NOT NULL,
	`second_position` text NOT NULL,
	`second_interface` text NOT NULL,
	`adapters` integer NOT NULL,
	`quantity` integer NOT NULL,
	`handed` integer NOT NULL,
	`shared` integer NOT NULL,
	PRIMARY KEY(`layout`, `from_edition`, `mating`),
	FOREIGN KEY (`layout`,`from_edition`) REFERENCES `layouts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "matings_span" CHECK("matings"."until_edition" > "matings"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `position_roles` (
	`layout` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`position` text NOT NULL,
	`ordinal` integer NOT NULL,
	`role` text NOT NULL,
	PRIMARY KEY(`layout`, `from_edition`, `position`, `ordinal`),
	FOREIGN KEY (`layout`,`from_edition`,`position`) REFERENCES `positions`(`layout`,`from_edition`,`position`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "position_roles_span" CHECK("position_roles"."until_edition" > "position_roles"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `positions` (
	`layout` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`position` text NOT NULL,
	`ordinal` integer NOT NULL,
	`name` text NOT NULL,
	`count` integer NOT NULL,
	`handed` integer NOT NULL,
	`optional` integer NOT NULL,
	`behind` text NOT NULL,
	PRIMARY KEY(`layout`, `from_edition`, `position`),
	FOREIGN KEY (`layout`,`from_edition`) REFERENCES `layouts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "positions_span" CHECK("positions"."until_edition" > "positions"."from_edition"),
	CONSTRAINT "positions_count" CHECK("positions"."count" >= 1)
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `interface_parameters` (
	`part` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`interface` text NOT NULL,
	`alternative` integer NOT NULL,
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
	PRIMARY KEY(`part`, `from_edition`, `interface`, `alternative`, `parameter`, `item`),
	FOREIGN KEY (`part`,`from_edition`,`interface`,`alternative`) REFERENCES `interfaces`(`part`,`from_edition`,`interface`,`alternative`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "interface_parameters_span" CHECK("interface_parameters"."until_edition" > "interface_parameters"."from_edition"),
	CONSTRAINT "interface_parameters_form" CHECK("interface_parameters"."form" IN ('number', 'code', 'list', 'range', 'set')),
	CONSTRAINT "interface_parameters_code" CHECK(("interface_parameters"."code" IS NULL) = ("interface_parameters"."low_open" IS NOT NULL))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `interfaces` (
	`part` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`interface` text NOT NULL,
	`alternative` integer NOT NULL,
	`kind` text,
	`side` text,
	`optional` integer NOT NULL,
	`absent` integer NOT NULL,
	`basis` text NOT NULL,
	PRIMARY KEY(`part`, `from_edition`, `interface`, `alternative`),
	FOREIGN KEY (`part`,`from_edition`) REFERENCES `parts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "interfaces_span" CHECK("interfaces"."until_edition" > "interfaces"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `part_numbers` (
	`part` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`number` text NOT NULL,
	`number_of` text NOT NULL,
	PRIMARY KEY(`part`, `from_edition`, `ordinal`),
	FOREIGN KEY (`part`,`from_edition`) REFERENCES `parts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "part_numbers_span" CHECK("part_numbers"."until_edition" > "part_numbers"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `part_numbers_number` ON `part_numbers` (`number`);--> statement-breakpoint
CREATE TABLE `part_roles` (
	`part` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`role` text NOT NULL,
	PRIMARY KEY(`part`, `from_edition`, `ordinal`),
	FOREIGN KEY (`part`,`from_edition`) REFERENCES `parts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "part_roles_span" CHECK("part_roles"."until_edition" > "part_roles"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `part_values` (
	`part` text NOT NULL,
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
	PRIMARY KEY(`part`, `from_edition`, `value`, `item`),
	FOREIGN KEY (`part`,`from_edition`) REFERENCES `parts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "part_values_span" CHECK("part_values"."until_edition" > "part_values"."from_edition"),
	CONSTRAINT "part_values_form" CHECK("part_values"."form" IN ('number', 'code', 'list', 'range', 'set')),
	CONSTRAINT "part_values_code" CHECK(("part_values"."code" IS NULL) = ("part_values"."low_open" IS NOT NULL))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `parts` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text NOT NULL,
	`maker` text,
	`hand` text,
	`superseded_by` text,
	`built_from` text,
	`built_until` text,
	`spans` text,
	`basis` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "parts_span" CHECK("parts"."until_edition" > "parts"."from_edition"),
	CONSTRAINT "parts_record" CHECK("parts"."record" ->> '$.id' IS "parts"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `fitted_adapters` (
	`vehicle` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`mating` text NOT NULL,
	`ordinal` integer NOT NULL,
	`part` text NOT NULL,
	PRIMARY KEY(`vehicle`, `from_edition`, `mating`, `ordinal`),
	FOREIGN KEY (`vehicle`,`from_edition`) REFERENCES `vehicles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fitted_adapters_span" CHECK("fitted_adapters"."until_edition" > "fitted_adapters"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `fitted_parts` (
	`vehicle` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`position` text NOT NULL,
	`hand` text NOT NULL,
	`part` text,
	PRIMARY KEY(`vehicle`, `from_edition`, `position`, `hand`),
	FOREIGN KEY (`vehicle`,`from_edition`) REFERENCES `vehicles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fitted_parts_span" CHECK("fitted_parts"."until_edition" > "fitted_parts"."from_edition"),
	CONSTRAINT "fitted_parts_hand" CHECK("fitted_parts"."hand" IN ('none', 'left', 'right'))
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `fitted_parts_part` ON `fitted_parts` (`part`);--> statement-breakpoint
CREATE TABLE `rules` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`layouts` text,
	`condition` text NOT NULL,
	`needs` text,
	`excludes` text,
	`note` text,
	`caution` text,
	`because` text NOT NULL,
	`basis` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "rules_span" CHECK("rules"."until_edition" > "rules"."from_edition"),
	CONSTRAINT "rules_record" CHECK("rules"."record" ->> '$.id' IS "rules"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `statement_vehicles` (
	`statement` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`vehicle` text NOT NULL,
	PRIMARY KEY(`statement`, `from_edition`, `ordinal`),
	FOREIGN KEY (`statement`,`from_edition`) REFERENCES `statements`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "statement_vehicles_span" CHECK("statement_vehicles"."until_edition" > "statement_vehicles"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `statements` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`part` text NOT NULL,
	`position` text NOT NULL,
	`beside` text NOT NULL,
	`verdict` text NOT NULL,
	`basis` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "statements_span" CHECK("statements"."until_edition" > "statements"."from_edition"),
	CONSTRAINT "statements_record" CHECK("statements"."record" ->> '$.id' IS "statements"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `vehicle_facts` (
	`vehicle` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`fact` text NOT NULL,
	`value` text NOT NULL,
	PRIMARY KEY(`vehicle`, `from_edition`, `fact`),
	FOREIGN KEY (`vehicle`,`from_edition`) REFERENCES `vehicles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "vehicle_facts_span" CHECK("vehicle_facts"."until_edition" > "vehicle_facts"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `vehicles` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`make` text NOT NULL,
	`model` text NOT NULL,
	`variant` text,
	`built_from` text,
	`built_until` text,
	`layout` text NOT NULL,
	`basis` text NOT NULL,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "vehicles_span" CHECK("vehicles"."until_edition" > "vehicles"."from_edition"),
	CONSTRAINT "vehicles_record" CHECK("vehicles"."record" ->> '$.id' IS "vehicles"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `documents` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`lang` text NOT NULL,
	`currency` text,
	`basis` text NOT NULL,
	`evidence` text NOT NULL,
	`couplings` text,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "documents_span" CHECK("documents"."until_edition" > "documents"."from_edition"),
	CONSTRAINT "documents_id" CHECK("documents"."id" = 'document'),
	CONSTRAINT "documents_record" CHECK(json_valid("documents"."record"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `fact_values` (
	`fact` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`ordinal` integer NOT NULL,
	`value` text NOT NULL,
	`name` text NOT NULL,
	PRIMARY KEY(`fact`, `from_edition`, `ordinal`),
	FOREIGN KEY (`fact`,`from_edition`) REFERENCES `facts`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "fact_values_span" CHECK("fact_values"."until_edition" > "fact_values"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `facts` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text NOT NULL,
	`how` text,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "facts_span" CHECK("facts"."until_edition" > "facts"."from_edition"),
	CONSTRAINT "facts_record" CHECK("facts"."record" ->> '$.id' IS "facts"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `kind_parameters` (
	`kind` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`parameter` text NOT NULL,
	`name` text,
	`type` text NOT NULL,
	`unit` text NOT NULL,
	`tool` text,
	`usual_low` text,
	`usual_high` text,
	`base_unit` text NOT NULL,
	`of_side` text,
	`optional` integer NOT NULL,
	PRIMARY KEY(`kind`, `from_edition`, `parameter`),
	FOREIGN KEY (`kind`,`from_edition`) REFERENCES `kinds`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "kind_parameters_span" CHECK("kind_parameters"."until_edition" > "kind_parameters"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `kinds` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text NOT NULL,
	`standard` text,
	`first_side` text,
	`second_side` text,
	`caution` text,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "kinds_span" CHECK("kinds"."until_edition" > "kinds"."from_edition"),
	CONSTRAINT "kinds_record" CHECK("kinds"."record" ->> '$.id' IS "kinds"."id")
) STRICT;
--> statement-breakpoint
CREATE TABLE `role_values` (
	`role` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`value` text NOT NULL,
	`name` text,
	`type` text NOT NULL,
	`unit` text NOT NULL,
	`tool` text,
	`usual_low` text,
	`usual_high` text,
	`base_unit` text NOT NULL,
	`list` integer NOT NULL,
	`rating` integer NOT NULL,
	`derived` integer NOT NULL,
	`asked_as` text,
	PRIMARY KEY(`role`, `from_edition`, `value`),
	FOREIGN KEY (`role`,`from_edition`) REFERENCES `roles`(`id`,`from_edition`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "role_values_span" CHECK("role_values"."until_edition" > "role_values"."from_edition")
) STRICT, WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `roles` (
	`id` text NOT NULL,
	`from_edition` integer NOT NULL,
	`until_edition` integer,
	`record` text NOT NULL,
	`digest` text NOT NULL,
	`name` text NOT NULL,
	`caution` text,
	`faces` text,
	PRIMARY KEY(`id`, `from_edition`),
	FOREIGN KEY (`from_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`until_edition`) REFERENCES `editions`(`number`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "roles_span" CHECK("roles"."until_edition" > "roles"."from_edition"),
	CONSTRAINT "roles_record" CHECK("roles"."record" ->> '$.id' IS "roles"."id")
) STRICT;
