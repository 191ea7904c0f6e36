import type { APIRoute, GetStaticPaths } from 'astro';
import { csvOf } from '../../content/tables/data-table.ts';
import { dataTables, type TableName } from '../../content/tables/index.ts';

export const getStaticPaths = (() =>
  Object.keys(dataTables).map((name) => ({ params: { name } }))) satisfies GetStaticPaths;

/** By it spreadsheets know UTF-8; everything else skips it. */
const byteOrderMark = '\ufeff';

/** A table of the handbook as a file. */
export const GET: APIRoute = ({ params }) =>
  new Response(byteOrderMark + csvOf(dataTables[params.name as TableName]), {
    headers: { 'content-type': 'text/csv; charset=utf-8; header=present' },
  });
