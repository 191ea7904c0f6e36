/** c₀ + c₁x + c₂x² + …, by Horner's rule; the constant first. */
export const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
