/** The seed of one engine: FNV-1a over its place in the study (G. Fowler, L. C. Noll, K.-P. Vo, 1991). */
export const seedOf = (...place: readonly (string | number)[]): number => {
  let hash = 2166136261;
  for (const character of place.join('/')) hash = Math.imul(hash ^ character.codePointAt(0)!, 16777619) >>> 0;
  return hash;
};
