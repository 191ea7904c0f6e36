// Draws the icons of public/icons from icon.svg: node tools/draw-icons.mjs, whenever the drawing changes.
import { readFileSync } from 'node:fs';
import sharp from 'sharp';

const folder = new URL('../public/icons/', import.meta.url).pathname;
const drawing = readFileSync(`${folder}icon.svg`, 'utf8');
const paper = '#fcf9f1';
// Devices cut maskable icons, and round the corners of their own accord: no corner of ours, and room around the marks.
const square = drawing.replace(/ rx="\d+"/, '');
const render = (svg, size) => sharp(Buffer.from(svg), { density: 72 * (size / 64) }).resize(size, size);

await render(square, 180).png({ palette: true }).toFile(`${folder}icon-180.png`);
for (const size of [192, 512]) await render(drawing, size).png({ palette: true }).toFile(`${folder}icon-${size}.png`);

const room = 72;
await render(square, 512 - 2 * room)
  .extend({ top: room, bottom: room, left: room, right: room, background: paper })
  .png({ palette: true })
  .toFile(`${folder}icon-maskable-512.png`);

const share = `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="630">
  <rect width="1200" height="630" fill="${paper}"/>
  <g fill="#1b1815" font-family="Charter, 'Noto Serif', 'DejaVu Serif', serif">
    <path transform="translate(96 120) scale(4)" d="M0 6a6 6 0 1 0 12 0A6 6 0 1 0 0 6M17 .5h11v11H17zM39.5 0 46 11.5H33zM57-.5 63.5 6 57 12.5 50.5 6z"/>
    <text x="96" y="330" font-size="112" font-weight="700">Evendraw</text>
    <text x="96" y="420" font-size="42">Make every cylinder draw the same, with one gauge</text>
  </g>
  <path stroke="#1b1815" stroke-width="4" d="M96 500H1104"/>
</svg>`;
await sharp(Buffer.from(share)).png({ palette: true }).toFile(`${folder}share.png`);
