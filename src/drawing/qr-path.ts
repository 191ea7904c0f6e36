/** The light margin that a reader needs on every side, in modules (ISO/IEC 18004, 4 modules). */
const quietZone = 4;

export type QrDrawing = { readonly viewBox: string; readonly path: string };

/** A QR code as one path of bars, a module a unit. */
export function qrPath(modules: readonly (readonly boolean[])[]): QrDrawing {
  const bars = modules.flatMap((row, y) =>
    row.flatMap((dark, x) => {
      if (!dark || row[x - 1] === true) return [];
      const end = row.indexOf(false, x);
      const length = (end === -1 ? row.length : end) - x;
      return [`M${x} ${y}h${length}v1h-${length}z`];
    }),
  );
  const side = modules.length + 2 * quietZone;
  return { viewBox: `-${quietZone} -${quietZone} ${side} ${side}`, path: bars.join('') };
}
