// Identifiers: UUID version 7 (RFC 9562, section 5.7): 48 bits of Unix time in milliseconds, then
// random bits. getRandomValues is there without HTTPS too.

export function newId(now = Date.now()) {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let left = now;
  for (let n = 5; n >= 0; n--) {
    bytes[n] = left % 256;
    left = Math.floor(left / 256);
  }
  bytes[6] = (bytes[6] & 0x0f) | 0x70;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
