// Says in one line what is wrong, before a tool fails in its own words.
const [major, minor] = process.versions.node.split('.').map(Number);
const fits = (major === 22 && minor >= 22) || (major === 24 && minor >= 8) || major > 24;

if (!fits) {
  console.error(
    `Evendraw needs Node 22.22 or later in the 22 line, or 24.8 or later. This is Node ${process.versions.node}.\n` +
      'On Linux x64 `npm install` brings its own; elsewhere install one from https://nodejs.org and try again.',
  );
  process.exit(1);
}
