import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import type { ScrewThread } from './screw-thread.ts';
import { threadNamed } from './thread-tables.ts';

/** What the problem names: one of each way of writing. */
const examples = ['M5', 'M8x0.75', '#10 UNF', '1/4 BSF', '2BA'] as const;

const metric = /^M ?(\d+(?:\.\d+)?)(?: ?x ?(\d+(?:\.\d+)?)(?: mm)?)?(?: coarse)?$/iu;
const inch = /^(?:# ?(\d+)|(\d+\/\d+|\d)) ?(?:in|"|″)? ?(?:- ?(\d+) )?(UNC|UNF|BSF|BSW)$/iu;
const britishAssociation = /^(?:(\d+) ?BA|BA ?(\d+))$/iu;

/**
 * Reads the name of a thread as people write it: `M5`, `M5 coarse`, `M10 x 1.25`, `m4,5×0,75`, `#10 UNF`, `#10-32 UNF`,
 * `1/4 BSF`, `1 in UNC`, `2 BA`. A metric thread with its pitch is taken as it is written, also where the tables have no
 * such pair; everything else must stand in a table.
 *
 * Problem: unknown-thread, also for a number of threads per inch that does not belong to the size.
 */
export function parseThread(typed: string, field?: string): Result<ScrewThread> {
  const place = field === undefined ? {} : { field };
  const text = typed.trim().replace(/\s+/gu, ' ').replaceAll('×', 'x').replaceAll(',', '.');
  const thread = metricThread(text) ?? inchThread(text) ?? baThread(text);
  return thread === undefined
    ? fail({ kind: 'unknown-thread', ...place, typed, known: examples })
    : succeed(thread);
}

function metricThread(text: string): ScrewThread | undefined {
  const parts = metric.exec(text);
  if (parts === null) return undefined;
  const [, diameter, pitch] = parts;
  const [diameterMm, pitchMm] = [Number(diameter), Number(pitch)];
  const coarse = threadNamed(`M${diameterMm}`);
  if (pitch === undefined || pitchMm === coarse?.pitchMm) return coarse;
  const name = `M${diameterMm}x${pitchMm}`;
  if (!(pitchMm > 0 && pitchMm < diameterMm)) return undefined;
  return threadNamed(name) ?? { system: 'iso-fine', name, diameterMm, pitchMm };
}

function inchThread(text: string): ScrewThread | undefined {
  const parts = inch.exec(text);
  if (parts === null) return undefined;
  const [, number, inches, perInch, system] = parts;
  const thread = threadNamed(`${inches ?? `#${number}`} ${system!.toUpperCase()}`);
  return perInch === undefined || thread?.threadsPerInch === Number(perInch) ? thread : undefined;
}

function baThread(text: string): ScrewThread | undefined {
  const parts = britishAssociation.exec(text);
  return parts === null ? undefined : threadNamed(`${Number(parts[1] ?? parts[2])}BA`);
}
