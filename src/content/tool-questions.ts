import { calculators } from './calculators.ts';

export type Tool = {
  readonly path: `/${string}/`;
  readonly title: string;
  readonly what: string;
  /** Questions as people type them that it answers. Pages of the handbook hold theirs in their front matter. */
  readonly asks: readonly string[];
};

/** Every page that is no text of the handbook and answers a question. */
export const tools: readonly Tool[] = [
  ...calculators,
  {
    path: '/bench-session/',
    title: 'Bench session',
    what: 'Readings as they come; after each, which screw to turn, which way and how far.',
    asks: [
      'I have the readings, what now',
      'which screw do I turn next',
      'balance my carbs step by step',
      'undo a wrong entry',
    ],
  },
  {
    path: '/practice-engine/',
    title: 'Practice engine',
    what: 'A simulated engine on which to do the whole job before touching a real one.',
    asks: [
      'can I practise before I touch my bike',
      'try balancing on a simulated engine',
      'carb sync simulator',
    ],
  },
  {
    path: '/checklists/',
    title: 'Checklists',
    what: 'Before, during and after, for each kind of linkage, on one sheet of paper.',
    asks: ['print a checklist', 'checklist as a pdf', 'list to tick off at the bike', 'what not to forget'],
  },
  {
    path: '/for-clubs/',
    title: 'For clubs',
    what: 'A checklist with your heading and notes as a link and a QR code.',
    asks: ['send a list to our club members', 'qr code for a checklist', 'link with our own notes'],
  },
  {
    path: '/constants/',
    title: 'All constants',
    what: 'Every constant that the calculators rest on, with its source.',
    asks: ['what value of gravity is used', 'list of all constants', 'density of mercury used'],
  },
  {
    path: '/calculators/',
    title: 'Calculators',
    what: 'All calculators, with what each answers.',
    asks: ['list of calculators'],
  },
];
