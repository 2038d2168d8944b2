/**
 * What stands in a record, as answers show it: a value in its form, and what it rests on.
 */

import type { Evidence, Value } from '../domain/catalogue/catalogue.js';
import type { ShownPoint } from '../domain/explain/reason.js';
import type { Basis, ShownValue } from './answer.js';
import type { Speaker } from './speaker.js';
import type { ValueWriter } from './value-writer.js';

/** Who says so, as recorded; null where nobody wrote it down. */
export interface EvidenceView {
  basis: Basis;
  by: string | null;
  on: string | null;
  source: string | null;
  /** How often it has been built so. */
  times: number | null;
}

export interface RecordedValueView {
  parameter: string;
  name: string;
  /** `range` and `set`: one may set or order what is in it. */
  form: 'number' | 'code' | 'list' | 'points' | 'range' | 'set';
  value: ShownValue;
  /** What is in a list or a set. */
  items: ShownValue[];
  points: ShownPoint[];
  /** Id of the tool that it was read with, and its name; null where nobody wrote it down. */
  tool: string | null;
  toolName: string | null;
  evidence: EvidenceView;
}

export function valueView(value: Value, speaker: Speaker): RecordedValueView {
  const { form, spec, tool, evidence } = value;
  const { id: parameter, dimension } = spec;
  const { values } = speaker;
  const text = textOf(value, values);
  const items = 'items' in value ? value.items : [];
  const points = 'points' in value ? value.points : [];
  return {
    parameter,
    name: speaker.specName(spec),
    form,
    value:
      'interval' in value
        ? { ...values.interval(value.interval, dimension), text }
        : values.word(text),
    items: items.map((one) => values.recorded({ ...spec, ...one })),
    points: points.map((one) => values.point(one, dimension)),
    tool,
    toolName: tool === null ? null : speaker.toolName(tool),
    evidence: evidenceView(evidence),
  };
}

/** All that is recorded of it, as one text. */
function textOf(value: Value, values: ValueWriter): string {
  const { spec, text } = value;
  switch (value.form) {
    case 'code':
      return text;
    case 'points':
      return values.pointsText(value.points, spec.dimension);
    case 'list':
      return values.list(value.items.map((one) => values.recordedText({ ...spec, ...one })));
    case 'set':
      return values.oneOf(value.items.map((one) => values.recordedText({ ...spec, ...one })));
    case 'number':
    case 'range': {
      const isRange = value.form === 'range';
      return values.recordedText({ ...spec, text, interval: value.interval, isRange });
    }
  }
}

export function evidenceView({ basis, by, on, source, times }: Evidence): EvidenceView {
  return {
    basis,
    by: by ?? null,
    on: on ?? null,
    source: source ?? null,
    times: times ?? null,
  };
}
