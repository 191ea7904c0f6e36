import { defaultAnswers, type SetUpAnswers } from './bench-set-up.ts';

/** An invented engine with invented readings: what the page, the first test and a link of the handbook show. */
export const benchSessionExample: { readonly answers: SetUpAnswers; readonly readings: string } = {
  answers: {
    ...defaultAnswers('mmHg'),
    carburettors: '4',
    generation: 'all-adjustable',
    opens: 'anticlockwise',
    thread: [
      { closing: '1 1/2', opening: '1 1/2' },
      { closing: '1 1/2', opening: '1 1/2' },
      { closing: '1 1/2', opening: '1 1/2' },
      { closing: '0.4', opening: '2' },
    ],
  },
  readings: '1: 212; 2: 248; 3: 251; 4: 187',
};
