import { z } from 'astro/zod';
import committed from './study.json' with { type: 'json' };

const medianAnd95 = z.strictObject({ median: z.number().min(0), most95: z.number().min(0) });
const count = z.int().min(0);
/** Null where there was nothing to take a share of. */
const share = z.number().min(0).max(1).nullable();

/** The committed output of `npm run study`, as the study wrote it. */
export const studySchema = z.strictObject({
  engines: z.int().positive(),
  seed: count,
  date: z.iso.date(),
  command: z.string(),
  /** Stated chances of the plain cells at every step, and how often they were true. */
  calibration: z.array(
    z.strictObject({ from: z.number(), to: z.number(), claims: count, within: count, share }),
  ),
  cells: z.array(
    z.strictObject({
      method: z.enum(['advice', 'eighth', 'proportional', 'watch']),
      generation: z.enum([
        'separate-cables',
        'all-adjustable',
        'fixed-reference',
        'paired-screws',
        'bypass-screws',
      ]),
      carburettors: z.int().min(2).max(8),
      hardship: z.string(),
      tolerancePa: z.number().positive(),
      engines: z.int().positive(),
      visits: medianAnd95,
      moves: medianAnd95,
      turns: medianAnd95,
      trueSpreadPa: medianAnd95,
      calledDone: count,
      wronglyCalledDone: count,
      wrongShare: share,
      stoppedForThread: count,
      stoppedForVisits: count,
      gaveUpShare: share,
    }),
  ),
});

export type StudyCell = z.infer<typeof studySchema>['cells'][number];

export const study = studySchema.parse(committed);

export const methodWords: Readonly<Record<StudyCell['method'], string>> = {
  advice: 'Advice',
  eighth: 'Eighth of a turn',
  proportional: 'In proportion',
  watch: 'Watch the gauge',
};

export const generationWords: Readonly<Record<StudyCell['generation'], string>> = {
  'separate-cables': 'Separate cables',
  'all-adjustable': 'One adjuster each',
  'fixed-reference': 'One fixed',
  'paired-screws': 'Screws between neighbours',
  'bypass-screws': 'Bypass screws',
};

/** Every hardship of the study in words; a cell without words fails the build. */
export const hardshipWords: Readonly<Record<string, string>> = {
  'tolerance-20': 'Tolerance 20 mmHg',
  'effect-told-half': 'Effect of a turn told as half of the truth',
  'effect-told-double': 'Effect of a turn told as double the truth',
  'warm-up': 'Still warming, 2 mmHg a minute',
  'speed-60-tachometer': 'Speed held to 60 rpm, given beside each reading',
  'speed-60': 'Speed held to 60 rpm, no tachometer',
  'speed-60-flutter-told-6': 'The same, with a swing of 6 mmHg told',
  'weak-screws': 'Screws with 0.3 of the usual effect',
  'quick-screws': 'Screws with twice the usual effect',
  'uneven-screws': 'Screws uneven by 20 % either way',
  'wrong-readings': '3 % of readings wrong by 40 mmHg',
  'short-threads-can': 'Short threads, level possible',
  'short-threads-cannot': 'Short threads, no level possible',
  'flutter-6-untold': 'Needle swings 6 mmHg, 3 told',
  'flutter-6-told': 'Needle swings 6 mmHg, told',
  'lock-shift-double-untold': 'Nut slips twice as far as told',
  'lock-shift-double-told': 'The same, told',
  'tolerance-5': 'Tolerance 5 mmHg',
};
