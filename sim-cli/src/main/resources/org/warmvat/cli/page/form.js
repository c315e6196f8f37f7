/** The design as a form, made from the schema of the design file: groups, units, ranges, help, and faults beside the field. */
import {byId, element, number} from './elements.js';
import {change, work} from './design.js';

let schema = null;
let demonstration = null;

/** Makes one group for each block of the file. */
export function makeForm(ofSchema, ofDemonstration) {
  schema = ofSchema;
  demonstration = ofDemonstration;
  for (const [key, property] of Object.entries(schema.properties)) {
    const inside = element('div');
    const group = element('details', {class: 'group', ontoggle: () => fill(key)},
      element('summary', {}, words(key)), element('p', {class: 'help'}, `${property.description}.`), inside);
    group.dataset.key = key;
    byId('form').append(group);
  }
}

/** Shows the design at work in the groups that are open; the field at hand stays at hand. */
export function showForm() {
  const at = document.activeElement?.dataset?.path;
  Object.keys(schema.properties).forEach(fill);
  if (at) document.querySelector(`#form [data-path="${CSS.escape(at)}"]`)?.focus();
}

/** Opens what a fault is about and goes there. */
export function goTo(path) {
  const key = path.split(/[.[]/)[0];
  const group = document.querySelector(`details[data-key="${CSS.escape(key)}"]`);
  if (!group) return;
  group.open = true;
  fill(key);
  document.querySelector(`#form [data-path="${CSS.escape(path)}"]`)?.focus();
}

function fill(key) {
  const group = document.querySelector(`details[data-key="${CSS.escape(key)}"]`);
  if (group.open && work.tree && !isBeingTyped(group)) {
    group.lastElementChild.replaceChildren(field(key, key, schema.properties[key], work.tree[key], isRequired(schema, key)));
  }
}

/** A field that holds what is not taken over yet is left alone. */
function isBeingTyped(group) {
  const at = document.activeElement;
  return group.contains(at) && at.tagName === 'INPUT' && at.value !== at.defaultValue;
}

const isRequired = (block, key) => block.required?.includes(key) ?? false;
const words = key => key.replaceAll('_', ' ');

/** The unit stands behind the field. */
const label = (key, unit) => words(unit && key.toLowerCase().endsWith(`_${unit.toLowerCase()}`) ? key.slice(0, -unit.length - 1) : key);
const set = (path, value) => change([[path, value]]);

/** Faults of a path, in the program's words, without the file's name. */
export function faultsOf(sentences) {
  return sentences.map(sentence => {
    const found = /^design\.(?:yaml|json)(?: line \d+)?: (\S+) (.*)$/.exec(sentence);
    return {sentence, path: found ? found[1] : '', says: found ? found[2] : sentence};
  });
}

const faultAt = path => faultsOf(work.sentences).filter(fault => fault.path === path).map(fault => fault.says).join(' ');

function field(path, key, property, value, required) {
  if (property.anyOf) return choice(path, key, property, value, required);
  if (property.type === 'object') return block(path, key, property, value, required);
  if (property.type === 'array') return list(path, key, property, value);
  return single(path, key, property, value, required);
}

/** A label, a control, its help and its fault. */
function single(path, key, property, value, required) {
  const id = `f-${path}`, wrong = faultAt(path);
  const control = controlFor(property, path, value);
  control.id = id;
  control.dataset.path = path;
  control.setAttribute('aria-describedby', `${id}-help`);
  if (wrong) control.setAttribute('aria-invalid', 'true');
  if (property.type === 'string' && !property.enum && required) control.required = true;
  const unit = property['x-unit'];
  return element('div', {class: 'field'}, element('label', {for: id}, label(key, unit)), control, unit ? ` ${unit}` : null,
    element('p', {class: 'help', id: `${id}-help`}, help(property, path, required)),
    wrong ? element('p', {class: 'wrong'}, wrong) : null);
}

function help(property, path, required) {
  const parts = [property.description];
  if (property.minimum !== undefined) parts.push(`${property.minimum} to ${property.maximum}`);
  if (property.default !== undefined) parts.push(`usual ${typeof property.default === 'object' ? JSON.stringify(property.default) : words(String(property.default))}`);
  else if (property['x-otherwise']) parts.push(`otherwise ${property['x-otherwise']}`);
  else if (work.year?.numbers[path] !== undefined && !required) parts.push(`now ${number(work.year.numbers[path])}`);
  if (property['x-default-when']) parts.push(`where ${property['x-default-when']}`);
  return parts.filter(Boolean).join('; ');
}

function controlFor(property, path, value) {
  if (property.enum || property.type === 'boolean') {
    const options = property.enum ?? ['true', 'false'];
    const taken = text => property.type === 'boolean' ? text === 'true' : text;
    return element('select', {onchange: event => set(path, event.target.value === '' ? undefined : taken(event.target.value))},
      element('option', {value: ''}, property.default !== undefined ? `usual: ${words(String(property.default))}` : 'not given'),
      options.map(option => element('option', {value: option, selected: String(value) === option}, words(option))));
  }
  const isNumber = property.type === 'number' || property.type === 'integer';
  const told = work.year?.numbers[path];
  return element('input', {
    type: isNumber ? 'number' : 'text', step: isNumber ? 'any' : null, value: value ?? '', placeholder: property.default ?? told ?? null,
    onchange: event => {
      event.target.defaultValue = event.target.value;
      const text = event.target.value.trim();
      set(path, text === '' ? undefined : isNumber ? Number(text) : text);
    },
  });
}

function block(path, key, property, value, required) {
  const fields = element('fieldset', {}, element('legend', {}, words(key)));
  const wrong = faultAt(path);
  if (wrong) fields.append(element('p', {class: 'wrong'}, wrong));
  const free = property.additionalProperties;
  if (value === undefined && !required && property.default === undefined) {
    fields.append(element('p', {class: 'help'}, `${property.description ?? ''} Not in this design.`),
      button(`Put ${words(key)} in`, () => set(path, example(path, property))));
    return fields;
  }
  for (const [name, inner] of Object.entries(property.properties ?? {})) {
    fields.append(field(`${path}.${name}`, name, inner, value?.[name], isRequired(property, name)));
  }
  if (typeof free === 'object') {
    Object.keys(value ?? {}).filter(name => !(name in (property.properties ?? {}))).forEach(name =>
      fields.append(field(`${path}.${name}`, name, free, value[name], false)));
    fields.append(element('p', {class: 'help'}, 'New names are put in the text of the design below.'));
  }
  if (value !== undefined && !required) fields.append(button(`Take ${words(key)} out`, () => set(path, undefined)));
  return fields;
}

/** What a new block begins with: that of the invented demonstration, else what must be there, to be filled in. */
function example(path, property) {
  const steps = path.split('.');
  const shown = steps.reduce((at, step) => at?.[step], demonstration);
  if (shown !== undefined) return shown;
  if (property.type === 'object') {
    return Object.fromEntries((property.required ?? []).map(key => [key, example(`${path}.${key}`, property.properties[key])]));
  }
  if (property.type === 'array') return property.items ? [example(`${path}.[]`, property.items)] : [];
  if (property.anyOf) return example(path, property.anyOf[0]);
  return property.enum?.[0] ?? property.default ?? (property.type === 'string' ? 'name' : property.minimum ?? 0);
}

const button = (text, act) => element('button', {type: 'button', onclick: act}, text);

function list(path, key, property, value) {
  const fields = element('fieldset', {}, element('legend', {}, words(key)),
    property.description ? element('p', {class: 'help'}, help(property, path, false)) : null);
  const wrong = faultAt(path), entries = Array.isArray(value) ? value : [];
  if (wrong) fields.append(element('p', {class: 'wrong'}, wrong));
  entries.forEach((entry, i) => {
    const name = entry?.name ?? entry?.material ?? `entry ${i + 1}`;
    fields.append(field(`${path}[${i}]`, typeof name === 'string' ? name : `entry ${i + 1}`, property.items, entry, true),
      button(`Take ${typeof name === 'string' ? name : `entry ${i + 1}`} out`, () => set(`${path}[${i}]`, undefined)));
  });
  const model = entries.at(-1) ?? example(`${path}.[]`, property.items);
  fields.append(' ', button(entries.length ? 'Add one like the last' : `Add to ${words(key)}`, () =>
    Array.isArray(value) ? set(`${path}[${entries.length}]`, model) : set(path, [model])));
  return fields;
}

/** A key that may be a word, a number or a block: the kind that it is, and a way to another. */
function choice(path, key, property, value, required) {
  const kindOf = one => one === undefined ? null : Array.isArray(one) ? 'array' : typeof one;
  const fits = branch => ({string: 'string', number: 'number', integer: 'number', boolean: 'boolean', object: 'object', array: 'array'})[branch.type];
  const branches = property.anyOf.map(branch => ({...branch, description: property.description, 'x-unit': property['x-unit'],
    ...(property.default !== undefined && fits(branch) === kindOf(property.default) ? {default: property.default} : {})}));
  const now = branches.find(branch => fits(branch) === kindOf(value)) ?? branches[0];
  const kinds = {string: 'a word', number: 'a number', boolean: 'yes or no', object: 'numbers of its own', array: 'a list'};
  return element('div', {}, field(path, key, now, value, required),
    branches.filter(branch => branch !== now).map(branch =>
      button(`Give ${words(key)} as ${kinds[fits(branch)]}`, () => set(path, example(path, branch)))));
}
