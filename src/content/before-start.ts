/** The short form of the safety page: it stands before every step that starts an engine. */
export const beforeStart: readonly { readonly hazard: string; readonly words: string }[] = [
  {
    hazard: 'Exhaust',
    words: 'run the engine outdoors, or on an extractor fixed to the pipe. An open door is not enough.',
  },
  {
    hazard: 'Heat and fuel',
    words: 'pipes burn at once. Petrol stays away, an extinguisher within reach.',
  },
  {
    hazard: 'Moving parts',
    words: 'sleeves, hair and hoses clear of fan, chain and belt. In neutral, on its stand.',
  },
];
