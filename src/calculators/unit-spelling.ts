/**
 * One form for all spellings of a unit. Case, spaces, dots, brackets, hyphens, multiplication and degree signs go;
 * ″ in front is inches and ′ feet; compatibility normalisation turns ₂, ², µ and ㎩ into plain characters.
 */
export const spellingOf = (typed: string): string =>
  typed
    .trim()
    .replace(/^(?:["″“”]|''|′′|’’)/u, 'in')
    .replace(/^['′’]/u, 'ft')
    .replace(/[º˚]/gu, '')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s°._()[\],^*·⋅×•‐–−-]/gu, '')
    .replace(/(\d)deg(?=[cf]$)/u, '$1')
    .replace(/(?<=[a-z0-9])conventional$/u, '');
