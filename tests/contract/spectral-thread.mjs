/**
 * Spectral over one document, in a thread of its own: it goes as deep into the stack as schemas are
 * nested when it has put each reference in the place of what it refers to.
 */

import { parentPort, workerData } from 'node:worker_threads';
import core from '@stoplight/spectral-core';
import rulesets from '@stoplight/spectral-rulesets';

const spectral = new core.Spectral();
spectral.setRuleset({ extends: [[rulesets.oas, 'all']] });
const rules = Object.entries(spectral.ruleset?.rules ?? {});
const silent = rules.filter(([, { enabled }]) => !enabled).map(([name]) => name);
if (rules.length < 50 || silent.length > 0) {
  throw new Error(`${rules.length} rules, of which do not speak: ${silent.join(', ')}`);
}
const found = await spectral.run(workerData);
parentPort?.postMessage(
  found.map(({ code, path, message }) => `${code}: ${path.join('/')}: ${message}`),
);
