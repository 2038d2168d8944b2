CREATE TABLE `keys` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`scopes` text NOT NULL,
	`origins` text NOT NULL,
	`made_at` text NOT NULL,
	`ended_at` text,
	`sha256` blob NOT NULL,
	CONSTRAINT "keys_id" CHECK(length("keys"."id") = 8),
	CONSTRAINT "keys_scopes" CHECK(json_array_length("keys"."scopes") >= 1),
	CONSTRAINT "keys_origins" CHECK(json_array_length("keys"."origins") >= 0),
	CONSTRAINT "keys_sha256" CHECK(length("keys"."sha256") = 32)
) STRICT;
--> statement-breakpoint
-- A key ends once, and stays to be read.
CREATE TRIGGER `keys_changed` BEFORE UPDATE OF `id`, `name`, `scopes`, `origins`, `made_at`, `sha256` ON `keys`
BEGIN
	SELECT RAISE(ABORT, 'a key never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `keys_ended` BEFORE UPDATE OF `ended_at` ON `keys`
WHEN OLD.`ended_at` IS NOT NULL OR NEW.`ended_at` IS NULL
BEGIN
	SELECT RAISE(ABORT, 'a key ends once');
END;
--> statement-breakpoint
CREATE TRIGGER `keys_deleted` BEFORE DELETE ON `keys`
BEGIN
	SELECT RAISE(ABORT, 'a key is never deleted');
END;
