/** The questions of the command line: a button each, with its options, progress, a way to stop, and the report in place. */
import {byId, element} from './elements.js';
import {work} from './design.js';
import {Refused, ask, follow, report, stopAsking} from './server.js';

let asking = 0;

/** Makes a card for each question. */
export function makeQuestions(questions) {
  byId('questions').append(element('div', {class: 'questions'}, questions.map(card)));
  byId('cancel').addEventListener('click', () => stopAsking(asking));
}

function card(question) {
  const id = `q-${question.name}`;
  const options = question.fields.map(field => option(id, field));
  const files = question.files.map(slot => element('div', {class: 'field'},
    element('label', {for: `${id}${slot.name}`}, slot.needed ? `${slot.name} (needed)` : slot.name),
    element('input', {id: `${id}${slot.name}`, type: 'file'}), element('p', {class: 'help'}, slot.says)));
  return element('div', {class: 'question'}, element('h3', {}, question.name), element('p', {}, question.says),
    question.pinned ? element('p', {}, 'On this page it is the design at work against the pinned one.') : null,
    element('button', {type: 'button', class: 'main', id, 'aria-label': `Ask ${question.name}`, onclick: () => put(question, id)}, 'Ask'),
    options.length + files.length === 0 ? null : element('details', {open: question.files.some(slot => slot.needed)}, element('summary', {}, `Options of ${question.name}`), options, files));
}

function option(id, field) {
  const at = `${id}${field.name}`;
  const control = field.form === '' ? element('input', {id: at, type: 'checkbox'}) : element('input', {id: at, type: 'text', placeholder: field.usual || field.form});
  return element('div', {class: 'field'}, element('label', {for: at}, field.name.replace(/^--/, '').replaceAll('-', ' ')), control, element('p', {class: 'help'}, field.says));
}

async function put(question, id) {
  const options = {}, files = {};
  question.fields.forEach(field => {
    const control = byId(`${id}${field.name}`);
    if (field.form === '' ? control.checked : control.value.trim() !== '') options[field.name] = field.form === '' ? '' : control.value.trim();
  });
  for (const slot of question.files) {
    const file = byId(`${id}${slot.name}`).files[0];
    if (file) files[slot.name] = await file.text();
  }
  byId('asked').hidden = false;
  byId('asked-heading').textContent = `${question.name}: the answer`;
  byId('asked-heading').focus();
  byId('answer').replaceChildren();
  byId('progress').removeAttribute('value');
  byId('reached').textContent = 'working';
  byId('working').hidden = false;
  try {
    const asked = {question: question.name, options, files, text: work.text, pinned: work.pinned?.text, weather: work.weather};
    asking = (await ask(asked)).number;
    const ended = await follow(asking, reached);
    await show(ended, asking);
  } catch (refused) {
    if (!(refused instanceof Refused)) throw refused;
    fault(refused.told.sentences);
  }
  byId('working').hidden = true;
}

function reached(state) {
  if (state.all > 0) {
    byId('progress').max = state.all;
    byId('progress').value = state.done;
    byId('reached').textContent = `${state.done} of ${state.all}`;
  }
}

const fault = sentences => byId('answer').replaceChildren(
  element('div', {class: 'fault', role: 'alert'}, sentences.map(sentence => element('p', {}, sentence))));

async function show(ended, number) {
  if (ended.sentences.length > 0) {
    fault(ended.sentences);
    return;
  }
  // the report's own style is for a page of its own, and the policy of this one would refuse it
  const text = (await report(number)).replace(/<style>[^]*?<\/style>/, '');
  const page = new DOMParser().parseFromString(text, 'text/html');
  byId('answer').replaceChildren(element('p', {},
    element('a', {href: `ask/${number}/report.html`, target: '_blank', rel: 'noopener'}, 'The report as a page of its own'), ' · ',
    element('a', {href: `ask/${number}/report.zip`, download: 'warmvat-report.zip'}, 'The whole folder of results as a zip')),
  element('div', {class: 'report'}, [...page.querySelector('main').children].map(lowered)));
}

/** Headings of the report stand below those of the page, and its marks are its own. */
function lowered(node) {
  const copy = document.importNode(node, true);
  copy.querySelectorAll('[id]').forEach(inner => inner.removeAttribute('id'));
  copy.querySelectorAll('a[href^="#"]').forEach(link => link.replaceWith(link.textContent));
  copy.removeAttribute('id');
  if (copy.tagName === 'SECTION') copy.setAttribute('aria-label', 'The report in short');
  const level = {H1: 'h4', H2: 'h4'}[copy.tagName];
  return level ? element(level, {}, copy.textContent) : copy;
}
