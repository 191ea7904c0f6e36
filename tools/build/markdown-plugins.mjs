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
  const isLink = (attribute) => ['href', 'src'].includes(attribute.name) && isOurs(attribute.value);
  const prefixAttribute = (node) => {
    const { type, name, attributes, children } = node;
    if (!/^[a-z]/.test(name ?? '') || !attributes.some(isLink)) return undefined;
    const prefix = (one) => (isLink(one) ? { ...one, value: prefixed(one.value) } : one);
    return { type, name, attributes: attributes.map(prefix), children };
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
