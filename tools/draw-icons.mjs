// Draws the pictures of public/icons from icon.svg: npm run icons, whenever the drawing changes.
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright';
import { findBrowser, launchFlags } from './find-browser.mjs';

const folder = new URL('../public/icons/', import.meta.url).pathname;
const drawing = readFileSync(`${folder}icon.svg`, 'utf8');
const paper = '#fcf9f1';
// Devices cut maskable icons, and round the corners of their own accord: no corner of ours, and room around the marks.
const square = drawing.replace(/ rx="\d+"/, '');

const share = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1200 630">
  <rect width="1200" height="630" fill="${paper}"/>
  <g fill="#1b1815" font-family="Charter, 'Noto Serif', 'DejaVu Serif', serif">
    <path transform="translate(96 120) scale(4)" d="M0 6a6 6 0 1 0 12 0A6 6 0 1 0 0 6M17 .5h11v11H17zM39.5 0 46 11.5H33zM57-.5 63.5 6 57 12.5 50.5 6z"/>
    <text x="96" y="330" font-size="112" font-weight="700">Evendraw</text>
    <text x="96" y="420" font-size="40">Make every cylinder draw the same, with one gauge</text>
  </g>
  <path stroke="#1b1815" stroke-width="4" d="M96 500H1104"/>
</svg>`;

const browser = await chromium.launch({ executablePath: findBrowser(), args: launchFlags });
const page = await browser.newPage();

/** Draws `svg` at `size`, with `room` around it in the colour of the paper. */
async function draw(file, svg, { width, height = width, room = 0 }) {
  await page.setViewportSize({ width, height });
  const background = room > 0 ? paper : 'transparent';
  const style = `body { margin: 0; padding: ${room}px; background: ${background}; } svg { display: block; width: ${width - 2 * room}px; height: ${height - 2 * room}px; }`;
  await page.setContent(`<!doctype html><style>${style}</style>${svg}`);
  await page.screenshot({ path: folder + file, omitBackground: true });
}

await draw('icon-180.png', square, { width: 180 });
await draw('icon-192.png', drawing, { width: 192 });
await draw('icon-512.png', drawing, { width: 512 });
await draw('icon-maskable-512.png', square, { width: 512, room: 72 });
await draw('share.png', share, { width: 1200, height: 630 });
await browser.close();
