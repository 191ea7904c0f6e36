import type { APIRoute } from 'astro';
import { siteAddress } from '../device/site-address.ts';

const icon = (file: string, sizes: string, purpose: string) => ({
  src: siteAddress(`/icons/${file}`),
  sizes,
  type: file.endsWith('.svg') ? 'image/svg+xml' : 'image/png',
  purpose,
});
const shortcut = (name: string, path: `/${string}`) => ({ name, url: siteAddress(path) });

/** What a device needs to know to keep the site among its programs. */
export const GET: APIRoute = () =>
  Response.json({
    id: siteAddress('/'),
    name: 'Evendraw: balance carburettors with one gauge',
    short_name: 'Evendraw',
    description:
      'Says which screw to turn next, which way and how far, from the readings of one vacuum gauge.',
    lang: 'en-GB',
    dir: 'ltr',
    start_url: siteAddress('/'),
    scope: siteAddress('/'),
    display: 'standalone',
    background_color: '#fcf9f1',
    theme_color: '#fcf9f1',
    icons: [
      icon('icon.svg', 'any', 'any'),
      icon('icon-192.png', '192x192', 'any'),
      icon('icon-512.png', '512x512', 'any'),
      icon('icon-maskable-512.png', '512x512', 'maskable'),
    ],
    shortcuts: [shortcut('Bench session', '/bench-session/'), shortcut('Unit converter', '/unit-converter/')],
  });
