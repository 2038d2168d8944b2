/**
 * `faying lint FILE`: every fault and every doubt of a document, without storing anything.
 */

import type { Command } from 'commander';
import { type LintReport, lintDocument } from '../usecases/publish-edition.js';
import { countsText } from './counts.js';
import { type ReadDocument, readDocument } from './document.js';
import { EXIT } from './fault.js';
import { sayPlaces, tallyText } from './fault-text.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';

const EXAMPLES = `
The report goes to the standard output. The exit code is 0 where there is no fault, and 2 where
there is one; warnings do not count. A document is one JSON value, or one entity a line (NDJSON)
with the head on the first; then each fault names its line.

Examples:
  $ faying lint catalogue.ndjson
  $ jq '.parts += []' catalogue.json | faying lint - --json
`;

export function addLint(program: Command, session: Session): void {
  const command = program
    .command('lint')
    .summary('is this catalogue document in order?')
    .description('Lists every fault and every doubt of a catalogue document.')
    .argument('<file>', 'the document, or - for the standard input');
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action(async (file: string, options: StoreOptions) => {
      const document = await readDocument(file, session.world);
      const report = lintRead(document);
      const { faults, warnings, counts } = report;
      if (faults.length > 0) session.exitCode = EXIT.fault;
      session.tell(report, options, (_, page) => {
        const tone = faults.length > 0 ? 'bad' : warnings.length > 0 ? 'doubtful' : 'good';
        page.verbatim(tallyText(document.name, faults, warnings), tone);
        sayPlaces(faults, warnings, page);
        if (counts !== null) page.say(countsText(counts));
      });
    });
}

/** What is wrong with the text alone, such as a name that stands twice, comes first. */
export function lintRead({ value, faults, unread, placed }: ReadDocument): LintReport {
  const report = lintDocument(value, unread);
  const said = placed([...faults, ...report.faults]);
  const warnings = placed(report.warnings);
  return { faults: said, warnings, counts: faults.length === 0 ? report.counts : null };
}
