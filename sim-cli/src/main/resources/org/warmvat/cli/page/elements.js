/** Elements of the page. Text always goes in as text, never as markup. */

const SVG = 'http://www.w3.org/2000/svg';

/** An element with attributes, listeners (on…) and children; what is null or false is left out. */
export function element(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

/** The same for drawings. */
export function drawn(name, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, name), attributes, children);
}

function filled(node, attributes, children) {
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith('on')) {
      node.addEventListener(key.slice(2), value);
    } else if (value !== null && value !== undefined && value !== false) {
      node.setAttribute(key, value === true ? '' : value);
    }
  }
  node.append(...children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== false));
  return node;
}

export const byId = id => document.getElementById(id);

/** A table with heads that say what they head. */
export function table(caption, heads, rows) {
  return element('table', {}, element('caption', {}, caption),
    element('thead', {}, element('tr', {}, heads.map(head => head === '' ? element('td') : element('th', {scope: 'col'}, head)))),
    element('tbody', {}, rows.map(row => element('tr', {},
      row.map((cell, i) => i === 0 ? element('th', {scope: 'row'}, cell) : element('td', {}, cell))))));
}

/** Three figures, as the program writes numbers. */
export function number(value) {
  if (value === null || value === undefined || !Number.isFinite(value)) return '–';
  const size = Math.abs(value);
  if (size < 0.0005) return '0';
  const decimals = Math.max(0, Math.min(3, 2 - Math.floor(Math.log10(size))));
  return size >= 1000 ? String(Number(value.toPrecision(3))) : value.toFixed(decimals);
}

/** The same with its sign. */
export function signed(value) {
  const size = number(Math.abs(value));
  return size === '0' || size === '–' ? size : (value > 0 ? '+' : '−') + size;
}

/** A file for the user to keep. */
export function keep(name, type, content) {
  const address = URL.createObjectURL(new Blob([content], {type}));
  const link = element('a', {href: address, download: name});
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}
