import { generations, type Generation } from '../../../calculators/index.ts';

/** What the screws move, in the reader’s words. */
export const generationWords: Readonly<Record<Generation, string>> = {
  'separate-cables': 'Each carburettor has its own cable',
  'all-adjustable': 'Ganged, an adjuster on every carburettor',
  'fixed-reference': 'Ganged, one carburettor has no adjuster',
  'paired-screws': 'Ganged, screws between neighbours',
  'bypass-screws': 'Throttle bodies with an air screw each',
};

export const generationList = generations;
