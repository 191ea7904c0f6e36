import { formReader } from './calculator-form.ts';
import type { Form, FormResult } from './calculator-form.ts';
import { hexagonNut } from './hexagon-nuts.ts';
import type { NutHeight } from './hexagon-nuts.ts';
import type { Generation } from './linkage.ts';
import { parseTurnAmount } from './parse-turn-amount.ts';
import type { Limit } from './problem.ts';
import { fail, succeed } from './result.ts';
import type { Result } from './result.ts';
import { parseLengthMm, parseWithin, readToldThread } from './thread-question.ts';
import type { ToldThread } from './thread-question.ts';
import { adjusterNumbers } from './thread-travel-budget-fields.ts';
import type { ThreadTravelBudgetField } from './thread-travel-budget-fields.ts';
import type { AdjusterThread, IdleScrew, LockNut, ThreadTravel } from './thread-travel.ts';

type Field = ThreadTravelBudgetField;

/** A budget as it was asked for. */
export type ThreadTravelQuestion = {
  readonly travel: ThreadTravel;
  readonly thread: ToldThread;
  readonly idleThread: ToldThread | null;
  /** Where the minimum engagement comes from; null where none was told or the turns were counted. */
  readonly minimumFrom: 'typed' | 'one-diameter' | null;
  readonly nut: NutHeight | 'measured' | null;
};

/** Wider than any adjuster (from memory); a slip of the pen lies beyond. */
const lengthLimitMm: Limit = { min: 0, max: 200 };
const countedLimit: Limit = { min: 0, max: 100 };
const plannedLimit: Limit = { min: -50, max: 50 };
const ratioLimit: Limit = { above: 0, max: 20 };

/** Common practice, no source: a screw in light alloy keeps at least its own diameter of engagement. */
export const minimumEngagementDiameters = 1;

/**
 * Reads the form. Lengths without a unit are millimetres, amounts without one are turns. An empty plan is no turn; an
 * empty minimum is one diameter, where the diameter is known.
 * Problems, each with its field: those of the parsers; out-of-range; nut-unknown.
 */
export function parseThreadTravelBudget(form: Form<Field>): FormResult<ThreadTravelQuestion, Field> {
  const { problems, take, blame } = formReader<Field>();
  const thread = readToldThread(
    form,
    { from: 'threadFrom', thread: 'thread', turns: 'pitchTurns', travel: 'pitchTravel' },
    take,
  );
  const measured = form.showing === 'lengths';
  const starts = form.threadFrom === 'table' ? Number(form.starts) : 1;
  const optionalMm = (field: Field): number | undefined =>
    form[field].trim() === '' ? undefined : take(field, parseLengthMm(form[field], field, lengthLimitMm));

  const engagementMm = measured ? optionalMm('engagement') : undefined;
  const typedMinimumMm = measured ? optionalMm('minimum') : undefined;
  if (typedMinimumMm !== undefined && form.engagement.trim() === '')
    blame('engagement', { kind: 'empty', field: 'engagement' });
  const nutHeightMm = measured && form.nut !== 'none' ? readNut(form, thread, take) : undefined;

  const leadMm = (thread?.pitchMm ?? NaN) * starts;
  /** Thread on one side of a screw, in millimetres. */
  const side = (field: Field, oneTurnMm: number): number | undefined => {
    if (measured) return take(field, parseLengthMm(form[field], field, lengthLimitMm));
    const turns = take(field, parseTurnAmount(form[field], field, countedLimit));
    return turns === undefined ? undefined : turns * oneTurnMm;
  };
  const adjusters = adjusterNumbers.slice(0, Number(form.adjusters)).map((number): AdjusterThread => {
    const [closing, opening, planned] = [`closing${number}`, `opening${number}`, `planned${number}`] as const;
    return {
      showing: { closingMm: side(closing, leadMm) ?? NaN, openingMm: side(opening, leadMm) ?? NaN },
      plannedTurns:
        form[planned].trim() === ''
          ? 0
          : (take(planned, parseTurnAmount(form[planned], planned, plannedLimit)) ?? NaN),
    };
  });
  const idle = form.idle === 'known' ? readIdleScrew(form, take, side) : null;

  if (thread === undefined || idle === undefined || problems.length > 0) return { ok: false, problems };
  const oneDiameterMm =
    measured && thread.thread !== null && engagementMm !== undefined
      ? thread.thread.diameterMm * minimumEngagementDiameters
      : undefined;
  const minimumEngagementMm = typedMinimumMm ?? oneDiameterMm;
  const lockNut: LockNut | undefined =
    nutHeightMm === undefined
      ? undefined
      : {
          heightMm: nutHeightMm,
          side: (form.nutAt === 'tip') === (form.comesOut === 'opening') ? 'opening' : 'closing',
        };
  return {
    ok: true,
    value: {
      travel: {
        generation: form.generation as Generation,
        pitchMm: thread.pitchMm,
        starts,
        unscrewsWhen: form.comesOut as ThreadTravel['unscrewsWhen'],
        adjusters,
        ...(engagementMm !== undefined && { engagementMm }),
        ...(minimumEngagementMm !== undefined && { minimumEngagementMm }),
        ...(lockNut !== undefined && { lockNut }),
        ...(idle !== null && { idleScrew: idle.screw }),
      },
      thread,
      idleThread: idle?.thread ?? null,
      minimumFrom:
        typedMinimumMm !== undefined ? 'typed' : oneDiameterMm !== undefined ? 'one-diameter' : null,
      nut: lockNut === undefined ? null : (form.nut as NutHeight | 'measured'),
    },
  };
}

type Take = <Value>(field: Field, result: Result<Value>) => Value | undefined;

/** Height of the lock nut: the tallest that the standard allows, or as measured. */
function readNut(form: Form<Field>, thread: ToldThread | undefined, take: Take): number | undefined {
  if (form.nut === 'measured')
    return take('nutHeight', parseLengthMm(form.nutHeight, 'nutHeight', lengthLimitMm));
  if (thread === undefined) return undefined;
  const name = thread.thread?.name ?? 'a measured pitch';
  const nut = hexagonNut(form.nut as NutHeight, name);
  return take(
    'nut',
    nut === undefined ? fail({ kind: 'nut-unknown', field: 'nut', typed: name }) : succeed(nut.heightMaxMm),
  );
}

/** The idle-speed screw with its own thread; undefined where something is wrong with it. */
function readIdleScrew(
  form: Form<Field>,
  take: Take,
  side: (field: Field, oneTurnMm: number) => number | undefined,
): { readonly screw: IdleScrew; readonly thread: ToldThread } | undefined {
  const thread = readToldThread(
    form,
    { from: 'idleThreadFrom', thread: 'idleThread', turns: 'idlePitchTurns', travel: 'idlePitchTravel' },
    take,
  );
  const pitchMm = thread?.pitchMm ?? NaN;
  const closingMm = side('idleClosing', pitchMm);
  const openingMm = side('idleOpening', pitchMm);
  const typedRatio = form.idleRatio.trim() !== '';
  const ratio = typedRatio
    ? take('idleRatio', parseWithin(form.idleRatio, 'idleRatio', ratioLimit))
    : undefined;
  if (thread === undefined || closingMm === undefined || openingMm === undefined) return undefined;
  return {
    thread,
    screw: {
      pitchMm,
      showing: { closingMm, openingMm },
      ...(ratio !== undefined && { turnsPerAdjusterTurn: ratio }),
    },
  };
}
