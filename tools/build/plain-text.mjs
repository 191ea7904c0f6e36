const names = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const characterOf = (whole, name) =>
  name.startsWith('#x')
    ? String.fromCodePoint(Number.parseInt(name.slice(2), 16))
    : name.startsWith('#')
      ? String.fromCodePoint(Number(name.slice(1)))
      : (names[name] ?? whole);

/** Text of a built page as it is read: its references to characters replaced by these. */
export const plainText = (html) => html.replace(/&(#?\w+);/g, characterOf);
