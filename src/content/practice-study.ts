import { z } from 'astro/zod';
import committed from './practice-study.json' with { type: 'json' };

const medianAnd95 = z.strictObject({ median: z.number().min(0), most95: z.number().min(0) });
const count = z.int().min(0);

/** The committed output of `npm run study:practice`, as it wrote it. */
export const practiceStudy = z
  .strictObject({
    date: z.iso.date(),
    command: z.string(),
    grades: z.array(
      z.strictObject({
        grade: z.int().min(1).max(4),
        exercises: z.int().positive(),
        visits: medianAnd95,
        minutes: medianAnd95,
        trueSpreadPa: medianAnd95,
        calledDone: count,
        wronglyCalledDone: count,
        stopped: count,
      }),
    ),
  })
  .parse(committed);
