import { renderFormula } from '../../src/components/render-formula.ts';

// The braces of TeX are not expressions of MDX.
const literal = (html) => ({ raw: html, mdxExpressions: false });

/** `$…$` and `$$…$$` become MathML. */
export const formulae = {
  name: 'formulae',
  math: (node) => literal(renderFormula(node.value, true)),
  inlineMath: (node) => literal(renderFormula(node.value)),
};

/** Links and pictures that begin with `/` are written from the root of the site; the build may live under a base path. */
export function linksUnder(base) {
  const prefixed = (address) => base.slice(0, -1) + address;
  const isOurs = (address) =>
    typeof address === 'string' && address.startsWith('/') && !address.startsWith('//');
  const prefixUrl = (node, context) => {
    if (isOurs(node.url)) context.setProperty(node, 'url', prefixed(node.url));
  };
  const prefixAttribute = (node, context) => {
    const attributes = node.attributes?.map((attribute) =>
      ['href', 'src'].includes(attribute.name) && isOurs(attribute.value)
        ? { ...attribute, value: prefixed(attribute.value) }
        : attribute,
    );
    if (/^[a-z]/.test(node.name ?? '') && attributes?.some((attribute, i) => attribute !== node.attributes[i]))
      context.setProperty(node, 'attributes', attributes);
  };
  return {
    name: 'links-under-base',
    link: prefixUrl,
    image: prefixUrl,
    definition: prefixUrl,
    mdxJsxFlowElement: prefixAttribute,
    mdxJsxTextElement: prefixAttribute,
  };
}
