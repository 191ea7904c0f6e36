import type { APIRoute } from 'astro';
import { readingOrder } from '../content/reading-order.ts';
import { tools } from '../content/tool-questions.ts';
import type { AskedPage } from '../device/search-questions.ts';
import { siteAddress } from '../device/site-address.ts';

/** Which page answers which question: the search reads it beside its index. */
export const GET: APIRoute = async () => {
  const pages: AskedPage[] = [
    ...tools.map(({ path, title, what, asks }) => ({
      address: siteAddress(path),
      title,
      description: what,
      asks,
    })),
    ...(await readingOrder()).map(({ id, data: { title, description, asks } }) => ({
      address: siteAddress(`/${id}/`),
      title,
      description,
      asks,
    })),
  ];
  return Response.json(pages);
};
