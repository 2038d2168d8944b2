-- What is sealed stays. An edition takes rows only while it is being published; a row ends once,
-- with the edition that is being published; nothing of an edition is ever changed or deleted.
-- BEFORE triggers, so that INSERT OR REPLACE is refused as well.
CREATE TRIGGER `editions_added` BEFORE INSERT ON `editions`
WHEN NEW.`number` IS NOT (SELECT coalesce(max(`number`), 0) + 1 FROM `editions`)
	OR NEW.`sealed` IS NOT 0 OR EXISTS (SELECT 1 FROM `editions` WHERE `sealed` = 0)
BEGIN
	SELECT RAISE(ABORT, 'editions are numbered one after the other');
END;
--> statement-breakpoint
CREATE TRIGGER `editions_changed` BEFORE UPDATE OF `number`, `hash`, `published_at`, `note`, `engine`, `counts` ON `editions`
BEGIN
	SELECT RAISE(ABORT, 'an edition never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `editions_sealed` BEFORE UPDATE OF `sealed` ON `editions`
WHEN OLD.`sealed` IS NOT 0 OR NEW.`sealed` IS NOT 1
BEGIN
	SELECT RAISE(ABORT, 'an edition is sealed once');
END;
--> statement-breakpoint
CREATE TRIGGER `editions_deleted` BEFORE DELETE ON `editions`
BEGIN
	SELECT RAISE(ABORT, 'an edition is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `offers_state_added` BEFORE INSERT ON `offers_state`
WHEN EXISTS (SELECT 1 FROM `offers_state`)
BEGIN
	SELECT RAISE(ABORT, 'the counter of the offers is there already');
END;
--> statement-breakpoint
CREATE TRIGGER `offers_state_changed` BEFORE UPDATE ON `offers_state`
WHEN NEW.`number` <= OLD.`number`
BEGIN
	SELECT RAISE(ABORT, 'the counter of the offers only grows');
END;
--> statement-breakpoint
CREATE TRIGGER `offers_state_deleted` BEFORE DELETE ON `offers_state`
BEGIN
	SELECT RAISE(ABORT, 'the counter of the offers is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `documents_added` BEFORE INSERT ON `documents`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `documents` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'documents: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `documents_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `lang`, `currency`, `basis`, `evidence`, `couplings` ON `documents`
BEGIN
	SELECT RAISE(ABORT, 'documents: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `documents_ended` BEFORE UPDATE OF `until_edition` ON `documents`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'documents: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `documents_deleted` BEFORE DELETE ON `documents`
BEGIN
	SELECT RAISE(ABORT, 'documents: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `fact_values_added` BEFORE INSERT ON `fact_values`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'fact_values: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `fact_values_changed` BEFORE UPDATE OF `fact`, `from_edition`, `ordinal`, `value`, `name` ON `fact_values`
BEGIN
	SELECT RAISE(ABORT, 'fact_values: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `fact_values_ended` BEFORE UPDATE OF `until_edition` ON `fact_values`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'fact_values: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `fact_values_deleted` BEFORE DELETE ON `fact_values`
BEGIN
	SELECT RAISE(ABORT, 'fact_values: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `facts_added` BEFORE INSERT ON `facts`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `facts` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'facts: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `facts_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `how` ON `facts`
BEGIN
	SELECT RAISE(ABORT, 'facts: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `facts_ended` BEFORE UPDATE OF `until_edition` ON `facts`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'facts: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `facts_deleted` BEFORE DELETE ON `facts`
BEGIN
	SELECT RAISE(ABORT, 'facts: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_adapters_added` BEFORE INSERT ON `fitted_adapters`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'fitted_adapters: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_adapters_changed` BEFORE UPDATE OF `vehicle`, `from_edition`, `mating`, `ordinal`, `part` ON `fitted_adapters`
BEGIN
	SELECT RAISE(ABORT, 'fitted_adapters: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_adapters_ended` BEFORE UPDATE OF `until_edition` ON `fitted_adapters`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'fitted_adapters: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_adapters_deleted` BEFORE DELETE ON `fitted_adapters`
BEGIN
	SELECT RAISE(ABORT, 'fitted_adapters: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_parts_added` BEFORE INSERT ON `fitted_parts`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'fitted_parts: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_parts_changed` BEFORE UPDATE OF `vehicle`, `from_edition`, `position`, `hand`, `part` ON `fitted_parts`
BEGIN
	SELECT RAISE(ABORT, 'fitted_parts: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_parts_ended` BEFORE UPDATE OF `until_edition` ON `fitted_parts`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'fitted_parts: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `fitted_parts_deleted` BEFORE DELETE ON `fitted_parts`
BEGIN
	SELECT RAISE(ABORT, 'fitted_parts: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `index_columns_added` BEFORE INSERT ON `index_columns`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `index_columns` WHERE `name` = NEW.`name` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'index_columns: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `index_columns_changed` BEFORE UPDATE OF `name`, `from_edition`, `type`, `byte_order`, `length`, `sha256`, `data` ON `index_columns`
BEGIN
	SELECT RAISE(ABORT, 'index_columns: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `index_columns_ended` BEFORE UPDATE OF `until_edition` ON `index_columns`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'index_columns: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `index_columns_deleted` BEFORE DELETE ON `index_columns`
BEGIN
	SELECT RAISE(ABORT, 'index_columns: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `interface_parameters_added` BEFORE INSERT ON `interface_parameters`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'interface_parameters: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `interface_parameters_changed` BEFORE UPDATE OF `part`, `from_edition`, `interface`, `alternative`, `parameter`, `item`, `text`, `form`, `code`, `low`, `low_open`, `high`, `high_open`, `unit`, `basis`, `tool` ON `interface_parameters`
BEGIN
	SELECT RAISE(ABORT, 'interface_parameters: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `interface_parameters_ended` BEFORE UPDATE OF `until_edition` ON `interface_parameters`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'interface_parameters: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `interface_parameters_deleted` BEFORE DELETE ON `interface_parameters`
BEGIN
	SELECT RAISE(ABORT, 'interface_parameters: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `interfaces_added` BEFORE INSERT ON `interfaces`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'interfaces: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `interfaces_changed` BEFORE UPDATE OF `part`, `from_edition`, `interface`, `alternative`, `kind`, `side`, `optional`, `absent`, `basis` ON `interfaces`
BEGIN
	SELECT RAISE(ABORT, 'interfaces: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `interfaces_ended` BEFORE UPDATE OF `until_edition` ON `interfaces`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'interfaces: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `interfaces_deleted` BEFORE DELETE ON `interfaces`
BEGIN
	SELECT RAISE(ABORT, 'interfaces: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `kind_parameters_added` BEFORE INSERT ON `kind_parameters`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'kind_parameters: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `kind_parameters_changed` BEFORE UPDATE OF `kind`, `from_edition`, `parameter`, `name`, `type`, `unit`, `tool`, `usual_low`, `usual_high`, `base_unit`, `of_side`, `optional` ON `kind_parameters`
BEGIN
	SELECT RAISE(ABORT, 'kind_parameters: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `kind_parameters_ended` BEFORE UPDATE OF `until_edition` ON `kind_parameters`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'kind_parameters: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `kind_parameters_deleted` BEFORE DELETE ON `kind_parameters`
BEGIN
	SELECT RAISE(ABORT, 'kind_parameters: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `kinds_added` BEFORE INSERT ON `kinds`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `kinds` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'kinds: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `kinds_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `standard`, `first_side`, `second_side`, `caution` ON `kinds`
BEGIN
	SELECT RAISE(ABORT, 'kinds: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `kinds_ended` BEFORE UPDATE OF `until_edition` ON `kinds`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'kinds: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `kinds_deleted` BEFORE DELETE ON `kinds`
BEGIN
	SELECT RAISE(ABORT, 'kinds: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `layout_checks_added` BEFORE INSERT ON `layout_checks`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'layout_checks: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `layout_checks_changed` BEFORE UPDATE OF `layout`, `from_edition`, `check`, `ordinal`, `spelling`, `severity`, `code`, `text`, `source` ON `layout_checks`
BEGIN
	SELECT RAISE(ABORT, 'layout_checks: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `layout_checks_ended` BEFORE UPDATE OF `until_edition` ON `layout_checks`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'layout_checks: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `layout_checks_deleted` BEFORE DELETE ON `layout_checks`
BEGIN
	SELECT RAISE(ABORT, 'layout_checks: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `layouts_added` BEFORE INSERT ON `layouts`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `layouts` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'layouts: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `layouts_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `unmated` ON `layouts`
BEGIN
	SELECT RAISE(ABORT, 'layouts: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `layouts_ended` BEFORE UPDATE OF `until_edition` ON `layouts`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'layouts: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `layouts_deleted` BEFORE DELETE ON `layouts`
BEGIN
	SELECT RAISE(ABORT, 'layouts: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `matings_added` BEFORE INSERT ON `matings`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'matings: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `matings_changed` BEFORE UPDATE OF `layout`, `from_edition`, `mating`, `ordinal`, `first_position`, `first_interface`, `second_position`, `second_interface`, `adapters`, `quantity`, `handed`, `shared` ON `matings`
BEGIN
	SELECT RAISE(ABORT, 'matings: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `matings_ended` BEFORE UPDATE OF `until_edition` ON `matings`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'matings: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `matings_deleted` BEFORE DELETE ON `matings`
BEGIN
	SELECT RAISE(ABORT, 'matings: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `part_numbers_added` BEFORE INSERT ON `part_numbers`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'part_numbers: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `part_numbers_changed` BEFORE UPDATE OF `part`, `from_edition`, `ordinal`, `number`, `number_of` ON `part_numbers`
BEGIN
	SELECT RAISE(ABORT, 'part_numbers: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `part_numbers_ended` BEFORE UPDATE OF `until_edition` ON `part_numbers`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'part_numbers: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `part_numbers_deleted` BEFORE DELETE ON `part_numbers`
BEGIN
	SELECT RAISE(ABORT, 'part_numbers: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `part_roles_added` BEFORE INSERT ON `part_roles`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'part_roles: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `part_roles_changed` BEFORE UPDATE OF `part`, `from_edition`, `ordinal`, `role` ON `part_roles`
BEGIN
	SELECT RAISE(ABORT, 'part_roles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `part_roles_ended` BEFORE UPDATE OF `until_edition` ON `part_roles`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'part_roles: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `part_roles_deleted` BEFORE DELETE ON `part_roles`
BEGIN
	SELECT RAISE(ABORT, 'part_roles: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `part_values_added` BEFORE INSERT ON `part_values`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'part_values: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `part_values_changed` BEFORE UPDATE OF `part`, `from_edition`, `value`, `item`, `text`, `form`, `code`, `low`, `low_open`, `high`, `high_open`, `unit`, `basis`, `tool` ON `part_values`
BEGIN
	SELECT RAISE(ABORT, 'part_values: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `part_values_ended` BEFORE UPDATE OF `until_edition` ON `part_values`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'part_values: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `part_values_deleted` BEFORE DELETE ON `part_values`
BEGIN
	SELECT RAISE(ABORT, 'part_values: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `parts_added` BEFORE INSERT ON `parts`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `parts` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'parts: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `parts_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `maker`, `hand`, `superseded_by`, `built_from`, `built_until`, `spans`, `basis` ON `parts`
BEGIN
	SELECT RAISE(ABORT, 'parts: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `parts_ended` BEFORE UPDATE OF `until_edition` ON `parts`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'parts: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `parts_deleted` BEFORE DELETE ON `parts`
BEGIN
	SELECT RAISE(ABORT, 'parts: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `position_roles_added` BEFORE INSERT ON `position_roles`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'position_roles: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `position_roles_changed` BEFORE UPDATE OF `layout`, `from_edition`, `position`, `ordinal`, `role` ON `position_roles`
BEGIN
	SELECT RAISE(ABORT, 'position_roles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `position_roles_ended` BEFORE UPDATE OF `until_edition` ON `position_roles`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'position_roles: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `position_roles_deleted` BEFORE DELETE ON `position_roles`
BEGIN
	SELECT RAISE(ABORT, 'position_roles: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `positions_added` BEFORE INSERT ON `positions`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'positions: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `positions_changed` BEFORE UPDATE OF `layout`, `from_edition`, `position`, `ordinal`, `name`, `count`, `handed`, `optional`, `behind` ON `positions`
BEGIN
	SELECT RAISE(ABORT, 'positions: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `positions_ended` BEFORE UPDATE OF `until_edition` ON `positions`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'positions: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `positions_deleted` BEFORE DELETE ON `positions`
BEGIN
	SELECT RAISE(ABORT, 'positions: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `role_values_added` BEFORE INSERT ON `role_values`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'role_values: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `role_values_changed` BEFORE UPDATE OF `role`, `from_edition`, `value`, `name`, `type`, `unit`, `tool`, `usual_low`, `usual_high`, `base_unit`, `list`, `rating`, `derived`, `asked_as` ON `role_values`
BEGIN
	SELECT RAISE(ABORT, 'role_values: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `role_values_ended` BEFORE UPDATE OF `until_edition` ON `role_values`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'role_values: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `role_values_deleted` BEFORE DELETE ON `role_values`
BEGIN
	SELECT RAISE(ABORT, 'role_values: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `roles_added` BEFORE INSERT ON `roles`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `roles` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'roles: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `roles_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `name`, `caution`, `faces` ON `roles`
BEGIN
	SELECT RAISE(ABORT, 'roles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `roles_ended` BEFORE UPDATE OF `until_edition` ON `roles`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'roles: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `roles_deleted` BEFORE DELETE ON `roles`
BEGIN
	SELECT RAISE(ABORT, 'roles: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `rules_added` BEFORE INSERT ON `rules`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `rules` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'rules: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `rules_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `layouts`, `condition`, `needs`, `excludes`, `note`, `caution`, `because`, `basis` ON `rules`
BEGIN
	SELECT RAISE(ABORT, 'rules: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `rules_ended` BEFORE UPDATE OF `until_edition` ON `rules`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'rules: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `rules_deleted` BEFORE DELETE ON `rules`
BEGIN
	SELECT RAISE(ABORT, 'rules: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `statement_vehicles_added` BEFORE INSERT ON `statement_vehicles`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'statement_vehicles: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `statement_vehicles_changed` BEFORE UPDATE OF `statement`, `from_edition`, `ordinal`, `vehicle` ON `statement_vehicles`
BEGIN
	SELECT RAISE(ABORT, 'statement_vehicles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `statement_vehicles_ended` BEFORE UPDATE OF `until_edition` ON `statement_vehicles`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'statement_vehicles: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `statement_vehicles_deleted` BEFORE DELETE ON `statement_vehicles`
BEGIN
	SELECT RAISE(ABORT, 'statement_vehicles: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `statements_added` BEFORE INSERT ON `statements`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `statements` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'statements: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `statements_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `part`, `position`, `beside`, `verdict`, `basis` ON `statements`
BEGIN
	SELECT RAISE(ABORT, 'statements: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `statements_ended` BEFORE UPDATE OF `until_edition` ON `statements`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'statements: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `statements_deleted` BEFORE DELETE ON `statements`
BEGIN
	SELECT RAISE(ABORT, 'statements: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_facts_added` BEFORE INSERT ON `vehicle_facts`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'vehicle_facts: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_facts_changed` BEFORE UPDATE OF `vehicle`, `from_edition`, `fact`, `value` ON `vehicle_facts`
BEGIN
	SELECT RAISE(ABORT, 'vehicle_facts: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_facts_ended` BEFORE UPDATE OF `until_edition` ON `vehicle_facts`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'vehicle_facts: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicle_facts_deleted` BEFORE DELETE ON `vehicle_facts`
BEGIN
	SELECT RAISE(ABORT, 'vehicle_facts: a row is never deleted');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicles_added` BEFORE INSERT ON `vehicles`
WHEN (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`from_edition`) IS NOT 0
	OR NEW.`until_edition` IS NOT NULL
	OR EXISTS (SELECT 1 FROM `vehicles` WHERE `id` = NEW.`id` AND `until_edition` IS NULL)
BEGIN
	SELECT RAISE(ABORT, 'vehicles: a row is added only to the edition that is being published, and only once');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicles_changed` BEFORE UPDATE OF `id`, `from_edition`, `record`, `digest`, `make`, `model`, `variant`, `built_from`, `built_until`, `layout`, `basis` ON `vehicles`
BEGIN
	SELECT RAISE(ABORT, 'vehicles: a row never changes');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicles_ended` BEFORE UPDATE OF `until_edition` ON `vehicles`
WHEN OLD.`until_edition` IS NOT NULL
	OR (SELECT `sealed` FROM `editions` WHERE `number` = NEW.`until_edition`) IS NOT 0
BEGIN
	SELECT RAISE(ABORT, 'vehicles: a row ends once, with the edition that is being published');
END;
--> statement-breakpoint
CREATE TRIGGER `vehicles_deleted` BEFORE DELETE ON `vehicles`
BEGIN
	SELECT RAISE(ABORT, 'vehicles: a row is never deleted');
END;
