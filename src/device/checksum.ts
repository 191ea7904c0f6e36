/**
 * CRC-32 of a text's UTF-8 bytes as eight hexadecimal digits: the reflected polynomial EDB88320 of ISO 3309 and RFC 1952,
 * section 8. It finds damage, not malice, and works where the browser offers no cryptography (an insecure address).
 */
export const checksumOf = (text: string): string => {
  let remainder = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) {
    remainder ^= byte;
    for (let bit = 0; bit < 8; bit++) remainder = (remainder >>> 1) ^ (remainder & 1 ? 0xedb88320 : 0);
  }
  return ((remainder ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
};
