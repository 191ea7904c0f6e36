import { encode } from 'uqr';

/** A text as the dark and light modules of a QR code (ISO/IEC 18004, level M: a seventh of it may be dirty). */
export const qrModules = (text: string): readonly (readonly boolean[])[] =>
  encode(text, { ecc: 'M', border: 0 }).data;
